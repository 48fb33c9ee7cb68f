"""``71.75`` among ranges of whole figures: a full stop or comma typed where a hyphen was meant.

It is asked about, with the range as the reading where it is as wide as those of the column.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from decimal import Decimal
from typing import Final

from charts.cell_reading import CellReading, Quantity, Reading
from charts.columns.meaning import Column
from charts.grammar.outcome import asked
from charts.layout.looks import look
from charts.notation import Expected, read_cell
from charts.schema import Kind

_TWO: Final = re.compile(r"\s*(\d{2,3})\s?[.,]\s?(\d{2,3})\s*([^\W\d_]{0,6}\.?|\")\s*")
_OTHERS: Final = 2
"""Ranges beside it that show what the column holds."""
_WIDER: Final = Decimal(2)
"""How much wider or narrower than the others it may be (common practice, no source)."""


def stop_for_a_hyphen(reading: CellReading, text: str, column: Column) -> CellReading:
    """The reading of a cell, as the range that it may have been in a column of ranges."""
    parts = _TWO.fullmatch(text)
    single = reading.quantity
    if parts is None or single is None or single.kind is not Kind.SINGLE:
        return reading
    if reading.reading is not Reading.READ or int(parts[1]) >= int(parts[2]):
        return reading
    widths = _widths(column)
    width = int(parts[2]) - int(parts[1])
    if len(widths) < _OTHERS or not min(widths) / _WIDER <= width <= max(widths) * _WIDER:
        return reading
    expected = Expected(column.dimension, column.unit, definition=column.definition)
    span = read_cell(f"{parts[1]}-{parts[2]} {parts[3]}", expected)
    if span.reading is not Reading.READ or span.quantity is None:
        return reading
    ranged = span.quantity._replace(text=f"{parts[1]}-{parts[2]}")
    return asked("separator-lost", ranged, ((ranged, "hyphen-lost"), (single, "as-printed")))


def _widths(column: Column) -> Sequence[Decimal]:
    """How wide the ranges of a column are, where most of its cells are ranges of whole figures."""
    found = [
        q for cell in column.field.cells for at in cell if (q := look(at.text).reading.quantity)
    ]
    ranges = [one for one in found if one.kind is Kind.RANGE]
    if 2 * len(ranges) <= len(found) or not all(map(_whole, ranges)):
        return []
    return [one.high.value - one.low.value for one in ranges if one.high and one.low]


def _whole(one: Quantity) -> bool:
    return all(end is None or end.value == int(end.value) for end in (one.low, one.high))
