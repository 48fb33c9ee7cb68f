"""What a cell was read as, told in one short line that is easy to compare.

"[34, 36] in", "(15, 25] kg" (15 itself left out), "[.., 79) cm", "[70, ..] in", "82.5 cm",
"~82 cm", "96 ±2", "ask double-range: ...", "unread double-range", "blank", "note", "tolerance ±1".
"""

from __future__ import annotations

from decimal import Decimal

from charts.notation import CellReading, Expected, Quantity, Reading, read_cell
from charts.quantities import Figure, Unit
from charts.schema import Dimension, Kind


def number(figure: Figure | None) -> str:
    """A figure without needless zeros, ".." where there is none."""
    if figure is None:
        return ".."
    text = f"{figure.value.normalize():f}"
    return text if Decimal(text) == figure.value else f"{figure.value}"


def told_quantity(quantity: Quantity | None) -> str:
    """One quantity in a line."""
    if quantity is None:
        return "nothing"
    if quantity.kind is Kind.SINGLE:
        text = number(quantity.value)
    elif quantity.kind is Kind.UNREAD:
        text = ""
    else:
        left = "[" if quantity.low_included else "("
        right = "]" if quantity.high_included else ")"
        text = f"{left}{number(quantity.low)}, {number(quantity.high)}{right}"
    if quantity.circa:
        text = f"~{text}"
    if quantity.tolerance is not None:
        text = f"{text} ±{number(quantity.tolerance)}".strip()
    return f"{text} {quantity.unit.value}" if quantity.unit is not None else text


def told_reading(reading: CellReading) -> str:
    """One reading in a line; the second unit behind "also", the label in front."""
    parts = []
    if reading.label is not None:
        parts.append(f"{reading.label}:")
    if reading.reading is not Reading.READ:
        parts.append(reading.reading.value)
    if reading.code is not None:
        parts.append(reading.code)
    if reading.quantity is not None:
        parts.append(told_quantity(reading.quantity))
    if reading.also is not None:
        parts.append(f"also {told_quantity(reading.also)}")
    return " ".join(parts)


def told(
    text: str,
    dimension: Dimension | None = None,
    unit: Unit | None = None,
    second_unit: Unit | None = None,
) -> str:
    """What ``text`` is read as in a column of ``dimension`` and ``unit``."""
    return told_reading(read_cell(text, Expected(dimension, unit, second_unit)))


def candidates(text: str, expected: Expected = Expected()) -> list[str]:  # noqa: B008 - frozen
    """The readings offered for ``text``, each with its evidence."""
    found = read_cell(text, expected).candidates
    return [f"{told_quantity(quantity)} ({why})" for quantity, why in found]
