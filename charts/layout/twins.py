"""Columns that are one measure in two units, told by their figures: inches times 2.54, pounds too.

``Chest | | Waist |`` over 86-91 and 34-36; ``Brust | Zoll`` where only one of the two says its
unit. The ratio has to hold in every line, so that it is a proof and no guess.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal
from typing import Final

from charts.dimensions import HeadingReading, Role
from charts.layout.fields import Field, FieldKind
from charts.layout.looks import look
from charts.layout.view import At
from charts.quantities import Unit
from charts.schema import Dimension, UnitFrom

_RATIOS: Final = {Unit.IN: Decimal("2.54"), Unit.LB: Decimal("0.45359237")}
"""Centimetres of an inch, kilograms of a pound."""
_NEAR: Final = Decimal("0.02")
"""Part by which figures rounded to whole units miss the ratio: half an inch in 34, about."""
_FEWEST: Final = 4
_OTHER: Final = {Unit.CM: Unit.IN, Unit.IN: Unit.CM, Unit.KG: Unit.LB, Unit.LB: Unit.KG}
_WHOLE_OF: Final = {Unit.FT: Unit.IN, Unit.ST: Unit.LB}
"""Feet and inches are read as inches, stones and pounds as pounds."""


def with_twins(fields: Sequence[Field]) -> list[Field]:
    """The fields with what one of two such columns says given to the other."""
    found = list(fields)
    for number in range(1, len(found)):
        left, right = found[number - 1], found[number]
        if left.kind is right.kind is FieldKind.VALUES and _one_measure(left, right):
            found[number - 1 : number + 1] = _told(left, right)
    return found


def _one_measure(left: Field, right: Field) -> bool:
    """A measure beside a headless column, or beside itself, where a unit is left unsaid."""
    measured = left.heading.role is Role.MEASURE and left.heading.dimension is not None
    same = right.heading.dimension is left.heading.dimension and right.heading.role is Role.MEASURE
    bare = not right.heads or (same and None in {left.heading.unit, right.heading.unit})
    return measured and bare


def _told(left: Field, right: Field) -> tuple[Field, Field]:
    unit = _unit_of_second(left, right)
    said = _said(left), _said(right)
    if unit is None or said[0] not in {None, _OTHER[unit]} or said[1] not in {None, unit}:
        return left, right
    units = left.heading.unit or _OTHER[unit], right.heading.unit or unit
    return (
        _saying(left, replace(left.heading, unit=units[0]), said[0]),
        _saying(right, replace(left.heading, unit=units[1]), said[1]),
    )


def _saying(field: Field, heading: HeadingReading, said: Unit | None) -> Field:
    source = field.unit_said if said is not None else UnitFrom.SIBLING
    return replace(field, heading=heading, unit_said=source)


def _said(field: Field) -> Unit | None:
    unit = field.heading.unit
    return _WHOLE_OF.get(unit, unit) if unit is not None else None


def _unit_of_second(one: Field, other: Field) -> Unit | None:
    """The unit of the second column when every line of it is the first in the other unit."""
    pairs = [
        pair
        for cell, beside in zip(one.cells, other.cells, strict=True)
        for pair in zip(_figures(cell), _figures(beside), strict=False)
    ]
    imperial = Unit.LB if one.heading.dimension is Dimension.WEIGHT else Unit.IN
    by = _RATIOS[imperial]
    for unit, ratio in ((imperial, by), (_OTHER[imperial], 1 / by)):
        near = (b and abs(a / b / ratio - 1) <= _NEAR for a, b in pairs)
        if len(pairs) >= _FEWEST and all(near):
            return unit
    return None


def _figures(cell: tuple[At, ...]) -> list[Decimal]:
    quantity = look(cell[0].text).reading.quantity if cell else None
    if quantity is None:
        return []
    return [end.value for end in (quantity.low, quantity.high, quantity.value) if end is not None]
