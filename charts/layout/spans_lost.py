"""Headings that spanned several columns or rows, copied out of a page that says so no more.

``Size | Chest | Waist`` over ``cm | in | cm | in`` and rows of five cells: the size spanned two
rows and each measure two columns. What a row of figures has more than the second row of headings
is what spanned both rows; the others share the rest evenly.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from typing import Final

from charts.dimensions import Role
from charts.layout.looks import Look, look
from charts.remembered import remembered
from charts.schema import Dimension
from charts.sheet import Cell, Sheet

_FEWEST_ROWS: Final = 2
_ENOUGH_ROWS: Final = 12
_ENDS: Final = frozenset({Role.LOW_END, Role.HIGH_END})


@dataclass(frozen=True, slots=True)
class _Head:
    """Two rows of headings above rows of ``width`` cells: how the upper ones are laid over them.

    ``before`` and ``behind`` stand over one column and both rows, each of the others over ``each``
    columns. ``sure`` where nothing but counting decides and the parts are alike.
    """

    row: int
    before: int
    behind: int
    each: int
    width: int
    sure: bool


def spans_restored(sheet: Sheet) -> Sheet:
    """The sheet with each heading over the columns it spanned; marked inferred where in doubt."""
    heads = [head for row in sheet.filled_rows if (head := _head(sheet, row)) is not None]
    if not heads:
        return sheet
    cells = dict(sheet.cells)
    for head in heads:
        _laid(sheet, head, cells)
    doubtful = sheet.inferred or not all(head.sure for head in heads)
    return replace(sheet, cells=cells, inferred=doubtful)


def _head(sheet: Sheet, row: int) -> _Head | None:
    upper, lower = _texts(sheet, row), _texts(sheet, row + 1)
    if not upper or not lower or look(upper[0]).heading.role is not Role.LABEL:
        return None
    width = _width_below(sheet, row + 2)
    alone = width - len(lower)  # headings that span both rows
    shared = len(upper) - alone
    if alone < 1 or shared < 1 or len(lower) % shared or len(lower) <= shared:
        return None
    above, below = [look(text) for text in upper], [look(text) for text in lower]
    if not _are_headings(above, below) or above[0].heading.role is not Role.LABEL:
        return None
    each = len(lower) // shared
    parts = {tuple(lower[at : at + each]) for at in range(0, len(lower), each)}
    before = _in_front(above, below, shared)
    if before is None:
        return None
    sure = alone == 1 and len(parts) == 1
    return _Head(row, before, alone - before, each, width, sure)


@remembered
def _texts(sheet: Sheet, row: int) -> list[str]:
    """The cells of a row that is filled from its first column on without a gap, else none.

    Blanks behind them only make up its width, as every row of a workbook and of Markdown has it.
    """
    cells = list(sheet.row(row))
    gapless = [column for column, _ in cells] == list(range(len(cells)))
    merged = any(cell.shared_from is not None for _, cell in cells)
    return [cell.text for _, cell in cells] if gapless and not merged else []


def _width_below(sheet: Sheet, row: int) -> int:
    """How many cells the rows below have, where all are alike and hold figures; else 0."""
    widths: list[int] = []
    while len(widths) < _ENOUGH_ROWS and (cells := _texts(sheet, row)):
        if not any(look(text).value for text in cells[1:]):
            break
        widths.append(len(cells))
        row += 1
    return widths[0] if len(widths) >= _FEWEST_ROWS and len(set(widths)) == 1 else 0


def _are_headings(above: Sequence[Look], below: Sequence[Look]) -> bool:
    if any(one.figures or one.sentence for one in (*above, *below)):
        return False
    return all(one.heading.role is not Role.UNKNOWN or one.heading.unit for one in below)


def _in_front(above: Sequence[Look], below: Sequence[Look], shared: int) -> int | None:
    """How many headings stand before those that are shared out; None where that is not told.

    Over measures stand bands or a word for all of them, over units and ends measures that have
    none of their own.
    """
    can = _over_measures if all(_names_itself(one) for one in below) else _over_parts
    fitting = [can(one) for one in above]
    if can is _over_measures and any(one.heading.role is Role.BAND for one in above):
        fitting = [one.heading.role is Role.BAND for one in above]
    found = [
        front for front in range(1, len(above) - shared + 1) if all(fitting[front : front + shared])
    ]
    if len(found) > 1:
        found = [front for front in found if not fitting[front - 1]]
    return found[0] if len(found) == 1 else None


def _names_itself(one: Look) -> bool:
    """Neither an end nor a unit alone."""
    heading = one.heading
    bare = heading.unit is not None and heading.dimension is None and not heading.candidates
    return heading.role not in _ENDS and not bare


def _over_measures(one: Look) -> bool:
    return one.heading.role is not Role.LABEL and one.heading.dimension is None


def _over_parts(one: Look) -> bool:
    return one.heading.role is Role.MEASURE and one.heading.dimension is not Dimension.AGE


def _laid(sheet: Sheet, head: _Head, cells: dict[tuple[int, int], Cell]) -> None:
    """Each heading to where it spanned; every copy says where it is written."""
    upper = [cells.pop((head.row, column)) for column, _ in sheet.row(head.row)]
    lower = [cells.pop((head.row + 1, column)) for column, _ in sheet.row(head.row + 1)]
    column = 0
    for number, cell in enumerate(upper):
        single = number < head.before or number >= len(upper) - head.behind
        for _ in range(1 if single else head.each):
            place = (head.row, column)
            cells[place] = (
                replace(cell, shared_from=(head.row, number)) if column != number else cell
            )
            column += 1
    for number, cell in enumerate(lower):
        moved = replace(cell, shared_from=(head.row + 1, number))
        cells[head.row + 1, head.before + number] = moved
