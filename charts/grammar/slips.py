"""Cells that no rule of the grammar covers but a known slip explains: each becomes a question."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator
from decimal import Decimal
from typing import Final

from charts.cell_reading import CellReading, Expected, Quantity, Reading
from charts.date_texts import month_and_day
from charts.grammar.outcome import asked
from charts.grammar.ranges import lost_plus_minus, quantity
from charts.grammar.senses import DASH, END, NUMBER, RANGE_MARK
from charts.grammar.settle import settle
from charts.grammar.tokens import Cell
from charts.grammar.two_figures import either_or, two_lines
from charts.plausible_ranges import plausible
from charts.quantities import FAMILY, Family, Figure, Unit
from charts.schema import Dimension, Kind
from charts.size_labels import LabelKind, read_label

Reader = Callable[[str], CellReading]

_GLUED: Final = re.compile(r"(?<![\d/.,])(\d{1,3})([13579])/(2|4|8)(?![\d/])")
_RUN_ON: Final = re.compile(r"(\d{4,6})")
_SERIAL: Final = range(36526, 55001)
_LABELLED: Final = (
    re.compile(r"(?P<label>[^()]{1,24}?) ?\((?P<rest>[^()]+)\)"),
    re.compile(r"(?P<label>[^:=]{1,24}?) ?[:=] ?(?P<rest>.+)"),
    re.compile(r"(?P<label>[^\d]{1,24}?) ?- ?(?P<rest>\d.*)"),
    re.compile(r"(?P<label>[^ ]{1,12}) (?P<rest>.+)"),
)
_WORDY: Final = frozenset({LabelKind.ALPHA, LabelKind.COMBINED, LabelKind.WORD})


def slip(cell: Cell, read: Reader) -> CellReading | None:
    """The question, or the labelled quantity, that explains a cell; None when nothing does.

    ``read`` reads a text in the light of the same column.
    """
    return (
        _lost_plus_minus(cell)
        or _turned_to_date(cell)
        or _three_numbers(cell)
        or _double_range(cell)
        or either_or(cell, read)
        or two_lines(cell)
        or _glued_fraction(cell, read)
        or _labelled(cell, read)
    )


def _lost_plus_minus(cell: Cell) -> CellReading | None:
    parsed = lost_plus_minus(cell, 0)
    if parsed is None or cell.senses[parsed[1]] != END:
        return None
    settled = settle(parsed[0], cell.expected, cell.plain)
    if settled is None or settled.doubt is None:
        return None
    found = settled.quantity
    return asked(settled.doubt.code, found, ((found, settled.doubt.evidence),))


def _turned_to_date(cell: Cell) -> CellReading | None:
    found = month_and_day(cell.plain)
    return None if found is None else asked_of_date(cell.plain, *found, cell.expected)


def asked_of_date(text: str, month: int, day: int, expected: Expected) -> CellReading:
    """The question about a date where figures are expected, its two numbers as candidates.

    In a range the smaller stands first, so both date orders give the same one. A height keeps
    both orders, since 5-4 and 4-5 differ.
    """
    if expected.dimension is Dimension.HEIGHT:
        both = ((month, day, "month-day"), (day, month, "day-month"))
        heights = tuple(
            (Quantity(Kind.SINGLE, text, value=_whole(feet * 12 + rest), unit=Unit.IN), why)
            for feet, rest, why in both
            if 4 <= feet <= 6 and rest < 12
        )
        return asked("was-a-date", None, heights)
    low, high = sorted((month, day))
    unit = Unit.YEARS if expected.dimension is Dimension.AGE else None
    span = Quantity(Kind.RANGE, text, _whole(low), _whole(high), unit=unit)
    return asked("was-a-date", None, ((span, "day-month"),))


def _whole(number: int) -> Figure:
    return Figure(Decimal(number), Decimal(1))


def _three_numbers(cell: Cell) -> CellReading | None:
    """85-60-90 is bust, waist and hip, no range."""
    senses = cell.senses[:5]
    shape = all(sense & (DASH if place % 2 else NUMBER) for place, sense in enumerate(senses))
    return CellReading(Reading.UNREAD, code="double-range") if shape else None


def _double_range(cell: Cell) -> CellReading | None:
    """20-23 to 23-25: one of the two, or the span of both."""
    first = quantity(cell, 0)
    if first is None or not cell.senses[first[1]] & RANGE_MARK:
        return None
    second = quantity(cell, first[1] + 1)
    if second is None or cell.senses[second[1]] != END:
        return None
    lower = settle(first[0], cell.expected, cell.text(0, first[1]))
    upper = settle(second[0], cell.expected, cell.text(first[1] + 1, second[1]))
    if lower is None or upper is None:
        return None
    one, two = lower.quantity, upper.quantity
    unit = one.unit or two.unit
    if one.low is None or two.high is None or {one.unit, two.unit} - {unit, None}:
        return None
    span = one._replace(text=cell.plain, high=two.high, unit=unit)
    candidates = (
        (one._replace(unit=unit), "first-range"),
        (two._replace(unit=unit), "second-range"),
        (span, "whole-span"),
    )
    return asked("double-range", None, candidates)


def run_on(cell: Cell) -> CellReading | None:
    """3050 lbs: a hyphen lost at a line end; 45577: a date kept as its serial number.

    A number of four digits reads as one value too, so this is asked before it is read.
    """
    if cell.count > 2 or not _RUN_ON.fullmatch(cell.texts[0]):
        return None
    first, unit_text = cell.texts[0], cell.units[1]
    if cell.senses[1] != END and (unit_text is None or cell.senses[2] != END):
        return None
    unit = _unit_of(unit_text) or cell.expected.unit
    candidates = tuple(_split(first, unit, cell))
    if candidates:
        return asked("separator-lost", None, candidates)
    if unit_text is None and cell.expected.dimension and int(first) in _SERIAL:
        return asked("was-a-date", None)
    return None


def _unit_of(printed: str | None) -> Unit | None:
    return Unit(printed) if printed in {"mm", "cm", "m", "in", "kg", "lb", "g"} else None


def _split(digits: str, unit: Unit | None, cell: Cell) -> Iterator[tuple[Quantity, str]]:
    """Both ways to cut the digits into a rising range that is plausible in its unit."""
    if unit in {None, Unit.MM}:
        return
    for cut in {len(digits) // 2, len(digits) - len(digits) // 2}:
        low, high = digits[:cut], digits[cut:]
        span = Quantity(Kind.RANGE, f"{low}-{high}", _whole(int(low)), _whole(int(high)), unit=unit)
        rising = not high.startswith("0") and int(low) < int(high) < 2 * int(low)
        if rising and _plausible(span, unit, cell.expected.dimension):
            yield span, "hyphen-lost"


def _plausible(span: Quantity, unit: Unit | None, dimension: Dimension | None) -> bool:
    if unit is None or span.low is None or span.high is None:
        return False
    measured = dimension or (Dimension.WEIGHT if FAMILY[unit] is Family.MASS else Dimension.CHEST)
    limits = plausible(measured, unit)
    return limits is None or limits[0] <= span.low.value <= span.high.value <= limits[1]


def _glued_fraction(cell: Cell, read: Reader) -> CellReading | None:
    """341/2 is 34 1/2 whose space was lost."""
    spaced = _GLUED.sub(_respaced, cell.plain)
    if spaced == cell.plain:
        return None
    found = read(spaced)
    if found.reading is not Reading.READ or found.quantity is None:
        return None
    return asked("separator-lost", None, ((found.quantity, "fraction-glued"),))


def _respaced(match: re.Match[str]) -> str:
    whole, over, under = match.groups()
    return f"{whole} {over}/{under}" if int(over) < int(under) else match[0]


def _labelled(cell: Cell, read: Reader) -> CellReading | None:
    """L (bis 60 kg), S bis 20 kg, Small - 36"-38": a size and its quantity in one cell.

    Only where a unit stands in the cell: no value is made from a label.
    """
    if not any(cell.units):
        return None
    for form in _LABELLED:
        match = form.fullmatch(cell.plain)
        label = read_label(match["label"]) if match else None
        if match is None or label is None or label.kind not in _WORDY or label.doubtful:
            continue
        found = read(match["rest"])
        if found.quantity is not None and found.quantity.unit and found.label is None:
            return found._replace(label=match["label"].strip())
    return None
