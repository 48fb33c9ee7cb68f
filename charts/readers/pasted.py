"""Pasted text and plain text files to one sheet, addressed by line.

What comes from the clipboard as lines: tab-separated rows, columns of blanks, one cell a line,
sentences. Where the separators are lost a line stays one cell, and a question is asked.
"""

from __future__ import annotations

from typing import Final

from charts.findings import FindingLog
from charts.readers.delimited import parsed_rows, separator_of
from charts.readers.line_prose import prose_table
from charts.readers.line_sheet import LineSheet, laid_out
from charts.readers.lines import numbered
from charts.readers.source import MARKDOWN_ENDINGS, PASTED, TEXT_ENDINGS, Claim, Reader, Source
from charts.sheet import Addressing, Sheet

_LINE_ENDINGS: Final = [one for one in TEXT_ENDINGS if one not in ("csv", "tsv", "tab")]
_FIRST_LINES: Final = 200


def _claims(source: Source) -> Claim:
    if not source.text or source.ending in MARKDOWN_ENDINGS:
        return Claim.NONE
    if _holds_prose(source.text):
        return Claim.CERTAIN
    if source.name == PASTED:
        return Claim.LIKELY
    if source.ending not in _LINE_ENDINGS or separator_of(source.text) is not None:
        return Claim.NONE
    return Claim.LIKELY


def _holds_prose(text: str) -> bool:
    """Whether sentences are the rows: their bars and commas would look like separators."""
    if text.count("\t") >= text.count("\n"):
        return False  # columns parted by tabs are no sentences
    lines = numbered(text[:20_000])[:_FIRST_LINES]
    return any(prose_table(lines[at:]) is not None for at in range(len(lines)))


def _open(source: Source, log: FindingLog) -> tuple[Sheet, ...]:
    text = source.opened_text(log)
    separator = None if _holds_prose(text) else separator_of(text)
    sheet = laid_out(numbered(text)) if separator is None else _separated(text, separator)
    if sheet.glued:
        place = f"line {sheet.glued[0]}"
        log.add("separator-lost", place, key=source.name, name=source.name)
    elif not sheet.tables:
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
            inferred=sheet.inferred,
        ),
    )


def _separated(text: str, separator: str) -> LineSheet:
    sheet = LineSheet(tables=1)
    for row in parsed_rows(text, separator):
        sheet.add_row([(field, row.line) for field in row.fields], row.line)
    return sheet


READER: Final = Reader("pasted text", _claims, _open)
