"""Measures of one body in proportion: where they are out of it in every size, columns slipped."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from decimal import Decimal
from typing import Final

from charts.checks.doubt import Column, Doubt
from charts.plausible_ranges import half_of_a_girth
from charts.quantities import Unit
from charts.schema import Basis, Chart, Dimension

_LESS_BY: Final = (
    (Dimension.CHEST, Dimension.WAIST, Decimal(1), Decimal(-4)),
    (Dimension.WAIST, Dimension.CHEST, Decimal("0.62"), Decimal(0)),
    (Dimension.HIP, Dimension.WAIST, Decimal(1), Decimal(-8)),
    (Dimension.HIP, Dimension.CHEST, Decimal("0.75"), Decimal(0)),
    (Dimension.CHEST, Dimension.UNDERBUST, Decimal(1), Decimal(-1)),
    (Dimension.HEIGHT, Dimension.CHEST, Decimal("1.15"), Decimal(0)),
    (Dimension.HEIGHT, Dimension.WAIST, Decimal("1.15"), Decimal(0)),
    (Dimension.HEIGHT, Dimension.HIP, Decimal("1.1"), Decimal(0)),
    (Dimension.HEIGHT, Dimension.ARM_LENGTH, Decimal("1.8"), Decimal(0)),
    (Dimension.HEIGHT, Dimension.INSEAM, Decimal("1.9"), Decimal(0)),
    (Dimension.CHEST, Dimension.NECK, Decimal("1.5"), Decimal(0)),
    (Dimension.CHEST, Dimension.INSEAM, Decimal(1), Decimal(0)),
    (Dimension.HIP, Dimension.INSEAM, Decimal(1), Decimal(-8)),
    (Dimension.CHEST, Dimension.SHOULDER_BREADTH, Decimal("1.8"), Decimal(0)),
    (Dimension.SHOULDER_BREADTH, Dimension.CHEST, Decimal("0.27"), Decimal(0)),
    (Dimension.HEIGHT, Dimension.WEIGHT, Decimal(1), Decimal(0)),
    (Dimension.CHEST, Dimension.WEIGHT, Decimal("0.95"), Decimal(0)),
    (Dimension.WAIST, Dimension.WEIGHT, Decimal("0.97"), Decimal(0)),
)
"""(larger, smaller, factor, cm): the larger is at least factor times the smaller plus cm. A weight
counts by its figure in kg.

