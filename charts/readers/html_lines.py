"""Text of a web page that is a table only to the eye: lines in ``<pre>``, ``<p>`` and ``<br>``.

Preformatted lines are read wherever they stand. All other lines of a page are put together as in
a text file where the page holds no table of any other kind.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import groupby
from typing import TYPE_CHECKING

from charts.findings import FindingLog
from charts.readers.captured.lines import numbered
from charts.readers.captured.sheet import LineSheet, laid_out
from charts.readers.delimited import parsed_rows, separator_of
from charts.readers.page_outline import Entry, PageTable, Part
from charts.sheet import Addressing, Sheet

if TYPE_CHECKING:
    from lxml.etree import _Element


def preformatted_table(element: _Element) -> PageTable | None:
    """The table that the lines of ``element`` hold, its titles and notes as lone cells."""
    text = "".join(str(piece) for piece in element.itertext()).expandtabs(1).strip("\n")
    return _table(_lines(text)) if text.strip() else None


def sheet_of_words(entries: Sequence[Entry], name: str, log: FindingLog) -> tuple[Sheet, ...]:
    """All that a page without tables says, laid out like a text file; none without a table."""
    seen = [one for one in entries if not one.hidden and one.text]
    titles = tuple(one.text for one in seen if one.part is Part.HEADING and not one.level)
    lines = _lines("\n".join(_with_gaps([one for one in seen if one.text not in titles])))
    table = _table(lines)
    if table is None:
        return ()
    for text in _left(lines):
        log.add("text-order", name, case="left", text=text)
    return (
        Sheet(
            name="table 1",
            addressing=Addressing.TABLE,
            cells=table.cells,
            rows=table.rows,
            columns=table.columns,
            context=titles,
            inferred=table.inferred,
            row_widths=table.row_widths,
        ),
    )


def _with_gaps(entries: Sequence[Entry]) -> Iterator[str]:
    """The texts as lines; a heading and a block of several lines stand apart, as on the page."""
    for number, (_, block) in enumerate(groupby(entries, lambda one: (one.block, one.part))):
        lines = [one.text for one in block]
        apart = len(lines) > 1
        if number and apart:
            yield ""
        yield from lines
        if apart:
            yield ""


def _lines(text: str) -> LineSheet:
    separator = separator_of(text) if "|" in text or ";" in text else None
    if separator in ("|", ";"):
        return _separated(text, separator)
    return laid_out(numbered(text))


def _separated(text: str, separator: str) -> LineSheet:
    sheet = LineSheet(tables=1)
    for row in parsed_rows(text, separator):
        sheet.add_row([(field, row.line) for field in row.fields], row.line)
    return sheet


def _table(lines: LineSheet) -> PageTable | None:
    if not lines.tables or lines.glued or lines.unsure:
        return None
    return PageTable(
        cells=lines.cells,
        rows=lines.rows,
        columns=lines.columns,
        inferred=lines.inferred,
        row_widths=lines.row_widths,
    )


def _left(lines: LineSheet) -> Iterator[str]:
    """The lines of which a part came into no cell."""
    for lossy in lines.lossy:
        row = next((row for row, line in lines.line_of_row.items() if line == lossy), None)
        text = lines.cells[row, 0].text if row is not None and (row, 0) in lines.cells else ""
        yield text
