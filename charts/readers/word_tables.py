"""Tables that a page writes in sentences, bullets or one cell a line, put among its real tables."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import Final

from charts.findings import FindingLog
from charts.readers.captured.cells import cell_table, streamed_table
from charts.readers.captured.choosing import choosing_table
from charts.readers.captured.columns import column_table
from charts.readers.captured.lines import Line, LineTable
from charts.readers.captured.listed import listed_table
from charts.readers.captured.prose import prose_table
from charts.readers.captured.runs import run_table
from charts.readers.captured.sentences import sentence_table
from charts.readers.captured.strokes import stroke_table
from charts.readers.page_outline import Entry, PageTable, Part, sheets_of
from charts.readers.plain_text import tidy
from charts.readers.source import UnusableSourceError
from charts.sheet import Cell, Sheet

_LINES_AHEAD: Final = 300


def sheets_of_document(
    entries: Sequence[Entry], name: str, log: FindingLog, *, pictures: bool
) -> tuple[Sheet, ...]:
    """The sheets of a word processor's document; one without tables is a finding in ``log``.

    ``pictures`` says whether the file holds any. Raises UnusableSourceError without any text.
    """
    sheets = sheets_of(with_word_tables(entries))
    if not sheets and not any(entry.text for entry in entries):
        raise UnusableSourceError("picture" if pictures else "empty-file")
    if not sheets:
        log.add("no-table", name, name=name)
    return sheets


def with_word_tables(entries: Sequence[Entry]) -> list[Entry]:
    """The outline with runs of words that are rows of a table replaced by that table.

    One cell a line, and sizes over their figures, are looked for only on a page without any table.
    """
    bare = all(entry.part is not Part.TABLE for entry in entries)
    return list(_replaced(entries, bare=bare))


def _replaced(entries: Sequence[Entry], *, bare: bool) -> Iterator[Entry]:
    lines = [Line(entry.text.replace("\xa0", " "), at) for at, entry in enumerate(entries)]
    ends = _ends_of_runs(entries)
    at = 0
    while at < len(entries):
        run = lines[at : min(ends[at], at + _LINES_AHEAD)]
        table = listed_table(run) or prose_table(run) or sentence_table(run)
        table = table or choosing_table(run) or stroke_table(run)
        if table is None and bare:
            # Blanks that a page does not draw together stand between columns.
            table = column_table(run) if "  " in run[0].text else None
            table = table or run_table(run) or cell_table(run) or streamed_table(run)
        if table is None:
            yield entries[at]
            at += 1
            continue
        first = entries[at]
        yield Entry(Part.TABLE, hidden=first.hidden, table=page_table(table), within=first.within)
        at += table.used


def _ends_of_runs(entries: Sequence[Entry]) -> list[int]:
    """For each entry where the words that begin with it end: at a table, or out of sight."""
    ends = [len(entries)] * len(entries)
    for at in range(len(entries) - 1, -1, -1):
        if entries[at].part is Part.TABLE:
            ends[at] = at
        elif at + 1 < len(entries):
            same = entries[at + 1].hidden is entries[at].hidden
            ends[at] = ends[at + 1] if same else at + 1
    return ends


def page_table(table: LineTable) -> PageTable:
    """A table found in lines as a table of a page."""
    cells = {
        (number, column): Cell(text)
        for number, row in enumerate(table.rows)
        for column, cell in enumerate(row)
        if (text := tidy(cell.text))
    }
    columns = max(len(row) for row in table.rows)
    return PageTable(cells, len(table.rows), columns, inferred=table.inferred)
