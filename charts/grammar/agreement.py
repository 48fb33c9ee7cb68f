"""Whether one quantity printed in two units is one quantity: rounding or contradiction."""

from __future__ import annotations

from decimal import Decimal
from enum import StrEnum
from typing import Final

from charts.cell_reading import Quantity
from charts.quantities import FAMILY, Family, Figure, Unit, canonical

MOST_APART: Final = {Family.LENGTH: Decimal("1.27"), Family.MASS: Decimal("0.7")}
"""Figures further apart than this contradict each other: half an inch, 0.7 kg (common practice)."""

_ALIKE: Final = Decimal("0.06")
"""Shops turn a range of inches into round centimetres up to two inches off (common practice)."""
_FRACTIONS_OF_AN_INCH: Final = (Decimal("0.5"), Decimal("0.25"), Decimal("0.125"))


class Agreement(StrEnum):
    """How two printings of one quantity stand to each other."""

    EXACT = "exact"
    ROUNDED = "rounded"
    APART = "apart"
    OTHER_SHAPE = "other shape"


def agreement(one: Quantity, unit: Unit, other: Quantity, other_unit: Unit) -> Agreement:
    """Compare two quantities end by end.

    Apart is more than the smaller of 1.27 cm (0.7 kg) and half of each printed step together.
    """
    if FAMILY[unit] is not FAMILY[other_unit] or _shape(one) != _shape(other):
        return Agreement.OTHER_SHAPE
    worst = Agreement.EXACT
    for mine, its in zip(_figures(one), _figures(other), strict=True):
        distance = abs(canonical(mine.value, unit) - canonical(its.value, other_unit))
        if distance > _allowed(mine, unit, its, other_unit):
            return Agreement.APART
        if distance:
            worst = Agreement.ROUNDED
    return worst


def alike(one: Quantity, unit: Unit, other: Quantity, other_unit: Unit) -> bool:
    """Whether two quantities are so near that they are meant for one, rightly converted or not."""
    if FAMILY[unit] is not FAMILY[other_unit] or _shape(one) != _shape(other):
        return False
    pairs = (
        (canonical(mine.value, unit), canonical(its.value, other_unit))
        for mine, its in zip(_figures(one), _figures(other), strict=True)
    )
    return all(abs(mine - its) <= _ALIKE * max(mine, its) for mine, its in pairs)


def _shape(one: Quantity) -> tuple[bool, ...]:
    return tuple(figure is not None for figure in _ends(one))


def _ends(one: Quantity) -> tuple[Figure | None, ...]:
    return (one.low, one.high, one.value, one.tolerance)


def _figures(one: Quantity) -> list[Figure]:
    return [figure for figure in _ends(one) if figure is not None]


def _allowed(one: Figure, unit: Unit, other: Figure, other_unit: Unit) -> Decimal:
    steps = _rounding(one, unit) + _rounding(other, other_unit)
    return min(steps / 2, MOST_APART.get(FAMILY[unit], Decimal(0)))


def _rounding(figure: Figure, unit: Unit) -> Decimal:
    """The step a figure was rounded to: 34.5 in stands for a half inch, not for a tenth."""
    step = figure.step
    if unit is Unit.IN and step < 1:
        step = next((one for one in _FRACTIONS_OF_AN_INCH if figure.value % one == 0), step)
    return canonical(step, unit)
