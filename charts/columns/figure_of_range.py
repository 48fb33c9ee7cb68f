"""``Chest 84`` beside ``Chest from-to 84-88``: one girth as a range and as one figure of it.

The range says more. Where the figure is the same part of it in every size, its lower end, its
middle or its upper end, the two do not disagree, and the range is what is kept.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from decimal import Decimal
from typing import Final

from charts.columns.values import Filled
from charts.findings import listed
from charts.schema import Kind, Range

_FEWEST: Final = 2


def told_by_range(first: Filled, second: Filled) -> Filled | None:
    """The one of two columns that gives the range whose end or middle the other is; else None."""
    for ranges, singles in ((first, second), (second, first)):
        if _is_part_of(singles, ranges):
            return _asking(ranges, singles)
    return None


def _asking(ranges: Filled, singles: Filled) -> Filled:
    """The ranges with what was asked about the figures: it is asked of the same girth."""
    both = {
        line: replace(one, findings=listed(*one.findings, *singles.ranges[line].findings))
        for line, one in ranges.ranges.items()
    }
    return Filled(ranges.column.asking(*singles.column.findings), both)


def _is_part_of(singles: Filled, ranges: Filled) -> bool:
    lines = ranges.ranges.keys()
    if len(lines) < _FEWEST or singles.ranges.keys() != lines:
        return False
    shared = {0, 1, 2}
    for line in lines:
        shared &= set(_parts(singles.ranges[line], ranges.ranges[line]))
    return bool(shared)


def _parts(single: Range, whole: Range) -> Iterator[int]:
    """Which of low, middle and high of a range the figure is; none where either is no such."""
    if single.kind is not Kind.SINGLE or whole.kind is not Kind.RANGE:
        return
    if whole.low is None or whole.high is None or single.value is None:
        return
    middle = (whole.low + whole.high) / Decimal(2)
    for part, figure in enumerate((whole.low, middle, whole.high)):
        if single.value == figure:
            yield part
