"""Measures of one body in proportion: where they are out of it in every size, columns slipped."""

from __future__ import annotations

from collections.abc import Sequence
from decimal import Decimal
from typing import Final

from charts.checks.doubt import Column, Doubt
from charts.plausible_ranges import half_of_a_girth
from charts.quantities import Unit
from charts.schema import Basis, Chart, Dimension

_LESS_BY: Final = (
    (Dimension.CHEST, Dimension.WAIST, Decimal(1), Decimal(-4)),
    (Dimension.HIP, Dimension.WAIST, Decimal(1), Decimal(-8)),
    (Dimension.CHEST, Dimension.UNDERBUST, Decimal(1), Decimal(-1)),
    (Dimension.HEIGHT, Dimension.CHEST, Decimal("1.15"), Decimal(0)),
    (Dimension.HEIGHT, Dimension.HIP, Decimal("1.1"), Decimal(0)),
    (Dimension.CHEST, Dimension.NECK, Decimal("1.5"), Decimal(0)),
    (Dimension.HIP, Dimension.INSEAM, Decimal(1), Decimal(-8)),
    (Dimension.HEIGHT, Dimension.WEIGHT, Decimal(1), Decimal(0)),
    (Dimension.CHEST, Dimension.WEIGHT, Decimal("0.8"), Decimal(0)),
)
"""(larger, smaller, factor, cm): the larger is at least factor times the smaller plus cm. A weight
counts by its figure in kg.

In a public body survey of adults (ANSUR II) the chest is below the waist in 5.6 % of women and
1.8 % of men, by a few centimetres; hip minus waist is below -8 cm in 0.1 % and 0.4 %. Height over
girth, hip over inseam, and weight below height and chest: common practice, no source."""
_NO_GIRTHS: Final = frozenset({Dimension.HEIGHT, Dimension.WEIGHT, Dimension.INSEAM})


def out_of_proportion(chart: Chart, columns: Sequence[Column]) -> list[Doubt]:
    """All columns of a chart in which two measures are out of proportion in every size."""
    del chart
    for larger, smaller, factor, cm in _LESS_BY:
        for one in columns:
            for other in columns:
                named = (one.dimension, other.dimension) == (larger, smaller)
                if named and _comparable(one, other) and _violated(one, other, factor, cm):
                    spots = tuple(spot for column in columns for spot in column.spots)
                    return [Doubt("columns-shifted", spots, f"{one.heading} | {other.heading}")]
    return []


def _comparable(one: Column, other: Column) -> bool:
    girths = {column.basis for column in (one, other) if column.dimension not in _NO_GIRTHS}
    halves = Basis.FLAT in girths or (other.dimension is Dimension.WEIGHT and _may_be_halves(one))
    return not halves and len(girths) < 2 and len(_beside(one, other)) > 1


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


def _violated(one: Column, other: Column, factor: Decimal, cm: Decimal) -> bool:
    ends = ((one.lows, other.lows), (one.highs, other.highs))
    pairs = [(large[a], small[b]) for large, small in ends for a, b in _beside(one, other)]
    known = [(large, small) for large, small in pairs if large is not None and small is not None]
    return bool(known) and all(large < small * factor + cm for large, small in known)
