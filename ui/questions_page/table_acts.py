"""What can be said of a part of a sheet rather than of a question: its edges, its way, leaving out.

No Qt. Each act is made from the cell the keyboard is on.
"""

from __future__ import annotations

from collections.abc import Callable
from enum import StrEnum

from charts.answers import Act, CellReads, Corrected, Edge, LeftOut, Part, Turned
from charts.places import Rectangle, rectangle_in
from charts.regions import SheetRegions
from charts.sheet import Addressing

At = tuple[int, int]


class TableAct(StrEnum):
    """The acts of the table's menu, in its order."""

    TURN = "turn"
    TOP = "top"
    BOTTOM = "bottom"
    LEFT = "left"
    RIGHT = "right"
    OUT_ROW = "out-row"
    OUT_COLUMN = "out-column"
    OUT_TABLE = "out-table"
    OUT_SHEET = "out-sheet"


def act_at(kind: TableAct, one: SheetRegions, at: At) -> Act | None:
    """The act for the cell ``at`` of a sheet; None where it has no meaning there."""
    if kind in _BY_CELLS and one.sheet.addressing is Addressing.LINE:
        return None
    maker = _MAKERS.get(kind)
    return maker(one, at) if maker is not None else _edge(kind, one, at)


def reads(one: SheetRegions, at: At, text: str) -> Act | None:
    """A cell that reads otherwise; None where nothing is printed or nothing is different."""
    cell = one.sheet.cells.get(at)
    if cell is None or text == cell.text:
        return None
    return Corrected((CellReads(one.sheet.place(*at), cell.printed, text),))


def table_near(one: SheetRegions, at: At) -> str:
    """The area of the table a cell lies in; else of the one nearest to it, "" without any."""
    areas = [(area, rectangle_in(one.sheet, area)) for area in one.tables]
    known = [(area, where) for area, where in areas if where is not None]
    if not known:
        return ""
    return min(known, key=lambda pair: _distance(pair[1], at))[0]


def _distance(area: Rectangle, at: At) -> int:
    down = max(area.top - at[0], 0, at[0] - area.bottom)
    across = max(area.left - at[1], 0, at[1] - area.right)
    return down + across


def _turn(one: SheetRegions, at: At) -> Act | None:
    area = table_near(one, at)
    return Turned(area) if area else None


def _out_row(one: SheetRegions, at: At) -> Act:
    row = [column for column, _ in one.sheet.row(at[0])]
    first = (at[0], row[0]) if row else at
    return LeftOut(Part.ROW, one.sheet.place(*first), _printed(one, first))


def _out_column(one: SheetRegions, at: At) -> Act:
    return LeftOut(Part.COLUMN, one.sheet.place(*at), _printed(one, at))


def _out_table(one: SheetRegions, at: At) -> Act | None:
    area = table_near(one, at)
    return LeftOut(Part.TABLE, area) if area else None


def _out_sheet(one: SheetRegions, at: At) -> Act | None:
    del at
    return LeftOut(Part.SHEET, one.sheet.name) if one.sheet.name else None


def _printed(one: SheetRegions, at: At) -> str:
    cell = one.sheet.cells.get(at)
    return cell.printed if cell is not None else ""


def _edge(kind: TableAct, one: SheetRegions, at: At) -> Act | None:
    """One edge of the nearest table moved to the row or the column of a cell."""
    place = table_near(one, at)
    area = rectangle_in(one.sheet, place) if place else None
    if area is None:
        return None
    top, left, bottom, right = area.top, area.left, area.bottom, area.right
    match kind:
        case TableAct.TOP:
            top = at[0]
        case TableAct.BOTTOM:
            bottom = at[0]
        case TableAct.LEFT:
            left = at[1]
        case TableAct.RIGHT:
            right = at[1]
    becomes = one.sheet.area((top, left), (bottom, right))
    if top > bottom or left > right or becomes == place:
        return None
    return Edge(place, becomes)


_BY_CELLS = frozenset(
    {TableAct.TOP, TableAct.BOTTOM, TableAct.LEFT, TableAct.RIGHT, TableAct.OUT_COLUMN}
)
"""What needs an address of its own for each cell; a line has only one."""
_MAKERS: dict[TableAct, Callable[[SheetRegions, At], Act | None]] = {
    TableAct.TURN: _turn,
    TableAct.OUT_ROW: _out_row,
    TableAct.OUT_COLUMN: _out_column,
    TableAct.OUT_TABLE: _out_table,
    TableAct.OUT_SHEET: _out_sheet,
}
