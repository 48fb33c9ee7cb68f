"""The cells of a column to ranges by line: one cell, or several that hold together.

What one cell is read as, and what it asks, is ``columns_cells``.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from decimal import Decimal

from charts.columns.cells import OF_A_CELL, read_at
from charts.columns.meaning import Column
from charts.columns.words import Surroundings
from charts.findings import listed
from charts.layout.unit_columns import unit_at
from charts.layout.view import At
from charts.notation import Reading, read_cell
from charts.schema import Kind, Range, UnitFrom


@dataclass(frozen=True, slots=True)
class Filled:
    """A column with the ranges of its cells, by line."""

    column: Column
    ranges: dict[int, Range]


def filled(column: Column, around: Surroundings) -> Filled:
    """Read every cell of a column; a blank or a word makes no range."""
    ranges: dict[int, Range] = {}
    for line, cell in enumerate(column.field.cells):
        if cell and (one := _read_all(cell, column, line, around)) is not None:
            ranges[line] = one
    return Filled(column, _asked_once(column, ranges, around))


def _asked_once(column: Column, ranges: dict[int, Range], around: Surroundings) -> dict[int, Range]:
    """One question for a column most of whose cells are impossible, in place of one per cell."""
    places = {one.place for one in ranges.values()}
    own = [one for one in around.log.findings if one.code == "impossible" and one.place in places]
    own = [one for one in own if one.values.get("case") == OF_A_CELL]
    if len(own) < 3 or 2 * len(own) <= len(ranges):
        return ranges
    ids = {one.id for one in own}
    for ident in ids:
        around.log.withdraw(ident)
    whole = around.log.add("impossible", column.place, case="column", heading=column.heading)
    spelled = any(_unreadable(one.values.get("text", "")) for one in own)
    return {
        line: one if spelled and ids.isdisjoint(one.findings) else _instead(one, ids, whole)
        for line, one in ranges.items()
    }


def _unreadable(text: str) -> bool:
    """Whether a cell is asked about for how it is written, which says nothing of the others."""
    return read_cell(text).reading is Reading.UNREAD


def _instead(one: Range, ids: set[str], whole: str) -> Range:
    """The range under the column's question: what happens to fit a wrong heading is no righter."""
    kept = (ident for ident in one.findings if ident not in ids)
    return replace(one, findings=listed(*kept, whole))


def _of_line(column: Column, line: int) -> Column:
    """The column with the unit that a column of units gives this line."""
    at = column.field.units[line] if column.field.units else None
    unit = unit_at(at, column.dimension) if at is not None else None
    return column if unit is None else replace(column, unit=unit, unit_from=UnitFrom.ROW)


def _read_all(
    cell: Sequence[At], whole_column: Column, line: int, around: Surroundings
) -> Range | None:
    """One cell, or several that hold together: the bands of a grid that share a size."""
    column = _of_line(whole_column, line)
    least = column.least_cm[line] if line < len(column.least_cm) else None
    found = [one for at in cell if (one := read_at(at, column, around, least)) is not None]
    if len(found) < 2:
        return found[0] if found else None
    first, last = found[0], found[-1]
    lows = [one.value if one.value is not None else one.low for one in found]
    highs = [one.value if one.value is not None else one.high for one in found]
    whole = replace(
        first,
        published=" | ".join(one.published for one in found),
        place=two_cells(first.place, last.place),
        findings=listed(*(ident for one in found for ident in one.findings)),
    )
    if any(one.kind is Kind.UNREAD for one in found):
        return replace(whole, kind=Kind.UNREAD, low=None, high=None, value=None)
    return _spanning(whole, lows, highs, found)


def _spanning(
    whole: Range,
    lows: Sequence[Decimal | None],
    highs: Sequence[Decimal | None],
    found: Sequence[Range],
) -> Range:
    """From the lowest to the highest end; open where one of the parts is."""
    low = None if None in lows else min(end for end in lows if end is not None)
    high = None if None in highs else max(end for end in highs if end is not None)
    kind = Kind.RANGE
    if low is None or high is None:
        kind = Kind.AT_LEAST if high is None else Kind.AT_MOST
    least, most = found[lows.index(low)], found[highs.index(high)]
    return replace(
        whole,
        kind=kind,
        low=low,
        high=high,
        value=None,
        low_step=least.low_step,
        high_step=most.high_step,
        low_included=least.low_included,
        high_included=most.high_included,
    )


def two_cells(first: str, second: str) -> str:
    """The place of a value that stands in two cells: ``Women!B3:C3``."""
    return first if first == second else f"{first}:{second.rpartition('!')[2]}"
