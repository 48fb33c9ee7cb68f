"""Spans that a page gives wrongly: a heading over two columns where its cells stand in one.

``Chest`` and ``Waist`` each over two columns, and rows of one cell for each of them: the rows have
as many cells as there are headings. Or the first heading lacks its second row, so that ``from | to
| from | to`` stands over the sizes too: the row has as many cells as the headings before it span.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from typing import Final

from charts.dimensions import Role
from charts.layout.looks import look
from charts.sheet import Cell, Sheet

_FEWEST_ROWS: Final = 2
_PARTS: Final = frozenset({Role.LOW_END, Role.HIGH_END, Role.UNIT})


def spans_set_right(sheet: Sheet) -> Sheet:
    """The sheet with every heading over the column it names, marked inferred; else as it is."""
    rows = sheet.filled_rows
    for number, row in enumerate(rows[:-_FEWEST_ROWS]):
        spanned = [column for column, cell in sheet.row(row) if cell.shared_from is not None]
        if not spanned or any(look(cell.text).value for _, cell in sheet.row(row)):
            continue
        found = _narrowed(sheet, rows[number:]) or _moved(sheet, rows[number:])
        if found is not None:
            return replace(sheet, cells=found, inferred=True)
    return sheet


def _narrowed(sheet: Sheet, rows: Sequence[int]) -> dict[tuple[int, int], Cell] | None:
    """The headings side by side, where each row below has one cell for each of them."""
    heads = [(column, cell) for column, cell in sheet.row(rows[0]) if cell.shared_from is None]
    if len(heads) < 2 or _width_of_figures(sheet, rows[1:]) != len(heads) or not _named(heads):
        return None
    cells = {at: cell for at, cell in sheet.cells.items() if at[0] != rows[0]}
    for at, (column, cell) in enumerate(heads):
        moved = replace(cell, shared_from=(rows[0], column)) if at != column else cell
        cells[rows[0], at] = moved
    return cells


def _moved(sheet: Sheet, rows: Sequence[int]) -> dict[tuple[int, int], Cell] | None:
    """The second row of headings below those that span columns, all of which stand at the end."""
    upper = list(sheet.row(rows[0]))
    lower = list(sheet.row(rows[1]))
    behind = len(upper) - len(lower)
    spanning = [cell.shared_from is not None for _, cell in upper]
    # the first cell of a span is written, the next repeats it
    over = {
        at for at, shared in enumerate(spanning) if shared or spanning[at + 1 : at + 2] == [True]
    }
    parts = all(look(cell.text).heading.role in _PARTS for _, cell in lower)
    if behind < 1 or not parts or over != set(range(behind, len(upper))):
        return None
    if _width_of_figures(sheet, rows[2:]) != len(upper) or lower[0][0] != 0:
        return None
    cells = {at: cell for at, cell in sheet.cells.items() if at[0] != rows[1]}
    for column, cell in lower:
        cells[rows[1], column + behind] = replace(cell, shared_from=(rows[1], column))
    return cells


def _named(heads: Sequence[tuple[int, Cell]]) -> bool:
    looks = [look(cell.text) for _, cell in heads]
    return looks[0].heading.role is Role.LABEL and all(one.measures for one in looks[1:])


def _width_of_figures(sheet: Sheet, rows: Sequence[int]) -> int:
    """How many cells the rows with figures have, where all are filled and alike; else 0."""
    widths = [
        _width(sheet, row)
        for row in rows
        if any(look(cell.text).value for _, cell in list(sheet.row(row))[1:])
    ]
    return widths[0] if len(widths) >= _FEWEST_ROWS and len(set(widths)) == 1 else 0


def _width(sheet: Sheet, row: int) -> int:
    cells = [cell for _, cell in sheet.row(row)]
    whole = sheet.row_widths.get(row) == len(cells) and all(
        one.shared_from is None for one in cells
    )
    return len(cells) if whole else 0
