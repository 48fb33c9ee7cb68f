"""Lengths that no garment has, under a word that can be how tall somebody is.

One row that lost a cell, or a note about the garment, keeps ``Altura 108-118, 118-128`` from being
heights. As lengths of garments they would be believed beside a chest of 66; they are asked about.
"""

from __future__ import annotations

from collections.abc import Sequence
from decimal import Decimal
from typing import Final

from charts.columns.girths_beside import girths_beside, in_canonical_by_line, share_of_girth
from charts.columns.long_backs import answered, taken_for_the_first
from charts.columns.meaning import Column
from charts.columns.words import Surroundings
from charts.dimensions import Role, read_heading
from charts.schema import Dimension

_TALL: Final = (Role.MEASURE, Dimension.HEIGHT)
_A_LENGTH: Final = (Role.MEASURE, Dimension.OTHER)
_LONGEST_CM: Final = Decimal(150)
_SHORTEST_CM: Final = Decimal(20)
"""No garment is longer or shorter (common practice, no source)."""
_FEWEST: Final = 3


def too_long_asked(columns: Sequence[Column], around: Surroundings) -> list[Column]:
    """The columns, lengths that may be heights and are no garment's with a question."""
    return [
        taken_for_the_first(one, (Dimension.OTHER, Dimension.HEIGHT), around)
        if _no_garments(one, columns) and not answered(one, around)
        else one
        for one in columns
    ]


def _no_garments(column: Column, columns: Sequence[Column]) -> bool:
    if column.dimension is not Dimension.OTHER or column.findings or column.doubted:
        return False
    figures = in_canonical_by_line(column)
    if len(figures) < _FEWEST or _SHORTEST_CM < max(figures.values()) <= _LONGEST_CM:
        return False
    meant = set(read_heading(column.field.printed_heading).candidates)
    if _TALL not in meant or meant - {_TALL, _A_LENGTH}:
        return False  # "Height v-neck" is that of a place
    if max(figures.values()) <= _SHORTEST_CM:
        return True
    girths = girths_beside(column, columns)
    both = figures.keys() & girths.keys()
    longest = share_of_girth("garment_length")[1]
    beyond = sum(figures[line] > girths[line] * longest for line in both)
    return len(both) >= _FEWEST and 4 * beyond >= 3 * len(both)
