"""Whose measure a doubted column is taken for until somebody says it: the garment's, by its words.

A width is measured on what lies on the table. The reading is only the best one: the question whose
measure it is stays at every value, and nothing of a garment is ever compared with a body.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from typing import Final

from charts.columns.fitting import printed_figures
from charts.columns.meaning import Column
from charts.columns.words import Surroundings
from charts.plausible_ranges import half_of_a_girth
from charts.schema import Basis, Dimension

_GIRTHS: Final = frozenset({Dimension.CHEST, Dimension.WAIST, Dimension.HIP})
_ACROSS: Final = _GIRTHS | {Dimension.OTHER}
_ASKED: Final = frozenset({"basis-doubtful", "laid-flat"})


def taken_for_garments(columns: Sequence[Column], around: Surroundings) -> list[Column]:
    """The columns asked about as a garment's, with what their own heading speaks for."""
    asking = {one.id for one in around.log.findings if one.code in _ASKED}
    return [_taken(one) if asking.intersection(one.findings) else one for one in columns]


def _taken(column: Column) -> Column:
    """What is called a width is half of a girth where its figures can be, and whole where not.

    Another name of garments, as large as a girth, is left open: in some languages the girth itself
    is called so.
    """
    heading, unsaid = column.field.heading, column.basis is Basis.UNKNOWN
    if column.dimension in _GIRTHS and _can_be_halves(column):
        finished = column.laid_flat and column.basis is Basis.FINISHED
        halved = finished or (heading.garment_sign and unsaid)
        return replace(column, basis=Basis.FLAT) if halved else column
    across = heading.across and column.dimension in _ACROSS
    return replace(column, basis=Basis.FINISHED) if across and unsaid else column


def _can_be_halves(column: Column) -> bool:
    for value, own in printed_figures(column.field):
        unit = own or column.unit
        half = half_of_a_girth(column.dimension, unit) if unit else None
        if half is None or not half[0] <= value <= half[1]:
            return False
    return True
