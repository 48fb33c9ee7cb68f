"""Weights in the wrong one of kg and pounds: the heights or girths of the same sizes tell.

25 kg at a height of 162 cm is nobody's weight. Fifty to sixty of something is meant, and it is
asked of what.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal
from typing import Final

from charts.columns.fitting import printed_figures
from charts.columns.girths_beside import (
    girths_beside,
    in_canonical_by_line,
    known_shares,
    like_heights,
)
from charts.columns.meaning import Column
from charts.plausible_ranges import Limits, plausible
from charts.quantities import Unit
from charts.schema import Dimension

_OTHER: Final = {Unit.KG: Unit.LB, Unit.LB: Unit.KG}
_CM_IN_M: Final = Decimal(100)
_ENDS_TOLD: Final = 2
"""Fewer weights than these prove nothing: one may be a slip."""


def other_mass(column: Column, columns: Sequence[Column]) -> Unit | None:
    """The unit in which the weights suit the bodies beside them, where theirs suits nobody.

    A height is compared with where one is given, else a girth.
    """
    unit = _OTHER.get(column.unit) if column.unit is not None else None
    if column.dimension is not Dimension.WEIGHT or unit is None or column.second_unit is not None:
        return None
    tall = _heights(column, columns)
    if not tall and (
        like_heights(column) or any(one.dimension is Dimension.HEIGHT for one in columns)
    ):
        return None  # heights that nobody has, or weights like them: they have changed places
    figures = printed_figures(column.field)
    if any(own is not None for _, own in figures) or any(column.field.units):
        return None
    for name, power, beside in (
        ("over_height", 2, tall),
        ("over_girth", 3, girths_beside(column, columns)),
    ):
        now = _quotients(column, beside, power)
        if len(now) < _ENDS_TOLD:
            continue
        then = _quotients(replace(column, unit=unit), beside, power)
        wrong = [line for line, one in now.items() if not _within(one, _limits(name))]
        right = [line for line in wrong if _within(then[line], _limits(f"{name}_usual"))]
        return unit if 2 * len(right) > len(now) else None
    return None


def _heights(column: Column, columns: Sequence[Column]) -> dict[int, Decimal]:
    """The heights in cm by line, where all of them are possible."""
    limits = plausible(Dimension.HEIGHT, Unit.CM)
    for one in columns:
        if one.dimension is not Dimension.HEIGHT or one.band != column.band or one.doubted:
            continue
        found = in_canonical_by_line(one)
        if limits is not None and found and all(_within(each, limits) for each in found.values()):
            return found
    return {}


def _quotients(column: Column, beside: dict[int, Decimal], power: int) -> dict[int, Decimal]:
    weights = in_canonical_by_line(column)
    lines = weights.keys() & beside.keys()
    return {line: weights[line] / (beside[line] / _CM_IN_M) ** power for line in sorted(lines)}


def _limits(name: str) -> Limits:
    low, high = known_shares()["weight"][name]
    return Decimal(low), Decimal(high)


def _within(value: Decimal, limits: Limits) -> bool:
    return limits[0] <= value <= limits[1]
