"""A size with a word of the shop beside its name, ``XL - sold out``, among plain sizes.

The word alone would make its line one of stock or of prices. What is left of the name without it
is a size, and its figures are like those of the others.
"""

from __future__ import annotations

from collections.abc import Sequence
from decimal import Decimal
from typing import Final

from charts.dimensions import Role
from charts.headings.parts import Hit, hits_of
from charts.layout.fields import Field, FieldKind
from charts.layout.looks import look
from charts.layout.view import At
from charts.vocabulary import normal

_SMALL: Final = frozenset({"filler", "location"})
_LIKE: Final = Decimal("0.6")
"""By how much the figures of the next sizes may differ (common practice, no source)."""


def names_a_size(text: str) -> bool:
    """Whether a name is one of a size without its words for stock, levels and the like."""
    hits = hits_of(normal(text))
    rest = " ".join(hit.phrase for hit in hits if not _beside(hit))
    named = [rest, *(hit.phrase for hit in hits if not _beside(hit))]
    beside = any(_beside(hit) for hit in hits)
    return beside and any(look(each.upper()).sure_label for each in named if each)


def _beside(hit: Hit) -> bool:
    entry = hit.entry
    if entry is None:
        return False
    other = bool(entry.columns) and all(one.role is Role.OTHER for one in entry.columns)
    return other or (not entry.columns and bool(entry.parts & _SMALL))


def as_others(fields: Sequence[Field], line: int) -> bool:
    """Whether every figure of a line is near those that the other lines have in its column."""
    told = False
    for field in fields:
        cell = field.cells[line]
        if field.kind is not FieldKind.VALUES or not cell or look(cell[0].text).blank:
            continue
        own = _figures(cell[0])
        others = [
            figure
            for at, each in enumerate(field.cells)
            if at != line and each
            for figure in _figures(each[0])
        ]
        if not own or not others:
            return False
        if min(own) < min(others) * _LIKE or max(own) > max(others) / _LIKE:
            return False
        told = True
    return told


def _figures(at: At) -> list[Decimal]:
    quantity = look(at.text).reading.quantity
    ends = (quantity.low, quantity.high, quantity.value) if quantity is not None else ()
    return [end.value for end in ends if end is not None]
