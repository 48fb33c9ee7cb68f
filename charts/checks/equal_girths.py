"""Two girths of one body that are the same in every size: copied, or both of a straight garment."""

from __future__ import annotations

from collections.abc import Sequence
from decimal import Decimal
from typing import Final

from charts.checks.doubt import Column, Doubt
from charts.schema import Basis, Chart, Dimension, Range

_GIRTHS: Final = (Dimension.CHEST, Dimension.WAIST, Dimension.HIP)
"""Those of one body. Chest and hip are alike in many sound charts; the waist is narrower."""
_OF_THE_VEST: Final = frozenset({Basis.FLAT, Basis.FINISHED})
_FEWEST: Final = 3
_SMALL_CM: Final = Decimal(60)
"""Little children are as wide at the waist as above and below it (common practice, no source)."""


def equal_girths(chart: Chart, columns: Sequence[Column]) -> list[Doubt]:
    """The girths that are the same as the waist in every size, each waist with those beside it."""
    del chart
    girths = [one for one in columns if one.dimension in _GIRTHS]
    found = []
    for waist in girths:
        if waist.dimension is not Dimension.WAIST:
            continue
        alike = [one for one in girths if one is waist or (_other(one) and _alike(waist, one))]
        if len(alike) > 1:
            spots = tuple(spot for one in alike for spot in one.spots)
            heading = " | ".join(one.heading for one in alike)
            found.append(Doubt("columns-shifted", spots, heading, case="equal"))
    return found


def _other(column: Column) -> bool:
    return column.dimension is not Dimension.WAIST


def _alike(one: Column, other: Column) -> bool:
    if one.basis in _OF_THE_VEST or other.basis in _OF_THE_VEST or len(one.values) < _FEWEST:
        return False
    same = [spot[0] for spot in one.spots] == [spot[0] for spot in other.spots]
    figures = [_ends(value) for value in one.values]
    largest = max((end for ends in figures for end in ends if end is not None), default=Decimal(0))
    several = len(set(figures)) >= _FEWEST
    return same and several and largest > _SMALL_CM and figures == [*map(_ends, other.values)]


def _ends(value: Range) -> tuple[Decimal | None, ...]:
    return value.low, value.high, value.value
