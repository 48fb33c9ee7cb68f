"""``± 38`` among or in place of the figures of a measure: about so much, as Dutch charts write it.

A tolerance is far smaller than what any body measures. Where one sign stands before every figure of
a column, and the figure is always the same, it may still be one.
"""

from __future__ import annotations

from dataclasses import replace

from charts.cell_reading import CellReading
from charts.columns.meaning import Column
from charts.columns.words import family_of
from charts.layout.looks import look
from charts.layout.view import At
from charts.notation import Quantity, Reading
from charts.plausible_ranges import plausible
from charts.quantities import CANONICAL
from charts.schema import Dimension, Kind


def with_abouts(column: Column) -> Column:
    """The column, told to read such cells as about so much."""
    field = column.field
    signed = {
        line: quantity
        for line, cell in enumerate(field.cells)
        if len(cell) == 1 and (quantity := _signed(cell[0])) is not None
    }
    if not signed or column.dimension is Dimension.OTHER:
        return column
    others = any(cell and line not in signed for line, cell in enumerate(field.cells))
    figures = {one.tolerance.value for one in signed.values() if one.tolerance}
    if not (others or len(figures) > 1) or not all(_a_body(one, column) for one in signed.values()):
        return column
    return replace(column, signs_mean_about=True)


def as_about(reading: CellReading) -> CellReading:
    """A tolerance of such a column as the figure that it is."""
    quantity = reading.quantity
    if reading.reading is not Reading.TOLERANCE or quantity is None:
        return reading
    about = quantity._replace(
        kind=Kind.SINGLE, value=quantity.tolerance, tolerance=None, circa=True
    )
    return CellReading(Reading.READ, about)


def _signed(at: At) -> Quantity | None:
    reading = look(at.text).reading
    return reading.quantity if reading.reading is Reading.TOLERANCE else None


def _a_body(one: Quantity, column: Column) -> bool:
    """Whether a body can measure what the cell would allow."""
    unit = one.unit or column.unit or CANONICAL[family_of(column.dimension)]
    limits = plausible(column.dimension, unit, column.definition)
    figure = one.tolerance
    return bool(limits and figure and limits[0] <= figure.value <= limits[1])
