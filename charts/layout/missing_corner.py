"""The heading over the sizes is missing, and all others stand one column too far to the left.

Some programs write a table with row names like that. A size that can be no measurement proves it;
of numbers it has to be told by what the columns measure, with and without the step to the right.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from charts.dimensions import HeadingReading, Role
from charts.layout.heads import combined, heads_of
from charts.layout.looks import Look, look
from charts.layout.view import View
from charts.plausible_ranges import usual
from charts.quantities import FAMILY, Family, Figure, Unit
from charts.schema import Dimension

_SYSTEMS: Final = ((Unit.CM, Unit.KG), (Unit.IN, Unit.LB))
Columns = Sequence[Sequence[Look]]


def heading_missing(view: View, rows: int) -> int:
    """1 when every heading belongs one column further to the right, else 0."""
    if rows == 0 or view.width < 3:
        return 0
    heads = [combined(heads_of(view, column, rows)) for column in range(view.width)]
    given = [bool(heads_of(view, column, rows)) for column in range(view.width)]
    if not all(given[:-1]) or given[-1] or heads[0].role is not Role.MEASURE:
        return 0
    columns = [
        [look(at.text) for at in list(view.column(column))[rows:] if at is not None]
        for column in range(view.width)
    ]
    labels, last = columns[0], columns[-1]
    if not labels or not any(one.value for one in last):
        return 0
    sure = all(one.sure_label for one in labels)
    return 1 if sure or _told_by_figures(heads[:-1], columns) else 0


def groups_missing(view: View, rows: int) -> int:
    """1 when only the upper headings belong one column further to the right, else 0.

    ``Chest | | Waist`` over ``Size | from | to | from | to``, whose first cell, blank in the
    source, is lost: the measures stand over the sizes and over every second end.
    """
    if rows != 2 or view.width < 3 or view.at(0, view.width - 1) is not None:
        return 0
    lower = [combined(heads_of(view, column, rows)[-1:]) for column in range(view.width)]
    ends = [one.role for one in lower[1:]]
    while ends and ends[-1] is Role.UNKNOWN:
        ends.pop()  # nothing stands there: another table of the sheet is wider
    pairs = [Role.LOW_END, Role.HIGH_END] * (len(ends) // 2)
    upper = {column for column in range(view.width) if view.at(0, column) is not None}
    over = {2 * number for number in range(len(ends) // 2)}
    sizes = lower[0].role is Role.LABEL and view.at(1, 0) is not None
    return 1 if sizes and ends and ends == pairs and upper == over else 0


def _told_by_figures(heads: Sequence[HeadingReading], columns: Columns) -> bool:
    """Whether the figures are usual one heading further on, and not under their own."""
    labels = columns[0]
    numbers = {one.text for one in labels}
    named = len(numbers) == len(labels) > 1 and all(one.label is not None for one in labels)
    full = all(len(column) == len(labels) for column in columns)
    return named and full and all_usual(heads, columns[1:]) and not all_usual(heads, columns[:-1])


def all_usual(heads: Sequence[HeadingReading], columns: Columns) -> bool:
    """Whether every figure is usual for its heading, all of them in one system of units."""
    return any(
        all(
            _fits(head, column, system)
            for head, column in zip(heads, columns, strict=True)
            if head.dimension not in {None, Dimension.OTHER, Dimension.AGE}
        )
        for system in _SYSTEMS
    )


def _fits(head: HeadingReading, column: Sequence[Look], system: tuple[Unit, Unit]) -> bool:
    family = Family.MASS if head.dimension is Dimension.WEIGHT else Family.LENGTH
    unit = head.unit or next(one for one in system if FAMILY[one] is family)
    limits = usual(head.dimension, unit) if head.dimension is not None else None
    ends = [end.value for one in column for end in _ends(one)]
    return limits is None or all(limits[0] <= end <= limits[1] for end in ends)


def _ends(one: Look) -> list[Figure]:
    quantity = one.reading.quantity
    ends = (quantity.low, quantity.high, quantity.value) if quantity is not None else ()
    return [end for end in ends if end is not None]
