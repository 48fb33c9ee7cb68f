"""A size that stands where its figures do not: XXS after XL, with the largest figures of all."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise
from typing import Final

from charts.checks.doubt import Column, Doubt
from charts.checks.order import breaks
from charts.schema import Chart
from charts.size_labels import LabelKind, read_label

_FEWEST: Final = 4
"""Sizes below which no order is certain (common practice, no source)."""
_LETTERED: Final = frozenset({LabelKind.ALPHA, LabelKind.COMBINED})


def label_order(chart: Chart, columns: Sequence[Column]) -> list[Doubt]:
    """The one size by letters out of order while every column rises, or falls, through it.

    The label may be mistyped (XXS for XXL) or its figures may be another size's; nobody can tell.
    """
    number = _displaced_letters(chart)
    if number is None or not chart.sizes[number].ranges:
        return []
    through = [column for column in columns if any(spot[0] == number for spot in column.spots)]
    ordered = [any(breaks(column, way) == 0 for way in (1, -1)) for column in through]
    if not through or not all(ordered) or not all(_moves(column, number) for column in through):
        return []
    spots = tuple((number, place) for place in range(len(chart.sizes[number].ranges)))
    heading = through[0].heading
    return [Doubt("order-broken", spots, heading, chart.sizes[number].label or "", case="label")]


def _moves(column: Column, number: int) -> bool:
    """Whether the figures of this size differ from those of every other one."""
    place = next(n for n, spot in enumerate(column.spots) if spot[0] == number)
    own = (column.lows[place], column.highs[place])
    ends = list(zip(column.lows, column.highs, strict=True))
    return ends.count(own) == 1


def _displaced_letters(chart: Chart) -> int | None:
    """The number of the one size without which the letters are in order; None when it is unsure."""
    labels = [read_label(size.label) if size.label is not None else None for size in chart.sizes]
    if len(labels) < _FEWEST:
        return None
    orders = [label.order for label in labels if label is not None and label.kind in _LETTERED]
    lengths = {label.length for label in labels if label is not None}
    if len(orders) < len(labels) or len({order[0] for order in orders}) > 1 or len(lengths) > 1:
        return None
    if _in_order(orders):
        return None
    alone = [n for n in range(len(orders)) if _in_order(orders[:n] + orders[n + 1 :])]
    return alone[0] if len(alone) == 1 else None


def _in_order(orders: Sequence[tuple[float, ...]]) -> bool:
    pairs = list(pairwise(orders))
    return all(a <= b for a, b in pairs) or all(a >= b for a, b in pairs)
