"""Columns under a word that tells the wearer's measures from the garment's: Rider | Vest.

The word beats what a heading below it only sounds like: a girth under "Garment" is the garment's.
Under a word nobody knows, beside such sides, whose measures stand there is for a person to say.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from typing import Final

from charts.columns.meaning import Column
from charts.columns.words import Surroundings
from charts.dimensions import Role
from charts.headings.sides import Side, side_of, told_apart
from charts.layout.looks import look
from charts.schema import Basis, Dimension

_OF_THE_BODY: Final = frozenset({Dimension.HEIGHT, Dimension.WEIGHT, Dimension.AGE})
_GARMENTS: Final = frozenset({Basis.FINISHED, Basis.FLAT})


def with_sides(columns: Sequence[Column], around: Surroundings) -> list[Column]:
    """The columns with the basis that the word above several of them says."""
    return [_sided(column, side_over(column, around)) for column in columns]


def _sided(column: Column, side: Side | None) -> Column:
    if side is None:
        return column
    if side.basis is Basis.BODY:
        return replace(column, basis=Basis.BODY, garment_sign=False)
    # A girth laid flat under "Garment" stays half of it.
    return column if column.basis in _GARMENTS else replace(column, basis=side.basis)


def side_over(column: Column, around: Surroundings) -> Side | None:
    """What the nearest word for a side says among several headings of a column."""
    if len(column.field.heads) < 2 or column.dimension in _OF_THE_BODY:
        return None
    sides = [side for at in column.field.heads if (side := side_of(at.text)) is not None]
    apart = _apart(around)
    return next((side for side in reversed(sides) if side.plain or apart), None)


def beside_sides(column: Column, around: Surroundings) -> bool:
    """Whether a word that no list has stands above a heading, where others stand for sides."""
    above = [look(at.text).heading for at in column.field.heads[:-1]]
    strange = any(one.role is Role.UNKNOWN and one.rest and one.band is None for one in above)
    return strange and side_over(column, around) is None and _one_side(around)


def _apart(around: Surroundings) -> bool:
    return told_apart(_names(around))


def _one_side(around: Surroundings) -> bool:
    return any(side_of(name) is not None for name in _names(around))


def _names(around: Surroundings) -> set[str]:
    """What stands in a row of headings above others."""
    return {at.text for field in around.table.fields for at in field.heads if len(field.heads) > 1}
