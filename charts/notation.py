"""The grammar of one cell: text to range, open end, single value, tolerance. It never guesses."""

from __future__ import annotations

import re
from decimal import Decimal
from functools import lru_cache
from typing import Final

from charts.cell_reading import CellReading, Expected, Quantity, Reading
from charts.cell_text import clean
from charts.quantities import Figure, Unit
from charts.schema import Kind

__all__ = ["CellReading", "Expected", "Quantity", "Reading", "read_cell"]

_UNITS: Final = {
    "cm": Unit.CM,
    "mm": Unit.MM,
    "in": Unit.IN,
    "inches": Unit.IN,
    '"': Unit.IN,
    "kg": Unit.KG,
    "lb": Unit.LB,
    "lbs": Unit.LB,
    "m": Unit.M,
}
_UNIT: Final = r"(cm|mm|inches|in|\"|kg|lbs?|m)?"
_NUMBER: Final = r"(\d+(?:[.,]\d{1,2})?(?: 1/2| 1/4| 3/4| [1357]/8)?)"
_SINGLE: Final = re.compile(rf"{_NUMBER} ?{_UNIT}")
_RANGE: Final = re.compile(rf"{_NUMBER} ?{_UNIT} ?(?:-|to|bis|à) ?{_NUMBER} ?{_UNIT}")
_HIGH: Final = re.compile(rf"(<|<=|bis|up to|max\.?) ?{_NUMBER} ?{_UNIT}")
_LOW: Final = re.compile(rf"(>|>=|über|over|ab|min\.?) ?{_NUMBER} ?{_UNIT}")
_BLANK: Final = frozenset({"", "-", "x", "n/a", "na", "n.a.", "none", "k.a.", "tbc", "?", "..."})
_LONGEST: Final = 200


def _figure(text: str) -> Figure:
    if " " in text:
        whole, fraction = text.split(" ")
        over, under = fraction.split("/")
        return Figure(Decimal(whole) + Decimal(over) / Decimal(under), Decimal(1) / Decimal(under))
    value = Decimal(text.replace(",", "."))
    exponent = value.as_tuple().exponent
    return Figure(value, Decimal(1).scaleb(exponent if isinstance(exponent, int) else 0))


@lru_cache(maxsize=65536)
def read_cell(text: str, expected: Expected = Expected()) -> CellReading:  # noqa: B008 - frozen
    """Read one cell in the light of its column; the whole cell must match."""
    if len(text) > _LONGEST:
        return CellReading(Reading.UNREAD, code="unreadable")
    plain = clean(text)
    low = plain.lower()
    if low in _BLANK:
        return CellReading(Reading.BLANK)
    del expected
    quantity = _quantity(plain, low)
    if quantity is not None:
        return CellReading(Reading.READ, quantity)
    if not any(character.isdigit() for character in low):
        return CellReading(Reading.NOTE)
    return CellReading(Reading.UNREAD, code="unreadable")


def _quantity(plain: str, low: str) -> Quantity | None:
    if match := _SINGLE.fullmatch(low):
        return Quantity(
            Kind.SINGLE, plain, value=_figure(match[1]), unit=_UNITS.get(match[2] or "")
        )
    if match := _RANGE.fullmatch(low):
        ends = _figure(match[1]), _figure(match[3])
        unit = _UNITS.get(match[4] or match[2] or "")
        if ends[0].value < ends[1].value:
            return Quantity(Kind.RANGE, plain, *ends, unit=unit)
    if match := _HIGH.fullmatch(low):
        unit = _UNITS.get(match[3] or "")
        return Quantity(
            Kind.AT_MOST, plain, high=_figure(match[2]), unit=unit, high_included=match[1] != "<"
        )
    if match := _LOW.fullmatch(low):
        unit = _UNITS.get(match[3] or "")
        included = match[1] not in {">", "über", "over"}
        return Quantity(
            Kind.AT_LEAST, plain, low=_figure(match[2]), unit=unit, low_included=included
        )
    return None
