"""One number of a cell: whole, decimal, with a fraction; its exact value and its printed step.

A number is a value that has no unit yet.
"""

from __future__ import annotations

from decimal import Decimal
from functools import lru_cache
from math import gcd
from typing import Final, NamedTuple

from charts.grammar.senses import DASH, HALF, NUMBER, SLASH, UNIT
from charts.grammar.tokens import Cell
from charts.quantities import Figure

_STEPS: Final = (Decimal(1), Decimal("0.1"), Decimal("0.01"), Decimal("0.001"), Decimal("0.0001"))
_MIXED: Final = frozenset({"2", "4", "8", "16", "32"})
_ODD_PARTS: Final = frozenset({"3", "5", "6", "7", "9", "10", "12"})
"""Thirds, fifths and ninths of an inch: what programs make of cm, behind a whole girth only."""
_WHOLE_OF_ODD: Final = (10, 80)
"""6 2/3 may be a size for two ages, 98 2/3 a height with them; inches of a girth are between."""
_INCH_PARTS: Final = frozenset({"2", "4", "8", "16"})
_EIGHTHS: Final = ("125", "375", "625", "875")
MOST_DIGITS: Final = 4


class Doubt(NamedTuple):
    """Why a cell that can be read must be asked about: a finding code, and what it may be."""

    code: str
    evidence: str


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


def number(cell: Cell, at: int) -> Found:
    """The number that begins at a token, and the token after it; None when there is none."""
    if not cell.senses[at] & NUMBER:
        return None
    text = cell.texts[at]
    if not text.isdecimal():
        read = bare(text, cell.expected.decimal_comma)
        return (read, at + 1) if read is not None else None
    if len(text) > MOST_DIGITS:
        return None
    senses = cell.senses
    if (senses[at + 1] | senses[at + 2] | senses[at + 3]) & SLASH or senses[at + 1] & HALF:
        found = _with_fraction(cell, at)
        if found is not None:
            return found
    return _whole(text), at + 1


def bare(text: str, comma_allowed: bool) -> Value | None:
    """The number that ``text`` is by itself, with no fraction; None when it has too many places."""
    return _whole(text) if text.isdecimal() else _decimal(text, comma_allowed)


def _with_fraction(cell: Cell, at: int) -> Found:
    return (
        _mixed(cell, at)
        or _joined_by_hyphen(cell, at)
        or _fraction_alone(cell, at)
        or _half_by_letter(cell, at)
    )


@lru_cache(maxsize=4096)
def _whole(text: str) -> Value:
    return Value(Figure(Decimal(text), _STEPS[0]))


@lru_cache(maxsize=4096)
def _decimal(text: str, comma_allowed: bool) -> Value | None:
    mark = "." if "." in text else ","
    whole, places = text.split(mark)
    if len(whole) > MOST_DIGITS or len(places) >= len(_STEPS):
        return None
    figure = Figure(Decimal(f"{whole or 0}.{places}"), _STEPS[len(places)])
    if mark == "," and len(places) >= 3:
        return Value(figure, doubt=Doubt("separator-lost", "thousands"))
    if mark == "," and not comma_allowed:
        return Value(figure, doubt=Doubt("separator-lost", "comma-between"))
    return Value(figure, inch_notation=mark == "." and places in _EIGHTHS)


def _parts(cell: Cell, at: int, among: frozenset[str] = _MIXED) -> tuple[str, str] | None:
    """Numerator and denominator of "n / m" at a token, n below m and m ``among`` those."""
    senses = cell.senses
    if not (senses[at] & NUMBER and senses[at + 1] & SLASH and senses[at + 2] & NUMBER):
        return None
    over, under = cell.texts[at], cell.texts[at + 2]
    proper = under in among and over.isdecimal() and 0 < int(over) < int(under)
    if proper and under in _ODD_PARTS and gcd(int(over), int(under)) > 1:
        return None  # 62 3/6 is a baby's size with its months
    return (over, under) if proper else None


def _mixed(cell: Cell, at: int) -> Found:
    """34 1/2, and 34 2/3: a space before the fraction."""
    low, high = _WHOLE_OF_ODD
    odd = low <= int(cell.texts[at]) <= high
    parts = _parts(cell, at + 1, _MIXED | _ODD_PARTS if odd else _MIXED)
    if parts is None or not cell.spaced(at + 1):
        return None
    return Value(_sum(cell.texts[at], *parts), inch_notation=True), at + 4


def _joined_by_hyphen(cell: Cell, at: int) -> Found:
    """2-3/4: a joint and no range, since no range falls; asked unless another unit proves it."""
    parts = _parts(cell, at + 2)
    if parts is None or not cell.senses[at + 1] & DASH or parts[1] not in _INCH_PARTS:
        return None
    doubt = Doubt("double-range", "hyphen-fraction")
    return Value(_sum(cell.texts[at], *parts), inch_notation=True, doubt=doubt), at + 5


def _fraction_alone(cell: Cell, at: int) -> Found:
    """3/4 where inches are expected."""
    parts = _parts(cell, at) if cell.inches else None
    if parts is None or parts[1] not in _INCH_PARTS:
        return None
    return Value(_sum("0", *parts), inch_notation=True), at + 3


def _half_by_letter(cell: Cell, at: int) -> Found:
    """11h is 11 1/2 where inches are expected."""
    sense = cell.senses[at + 1]
    if not sense & HALF or cell.spaced(at + 1) or not cell.inches or sense & UNIT:
        return None
    return Value(_sum(cell.texts[at], "1", "2"), inch_notation=True), at + 2


@lru_cache(maxsize=4096)
def _sum(whole: str, over: str, under: str) -> Figure:
    step = Decimal(1) / Decimal(under)
    return Figure(Decimal(whole) + Decimal(over) * step, step)
