"""``From FT / CM`` and ``To FT / CM`` without a word for what is measured: how tall one is.

Two ends of a range that nobody names are a body's height where every figure is a usual one, no
other column gives the height, and none of the girths is as long. It is asked about once for both.
"""

from __future__ import annotations

from typing import Final

from charts.columns.fitting import fits, no_height, telling
from charts.columns.words import Surroundings
from charts.dimensions import Role
from charts.layout.fields import Field, FieldKind
from charts.schema import Dimension

_ENDS: Final = frozenset({Role.LOW_END, Role.HIGH_END})


def between_heights(one: Field, around: Surroundings) -> bool:
    """Whether a nameless end and its partner can only be the two ends of a body's height."""
    values = around.table.of(FieldKind.VALUES)
    ends = [field for field in values if _nameless_end(field)]
    if {field.heading.role for field in ends} != _ENDS or len(ends) != 2 or one not in ends:
        return False
    if any(field.heading.dimension is Dimension.HEIGHT for field in around.table.fields):
        return False
    if any(no_height(field, around) for field in ends):
        return False
    return all(_tall(field) for field in ends)


def _nameless_end(field: Field) -> bool:
    return (
        field.heading.role in _ENDS and field.heading.dimension is None and not field.heading.rest
    )


def _tall(field: Field) -> bool:
    """Usual for a height, in a unit that is printed; a chest that reaches as far is no chest."""
    united = field.heading.unit is not None
    return united and fits(field, Dimension.HEIGHT, limits=telling)
