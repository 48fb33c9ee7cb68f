"""One value of a cell: a number with its unit, feet and inches, stones and pounds, metres."""

from __future__ import annotations

from decimal import Decimal
from typing import Final, NamedTuple

from charts.grammar.numbers import Cell, Doubt, Number, number
from charts.grammar.senses import DASH, FOOT, NUMBER, UNIT
from charts.quantities import Figure, Unit
from charts.schema import Dimension
from charts.unit_words import MONTHS

INCHES_OF_A_FOOT: Final = 12
POUNDS_OF_A_STONE: Final = 14
_HEAVIEST_STONES: Final = 40
_ONE: Final = Decimal(1)
_THOUSANDTH: Final = Decimal("0.001")


class Value(NamedTuple):
    """One value: its figure in the printed ``unit`` ("ft", "months" too), None when none is.

    ``whole`` tells of feet with inches or stones with pounds: a bare number beside one cannot
    take its unit. ``inch_notation`` tells of fractions that only inches are written with.
    """

    figure: Figure
    unit: str | None = None
    whole: bool = False
    inch_notation: bool = False
    doubt: Doubt | None = None


Found = tuple[Value, int] | None


def value(cell: Cell, at: int) -> Found:
    """The value that begins at a token, and the token after it; None when there is none."""
    read = number(cell, at)
    if read is None:
        return None
    figure, after = read
    unit = cell.tokens[after].unit
    if unit is None:
        return _of_number(figure, None), after
    if unit == "ft":
        return _feet(cell, figure, after)
    if unit == "st":
        return _stones(cell, figure, after)
    if unit == "m" and cell.sense(after + 1) & NUMBER:
        return _metres(cell, figure, after)
    if unit in {MONTHS, "years"} and not _ages_are_expected(cell):
        return None
    return _of_number(figure, unit), after + 1


def _ages_are_expected(cell: Cell) -> bool:
    """Elsewhere than in a column of ages an age is a size label, never a measurement."""
    return cell.expected.dimension is Dimension.AGE or cell.expected.unit is Unit.YEARS


def _of_number(read: Number, unit: str | None) -> Value:
    if unit == "mm" and read.figure.step == _THOUSANDTH:
        return Value(read.figure, unit, doubt=Doubt("separator-lost", "thousands"))
    proof = read.inch_notation and unit in {None, "in"}
    return Value(read.figure, unit, inch_notation=proof, doubt=read.doubt)


def _feet(cell: Cell, feet: Number, at: int) -> Found:
    """5'4", 5'-1", 5 ft 4 in, 5'11 and 5': as inches when inches are printed."""
    if feet.figure.step != _ONE:
        return _decimal_feet(feet), at + 1
    joint = bool(cell.sense(at + 1) & DASH) and not (
        cell.tokens[at + 1].spaced or cell.tokens[at + 2].spaced
    )
    inches = _inches_of_feet(cell, at + 1 + joint, behind_joint=joint)
    if inches is None:
        return Value(feet.figure, "ft", inch_notation=True), at + 1
    rest, after, marked = inches
    total = Figure(feet.figure.value * INCHES_OF_A_FOOT + rest.figure.value, rest.figure.step)
    doubt = None if marked or not joint else Doubt("feet-or-range", "feet-inches")
    return Value(total, "in", whole=True, inch_notation=True, doubt=doubt), after


def _inches_of_feet(cell: Cell, at: int, *, behind_joint: bool) -> tuple[Number, int, bool] | None:
    """The inches behind feet: (number, next token, whether an inch mark stands behind)."""
    read = number(cell, at)
    if read is None or read[0].figure.value >= INCHES_OF_A_FOOT:
        return None
    rest, after = read
    if cell.tokens[after].unit == "in":
        return rest, after + 1, True
    if cell.sense(after) & FOOT and not behind_joint:
        # 5'4 - 5'6': the mark of feet where that of inches belongs, at the very end of a value.
        return (rest, after + 1, True) if not cell.sense(after + 1) & NUMBER else None
    return None if cell.sense(after) & UNIT else (rest, after, False)


def _decimal_feet(feet: Number) -> Value:
    """5.4 ft may be meant as 5 ft 4 in: never read without a question."""
    return Value(feet.figure, "ft", doubt=Doubt("feet-or-range", "decimal-feet"))


def _stones(cell: Cell, stones: Number, at: int) -> Found:
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
    unit = cell.tokens[after].unit
    if unit not in {None, "lb"}:
        return Value(stones.figure, "st"), at + 1
    total = Figure(stones.figure.value * POUNDS_OF_A_STONE + rest.figure.value, rest.figure.step)
    return Value(total, "lb", whole=True), after + (unit == "lb")


def _metres(cell: Cell, metres: Number, at: int) -> Found:
    """1m55 and 1 m 55."""
    behind = cell.tokens[at + 1]
    if metres.figure.step != _ONE or len(behind.text) != 2:
        return None
    hundredths = metres.figure.value + Decimal(behind.text) / 100
    return Value(Figure(hundredths, Decimal("0.01")), "m"), at + 2
