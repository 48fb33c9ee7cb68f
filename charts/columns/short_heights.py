"""Heights that no grown-up has, beside letters for sizes: how high the garment is.

``Height (in)`` over ``30, 31, 32`` for S, M, L stands for the length of a shirt where a text was
translated, ``body_height`` where a program was fed. As heights they would be nobody's and, in
inches, a baby's.
"""

from __future__ import annotations

from collections.abc import Sequence
from decimal import Decimal
from typing import Final

from charts.columns.fitting import printed_figures
from charts.columns.halves import letters_of_grown_ups
from charts.columns.long_backs import answered, taken_for_the_first
from charts.columns.meaning import Column
from charts.columns.words import Surroundings
from charts.quantities import Unit, canonical
from charts.schema import Dimension

_LEAST_CM: Final = Decimal(92)
"""Who is less tall is called by an age or a height (common practice, no source)."""
_A_LENGTH: Final = (Dimension.OTHER, Dimension.HEIGHT)


def heights_doubted(columns: Sequence[Column], around: Surroundings) -> list[Column]:
    """The columns with heights that are too small even in inches taken for lengths, and asked.

    Under a printed cm the figures themselves are asked about: they fit inches as often.
    """
    small = [one for one in columns if _too_small(one)]
    others = [one for one in columns if one not in small]
    if not small or not letters_of_grown_ups(others, around):
        return list(columns)
    return [
        taken_for_the_first(one, _A_LENGTH, around)
        if one in small and not answered(one, around)
        else one
        for one in columns
    ]


def _too_small(column: Column) -> bool:
    if column.dimension is not Dimension.HEIGHT or column.doubted:
        return False
    figures = printed_figures(column.field)
    if column.unit not in {None, Unit.IN} or any(own not in {None, Unit.IN} for _, own in figures):
        return False
    return bool(figures) and canonical(max(value for value, _ in figures), Unit.IN) < _LEAST_CM
