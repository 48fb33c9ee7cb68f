"""Figures a stride away: an end far from an even series, a neighbour's figure entered twice.

Both are rare among sound charts only because the rest of the column is even, so nothing is said
of a column whose other steps differ among themselves.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from decimal import Decimal
from itertools import pairwise
from statistics import median
from typing import Final

from charts.checks.doubt import Column, Doubt, adjoin
from charts.schema import Chart, Dimension

_EVEN: Final = Decimal("0.25")
_FAR: Final = Decimal("3.5")
"""Usual steps to the next size: charts leave out a size or two before the largest one."""
_WIDE: Final = Decimal(3)
"""Centimetres: finer steps double by rounding alone (38, 38, 40, 41)."""
_UNEVEN: Final = frozenset({Dimension.WEIGHT, Dimension.AGE, Dimension.OTHER})


def far_ends(chart: Chart, columns: Sequence[Column]) -> list[Doubt]:
    """A first or last value far off, as when two of its digits are exchanged."""
    del chart
    found = []
    for column in columns:
        if column.dimension in _UNEVEN:
            continue
        found += [
            _doubt(column, number, case="leap")
            for number in (0, len(column.values) - 1)
            if any(_far(ends, number) for ends in (column.lows, column.highs))
            and not _next_range(column, number)
        ]
    return found


def _next_range(column: Column, number: int) -> bool:
    """Whether the range is as wide as its neighbour and begins at its border, as the next does."""
    beside = 1 if number == 0 else number - 1
    width = _width(column, number)
    if not width or width != _width(column, beside):
        return False
    return adjoin(column, number, beside) or adjoin(column, beside, number)


def _width(column: Column, number: int) -> Decimal | None:
    low, high = column.lows[number], column.highs[number]
    return high - low if low is not None and high is not None else None


def _far(ends: Sequence[Decimal | None], number: int) -> bool:
    moves = _moves(ends)
    if len(moves) < 3:
        return False
    rest = moves[1:] if number == 0 else moves[:-1]
    step = moves[0] if number == 0 else moves[-1]
    usual = median(rest)
    return usual != 0 and _even(rest, usual) and abs(step) >= _FAR * abs(usual)


def twice_entered(chart: Chart, columns: Sequence[Column]) -> list[Doubt]:
    """A value that repeats its neighbour's where the step on its other side is a double one."""
    del chart
    found = []
    for column in columns:
        lows, highs = column.lows, column.highs
        widths = [high - low for low, high in zip(lows, highs, strict=True) if low and high]
        width = median(widths) if widths and _even(widths, median(widths)) else Decimal(0)
        both = set(_repeats(lows, width)) & set(_repeats(highs, width))
        for number in sorted(both):
            before, after = lows[number - 1], lows[number + 1]
            if before is not None and after is not None:
                meant = f"{((before + after) / 2).normalize():f}"
                found.append(_doubt(column, number, first=meant))
    return found


def _repeats(ends: Sequence[Decimal | None], width: Decimal) -> Iterator[int]:
    """Inner places with no step on one side and a double one on the other.

    Ranges that follow each other step by their width, so three of them are enough.
    """
    moves = _moves(ends)
    for number, (before, after) in enumerate(pairwise(moves), start=1):
        rest = moves[: number - 1] + moves[number + 1 :]
        usual = median(rest) if rest else width
        if abs(usual) < _WIDE or not _even(rest, usual) or bool(before) == bool(after):
            continue
        if abs(before + after - 2 * usual) <= abs(usual) * _EVEN:
            yield number


def _moves(ends: Sequence[Decimal | None]) -> list[Decimal]:
    figures = [end for end in ends if end is not None]
    if len(figures) != len(ends):
        return []
    return [after - before for before, after in pairwise(figures)]


def _even(moves: Sequence[Decimal], usual: Decimal) -> bool:
    return not moves or max(moves) - min(moves) <= abs(usual) * _EVEN


def _doubt(column: Column, number: int, first: str = "", case: str = "") -> Doubt:
    value = column.values[number]
    spots = (column.spots[number],)
    return Doubt("step-broken", spots, column.heading, value.published, first, case=case)
