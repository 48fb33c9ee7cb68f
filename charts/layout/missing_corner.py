"""The heading over the sizes is missing, and all others stand one column too far to the left.

Some programs write a table with row names like that. A size that can be no measurement proves it;
of numbers it has to be told by what the columns measure, with and without the step to the right.
"""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise
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
    source, is lost: the measures stand over the sizes and over every second end. So do the words
    of ``Women | | Men`` over ``Size | Chest | Waist | Chest | Waist``.
    """
    if rows != 2 or view.width < 3 or view.at(0, view.width - 1) is not None:
        return 0
    lower = [combined(heads_of(view, column, rows)[-1:]) for column in range(view.width)]
    if lower[0].role is not Role.LABEL or view.at(1, 0) is None:
        return 0
    return 1 if _over_every_second_end(view, lower) or _before_every_group(view, lower) else 0


def _over_every_second_end(view: View, lower: Sequence[HeadingReading]) -> bool:
    ends = [one.role for one in lower[1:]]
    while ends and ends[-1] is Role.UNKNOWN:
        ends.pop()  # nothing stands there: another table of the sheet is wider
    pairs = [Role.LOW_END, Role.HIGH_END] * (len(ends) // 2)
    upper = {column for column in range(view.width) if view.at(0, column) is not None}
    return bool(ends) and ends == pairs and upper == {2 * n for n in range(len(ends) // 2)}


def _before_every_group(view: View, lower: Sequence[HeadingReading]) -> bool:
    """Whether each upper word begins one column before the first measure of the others comes again.

    One stands over the sizes then, and the groups begin alike only a step further on. They have to
    be alike as a whole, or as wide as what the words span: ``Age`` before the ``Chest`` of one of
    them may be its own.
    """
    starts = _starts_above(view)
    below = [at.text.strip().casefold() if at is not None else "" for at in view.row(1)]
    while below and not below[-1]:
        below.pop()
    first = [column for column, text in enumerate(below) if column and text == below[1]]
    if len(starts) < 2 or [start + 1 for start in starts] != first:
        return False
    groups = [below[a:b] for a, b in pairwise([*first, len(below)])]
    spanned = all(view.at(0, column) is not None for column in range(len(below) - 1))
    known = spanned or all(group == groups[0] for group in groups)
    apart = all(len(set(group)) == len(group) for group in groups)
    return known and apart and all(one.role is Role.MEASURE for one in lower[1 : len(below)])


def _starts_above(view: View) -> list[int]:
    """The columns where words of the first row begin; none where one names sizes or measures."""
    found: dict[tuple[int, int], int] = {}
    for column in range(view.width):
        at = view.at(0, column)
        if at is not None:
            found.setdefault(at.origin, column)
            heading = look(at.text).heading
            if heading.role is Role.LABEL or heading.dimension is not None:
                return []
    return list(found.values())


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
