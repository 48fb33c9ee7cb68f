"""A measure on a row of its own over rows that only say their unit: ``To fit chest``, ``cm | 84``.

Read alone such rows are figures in cm of nobody knows what, beside rows that have their names.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from typing import Final

from charts.dimensions import Role
from charts.layout.looks import look
from charts.sheet import Cell, Sheet

_FEWEST: Final = 2
"""Figures behind a unit that are a row of them."""
_MOST: Final = 3
"""Rows of one measure: no chart gives more than cm, inches and a third unit."""


def units_named(sheet: Sheet) -> Sheet:
    """The sheet with the measure of such a section before the unit of each of its rows."""
    cells: dict[tuple[int, int], Cell] = {}
    for row in sheet.filled_rows:
        if (section := _section(sheet, row)) is None:
            continue
        column, name = section
        for place in _units_below(sheet, row, column):
            unit = sheet.cells[place]
            cells[place] = replace(unit, text=f"{name} {unit.text}")
    return replace(sheet, cells=dict(sheet.cells) | cells) if cells else sheet


def _section(sheet: Sheet, row: int) -> tuple[int, str] | None:
    """The column and the text of a measure without a unit that stands alone in its row."""
    own = [(column, cell) for column, cell in sheet.row(row) if cell.shared_from is None]
    if len(own) != 1:
        return None
    one = look(own[0][1].text)
    plain = one.measures and one.heading.unit is None and not one.sentence
    return (own[0][0], one.text) if plain else None


def _units_below(sheet: Sheet, row: int, column: int) -> Iterator[tuple[int, int]]:
    """The cells of bare units in the rows right below, each with a row of figures behind it."""
    for below in range(row + 1, row + 1 + _MOST):
        cells = list(sheet.row(below))
        if len(cells) <= _FEWEST or cells[0][0] != column:
            return
        unit, figures = look(cells[0][1].text), [look(cell.text).value for _, cell in cells[1:]]
        if unit.heading.role is not Role.UNIT or unit.value or not all(figures):
            return
        yield below, column
