"""One number of a cell: whole, decimal, with a fraction; its exact value and its printed step."""

from __future__ import annotations

from decimal import Decimal
from functools import lru_cache
from typing import Final, NamedTuple

from charts.cell_reading import Expected
from charts.grammar.senses import DASH, HALF, NUMBER, SLASH, UNIT
from charts.grammar.tokens import Token
from charts.quantities import Figure, Unit

_STEPS: Final = (Decimal(1), Decimal("0.1"), Decimal("0.01"), Decimal("0.001"), Decimal("0.0001"))
_MIXED: Final = frozenset({"2", "4", "8", "16", "32"})
_INCH_PARTS: Final = frozenset({"2", "4", "8", "16"})
_EIGHTHS: Final = ("125", "375", "625", "875")
MOST_DIGITS: Final = 4


class Doubt(NamedTuple):
    """Why a cell that can be read must be asked about: a finding code, and what it may be."""

    code: str
    evidence: str


class Number(NamedTuple):
    """A number with what its notation proves: ``inch_notation`` for fractions and eighths."""

    figure: Figure
    inch_notation: bool = False
    doubt: Doubt | None = None


class Cell(NamedTuple):
    """A cell on its way through the grammar."""

    plain: str
    tokens: list[Token]
    expected: Expected
    inches: bool

    def sense(self, at: int) -> int:
        """The senses of a token, 0 past the end."""
        return self.tokens[at].sense if at < len(self.tokens) else 0

    def text(self, first: int, past: int) -> str:
        """The printed text of the tokens from ``first`` up to ``past``, which is left out."""
        return self.plain[self.tokens[first].start : self.tokens[past - 1].end].strip()


def cell_of(plain: str, tokens: list[Token], expected: Expected) -> Cell:
    """A cell with what is known before it is read: whether inches are expected in it."""
    said = Unit.IN in {expected.unit, expected.second_unit}
    return Cell(plain, tokens, expected, said or any(token.unit == "in" for token in tokens))


def number(cell: Cell, at: int) -> tuple[Number, int] | None:
    """The number that begins at a token, and the token after it; None when there is none."""
    token = cell.tokens[at]
    if not token.sense & NUMBER:
        return None
    if not token.text.isdigit():
        read = _decimal(token.text, cell.expected.decimal_comma)
        return (read, at + 1) if read is not None else None
    if len(token.text) > MOST_DIGITS:
        return None
    return (
        _mixed(cell, at)
        or _joined_by_hyphen(cell, at)
        or _fraction_alone(cell, at)
        or _half_by_letter(cell, at)
        or (Number(_whole(token.text)), at + 1)
    )


@lru_cache(maxsize=4096)
def _whole(text: str) -> Figure:
    return Figure(Decimal(text), _STEPS[0])


@lru_cache(maxsize=4096)
def _decimal(text: str, comma_allowed: bool) -> Number | None:
    mark = "." if "." in text else ","
    whole, places = text.split(mark)
    if len(whole) > MOST_DIGITS or len(places) >= len(_STEPS):
        return None
    figure = Figure(Decimal(f"{whole or 0}.{places}"), _STEPS[len(places)])
    if mark == "," and len(places) >= 3:
        return Number(figure, doubt=Doubt("separator-lost", "thousands"))
    if mark == "," and not comma_allowed:
        return Number(figure, doubt=Doubt("separator-lost", "comma-between"))
    return Number(figure, mark == "." and places in _EIGHTHS)


def _parts(cell: Cell, at: int) -> tuple[str, str] | None:
    """Numerator and denominator of "n / m" at a token, n below m."""
    tokens = cell.tokens
    if at + 2 >= len(tokens) or not (
        tokens[at].sense & NUMBER and tokens[at + 1].sense & SLASH and tokens[at + 2].sense & NUMBER
    ):
        return None
    over, under = tokens[at].text, tokens[at + 2].text
    proper = under in _MIXED and over.isdigit() and 0 < int(over) < int(under)
    return (over, under) if proper else None


def _mixed(cell: Cell, at: int) -> tuple[Number, int] | None:
    """34 1/2: a space before the fraction."""
    parts = _parts(cell, at + 1)
    if parts is None or not cell.tokens[at + 1].spaced:
        return None
    return Number(_sum(cell.tokens[at].text, *parts), inch_notation=True), at + 4


def _joined_by_hyphen(cell: Cell, at: int) -> tuple[Number, int] | None:
    """2-3/4: a joint and no range, since no range falls; asked unless another unit proves it."""
    parts = _parts(cell, at + 2)
    if parts is None or not cell.sense(at + 1) & DASH or parts[1] not in _INCH_PARTS:
        return None
    doubt = Doubt("double-range", "hyphen-fraction")
    return Number(_sum(cell.tokens[at].text, *parts), inch_notation=True, doubt=doubt), at + 5


def _fraction_alone(cell: Cell, at: int) -> tuple[Number, int] | None:
    """3/4 where inches are expected."""
    parts = _parts(cell, at) if cell.inches else None
    if parts is None or parts[1] not in _INCH_PARTS:
        return None
    return Number(_sum("0", *parts), inch_notation=True), at + 3


def _half_by_letter(cell: Cell, at: int) -> tuple[Number, int] | None:
    """11h is 11 1/2 where inches are expected."""
    after = cell.tokens[at + 1]
    if not after.sense & HALF or after.spaced or not cell.inches or after.sense & UNIT:
        return None
    return Number(_sum(cell.tokens[at].text, "1", "2"), inch_notation=True), at + 2


@lru_cache(maxsize=4096)
def _sum(whole: str, over: str, under: str) -> Figure:
    step = Decimal(1) / Decimal(under)
    return Figure(Decimal(whole) + Decimal(over) * step, step)
