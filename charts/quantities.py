"""Exact lengths and masses: units, conversion to cm and kg, and the printed step of a figure.

Figures stay exact decimals from the printed text to the stored value. The factors come from a
small pint registry of our own, read once; pint never sees a supplier's text.
"""

from __future__ import annotations

from dataclasses import dataclass
from decimal import Decimal
from enum import StrEnum
from functools import cache
from typing import Final


class Unit(StrEnum):
    """A printed unit. Stones are pounds and feet are inches by the time a figure is stored."""

    MM = "mm"
    CM = "cm"
    M = "m"
    IN = "in"
    FT = "ft"
    G = "g"
    KG = "kg"
    LB = "lb"
    ST = "st"
    YEARS = "years"


class Family(StrEnum):
    """What a unit measures; two units of one family can be compared."""

    LENGTH = "length"
    MASS = "mass"
    AGE = "age"


FAMILY: Final[dict[Unit, Family]] = {
    Unit.MM: Family.LENGTH,
    Unit.CM: Family.LENGTH,
    Unit.M: Family.LENGTH,
    Unit.IN: Family.LENGTH,
    Unit.FT: Family.LENGTH,
    Unit.G: Family.MASS,
    Unit.KG: Family.MASS,
    Unit.LB: Family.MASS,
    Unit.ST: Family.MASS,
    Unit.YEARS: Family.AGE,
}

CANONICAL: Final[dict[Family, Unit]] = {
    Family.LENGTH: Unit.CM,
    Family.MASS: Unit.KG,
    Family.AGE: Unit.YEARS,
}

METRIC: Final[frozenset[Unit]] = frozenset({Unit.MM, Unit.CM, Unit.M, Unit.G, Unit.KG})

_DEFINITIONS: Final = (
    "centimetre = [length] = cm",
    "millimetre = 0.1 * centimetre = mm",
    "metre = 100 * centimetre = m",
    "inch = 2.54 * centimetre = in",
    "foot = 12 * inch = ft",
    "kilogram = [mass] = kg",
    "gram = 0.001 * kilogram = g",
    "pound = 0.45359237 * kilogram = lb",
    "stone = 14 * pound = st",
    "year = [time] = years",
)


@cache
def factor(unit: Unit) -> Decimal:
    """Exact factor from one of ``unit`` to its canonical unit (cm, kg or years).

    Source: inch 2.54 cm and pound 0.45359237 kg are exact by definition.
    """
    import pint

    registry: pint.UnitRegistry[Decimal] = pint.UnitRegistry(None, non_int_type=Decimal)
    for line in _DEFINITIONS:
        registry.define(line)
    canonical = CANONICAL[FAMILY[unit]]
    converted = registry.Quantity(Decimal(1), unit.value).to(canonical.value)
    return Decimal(converted.magnitude)


def canonical(value: Decimal, unit: Unit) -> Decimal:
    """``value`` in ``unit`` as an exact decimal in cm, kg or years."""
    return value * factor(unit)


def converted(value: Decimal, unit: Unit, to: Unit) -> Decimal:
    """``value`` in ``unit`` as a decimal in ``to``; exact where the quotient is.

    Raises ValueError when the two units measure different things.
    """
    if FAMILY[unit] is not FAMILY[to]:
        raise ValueError(f"{unit.value} and {to.value} measure different things")
    return value if unit is to else value * factor(unit) / factor(to)


@dataclass(frozen=True, slots=True)
class Figure:
    """One printed number: its exact value and the step it was printed to, in the same unit.

    ``step`` is 1 for "34", 1/2 for "34 1/2", 1/8 for "34 3/8", 0.1 for "34.5", 0.01 for "86.36".
    """

    value: Decimal
    step: Decimal

    def in_canonical(self, unit: Unit) -> Figure:
        """The same figure with value and step in cm, kg or years."""
        return Figure(canonical(self.value, unit), canonical(self.step, unit))
