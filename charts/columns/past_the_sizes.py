"""Rows of figures that reach past the last size, where sizes run across: one of them has slipped.

``Waist | navel | 66-70 | 71-75`` under ``Size | S | M``: a cell more in front of the figures moves
each to the next size. Only the last has no size; all of the row may be wrong. Where all rows reach
as far, it is the name of a size that is lost, and ``Size | S | M | XL`` over four figures does not
say which: all of the table may be wrong.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal

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
    last = named[-1]
    longer = [one for one in columns if any(number > last for number in one.ranges)]
    if not longer or (len(longer) == len(columns) and not _go_on(longer, last)):
        return list(columns)
    case = "lost" if len(longer) == len(columns) else "past"
    place = longer[0].column.place
    ident = around.log.add("columns-shifted", place, key=around.table.area, case=case)
    until = last if case == "lost" else max(line.number for line in lines)
    numbers = {one.column.number for one in longer}
    return [_asked(one, ident, until) if one.column.number in numbers else one for one in columns]


def _go_on(columns: Sequence[Filled], last: int) -> bool:
    """Whether most rows have a figure like the others behind the last size, and no ease or note."""
    return 2 * sum(_goes_on(one, last) for one in columns) > len(columns)


def _goes_on(one: Filled, last: int) -> bool:
    within, past = (_most(one, known=known, last=last) for known in (True, False))
    return within is not None and past is not None and 2 * past > within


def _most(one: Filled, *, known: bool, last: int) -> Decimal | None:
    """The highest figure of a row under the sizes, or behind the last of them."""
    found = [value for number, value in one.ranges.items() if (number <= last) is known]
    ends = [end for value in found for end in (value.low, value.high, value.value)]
    return max((end for end in ends if end is not None), default=None)


def _asked(one: Filled, ident: str, until: int) -> Filled:
    """What has no size is asked for it anyway, where the names of sizes are lost."""
    ranges = {
        line: replace(value, findings=listed(*value.findings, ident)) if line <= until else value
        for line, value in one.ranges.items()
    }
    return Filled(one.column, ranges)