In a public body survey of adults (ANSUR II) the chest is below the waist in 5.6 % of women and
1.8 % of men, by a few centimetres; hip minus waist is below -8 cm in 0.1 % and 0.4 %. Of some 680
real charts with chest and waist none has the waist wider in every size, nor the chest one and a
half times as wide. The others: common practice, no source."""
_NARROWER: Final = (
    (Dimension.CHEST, Dimension.WAIST),
    (Dimension.HIP, Dimension.WAIST),
)
"""The waist is narrower than the other: nowhere wider throughout, by however little."""
_SMALL_CM: Final = Decimal(60)
"""Little children are as wide at the waist as above and below it (common practice, no source)."""
_STOUT_CM: Final = Decimal(120)
"""Of those who are so wide in the smallest size, the waist may be the widest."""
_MOST: Final = 4
"""Of so many sizes one may be in proportion all the same: a figure of it may be a slip."""
_NO_GIRTHS: Final = frozenset({Dimension.HEIGHT, Dimension.WEIGHT, Dimension.INSEAM})
_TOLD_BY_HALVES: Final = frozenset({Dimension.WEIGHT, Dimension.SHOULDER_BREADTH, Dimension.INSEAM})
"""What half of a girth is out of proportion to."""


def out_of_proportion(chart: Chart, columns: Sequence[Column]) -> list[Doubt]:
    """All columns of a chart in which two measures are out of proportion in every size.

    Where there are four sizes or more, one of them may be in proportion: it holds a slip.
    """
    del chart
    measures = {column.dimension for column in columns}
    for larger, smaller, factor, cm in _LESS_BY:
        if larger in measures and smaller in measures:
            for one, other in _pairs(columns, larger, smaller):
                if _violated(_ends_beside(one, other), factor, cm):
                    return [_of_all(columns, one, other)]
    for wider, narrower in _NARROWER:
        for one, other in _pairs(columns, wider, narrower):
            if _narrower_throughout(_ends_beside(one, other)):
                return [_of_all(columns, one, other)]
    return []


def _pairs(
    columns: Sequence[Column], larger: Dimension, smaller: Dimension
) -> Iterator[tuple[Column, Column]]:
    for one in columns:
        for other in columns:
            named = (one.dimension, other.dimension) == (larger, smaller)
            if named and _comparable(one, other):
                yield one, other


def _of_all(columns: Sequence[Column], one: Column, other: Column) -> Doubt:
    spots = tuple(spot for column in columns for spot in column.spots)
    return Doubt("columns-shifted", spots, f"{one.heading} | {other.heading}")


def _comparable(one: Column, other: Column) -> bool:
    girths = {column.basis for column in (one, other) if column.dimension not in _NO_GIRTHS}
    halves = Basis.FLAT in girths or _by_halves(one, other) or _by_halves(other, one)
    of_one = not halves and not _a_limit(other) and len(girths - {Basis.UNKNOWN}) < 2
    return of_one and len(_beside(one, other)) > 1


def _a_limit(column: Column) -> bool:
    """Whether every size has one weight: what the gear bears, not who wears it."""
    weights = column.dimension is Dimension.WEIGHT
    return weights and len({(value.low, value.high, value.value) for value in column.values}) == 1


def _by_halves(girth: Column, other: Column) -> bool:
    return other.dimension in _TOLD_BY_HALVES and _may_be_halves(girth)


def _may_be_halves(column: Column) -> bool:
    """Whether no figure is too large for half of a girth, of which no weight can be told."""
    limits = half_of_a_girth(column.dimension, Unit.CM)
    return limits is not None and all(high <= limits[1] for high in column.highs if high)


def _beside(one: Column, other: Column) -> list[tuple[int, int]]:
    """The places in both columns of the sizes that have a figure in each.

    Exchanged columns may have lost some of theirs, as figures that nobody can have.
    """
    there = {spot[0]: number for number, spot in enumerate(other.spots)}
    return [(number, there[spot[0]]) for number, spot in enumerate(one.spots) if spot[0] in there]


def _ends_beside(one: Column, other: Column) -> list[list[tuple[Decimal, Decimal]]]:
    """For each size that both columns have, the ends that are known in both."""
    sides = ((one.lows, other.lows), (one.highs, other.highs))
    found = []
    for a, b in _beside(one, other):
        ends = [(large[a], small[b]) for large, small in sides]
        known = [(x, y) for x, y in ends if x is not None and y is not None]
        if known:
            found.append(known)
    return found


def _violated(
    sizes: Sequence[Sequence[tuple[Decimal, Decimal]]], factor: Decimal, cm: Decimal
) -> bool:
    wrong = sum(all(large < small * factor + cm for large, small in ends) for ends in sizes)
    return bool(sizes) and wrong >= len(sizes) - (len(sizes) >= _MOST)


def _narrower_throughout(sizes: Sequence[Sequence[tuple[Decimal, Decimal]]]) -> bool:
    """Whether what should be the wider is never so, and narrower in three of four sizes."""
    below = [all(wide <= narrow for wide, narrow in ends) for ends in sizes]
    narrower = sum(all(wide < narrow for wide, narrow in ends) for ends in sizes)
    if not below or not all(below) or 4 * narrower < 3 * len(sizes):
        return False
    every = [pair for ends in sizes for pair in ends]
    return max(n for _, n in every) > _SMALL_CM and min(w for w, _ in every) < _STOUT_CM
