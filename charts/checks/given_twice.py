"""A girth that a chart gives twice with different figures: one of both is hardly the body's."""

from __future__ import annotations

from collections.abc import Sequence
from decimal import Decimal
from itertools import combinations
from typing import Final

from charts.checks.doubt import Column, Doubt
from charts.schema import Basis, Chart, Dimension

_GIRTHS: Final = frozenset({Dimension.CHEST, Dimension.WAIST, Dimension.HIP})
_OF_THE_VEST: Final = frozenset({Basis.FLAT, Basis.FINISHED})
_APART_CM: Final = Decimal("1.27")
"""Half an inch: the same figure rounded in two units differs by no more."""
_FEWEST: Final = 2


def given_twice(chart: Chart, columns: Sequence[Column]) -> list[Doubt]:
    """Two columns of one girth of the body that lie apart in every size."""
    del chart
    girths = [one for one in columns if one.dimension in _GIRTHS and one.basis not in _OF_THE_VEST]
    return [
        Doubt("basis-doubtful", (*one.spots, *other.spots), heading, case="girths")
        for one, other in combinations(girths, 2)
        if (one.dimension, one.definition) == (other.dimension, other.definition)
        and _apart(one, other)
        for heading in (f"{one.heading} | {other.heading}",)
    ]


def _apart(one: Column, other: Column) -> bool:
    there = {spot[0]: number for number, spot in enumerate(other.spots)}
    pairs = [(n, there[spot[0]]) for n, spot in enumerate(one.spots) if spot[0] in there]
    return len(pairs) >= _FEWEST and all(
        _below(one, here, other, beside) or _below(other, beside, one, here)
        for here, beside in pairs
    )


def _below(lower: Column, number: int, upper: Column, beside: int) -> bool:
    end, start = lower.highs[number], upper.lows[beside]
    return end is not None and start is not None and start - end > _APART_CM
