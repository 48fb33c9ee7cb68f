"""A garment's measures in a table that gives the wearer's height as well.

Beside a height or a weight a figure is the body's. It need not be where the height is given as a
range, for whom a size is, and the other figures as single ones beside a measure of the garment;
nor is a back the body's that is longer than any.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal
from typing import Final

from charts.columns.fitting import printed_figures
from charts.columns.loose_backs import is_a_garments_length
from charts.columns.meaning import Column
from charts.layout.fields import Field
from charts.layout.looks import look
from charts.quantities import Unit, canonical
from charts.schema import Basis, Definition, Dimension, Kind

_SPANS: Final = frozenset({Dimension.HEIGHT, Dimension.WEIGHT})
_MEASURED: Final = frozenset(
    {
        *(Dimension.CHEST, Dimension.WAIST, Dimension.HIP),
        *(Dimension.BACK_LENGTH, Dimension.ARM_LENGTH, Dimension.SHOULDER_BREADTH),
    }
)
_LONGEST_BACK_CM: Final = Decimal(58)
"""No body is longer from the nape to the waist (common practice, no source)."""


def garments_beside_heights(
    columns: Sequence[Column], said_outright: Sequence[Column]
) -> list[Column]:
    """The columns that may be the garment's marked so, but for those that say whose they are."""
    doubtful = {one.number for one in columns if _too_long(one)}
    if any(_in_ranges(one) for one in columns) and any(_of_the_garment(one) for one in columns):
        doubtful |= {one.number for one in columns if _single(one)}
    sure = {one.number for one in said_outright}
    return [
        replace(one, basis=Basis.UNKNOWN, garment_sign=True)
        if one.number in doubtful - sure and one.basis in {Basis.UNKNOWN, Basis.BODY}
        else one
        for one in columns
    ]


def _too_long(column: Column) -> bool:
    """A back longer than any body's, and no word from where to where it was measured."""
    back = column.dimension is Dimension.BACK_LENGTH and column.definition is Definition.UNKNOWN
    figures = [
        canonical(value, own or column.unit or Unit.CM)
        for value, own in printed_figures(column.field)
    ]
    return back and bool(figures) and min(figures) > _LONGEST_BACK_CM


def _in_ranges(column: Column) -> bool:
    """A height or a weight most of whose cells are ranges or open: for whom a size is."""
    if column.dimension not in _SPANS:
        return False
    kinds = _kinds(column.field)
    return 2 * sum(kind is not Kind.SINGLE for kind in kinds) > len(kinds)


def _single(column: Column) -> bool:
    kinds = _kinds(column.field)
    return column.dimension in _MEASURED and bool(kinds) and set(kinds) == {Kind.SINGLE}


def _of_the_garment(column: Column) -> bool:
    """A width, a hem, a length of the garment itself, half a girth, or a back no body has."""
    if is_a_garments_length(column) or _too_long(column):
        return True
    return column.garment_sign or column.basis in {Basis.FINISHED, Basis.FLAT}


def _kinds(field: Field) -> list[Kind]:
    readings = [look(at.text).reading.quantity for cell in field.cells for at in cell]
    return [one.kind for one in readings if one is not None]
