"""Two figures, or two ranges, for one measure in one cell: always asked, with what they may be."""

from __future__ import annotations

import re
from collections.abc import Callable
from decimal import Decimal
from typing import Final

from charts.cell_reading import CellReading, Quantity, Reading
from charts.grammar.outcome import asked
from charts.grammar.ranges import quantity
from charts.grammar.senses import BREAK, END
from charts.grammar.settle import settle
from charts.grammar.tokens import Cell
from charts.schema import Kind

Reader = Callable[[str], CellReading]
_EITHER_OR: Final = re.compile(
    r"\s+(?:or|oder|ou|of|eller|oppure|lub|nebo|alebo)\s+(?=\d)", re.IGNORECASE
)
_LEAST: Final = Decimal(20)
"""Below this two figures are as often two sizes, 10 over 12, as a range (common practice)."""
_WIDEST: Final = Decimal("1.3")
"""How much larger the upper end of one size's range is at most (common practice)."""


def two_lines(cell: Cell) -> CellReading | None:
    """158 over 164 in one cell: the two ends of a range whose sign is lost, or two sizes' figures.

    Figures of which one is the other in inches are no such pair; they are read before.
    """
    first = quantity(cell, 0)
    if first is None or not cell.senses[first[1]] & BREAK:
        return None
    second = quantity(cell, first[1] + 1)
    if second is None or cell.senses[second[1]] != END:
        return None
    lower = settle(first[0], cell.expected, cell.text(0, first[1]))
    upper = settle(second[0], cell.expected, cell.text(first[1] + 1, second[1]))
    if lower is None or upper is None or lower.doubt or upper.doubt:
        return None
    span = _span(lower.quantity, upper.quantity, cell.plain)
    return None if span is None else asked("separator-lost", span, ((span, "hyphen-lost"),))


def _span(lower: Quantity, upper: Quantity, text: str) -> Quantity | None:
    low, high = lower.value, upper.value
    unit = lower.unit or upper.unit
    if low is None or high is None or {lower.unit, upper.unit} - {unit, None}:
        return None
    if not _LEAST < low.value < high.value < _WIDEST * low.value:
        return None
    return Quantity(Kind.RANGE, text, low, high, unit=unit)


def either_or(cell: Cell, read: Reader) -> CellReading | None:
    """44-46 or 46-48: a size for either; which one is meant is not said."""
    parts = _EITHER_OR.split(cell.plain)
    if len(parts) != 2:
        return None
    one, two = (read(part) for part in parts)
    first, second = one.quantity, two.quantity
    if not one.reading is two.reading is Reading.READ or first is None or second is None:
        return None
    unit = first.unit or second.unit
    if {first.kind, second.kind} != {Kind.RANGE} or {first.unit, second.unit} - {unit, None}:
        return None
    span = first._replace(text=cell.plain, high=second.high, unit=unit)
    readings = (
        (first._replace(unit=unit), "first-range"),
        (second._replace(unit=unit), "second-range"),
        (span, "whole-span"),
    )
    return asked("double-range", None, readings)
