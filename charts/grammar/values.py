"""One value of a cell: a number with its unit, feet and inches, stones and pounds, metres."""

from __future__ import annotations

from decimal import Decimal
from typing import Final

from charts.grammar.numbers import Doubt, Found, Value, number
from charts.grammar.senses import DASH, FOOT, NUMBER, UNIT
from charts.grammar.tokens import Cell
from charts.quantities import Figure, Unit
from charts.schema import Dimension
from charts.unit_words import MONTHS

INCHES_OF_A_FOOT: Final = 12
POUNDS_OF_A_STONE: Final = 14
_HEAVIEST_STONES: Final = 40
_ONE: Final = Decimal(1)
_THOUSANDTH: Final = Decimal("0.001")


def value(cell: Cell, at: int) -> Found:
    """The value that begins at a token, and the token after it; None when there is none."""
    read = number(cell, at)
    if read is None:
        return None
    figure, after = read
    unit = cell.units[after]
    if unit is None:
        return read
    if unit == "ft":
        return _feet(cell, figure, after)
    if unit == "st":
        return _stones(cell, figure, after)
    if unit == "m" and cell.senses[after + 1] & NUMBER:
        return _metres(cell, figure, after)
    if unit in {MONTHS, "years"} and not _ages_are_expected(cell):
        return None
    return with_unit(figure, unit), after + 1


def _ages_are_expected(cell: Cell) -> bool:
    """Elsewhere than in a column of ages an age is a size label, never a measurement."""
    return cell.expected.dimension is Dimension.AGE or cell.expected.unit is Unit.YEARS


def with_unit(read: Value, unit: str) -> Value:
    """A number with a unit behind it that takes no second number: 86 cm, 34 in."""
    if unit == "mm" and read.figure.step == _THOUSANDTH:
        return Value(read.figure, unit, doubt=Doubt("separator-lost", "thousands"))
    return Value(read.figure, unit, False, read.inch_notation and unit == "in", read.doubt)


def _feet(cell: Cell, feet: Value, at: int) -> Found:
    """5'4", 5'-1", 5 ft 4 in, 5'11 and 5': as inches when inches are printed."""
    if feet.figure.step != _ONE:
        return _decimal_feet(feet), at + 1
    joint = bool(cell.senses[at + 1] & DASH) and not (cell.spaced(at + 1) or cell.spaced(at + 2))
    inches = _inches_of_feet(cell, at + 1 + joint, behind_joint=joint)
    if inches is None:
        return Value(feet.figure, "ft", inch_notation=True), at + 1
    rest, after, marked = inches
    total = Figure(feet.figure.value * INCHES_OF_A_FOOT + rest.figure.value, rest.figure.step)
    doubt = None if marked or not joint else Doubt("feet-or-range", "feet-inches")
    return Value(total, "in", whole=True, inch_notation=True, doubt=doubt), after


def _inches_of_feet(cell: Cell, at: int, *, behind_joint: bool) -> tuple[Value, int, bool] | None:
    """The inches behind feet: (number, next token, whether an inch mark stands behind)."""
    read = number(cell, at)
    if read is None or read[0].figure.value >= INCHES_OF_A_FOOT:
        return None
    rest, after = read
    if cell.units[after] == "in":
        return rest, after + 1, True
    if cell.senses[after] & FOOT and not behind_joint:
        # 5'4 - 5'6': the mark of feet where that of inches belongs, at the very end of a value.
        return (rest, after + 1, True) if not cell.senses[after + 1] & NUMBER else None
    return None if cell.senses[after] & UNIT else (rest, after, False)


def _decimal_feet(feet: Value) -> Value:
    """5.4 ft may be meant as 5 ft 4 in: never read without a question."""
    return Value(feet.figure, "ft", doubt=Doubt("feet-or-range", "decimal-feet"))


def _stones(cell: Cell, stones: Value, at: int) -> Found:
    """9st 7lb, 9st 7, 9 st: as pounds. Elsewhere than for a weight 9ST is a size label."""
    elsewhere = cell.expected.dimension not in {None, Dimension.WEIGHT}
    if elsewhere or stones.figure.value > _HEAVIEST_STONES:
        return None
    if stones.figure.step != _ONE:
        doubt = Doubt("feet-or-range", "decimal-stones")
        return Value(stones.figure, "st", doubt=doubt), at + 1
    pounds = number(cell, at + 1)
    if pounds is None or pounds[0].figure.value >= POUNDS_OF_A_STONE:
        return Value(stones.figure, "st"), at + 1
    rest, after = pounds
    unit = cell.units[after]
    if unit not in {None, "lb"}:
        return Value(stones.figure, "st"), at + 1
    total = Figure(stones.figure.value * POUNDS_OF_A_STONE + rest.figure.value, rest.figure.step)
    return Value(total, "lb", whole=True), after + (unit == "lb")


def _metres(cell: Cell, metres: Value, at: int) -> Found:
    """1m55 and 1 m 55."""
    behind = cell.texts[at + 1]
    if metres.figure.step != _ONE or len(behind) != 2:
        return None
    hundredths = metres.figure.value + Decimal(behind) / 100
    return Value(Figure(hundredths, Decimal("0.01")), "m"), at + 2
