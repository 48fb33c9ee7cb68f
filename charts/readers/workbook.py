"""Workbooks to sheets."""

from __future__ import annotations

import io
from datetime import date, datetime, time
from decimal import Decimal
from typing import TYPE_CHECKING, Final

from charts.findings import FindingLog
from charts.readers.source import Claim, Reader, Source
from charts.sheet import Addressing, Cell, Sheet, StoredValue

if TYPE_CHECKING:
    from openpyxl.cell.cell import Cell as BookCell


def _claims(source: Source) -> Claim:
    head = source.data[:4]
    return Claim.CERTAIN if head == b"PK\3\4" and b"xl/" in source.data else Claim.NONE


def _stored(value: object) -> StoredValue:
    if isinstance(value, bool | date | datetime | time):
        return value
    if isinstance(value, int | float):
        return Decimal(f"{value:.15g}")
    return None if value is None else str(value)


def _cell(book_cell: BookCell) -> Cell:
    value = book_cell.value
    stored = _stored(value)
    return Cell(f"{stored:f}" if isinstance(stored, Decimal) else str(value), stored=stored)


def _open(source: Source, log: FindingLog) -> tuple[Sheet, ...]:
    import openpyxl

    book = openpyxl.load_workbook(io.BytesIO(source.data), data_only=True, rich_text=True)
    sheets = []
    for page in book.worksheets:
        cells = {
            (cell.row - 1, cell.column - 1): _cell(cell)
            for row in page.iter_rows()
            for cell in row
            if cell.value is not None
        }
        for area in page.merged_cells.ranges:
            first = (area.min_row - 1, area.min_col - 1)
            shared = cells.get(first)
            for row in range(area.min_row - 1, area.max_row):
                for column in range(area.min_col - 1, area.max_col):
                    if shared is not None and (row, column) != first:
                        cells[row, column] = Cell(shared.text, shared.stored, shared_from=first)
        sheets.append(Sheet(page.title, Addressing.SHEET, cells, page.max_row, page.max_column))
    return tuple(sheets)


READER: Final = Reader("workbook", _claims, _open)
