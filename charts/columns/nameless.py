"""Single figures beside a column that nobody can name: perhaps the two halves of one range."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace
from decimal import Decimal
from typing import Final

from charts.columns.fitting import printed_figures
from charts.columns.meaning import Column
from charts.columns.words import Surroundings
from charts.dimensions import Role

_ENDS: Final = frozenset({Role.LOW_END, Role.HIGH_END})
_LEAST: Final = Decimal("0.4")
"""The lower end of a range is this share of the upper one at least (common practice, no source)."""


def beside_nameless(columns: Sequence[Column], around: Surroundings) -> list[Column]:
    """The columns with the question about a nameless neighbour on those it may complete.

    ``Chest | | Waist`` over 84 and 88: the 84 is no chest by itself if the 88 is its other end. So
    is ``Zolm`` beside ``Max. weight``, where nothing else gives the least.
    """
    asked = {one.id for one in around.log.findings if one.code == "heading-unknown"}
    found = list(columns)
    for number, column in enumerate(columns):
        ids = [ident for ident in column.findings if ident in asked]
        for beside in (number - 1, number + 1) if ids and _single(column) else ():
            if 0 <= beside < len(found) and _completed(
                found[beside], column, beside < number, found
            ):
                found[beside] = found[beside].asking(*ids)
    return found


def _completed(one: Column, nameless: Column, before: bool, columns: Sequence[Column]) -> bool:
    """Whether a column stands right before one without a heading, or is an end without another."""
    if before and not nameless.heading:
        return bool(one.heading) and _single(one)
    if one.role not in _ENDS or any(_other_end(one, other) for other in columns):
        return False
    low, high = (nameless, one) if one.role is Role.HIGH_END else (one, nameless)
    pairs = list(zip(_singles(low), _singles(high), strict=True))
    both = [(least, most) for least, most in pairs if least is not None and most is not None]
    return bool(both) and all(_LEAST * most <= least <= most for least, most in both)


def _other_end(one: Column, other: Column) -> bool:
    same = (one.dimension, one.band) == (other.dimension, other.band)
    return same and {one.role, other.role} == _ENDS


def _singles(column: Column) -> Iterator[Decimal | None]:
    for cell in column.field.cells:
        figures = printed_figures(replace(column.field, cells=(cell,)))
        yield figures[0][0] if len(figures) == 1 else None


def _single(column: Column) -> bool:
    """Whether a column holds one figure a cell."""
    cells = (replace(column.field, cells=(cell,)) for cell in column.field.cells)
    return max((len(printed_figures(one)) for one in cells), default=0) == 1
