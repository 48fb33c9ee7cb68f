"""Text into the cells of a workbook, made harmless, and the height a row needs to show it."""

from __future__ import annotations

import re
from typing import TYPE_CHECKING, Final

from charts.writers.formula_text import looks_like_formula
from charts.writers.workbook_look import Look, dress

if TYPE_CHECKING:
    from openpyxl.worksheet.worksheet import Worksheet

_LONGEST: Final = 32_000
"""Characters of a cell; the format ends at 32,767."""
_NOT_FOR_XML: Final = re.compile(r"[\x00-\x08\x0b\x0c\x0e-\x1f\ufffe\uffff\ud800-\udfff]")
_POINTS_A_LINE: Final = 1.32
_BREAKS: Final = re.compile(r"(?<=[ /-])")


def put(sheet: Worksheet, row: int, column: int, text: str, look: Look) -> None:
    """Write ``text`` at (row, column), counted from 1, always as text and never as a formula."""
    cell = sheet.cell(row, column)
    cell.value = _NOT_FOR_XML.sub("\N{REPLACEMENT CHARACTER}", text)[:_LONGEST]
    cell.data_type = "s"
    dress(cell, look)
    if looks_like_formula(text):
        cell.quotePrefix = True


def put_across(
    sheet: Worksheet, rows: tuple[int, int], columns: tuple[int, int], text: str, look: Look
) -> None:
    """Write ``text`` over a rectangle of cells, first and last row and column inside."""
    for row in range(rows[0], rows[1] + 1):
        for column in range(columns[0], columns[1] + 1):
            dress(sheet.cell(row, column), look)
    put(sheet, rows[0], columns[0], text, look)
    if rows[0] != rows[1] or columns[0] != columns[1]:
        sheet.merge_cells(
            start_row=rows[0], end_row=rows[1], start_column=columns[0], end_column=columns[1]
        )


def height(text: str, width: float, look: Look) -> float:
    """Points that ``text`` needs in a column of ``width`` characters of 11 points."""
    room = max(width * 11 / look.size, 1)
    lines = sum(_lines(line, room) for line in text.split("\n")) if look.wrap else 1
    return lines * look.size * _POINTS_A_LINE


def _lines(text: str, room: float) -> int:
    """Lines of ``room`` characters, broken where spreadsheets break: after spaces, / and -."""
    lines, used = 1, 0.0
    for word in _BREAKS.split(text):
        length = len(word)
        if used and used + len(word.rstrip()) > room:
            lines, used = lines + 1, 0.0
        lines += int((length - 1) // room) if length > room else 0
        used += length % room if length > room else length
    return lines
