"""The ends of a printed figure, as numbers that can be put in order; never what is stored."""

from __future__ import annotations

import re
from decimal import Decimal
from functools import lru_cache
from typing import Final, NamedTuple

from charts.quantities import Unit

FIGURE: Final = r"(?:\d{1,3}(?:[.,]\d{1,2})?(?:\s?[½¼¾])?)"
JOINT: Final = r"\s*(?:[-‐‑‒–—―−~～]|\b(?:to|bis|à|al?|tot|til|till|do|až|até|до)\b)\s*"
_UNITS: Final = {
    "cm": Unit.CM, "cms": Unit.CM, "mm": Unit.MM, "in": Unit.IN, "ins": Unit.IN, "inch": Unit.IN,
    "inches": Unit.IN, '"': Unit.IN, "”": Unit.IN, "″": Unit.IN, "“": Unit.IN, "kg": Unit.KG,
    "kgs": Unit.KG, "lb": Unit.LB, "lbs": Unit.LB, "см": Unit.CM, "кг": Unit.KG,
}  # fmt: skip
UNIT: Final = rf"(?:{'|'.join(sorted(map(re.escape, _UNITS), key=len, reverse=True))})"
_SPAN: Final = re.compile(
    rf"\D{{0,12}}?(?P<low>{FIGURE})\s?(?P<unit>{UNIT})?"
    rf"(?:(?<=[\d\s½¼¾\"”″“mgsnhbмг]){JOINT}(?P<high>{FIGURE})\s?(?P<last>{UNIT})?)?"
    rf"\s?(?:[(/].*|\D{{0,12}})",
    re.IGNORECASE,
)
_PARTS: Final = {"½": Decimal("0.5"), "¼": Decimal("0.25"), "¾": Decimal("0.75")}


class Span(NamedTuple):
    """A figure's ends as printed; ``low`` is ``high`` for a single one, ``unit`` is the cell's."""

    low: Decimal
    high: Decimal
    unit: Unit | None

    @property
    def single(self) -> bool:
        """Whether one figure alone was printed."""
        return self.low == self.high


@lru_cache(maxsize=8192)
def span_of(text: str) -> Span | None:
    """The ends of a printed figure, its first reading where two units are printed; else None."""
    found = _SPAN.fullmatch(text.strip())
    if found is None:
        return None
    low = _number(found["low"])
    high = _number(found["high"]) if found["high"] else low
    unit = found["last"] or found["unit"]
    return Span(low, high, _UNITS[unit.lower()] if unit else None)


def _number(text: str) -> Decimal:
    part = _PARTS.get(text[-1], Decimal(0))
    return Decimal(text.rstrip("½¼¾ ").replace(",", ".")) + part
