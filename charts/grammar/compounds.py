"""Feet and inches, stones and pounds without their marks: 5-4, 9-7, 9.7. Always asked."""

from __future__ import annotations

import re
from collections.abc import Mapping
from decimal import Decimal
from typing import Final, NamedTuple

from charts.cell_reading import CellReading, Expected, Quantity
from charts.grammar.outcome import Candidates, asked
from charts.grammar.values import INCHES_OF_A_FOOT, POUNDS_OF_A_STONE
from charts.quantities import Figure, Unit
from charts.schema import Dimension, Kind

_ONE: Final = r"(\d{1,2}) ?([-.,]) ?(\d{1,2})"
_SINGLE: Final = re.compile(_ONE)
_RANGE: Final = re.compile(r"(\d{1,2})-(\d{1,2})(?: - | to | bis | à | a )(\d{1,2})-(\d{1,2})")


class _Compound(NamedTuple):
    """A big unit with its small one, and how many of the big one a person can have."""

    unit: Unit
    small: int
    least: int
    most: int
    evidence: str


_FEET: Final = _Compound(Unit.IN, INCHES_OF_A_FOOT, 4, 6, "feet-inches")
_STONES: Final = _Compound(Unit.LB, POUNDS_OF_A_STONE, 4, 30, "stones-pounds")
_TOLD: Final[Mapping[Unit | None, _Compound]] = {Unit.FT: _FEET, Unit.ST: _STONES}
_OF_DIMENSION: Final[Mapping[Dimension | None, _Compound]] = {
    Dimension.HEIGHT: _FEET,
    Dimension.WEIGHT: _STONES,
}


def compound_without_marks(plain: str, expected: Expected) -> CellReading | None:
    """The question about 5-4 in a column of heights or 9-7 in one of weights; None elsewhere."""
    kind = _kind(expected)
    if kind is None:
        return None
    if match := _SINGLE.fullmatch(plain):
        return _single(plain, match, kind, expected)
    if match := _RANGE.fullmatch(plain):
        return _range(plain, [int(one) for one in match.groups()], kind)
    return None


def _kind(expected: Expected) -> _Compound | None:
    if expected.unit in _TOLD:
        return _TOLD[expected.unit]
    kind = _OF_DIMENSION.get(expected.dimension)
    return None if kind is _STONES and expected.unit is not None else kind


def _single(
    plain: str, match: re.Match[str], kind: _Compound, expected: Expected
) -> CellReading | None:
    big, mark, small = int(match[1]), match[2], int(match[3])
    if not kind.least <= big <= kind.most or small >= kind.small:
        return None
    told = expected.unit in _TOLD
    if mark != "-" and not told:
        return None
    if kind is _STONES and not told and big < small:
        return None
    joined = Quantity(Kind.SINGLE, plain, value=_figure(big, small, kind), unit=kind.unit)
    return asked("feet-or-range", joined, ((joined, kind.evidence), *_plainly(plain, match, told)))


def _plainly(plain: str, match: re.Match[str], told: bool) -> Candidates:
    """The other reading: a range where it rises, a decimal where the mark can be one."""
    one = Decimal(1)
    if match[2] == "-":
        low, high = Figure(Decimal(match[1]), one), Figure(Decimal(match[3]), one)
        if low.value >= high.value:
            return ()
        return ((Quantity(Kind.RANGE, plain, low, high), "feet-or-range"),)
    step = one.scaleb(-len(match[3]))
    value = Figure(Decimal(f"{match[1]}.{match[3]}"), step)
    return ((Quantity(Kind.SINGLE, plain, value=value), "as-printed"),) if told else ()


def _range(plain: str, numbers: list[int], kind: _Compound) -> CellReading | None:
    big = numbers[::2]
    if not all(kind.least <= one <= kind.most for one in big) or max(numbers[1::2]) >= kind.small:
        return None
    low = _figure(numbers[0], numbers[1], kind)
    high = _figure(numbers[2], numbers[3], kind)
    if low.value > high.value:
        return None
    span = Quantity(Kind.RANGE, plain, low, high, unit=kind.unit)
    return asked("feet-or-range", span, ((span, kind.evidence),))


def _figure(big: int, small: int, kind: _Compound) -> Figure:
    return Figure(Decimal(big * kind.small + small), Decimal(1))
