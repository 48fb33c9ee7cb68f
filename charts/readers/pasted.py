"""Pasted text and plain text files to one sheet, addressed by line.

What comes from the clipboard as lines: tab-separated rows, columns of blanks, one cell a line,
sentences. Where the separators are lost a line stays one cell, and a question is asked.
"""

from __future__ import annotations

from functools import lru_cache
from typing import Final

from charts.findings import FindingLog
from charts.readers.captured.bracketed_sizes import bracketed_size_table
from charts.readers.captured.brackets import bracket_table
from charts.readers.captured.choosing import choosing_table
from charts.readers.captured.headed import headed_table
from charts.readers.captured.lines import narrowed, numbered
from charts.readers.captured.listed_across import listed_across_table
from charts.readers.captured.marks import without_marks
from charts.readers.captured.prose import prose_table
from charts.readers.captured.run_on_sizes import run_on_size_table
from charts.readers.captured.series import series_table
from charts.readers.captured.shared_words import shared_words_table
from charts.readers.captured.sheet import LineSheet, laid_out
from charts.readers.captured.size_blocks import size_block_table
from charts.readers.captured.sizes_behind import sizes_behind_table
from charts.readers.captured.told import told_table
from charts.readers.captured.unnamed_values import unnamed_values_table
from charts.readers.captured.value_runs import is_cell_value
from charts.readers.delimited import evenly_separated, parsed_rows, separator_of
from charts.readers.source import MARKDOWN_ENDINGS, PASTED, TEXT_ENDINGS, Claim, Reader, Source
from charts.readers.spaced_letters import closed_up
from charts.sheet import Addressing, Sheet

_LINE_ENDINGS: Final = [one for one in TEXT_ENDINGS if one not in ("csv", "tsv", "tab")]
_FIRST_LINES: Final = 200
_FEWEST_LONE: Final = 4
_RULE: Final = frozenset("-:=+ ")
_WITH_COMMAS: Final = (
    size_block_table,
    bracketed_size_table,
    unnamed_values_table,
    sizes_behind_table,
    run_on_size_table,
    listed_across_table,
    shared_words_table,
    prose_table,
    bracket_table,
    series_table,
    choosing_table,
    told_table,
    headed_table,
)
"""What reads lines whose commas and bars part no cells."""


def _claims(source: Source) -> Claim:
    if not source.text or source.ending in MARKDOWN_ENDINGS:
        return Claim.NONE
    text = without_marks(source.text)
    lines = source.name == PASTED or source.ending in _LINE_ENDINGS
    if _holds_prose(text) or (lines and text != source.text):
        return Claim.CERTAIN
    if source.name == PASTED:
        return Claim.LIKELY
    separator = separator_of(text) if lines else None
    if separator is not None and _has_lone_values(text, separator):
        return Claim.CERTAIN
    if not lines or separator is not None:
        return Claim.NONE
    return Claim.LIKELY


@lru_cache(maxsize=2)  # asked when the reader claims a text and when it opens it
def _holds_prose(text: str) -> bool:
    """Whether sentences are the rows: their bars and commas would look like separators."""
    if text.count("\t") >= text.count("\n"):
        return False  # columns parted by tabs are no sentences
    if evenly_separated(text[:20_000]):
        return False
    lines = narrowed(numbered(text[:20_000])[:_FIRST_LINES])
    return any(find(lines[at:]) is not None for at in range(len(lines)) for find in _WITH_COMMAS)


def _open(source: Source, log: FindingLog) -> tuple[Sheet, ...]:
    text = closed_up(without_marks(source.opened_text(log)))
    separator = None if _holds_prose(text) else separator_of(text)
    if separator is not None and _has_lone_values(text, separator):
        separator = None  # a second table stands beside the separated one, a cell a line
    sheet = laid_out(numbered(text)) if separator is None else _separated(text, separator)
    for line, (first, second) in sheet.unsure:
        log.add("text-order", f"line {line}", case="orders", first=first, second=second)
    for line in sheet.lossy:
        said = text.splitlines()[line - 1].strip()
        log.add("text-order", f"line {line}", case="left", text=said)
    if sheet.glued:
        place = f"line {sheet.glued[0]}"
        log.add("separator-lost", place, key=source.name, name=source.name)
    elif not sheet.tables and not sheet.unsure:
        log.add("no-table", source.name, name=source.name)
    return (
        Sheet(
            name="",
            addressing=Addressing.LINE,
            cells=sheet.cells,
            rows=sheet.rows,
            columns=sheet.columns,
            line_of_row=sheet.line_of_row,
            line_of_cell=sheet.line_of_cell,
            row_widths=sheet.row_widths,
            inferred=sheet.inferred,
        ),
    )


def _has_lone_values(text: str, separator: str) -> bool:
    """Whether some lines are one figure each, without the separator of the others."""
    lines = [line.text for line in numbered(text[:20_000]) if separator not in line.text]
    return sum(map(is_cell_value, lines)) >= _FEWEST_LONE


def _separated(text: str, separator: str) -> LineSheet:
    sheet = LineSheet(tables=1)
    for row in parsed_rows(text, separator):
        if any(row.fields) and all(set(field) <= _RULE for field in row.fields):
            continue
        sheet.add_row([(field, row.line) for field in row.fields], row.line)
    return sheet


READER: Final = Reader("pasted text", _claims, _open, is_slow_to_claim=True)
