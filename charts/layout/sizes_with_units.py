"""Sizes named by a figure with its unit: ``110 cm`` beside a height of ``100 - 110 cm``.

The figure is the name of the size where the measure it speaks of has a column of its own.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from typing import Final

from charts.dimensions import Role
from charts.layout.fields import Field, FieldKind
from charts.layout.looks import look
from charts.notation import Quantity
from charts.quantities import FAMILY, Family
from charts.schema import Dimension, Kind

_UNMEASURED: Final = frozenset({Dimension.OTHER, Dimension.AGE})


def sizes_with_units(fields: Sequence[Field]) -> list[Field]:
    """The fields with the first one as the sizes, where its figures with units are names only."""
    found = list(fields)
    first = next((n for n, field in enumerate(found) if any(field.cells)), None)
    if first is None or found[first].kind is not FieldKind.VALUES:
        return found
    if only_names(found[first], found):
        found[first] = replace(found[first], kind=FieldKind.LABEL)
    return found


def only_names(field: Field, fields: Sequence[Field]) -> bool:
    """Whether lengths under a word for size, each another, are measured in another column.

    That column gives the height, or holds the figure of each size between its ends.
    """
    if field.heading.role is not Role.LABEL or len(field.cells) < 2:
        return False
    figures = [_quantity(field, line) for line in range(len(field.cells))]
    texts = [cell[0].text.strip() for cell in field.cells if cell]
    if not all(map(_a_length, figures)) or len(set(texts)) < len(field.cells):
        return False
    return any(
        other.kind is FieldKind.VALUES
        and other.heading.role is Role.MEASURE
        and other.heading.dimension not in _UNMEASURED
        and (other.heading.dimension is Dimension.HEIGHT or _holds(other, figures))
        for other in fields
        if other is not field
    )


def _quantity(field: Field, line: int) -> Quantity | None:
    cell = field.cells[line]
    return look(cell[0].text).reading.quantity if cell else None


def _a_length(quantity: Quantity | None) -> bool:
    if quantity is None or quantity.unit is None or quantity.kind is not Kind.SINGLE:
        return False
    return FAMILY[quantity.unit] is Family.LENGTH


def _holds(other: Field, figures: Sequence[Quantity | None]) -> bool:
    """Whether each figure lies between the ends that the other column gives for its size."""
    for line, figure in enumerate(figures):
        ends = _quantity(other, line)
        if ends is None or ends.low is None or ends.high is None:
            return False
        if figure is None or figure.value is None or figure.unit is None:
            return False
        unit = ends.unit or other.heading.unit
        if unit is not figure.unit or not (ends.low.value <= figure.value.value <= ends.high.value):
            return False
    return True
