"""One quantity as a person typed it: a single value with its unit, or the reason it is none."""

from __future__ import annotations

from dataclasses import dataclass
from decimal import Decimal
from typing import Final

from charts.notation import CellReading, Expected, Quantity, Reading, read_cell
from charts.quantities import FAMILY, Family, Unit, canonical
from charts.reason import Reason
from charts.schema import Dimension, Kind

_OF_A_CHART_ONLY: Final = frozenset({"laid-flat", "units-disagree"})
"""What a cell is asked for its column's sake: halves, and a unit that is not the heading's."""


@dataclass(frozen=True, slots=True)
class TypedQuantity:
    """``value`` in cm, kg or years, with the text and the unit as they were typed."""

    value: Decimal
    text: str
    unit: Unit


def read_quantity(
    text: str, family: Family, unit: Unit | None = None, dimension: Dimension | None = None
) -> TypedQuantity | Reason:
    """The single value ``text`` says; a unit in the text goes before ``unit``.

    What is no single value, can be read two ways, or has no unit comes back as a Reason of the
    topic ``rider``: nothing is guessed.
    """
    reading = read_cell(text, Expected(dimension=dimension, unit=unit))
    if reading.quantity is None or not (reading.reading is Reading.READ or _plain(reading, unit)):
        return _refused(text, reading)
    value = _single(reading.quantity)
    if value is None:
        return Reason("not-one-value", {"text": text})
    found = reading.quantity.unit or unit
    if found is None:
        return Reason("no-unit", {"text": text})
    if FAMILY[found] is not family:
        return Reason("wrong-unit", {"text": text, "unit": found.value})
    return TypedQuantity(canonical(value, found), text, found)


def _plain(reading: CellReading, unit: Unit | None) -> bool:
    """A value with its unit that is only unlikely of a body: no doubt about what was typed.

    Whether a body can measure so is asked where the value stands beside the others ("inches?").
    """
    said = reading.quantity is not None and (reading.quantity.unit or unit) is not None
    slip = reading.code == "impossible" and any(
        why == "other-unit" for _, why in reading.candidates
    )
    unlikely = slip or reading.code in _OF_A_CHART_ONLY
    return reading.reading is Reading.ASK and said and unlikely


def _single(quantity: Quantity) -> Decimal | None:
    if quantity.kind is not Kind.SINGLE or quantity.value is None or quantity.value.value < 0:
        return None
    return quantity.value.value


def _refused(text: str, reading: CellReading) -> Reason:
    if reading.quantity is not None and _single(reading.quantity) == 0:
        return Reason("not-one-value", {"text": text})
    if reading.code == "impossible":
        return Reason("no-body", {"text": text})
    if reading.reading is Reading.ASK:
        return Reason("two-readings", {"text": text})
    return Reason("not-read", {"text": text})
