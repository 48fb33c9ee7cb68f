"""A unit alone in a row below the sizes, where the merged cell over all columns is lost.

`` | S | M`` over `` | cm / inch | ``: the unit stood over every size. Left in one column it parts
the sizes from their figures.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from typing import Final

from charts.dimensions import Role
from charts.layout.looks import look
from charts.sheet import Cell, Sheet

_FEWEST: Final = 2
_UNITS: Final = frozenset({Role.UNIT, Role.UNKNOWN})


def units_spread(sheet: Sheet) -> Sheet:
    """The sheet with every such unit over all columns of the row above it."""
    cells: dict[tuple[int, int], Cell] = {}
    for row in sheet.filled_rows[1:]:
        for column in _columns_under(sheet, row):
            at = (row, next(iter(sheet.row(row)))[0])
            cells[row, column] = replace(sheet.cells[at], shared_from=at)
    return replace(sheet, cells=cells | dict(sheet.cells)) if cells else sheet


def _columns_under(sheet: Sheet, row: int) -> Iterator[int]:
    """The filled columns of the row above, where a unit stands alone under the second of them."""
    filled = list(sheet.row(row))
    if len(filled) != 1 or filled[0][1].shared_from is not None:
        return
    first, cell = filled[0]
    one = look(cell.text)
    if one.heading.unit is None or one.heading.role not in _UNITS or one.value:
        return
    above = [(column, head) for column, head in sheet.row(row - 1) if column >= first]
    below = [column for column, _ in sheet.row(row + 1)]
    if len(above) < _FEWEST or above[0][0] != first or not below or below[0] >= first:
        return
    if not any(look(head.text).measures for _, head in above):  # else it may be of the first alone
        yield from (column for column, _ in above[1:])
