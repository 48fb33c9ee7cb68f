"""Steps between sizes: a value off the step of its column, an end figure out of all proportion.

Steps often widen towards the large sizes and ranges often widen at both ends. Only a figure that
leaves its neighbours regular when it is taken out is asked about.
"""

from __future__ import annotations

from collections.abc import Sequence
from decimal import Decimal
from itertools import pairwise
from statistics import median
from typing import Final

from charts.checks.doubt import Column, Doubt
from charts.findings import Candidate
from charts.schema import Chart, Dimension, Kind
from charts.size_labels import LabelKind, read_label

_FEWEST: Final = 5
_OFF: Final = Decimal("0.5")
"""Part of the usual step by which a figure must be off (a judgement, tried on clean charts)."""
_EVEN: Final = Decimal("0.25")
_LEAP: Final = Decimal("1.6")
_RATIOS: Final = (Decimal(10), Decimal("2.54"), Decimal(2))
_LEAPING: Final = frozenset({Dimension.WEIGHT, Dimension.AGE, Dimension.OTHER})
"""Weights and ages double from size to size in children's charts."""


def step_breaks(chart: Chart, columns: Sequence[Column]) -> list[Doubt]:
    """Single figures off an otherwise even step, by column."""
    del chart
    found = []
    for column in columns:
        off: dict[int, Decimal] = {}
        for ends in (column.lows, column.highs):
            number = _displaced(ends)
            if number is not None:
                off.setdefault(number, _expected(ends, number))
        if off:
            found.append(_doubt("step-broken", column, off))
    return found


def leaps(chart: Chart, columns: Sequence[Column]) -> list[Doubt]:
    """First or last figures that are a tenth, a half or 1/2.54 of what their neighbour suggests."""
    del chart
    found = []
    for column in columns:
        if column.dimension in _LEAPING or len(column.values) < 3:
            continue
        for end, inner, further in ((0, 1, 2), (-1, -2, -3)):
            ratio = _ratio(column, end, inner)
            usual = _ratio(column, inner, further)
            if ratio is not None and usual is not None and ratio >= _LEAP > usual * _LEAP / 2:
                number = end % len(column.values)
                found.append(_doubt("step-broken", column, {number: Decimal(0)}))
    return found


def _ratio(column: Column, one: int, other: int) -> Decimal | None:
    first, second = _middle(column, one), _middle(column, other)
    if not first or not second:
        return None
    return max(first / second, second / first)


def _middle(column: Column, number: int) -> Decimal | None:
    low, high = column.lows[number], column.highs[number]
    if low is None or high is None:
        return low or high
    return (low + high) / 2


def _displaced(ends: Sequence[Decimal | None]) -> int | None:
    """The one inner figure whose removal leaves even steps; None when there is none."""
    figures = [end for end in ends if end is not None]
    if len(figures) != len(ends) or len(figures) < _FEWEST:
        return None
    moves = [after - before for before, after in pairwise(figures)]
    usual = median(moves)
    if usual == 0:
        return None
    for number in range(1, len(figures) - 1):
        rest = moves[: number - 1] + moves[number + 1 :]
        off = abs(figures[number] - (figures[number - 1] + figures[number + 1]) / 2)
        even = max(rest) - min(rest) <= abs(usual) * _EVEN
        fair = abs(moves[number - 1] + moves[number] - 2 * usual) <= abs(usual) * _EVEN
        if even and fair and off >= abs(usual) * _OFF:
            return number
    return None


def _expected(ends: Sequence[Decimal | None], number: int) -> Decimal:
    before, after = ends[number - 1], ends[number + 1]
    return (before + after) / 2 if before is not None and after is not None else Decimal(0)


def _doubt(code: str, column: Column, off: dict[int, Decimal]) -> Doubt:
    number, expected = next(iter(off.items()))
    value = column.values[number]
    spots = tuple(column.spots[one] for one in off)
    candidates = tuple(_others(column, number)) if not expected else ()
    first = f"{expected.normalize():f}" if expected else candidates[0].text if candidates else ""
    case = "" if expected else "leap"
    return Doubt(
        code, spots, column.heading, value.published, first, case=case, candidates=candidates
    )


def _others(column: Column, number: int) -> list[Candidate]:
    """The figure times or through ten, 2.54 or two, where that comes near its neighbour."""
    neighbour = 1 if number == 0 else number - 1
    here, there = _middle(column, number), _middle(column, neighbour)
    if not here or not there:
        return []
    factors = [factor for ratio in _RATIOS for factor in (ratio, 1 / ratio)]
    near = [factor for factor in factors if abs(here * factor / there - 1) < Decimal("0.12")]
    return [_scaled(column, number, factor) for factor in near]


def _scaled(column: Column, number: int, factor: Decimal) -> Candidate:
    value = column.values[number]
    low, high, single = (
        end * factor if end is not None else None for end in (value.low, value.high, value.value)
    )
    figures = [
        f"{end.quantize(Decimal('0.1')).normalize():f}" for end in (low, high, single) if end
    ]
    return Candidate("-".join(figures), value.unit.value, low, high, single, "scaled")


def label_steps(chart: Chart, columns: Sequence[Column]) -> list[Doubt]:
    """A number among the labels that is off their even step: 32, 35, 36, 38, 40."""
    del columns
    labels = [read_label(size.label) if size.label else None for size in chart.sizes]
    numbers = [
        Decimal(str(label.order[-1])) if label and label.kind is LabelKind.NUMBER else None
        for label in labels
    ]
    number = _displaced(numbers)
    if number is None or not chart.sizes[number].ranges:
        return []
    size = chart.sizes[number]
    spots = tuple((number, place) for place in range(len(size.ranges)))
    meant = f"{_expected(numbers, number).normalize():f}"
    text = size.label or ""
    near = (Candidate(meant, why="label-near"),)
    return [Doubt("label-mistyped", spots, "", text, meant, candidates=near)]


def borders(chart: Chart, columns: Sequence[Column]) -> list[Doubt]:
    """Notes: shared borders, overlaps and gaps between neighbouring ranges, once per column."""
    del chart
    found: dict[tuple[str, str], Doubt] = {}
    for column in columns:
        pairs = zip(column.values, column.values[1:], strict=False)
        for number, (lower, upper) in enumerate(pairs):
            if lower.kind is not Kind.RANGE or upper.kind is not Kind.RANGE:
                continue
            code = _border(lower.high, upper.low, lower.high_step, upper.low_step)
            if code is not None:
                spots = (column.spots[number], column.spots[number + 1])
                found.setdefault((code, column.heading), Doubt(code, spots, column.heading))
    return list(found.values())


def _border(
    high: Decimal | None, low: Decimal | None, first: Decimal | None, second: Decimal | None
) -> str | None:
    if high is None or low is None:
        return None
    if high == low:
        return "border-shared"
    if high > low:
        return "overlap"
    step = max(first or Decimal(0), second or Decimal(0))
    return "gap" if low - high > step else None
