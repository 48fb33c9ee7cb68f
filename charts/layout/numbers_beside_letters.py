"""A second name of each size without a heading: ``36 38 40`` right below ``XS S M``."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from itertools import pairwise
from typing import Final

from charts.layout.fields import Field, FieldKind
from charts.layout.kinds import Content
from charts.schema import Dimension

_STEP: Final = 2
"""Numbered sizes of clothes go up by two (common practice, no source)."""
_HIGHEST: Final = 70
_GIVEN: Final = {Dimension.CHEST, Dimension.WAIST}
_FEWEST: Final = 3


def numbers_beside_letters(fields: Sequence[Field]) -> list[Field]:
    """The fields with bare numbers beside bare letters as sizes, where chest and waist are named.

    Only a measure whose heading was lost could stand there otherwise, and none is missing.
    """
    found = list(fields)
    filled = [number for number, field in enumerate(fields) if any(field.cells)]
    for left, right in pairwise(filled):
        letters, numbers = fields[left], fields[right]
        if not _bare_letters(letters) or numbers.kind is not FieldKind.VALUES or numbers.heads:
            continue
        rest = [fields[number] for number in filled if number not in (left, right)]
        headed = all(field.heads for field in rest)
        given = {one.heading.dimension for one in rest if one.kind is FieldKind.VALUES}
        if headed and given >= _GIVEN and _go_up(numbers):
            found[right] = replace(numbers, kind=FieldKind.LABEL)
    return found


def _bare_letters(field: Field) -> bool:
    content = Content.of(field.cells)
    lettered = content.filled == content.wordy_labels == len(field.cells)
    return field.kind is FieldKind.LABEL and not field.heads and lettered


def _go_up(field: Field) -> bool:
    """Whether every size has a whole number, two more than the one before it."""
    texts = [cell[0].text.strip() for cell in field.cells if cell]
    if len(texts) < max(_FEWEST, len(field.cells)) or not all(map(str.isdecimal, texts)):
        return False
    numbers = [int(text) for text in texts]
    return numbers[-1] < _HIGHEST and all(b - a == _STEP for a, b in pairwise(numbers))
