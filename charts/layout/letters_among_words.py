"""Sizes in letters among other names: ``Base | User | S | M | L | Code`` over figures.

A program that writes out a pattern sets columns of its own beside those of the sizes. The letters
in their order still tell that the whole line names sizes, where nothing else does.
"""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise
from typing import Final

from charts.layout.fields import Field, FieldKind
from charts.layout.looks import look

_FEWEST: Final = 3
"""Letters that are no accident (common practice, no source)."""
_MAY_NAME: Final = frozenset({FieldKind.NOTE, FieldKind.SKIPPED, FieldKind.IDENTITY})


def letters_among_words(fields: Sequence[Field]) -> int | None:
    """The line before all figures that holds sizes in letters, each larger, and no figure."""
    for number, field in enumerate(fields):
        if field.kind is FieldKind.VALUES:
            return None
        if field.kind in _MAY_NAME and _grow(field):
            return number
    return None


def _grow(field: Field) -> bool:
    looks = [look(cell[0].text) for cell in field.cells if cell]
    orders = [one.label.order for one in looks if one.wordy_label and one.label is not None]
    growing = all(one < other for one, other in pairwise(orders))
    return len(orders) >= _FEWEST and growing and not any(one.value for one in looks)
