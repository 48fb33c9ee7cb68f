"""Sizes rise, and so do their measures: breaks of order, and blocks that were turned.

A column is compared along its sizes in the order of their labels, so a chart that lists its
largest size first is in order.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal
from itertools import pairwise
from typing import Final

from charts.checks.doubt import Column, Doubt, steps
from charts.schema import Chart
from charts.size_labels import read_label

_FEWEST_BESIDE_UNKNOWN: Final = 4


def label_direction(chart: Chart) -> int:
    """1 when the labels rise from first to last, -1 when they fall, 0 when neither is certain.

    One label that nobody knows among four others does not hide which way these go.
    """
    read = [read_label(size.label) if size.label is not None else None for size in chart.sizes]
    orders = [label.order for label in read if label is not None]
    unknown = len(read) - len(orders)
    if unknown > 1 or (unknown and len(orders) < _FEWEST_BESIDE_UNKNOWN):
        return 0
    kinds = {order[0] for order in orders if order}
    if len(orders) < 3 or len(kinds) > 1:
        return 0
    pairs = list(pairwise(orders))
    if all(before <= after for before, after in pairs):
        return 1
    return -1 if all(before >= after for before, after in pairs) else 0


def order(chart: Chart, columns: Sequence[Column]) -> list[Doubt]:
    """Columns that fall where the sizes rise, and single values out of order."""
    labels = label_direction(chart)
    found = []
    for column in columns:
        falling = _falls(column, labels)
        if falling:
            found.append(Doubt("rotated", column.spots, column.heading, unread=True))
            continue
        culprits = _culprits(column, labels)
        if culprits:
            spots = tuple(column.spots[number] for number in culprits)
            text = column.values[culprits[0]].published
            found.append(Doubt("order-broken", spots, column.heading, text=text))
    return found


def breaks(column: Column, direction: int) -> int:
    """How many steps of a column run against ``direction``."""
    return sum(
        step * direction < 0 for ends in (column.lows, column.highs) for _, step in steps(ends)
    )


def _direction(column: Column, labels: int) -> int:
    """The way most steps go; the labels decide when the steps do not."""
    signs = [
        (step > 0) - (step < 0) for ends in (column.lows, column.highs) for _, step in steps(ends)
    ]
    balance = sum(signs)
    if abs(balance) * 2 > len(signs):
        return 1 if balance > 0 else -1
    return labels


def _falls(column: Column, labels: int) -> bool:
    """Every step of the column runs against the labels, and there are at least two of them."""
    if labels == 0:
        return False
    run = [step for ends in (column.lows, column.highs) for _, step in steps(ends)]
    moving = [step for step in run if step != 0]
    return len(moving) > 3 and all(step * labels < 0 for step in moving)


def _culprits(column: Column, labels: int) -> list[int]:
    """The fewest values without which the column is in order; neighbours when none is sure."""
    direction = _direction(column, labels)
    if direction == 0 or breaks(column, direction) == 0:
        return []
    single = [n for n in range(len(column.values)) if _ordered_without(column, n, direction)]
    if len(single) == 1:
        return single
    if single:
        return _worst(column, single)
    return _against(column, direction)


def _ordered_without(column: Column, number: int, direction: int) -> bool:
    spots = tuple(spot for n, spot in enumerate(column.spots) if n != number)
    values = tuple(value for n, value in enumerate(column.values) if n != number)
    return breaks(replace(column, spots=spots, values=values), direction) == 0


def _worst(column: Column, among: Sequence[int]) -> list[int]:
    """Those without which the steps of the rest are most even; all of them when they tie.

    The distance from the neighbours would not do: beside a value twice too large at the last
    but one place, the sound last value is further from the line through its two neighbours.
    """
    rough = {number: _roughness(column, number) for number in among}
    least = min(rough.values())
    return [number for number in among if rough[number] <= 2 * least]


def _roughness(column: Column, without: int) -> Decimal:
    """How much the steps of a column change from size to size when one value is left out."""
    total = Decimal(0)
    for ends in (column.lows, column.highs):
        known = [(n, end) for n, end in enumerate(ends) if end is not None and n != without]
        slopes = [(after - before) / (b - a) for (a, before), (b, after) in pairwise(known)]
        total += sum((abs(two - one) for one, two in pairwise(slopes)), Decimal(0))
    return total


def _against(column: Column, direction: int) -> list[int]:
    """Every value at either end of a step that runs the wrong way."""
    found: set[int] = set()
    for ends in (column.lows, column.highs):
        for number, step in steps(ends):
            if step * direction < 0:
                found |= {number - 1, number}
    return sorted(found)
