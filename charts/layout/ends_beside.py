"""Two columns of single figures that are the two ends of one range, where their figures prove it.

``Chest`` merged over 84 | 88, or over the first of them only: each upper end is the lower one of
the next size, or just below it. Nothing else that stands beside a girth does that.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal
from itertools import pairwise
from typing import Final

from charts.dimensions import Role
from charts.layout.dash_columns import dashes_joined
from charts.layout.fields import Field, FieldKind
from charts.layout.looks import look

_FEWEST: Final = 3
"""Lines that must follow each other so: two may by chance."""
_NEXT: Final = (Decimal(0), Decimal("1.01"))
"""How far the next lower end may lie above an upper one: integer gaps (89, then 90)."""


def ends_beside(fields: Sequence[Field]) -> list[Field]:
    """The fields with such a pair named as a lower and an upper end, or joined by its sign."""
    found = dashes_joined(fields)
    for number in range(1, len(found)):
        left, right = found[number - 1], found[number]
        if _one_heading(left, right) and _chain(_figures(left), _figures(right)):
            heading = replace(left.heading, role=Role.LOW_END)
            found[number - 1] = replace(left, heading=heading)
            found[number] = replace(right, heading=replace(left.heading, role=Role.HIGH_END))
    return found


def _one_heading(left: Field, right: Field) -> bool:
    """Whether one measure is all that heads both: merged over them, or over the first alone."""
    if left.kind is not FieldKind.VALUES or right.kind is not FieldKind.VALUES:
        return False
    measured = left.heading.role is Role.MEASURE and left.heading.dimension is not None
    origins = [[at.origin for at in field.heads] for field in (left, right)]
    return measured and (not right.heads or origins[0] == origins[1])


def _figures(field: Field) -> list[Decimal | None]:
    return [
        _figure(field.cells[line][0].text) if field.cells[line] else None
        for line in range(len(field.cells))
    ]


def _figure(text: str) -> Decimal | None:
    quantity = look(text).reading.quantity
    return quantity.value.value if quantity is not None and quantity.value is not None else None


def _chain(lows: Sequence[Decimal | None], highs: Sequence[Decimal | None]) -> bool:
    pairs = [(a, b) for a, b in zip(lows, highs, strict=True) if a is not None and b is not None]
    if len(pairs) < max(_FEWEST, len(lows)) or not all(low < high for low, high in pairs):
        return False
    least, most = _NEXT
    return all(least <= after[0] - before[1] <= most for before, after in pairwise(pairs))
