"""A value that repeats its neighbour's, where nothing else of the column or the chart repeats.

Girths, weights and back lengths step from size to size. Among 472 such columns of 196 sound
invented charts none repeats exactly one value; heights do, and are left to ``strides``.
"""

from __future__ import annotations

from collections.abc import Sequence
from decimal import Decimal
from itertools import pairwise
from statistics import median
from typing import Final

from charts.checks.doubt import Column, Doubt
from charts.schema import Chart, Dimension, Kind, Range

_GIRTHS: Final = frozenset({Dimension.CHEST, Dimension.WAIST, Dimension.HIP})
_STEPPING: Final = _GIRTHS | {Dimension.WEIGHT, Dimension.BACK_LENGTH}
_HOLE: Final = Decimal("1.6")
"""Times the usual step that a step is long which makes up for one that is missing."""


def same_again(chart: Chart, columns: Sequence[Column]) -> list[Doubt]:
    """The one value of a column that is its neighbour's, at an end or beside a hole."""
    del chart
    found = []
    for column in columns:
        pair = _only_pair(column)
        if column.dimension not in _STEPPING or pair is None:
            continue
        if _repeats_elsewhere(column, pair, columns):
            continue
        wrong = _wrong(column, pair)
        if wrong:
            spots = tuple(column.spots[one] for one in wrong)
            text = column.values[wrong[0]].published
            found.append(Doubt("step-broken", spots, column.heading, text, case="twice"))
    return found


def _only_pair(column: Column) -> int | None:
    """The place behind the one pair of equal neighbours, all others moving one way."""
    values = column.values
    if len(values) < 3 or any(value.kind is Kind.UNREAD for value in values):
        return None
    pairs = [n for n, (one, two) in enumerate(pairwise(values), 1) if _ends(one) == _ends(two)]
    if len(pairs) != 1 or _meant(*values[pairs[0] - 1 : pairs[0] + 1]):
        return None
    moves = _moves(column)
    rest = [move for n, move in enumerate(moves, 1) if n != pairs[0]]
    one_way = bool(rest) and (all(move > 0 for move in rest) or all(move < 0 for move in rest))
    return pairs[0] if one_way else None


def _meant(one: Range, other: Range) -> bool:
    """Whether a person gave one of the values; what merged cells share is left to ``whole``."""
    return bool(one.corrected or other.corrected)


def _ends(value: Range) -> tuple[Decimal | None, ...]:
    return value.low, value.high, value.value


def _moves(column: Column) -> list[Decimal]:
    """The steps of a figure that both neighbours give: the lower ends, else the upper ones."""
    found = []
    for n in range(1, len(column.values)):
        for ends in (column.lows, column.highs):
            before, after = ends[n - 1], ends[n]
            if before is not None and after is not None:
                found.append(after - before)
                break
        else:
            found.append(Decimal(0))
    return found


def _repeats_elsewhere(column: Column, pair: int, columns: Sequence[Column]) -> bool:
    """Whether another girth repeats its value at the same two sizes: they share their measures."""
    sizes = [spot[0] for spot in column.spots[pair - 1 : pair + 1]]
    for other in columns:
        if other is column or other.dimension not in _GIRTHS:
            continue
        at = [n for n, spot in enumerate(other.spots) if spot[0] in sizes]
        if len(at) == 2 and _ends(other.values[at[0]]) == _ends(other.values[at[1]]):
            return True
    return False


def _wrong(column: Column, pair: int) -> tuple[int, ...]:
    """Which of the two is wrong: the one beside the hole; at an end it may be either."""
    moves = [abs(move) for move in _moves(column)]
    for wrong, beside in ((pair, pair), (pair - 1, pair - 2)):
        if not 0 <= beside < len(moves):
            continue
        others = [move for n, move in enumerate(moves) if n not in {pair - 1, beside}]
        usual = median(others) if others else _width(column)
        if usual and moves[beside] >= usual * _HOLE:
            return (wrong,)
    at_an_end = pair == 1 or pair == len(moves)
    return (
        (pair - 1, pair) if at_an_end and column.dimension in _GIRTHS | {Dimension.WEIGHT} else ()
    )


def _width(column: Column) -> Decimal:
    widths = [v.high - v.low for v in column.values if v.high is not None and v.low is not None]
    return median(widths) if widths else Decimal(0)
