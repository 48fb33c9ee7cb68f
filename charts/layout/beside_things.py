"""Measures beside the word for a thing, or for a step: the figures say whether they are meant.

``Strap chest`` over 10, 12, 14 is no measure of a rider, ``Chest with straps closed (cm)`` over
82-86 can be one, and ``Chest ± 1 (cm)`` over 82 is the chest with what it is exact to. A word in
the heading alone drops no figures that a body can have.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal
from typing import Final

from charts.dimensions import HeadingReading, Role, usual
from charts.layout.fields import Field, FieldKind
from charts.layout.looks import look
from charts.quantities import FAMILY, Family, Unit
from charts.schema import Dimension

_PARTLY: Final = frozenset({Role.STEP, Role.TOLERANCE})
_DROPPED: Final = frozenset({FieldKind.SKIPPED, FieldKind.TOLERANCE})
_UNITS: Final = {
    Family.MASS: (Unit.KG, Unit.LB),
    Family.LENGTH: (Unit.CM, Unit.IN),
}


def measured_after_all(fields: Sequence[Field]) -> list[Field]:
    """The fields, with the figures of a body under such a heading as its measure."""
    given = {one.heading.dimension for one in fields if one.kind is FieldKind.VALUES}
    found: list[Field] = []
    for field in fields:
        dimension = _dimension(field.heading) if field.kind in _DROPPED else None
        taken = dimension is not None and dimension not in given and _usual(field, dimension)
        found.append(_taken(field, dimension) if taken and dimension else field)
        given |= {dimension} if taken else set()
    return found


def _dimension(heading: HeadingReading) -> Dimension | None:
    """The measure that the heading names beside a word by which its column was dropped."""
    said = heading.beside_thing or (heading.dimension if heading.role in _PARTLY else None)
    return None if said is Dimension.OTHER else said


def _taken(field: Field, dimension: Dimension) -> Field:
    """The column as one of values; what the word makes of them is asked, a tolerance is none."""
    toleranced = field.heading.role is Role.TOLERANCE
    either = ((Role.MEASURE, dimension), (Role.MEASURE, Dimension.OTHER))
    heading = replace(
        field.heading,
        role=Role.MEASURE,
        dimension=dimension,
        candidates=() if toleranced else either,
        beside_thing=None if toleranced else dimension,
    )
    return replace(field, kind=FieldKind.VALUES, heading=heading)


def _usual(field: Field, dimension: Dimension) -> bool:
    """Whether every figure is usual for the dimension, in the unit printed or in one of two."""
    family = Family.MASS if dimension is Dimension.WEIGHT else Family.LENGTH
    said = field.heading.unit
    if dimension is Dimension.AGE or (said is not None and FAMILY[said] is not family):
        return False
    figures = _figures(field)
    return bool(figures) and any(
        all(_within(dimension, own or trial, value) for value, own in figures)
        for trial in ((said,) if said else _UNITS[family])
    )


def _within(dimension: Dimension, unit: Unit, value: Decimal) -> bool:
    limits = usual(dimension, unit)
    return limits is not None and limits[0] <= value <= limits[1]


def _figures(field: Field) -> list[tuple[Decimal, Unit | None]]:
    found: list[tuple[Decimal, Unit | None]] = []
    for cell in field.cells:
        quantity = look(cell[0].text).reading.quantity if cell else None
        if quantity is not None:
            ends = (quantity.low, quantity.high, quantity.value)
            found += [(end.value, quantity.unit) for end in ends if end is not None]
    return found
