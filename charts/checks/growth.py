"""Measures that grow from size to size as no body does: two headings were exchanged.

Who is half as tall again weighs twice as much at least, and no grown-up's leg grows by twice what
the waist does. The figures of one size alone may be anybody's; those of all sizes together are not.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from decimal import Decimal
from itertools import pairwise
from typing import Final

from charts.checks.doubt import Column, Doubt
from charts.schema import Basis, Chart, Dimension

_FEWEST: Final = 3
"""Sizes that show how a measure grows."""
_WIDE: Final = frozenset({Dimension.HEIGHT, Dimension.CHEST, Dimension.WAIST, Dimension.HIP})
_GROWS: Final = Decimal("1.15")
"""By how much a measure grows at least, for what is beside it to tell anything."""
_LONG: Final = frozenset({Dimension.INSEAM, Dimension.ARM_LENGTH})
_GROWN_UPS_CM: Final = {
    Dimension.CHEST: Decimal(80),
    Dimension.WAIST: Decimal(64),
    Dimension.HIP: Decimal(80),
}
"""Girths from which on legs and arms have nearly their full length: those of sizes for 152 to 182
cm grow by less than twice what the waist grows by (common practice, no source)."""
_LONGER: Final = 2
_LONGER_BY_CM: Final = Decimal(10)
"""Of those legs and arms are longer by so much at most, from the first size to the last."""
Grown = tuple[Decimal, Decimal]


def out_of_growth(chart: Chart, columns: Sequence[Column]) -> list[Doubt]:
    """All columns of a chart in which two measures do not grow together (common practice)."""
    del chart
    pairs = [(one, other) for one in columns for other in columns if _hardly_grows(one, other)]
    if not pairs:
        return []
    one, other = pairs[0]
    spots = tuple(spot for column in columns for spot in column.spots)
    return [Doubt("columns-shifted", spots, f"{one.heading} | {other.heading}")]


def _hardly_grows(one: Column, other: Column) -> bool:
    """Whether the first grows by too little beside the second."""
    if one.dimension is Dimension.WEIGHT and other.dimension in _WIDE:
        grown = _grown(one, other)
        return grown is not None and _lighter(*grown, of_girth=other.dimension in _GROWN_UPS_CM)
    if one.dimension in _GROWN_UPS_CM and other.dimension in _LONG:
        grown = _grown(one, other)
        return grown is not None and _shorter(one, *grown)
    return False


def _lighter(weight: Grown, beside: Grown, *, of_girth: bool) -> bool:
    """Whether a weight grows by a smaller part of itself than a height, or half of a girth's."""
    more = beside[1] / beside[0]
    least = 1 + (more - 1) / 2 if of_girth else more
    return more >= _GROWS and 1 < weight[1] / weight[0] < least


def _shorter(girth: Column, around: Grown, along: Grown) -> bool:
    """Whether a grown-up's girth grows by half of what an arm or a leg does, or less."""
    times = 2 if girth.basis is Basis.FLAT else 1
    first, last = (times * figure for figure in around)
    longer = along[1] - along[0]
    grown_up = first >= _GROWN_UPS_CM[girth.dimension]
    return grown_up and longer > _LONGER_BY_CM and 0 < _LONGER * (last - first) <= longer


def _grown(one: Column, other: Column) -> tuple[Grown, Grown] | None:
    """The first and the last figures of two columns that rise from size to size."""
    there = dict(_middles(other))
    both = [(here, there[size]) for size, here in _middles(one) if size in there]
    if len(both) < _FEWEST or not all(
        a[0] <= b[0] and a[1] <= b[1] and a != b for a, b in pairwise(both)
    ):
        return None
    return (both[0][0], both[-1][0]), (both[0][1], both[-1][1])


def _middles(column: Column) -> Iterator[tuple[int, Decimal]]:
    """The middle of each range or single figure with the number of its size."""
    for spot, low, high in zip(column.spots, column.lows, column.highs, strict=True):
        if low is not None and high is not None:
            yield spot[0], (low + high) / 2
