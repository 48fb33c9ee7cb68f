"""The sign of a range in a column of its own: ``84 | - | 88`` under one heading is 84 - 88.

Sheets that people fill in by hand have such columns, with a dash or with a word for "to".
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from typing import Final

from charts.cell_text import clean
from charts.grammar.senses import MARKS, RANGE_MARK, phrases
from charts.layout.fields import Field
from charts.layout.looks import look
from charts.layout.view import At
from charts.schema import Kind
from charts.vocabulary import unaccented

_FEWEST: Final = 2
"""Signs that make a column of signs: one alone may stand for nothing given."""


def dashes_joined(fields: Sequence[Field]) -> list[Field]:
    """The fields with both ends of such a range in the column of the lower one."""
    found = list(fields)
    number = 1
    while number < len(found) - 1:
        left, sign, right = found[number - 1 : number + 2]
        if _of_signs(sign) and _under_one_heading(left, sign, right) and _ends(left, sign, right):
            cells = zip(left.cells, right.cells, strict=True)
            found[number - 1 : number + 2] = [
                replace(left, cells=tuple(_joined(*c) for c in cells))
            ]
        else:
            number += 1
    return found


def _of_signs(field: Field) -> bool:
    texts = [at.text for cell in field.cells for at in cell]
    return len(texts) >= _FEWEST and all(map(_is_sign, texts))


def _is_sign(text: str) -> bool:
    plain = unaccented(clean(text))
    return bool((phrases().get(plain, 0) | MARKS.get(plain, 0)) & RANGE_MARK)


def _under_one_heading(left: Field, sign: Field, right: Field) -> bool:
    """Whether the three are under one merged heading, or under none but the first one's own."""
    origins = {at.origin for at in left.heads}
    return bool(origins) and all(
        {at.origin for at in field.heads} <= origins for field in (sign, right)
    )


def _ends(left: Field, sign: Field, right: Field) -> bool:
    """Whether a single figure stands on both sides of every sign, and rises."""
    lines = zip(left.cells, sign.cells, right.cells, strict=True)
    return all(_rises(low, high) for low, between, high in lines if between)


def _rises(low: tuple[At, ...], high: tuple[At, ...]) -> bool:
    ends = [look(cell[0].text).reading.quantity if cell else None for cell in (low, high)]
    values = [one.value for one in ends if one is not None and one.kind is Kind.SINGLE]
    figures = [one.value for one in values if one is not None]
    return len(figures) == len(ends) and figures[0] < figures[1]


def _joined(low: tuple[At, ...], high: tuple[At, ...]) -> tuple[At, ...]:
    if not low or not high:
        return low or high
    text = f"{low[0].text.strip()} - {high[0].text.strip()}"
    return (replace(low[0], cell=replace(low[0].cell, text=text)),)
