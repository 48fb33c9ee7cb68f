"""Which column names the sizes, when the columns are seen side by side."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal
from typing import Final

from charts.dimensions import Role
from charts.layout.fields import Field, FieldKind
from charts.layout.kinds import Content
from charts.layout.looks import look
from charts.schema import Dimension

_LABELLING: Final = frozenset({FieldKind.LABEL, FieldKind.LENGTH})
_HEIGHTS_CM: Final = (Decimal(92), Decimal(205))
"""Figures under a word for size that are body heights (notation catalogue, false friends 2)."""
_KEY_DIMENSIONS: Final = (Dimension.AGE, Dimension.HEIGHT)


def settled(fields: Sequence[Field]) -> list[Field]:
    """The fields with one named as the sizes, where anything can name them."""
    fields = [_height_under_size(field, fields) for field in fields]
    if any(field.kind in _LABELLING for field in fields):
        return fields
    for choose in (_bands, _running, _key_dimension):
        chosen = choose(fields)
        if chosen is not None:
            fields[chosen] = replace(fields[chosen], kind=FieldKind.LABEL)
            break
    return fields


def _height_under_size(field: Field, fields: Sequence[Field]) -> Field:
    """A column headed with a word for size over heights, beside a column of surer labels."""
    if field.kind is not FieldKind.LABEL or field.heading.role is not Role.LABEL:
        return field
    others = [one for one in fields if one is not field and one.kind is FieldKind.LABEL]
    if any(_sure(one) for one in others) and _holds_heights(field):
        return replace(field, kind=FieldKind.VALUES)
    return field


def _sure(field: Field) -> bool:
    content = Content.of(field.cells)
    return content.most(content.sure_labels)


def _holds_heights(field: Field) -> bool:
    """Whether every figure lies where body heights lie, and two at least are ranges or differ."""
    low, high = _HEIGHTS_CM
    ends = []
    for cell in field.cells:
        quantity = look(cell[0].text).reading.quantity if cell else None
        if quantity is None:
            continue
        ends += [end.value for end in (quantity.low, quantity.high, quantity.value) if end]
    return bool(ends) and all(low <= end <= high for end in ends)


def _bands(fields: Sequence[Field]) -> int | None:
    """Band words label the rows when nothing else does and none repeats."""
    for number, field in enumerate(fields):
        if field.kind is FieldKind.BAND:
            words = [cell[0].text for cell in field.cells if cell]
            if len(set(words)) == len(words):
                return number
    return None


def _running(fields: Sequence[Field]) -> int | None:
    """A running number is a size when nothing else is."""
    for number, field in enumerate(fields[:1]):
        if field.kind is FieldKind.SKIPPED and Content.of(field.cells).running:
            return number
    return None


def _key_dimension(fields: Sequence[Field]) -> int | None:
    """A first column of ages or body heights is what the other columns are looked up by."""
    values = [n for n, field in enumerate(fields) if field.kind is FieldKind.VALUES]
    if len(values) > 1 and fields[values[0]].heading.dimension in _KEY_DIMENSIONS:
        return values[0]
    return None
