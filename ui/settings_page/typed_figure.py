"""A shop's figure as it was typed: a number, with its own unit or another that measures the same.

No Qt.
"""

from __future__ import annotations

import re
from decimal import Decimal
from typing import Final

from charts.notation import Reading, read_cell
from charts.quantities import FAMILY, Unit, converted
from charts.reason import Reason
from harmonizer.settings import setting_facts

_PLAIN: Final = re.compile(r"\d{1,6}(?:[.,]\d{0,6})?|[.,]\d{1,6}")
_UNITS: Final = {"cm": Unit.CM, "kg": Unit.KG}


def typed_figure(key: str, text: str) -> float | Reason:
    """The figure in the setting's own unit, or why there is none.

    ``3 1/2 in`` and ``35 mm`` are taken for a length in cm, ``4 lb`` for kg.
    """
    plain = text.strip()
    if _PLAIN.fullmatch(plain):
        return float(Decimal(plain.replace(",", ".")))
    reading = read_cell(plain)
    quantity = reading.quantity
    if reading.reading is not Reading.READ or quantity is None or quantity.value is None:
        return Reason("refused-figure")
    own = _UNITS.get(setting_facts()[key].unit)
    if quantity.unit is None:
        return float(quantity.value.value)
    if own is None or FAMILY[quantity.unit] is not FAMILY[own]:
        return Reason("refused-unit")
    return float(converted(quantity.value.value, quantity.unit, own))
