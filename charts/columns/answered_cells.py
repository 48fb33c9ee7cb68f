"""Answers to the question of one cell: a reading taken, or the print confirmed."""

from __future__ import annotations

from dataclasses import replace
from decimal import Decimal
from typing import Final

from charts.answering import Answering
from charts.answers import AsPrinted, Taken
from charts.cell_reading import CellReading, Quantity, Reading
from charts.columns.dates import Undone, feet_and_inches
from charts.quantities import Unit, canonical
from charts.schema import Kind, Range

_ASKING: Final = frozenset({Reading.ASK, Reading.UNREAD})
_AS_PRINTED: Final = "as-printed"
_ORDERS: Final = ("month-day", "day-month")
"""Why a date can be a height, in the order of ``feet_and_inches``."""


def answered_cell(reading: CellReading, text: str, place: str, answering: Answering) -> CellReading:
    """``reading`` of the cell at ``place``, as the person who was asked about it reads it."""
    if reading.reading not in _ASKING or not answering.answers:
        return reading
    for answer, taken in answering.of(Taken):
        chosen = _candidate(reading, taken.why, taken.text)
        if taken.place == place and chosen is not None:
            answering.use(answer)
            return _read(reading, chosen)
    for answer, right in answering.of(AsPrinted):
        chosen = _candidate(reading, _AS_PRINTED) or reading.quantity
        if (right.place, right.text) == (place, text.strip()) and chosen is not None:
            answering.use(answer)
            return _read(reading, chosen)
    return reading


def dated_height(found: Range, undone: Undone, why: str | None) -> Range:
    """A height that had become a date, in the order of feet and inches that a person gave."""
    if why not in _ORDERS:
        return found
    inches = feet_and_inches(undone)[_ORDERS.index(why)]
    value, step = canonical(inches, Unit.IN), canonical(Decimal(1), Unit.IN)
    return replace(found, kind=Kind.SINGLE, value=value, low_step=step, high_step=step)


def _candidate(reading: CellReading, why: str, text: str | None = None) -> Quantity | None:
    for quantity, reason in reading.candidates:
        if reason == why and text in (None, quantity.text):
            return quantity
    return None


def _read(reading: CellReading, quantity: Quantity) -> CellReading:
    return reading._replace(reading=Reading.READ, quantity=quantity, code=None, candidates=())
