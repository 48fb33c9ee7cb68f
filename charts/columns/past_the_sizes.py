"""Rows of figures that reach past the last size, where sizes run across: one of them has slipped.

``Waist | navel | 66-70 | 71-75`` under ``Size | S | M``: a cell more in front of the figures moves
each to the next size. Only the last has no size; all of the row may be wrong.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from charts.columns.lines import Line
from charts.columns.values import Filled
from charts.columns.words import Surroundings
from charts.findings import listed


def past_the_sizes_asked(
    columns: Sequence[Filled], lines: Sequence[Line], around: Surroundings
) -> list[Filled]:
    """The columns with one question on every value of a row that is longer than the sizes."""
    named = [line.number for line in lines if line.label is not None or line.length is not None]
    if not around.table.turned or not named:
        return list(columns)
    longer = [one for one in columns if any(number > named[-1] for number in one.ranges)]
    if not longer or len(longer) == len(columns):
        return list(columns)  # of all rows alike it is the name of a size that is missing
    place = longer[0].column.place
    ident = around.log.add("columns-shifted", place, key=around.table.area, case="past")
    numbers = {one.column.number for one in longer}
    return [_asked(one, ident) if one.column.number in numbers else one for one in columns]


def _asked(one: Filled, ident: str) -> Filled:
    ranges = {
        line: replace(value, findings=listed(*value.findings, ident))
        for line, value in one.ranges.items()
    }
    return Filled(one.column, ranges)
