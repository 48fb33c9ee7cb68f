"""Blocks of values that stand the wrong way round, and rows that slipped under the next heading.

A block is only called turned when turning it back puts every column of the chart in order.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace
from itertools import pairwise, product
from typing import Final

from charts.checks.doubt import Column, Doubt, Spot, printed_columns
from charts.checks.order import breaks, label_direction
from charts.schema import Chart, Range

Values = list[list[Range]]
"""By column, then by row."""
_FEWEST_BREAKS: Final = 2
_MOST_SPANS: Final = 1_000
"""Only long tables whose figures hardly change have more: there a turn could not be told."""


def turned_blocks(chart: Chart, columns: Sequence[Column]) -> list[Doubt]:
    """A square block whose rows and columns were exchanged, or a block upside down."""
    del columns
    full = [one for one in printed_columns(chart) if len(one.values) == len(chart.sizes)]
    labels = label_direction(chart)
    if labels == 0 or len(full) < 2 or _breaks(full, labels) < _FEWEST_BREAKS:
        return []
    if sum(breaks(column, labels) > 0 for column in full) < 2:
        return []
    for block, values in _turned(full, labels):
        if _breaks(_with_values(full, values), labels) == 0:
            spots = tuple(full[column].spots[row] for column, row in block)
            same = ((c, r) for c, r in block if values[c][r] is full[c].values[r])
            twins = _printed_again(full, {row for _, row in block})
            kept = frozenset(full[column].spots[row] for column, row in (*same, *twins))
            spots += tuple(full[column].spots[row] for column, row in twins)
            heading = " | ".join(dict.fromkeys(full[column].heading for column, _ in block))
            return [Doubt("rotated", spots, heading, unread=True, kept=kept)]
    return []


def _printed_again(columns: Sequence[Column], rows: set[int]) -> list[tuple[int, int]]:
    """The values beside a block's ``rows`` that are all those of one of them once more.

    145, 149, 145, 149 is no turn but a step back: which of the two pairs is right nobody can tell.
    """
    beside = [row for row in (min(rows) - 1, max(rows) + 1) if 0 <= row < len(columns[0].values)]
    again = [
        row for row in beside if any(all(_alike(one, row, own) for one in columns) for own in rows)
    ]
    return [(column, row) for row in again for column in range(len(columns))]


def _alike(column: Column, row: int, other: int) -> bool:
    return (column.lows[row], column.highs[row]) == (column.lows[other], column.highs[other])


def _breaks(columns: Sequence[Column], labels: int) -> int:
    return sum(breaks(column, labels) for column in columns)


def _with_values(columns: Sequence[Column], values: Values) -> list[Column]:
    return [replace(c, values=tuple(v)) for c, v in zip(columns, values, strict=True)]


def _turned(
    columns: Sequence[Column], labels: int
) -> Iterator[tuple[list[tuple[int, int]], Values]]:
    """Every block turned back that could put all in order, small ones first.

    A block that leaves a broken step out leaves it broken; one turned upside down breaks every
    step in it that was none. Without looking at these two, long tables would take for ever.
    """
    rows = len(columns[0].values)
    fallen = [step for column in columns for step in _steps(column, -labels)]
    broken = [number for number, column in enumerate(columns) if breaks(column, labels)]
    first, last = min(end for _, end in fallen), max(start for start, _ in fallen)
    for size in range(2, min(rows, len(columns)) + 1):
        tops = range(max(last - size + 1, 0), min(first, rows - size) + 1)
        lefts = range(max(broken[-1] - size + 1, 0), min(broken[0], len(columns) - size) + 1)
        for top, left in product(tops, lefts):
            yield _exchanged(columns, top, left, size)
    risen = [step for column in columns for step in _steps(column, labels)]
    highest = max((start for start, end in risen if end <= last), default=-1) + 1
    lowest = min((end for start, end in risen if start >= first), default=rows) - 1
    spans = product(range(highest, first + 1), range(last, lowest + 1))
    by_height = sorted(spans, key=lambda span: (span[1] - span[0], span))
    for top, bottom in by_height[:_MOST_SPANS]:
        if top < bottom:
            yield _upside_down(columns, top, bottom - top + 1)


def _steps(column: Column, direction: int) -> Iterator[tuple[int, int]]:
    """The steps that go in ``direction``, each from one row to the next that has a figure."""
    for ends in (column.lows, column.highs):
        known = [(row, end) for row, end in enumerate(ends) if end is not None]
        for (start, before), (end, after) in pairwise(known):
            if (after - before) * direction > 0:
                yield start, end


def _exchanged(
    columns: Sequence[Column], top: int, left: int, size: int
) -> tuple[list[tuple[int, int]], Values]:
    values = [list(column.values) for column in columns]
    block = list(product(range(left, left + size), range(top, top + size)))
    for column, row in block:
        values[column][row] = columns[left + row - top].values[top + column - left]
    return block, values


def _upside_down(
    columns: Sequence[Column], top: int, height: int
) -> tuple[list[tuple[int, int]], Values]:
    values = [list(column.values) for column in columns]
    block = list(product(range(len(columns)), range(top, top + height)))
    for column, row in block:
        values[column][row] = columns[column].values[2 * top + height - 1 - row]
    return block, values


def slipped_rows(chart: Chart, columns: Sequence[Column]) -> list[Doubt]:
    """Rows whose values fit between their neighbours only one column further on."""
    found = []
    for row in range(1, len(chart.sizes) - 1):
        for shift in (1, -1):
            spots = _slipped(columns, row, shift)
            if len(spots) > 1:
                found.append(Doubt("columns-shifted", tuple(spots), columns[0].heading))
                break
    return found


def _slipped(columns: Sequence[Column], row: int, shift: int) -> list[Spot]:
    spots = []
    for number, column in enumerate(columns):
        other = number + shift
        here = _at(column, row)
        if here is None or not 0 <= other < len(columns):
            continue
        if not _between(column, row, here[1]) and _between(columns[other], row, here[1]):
            spots.append(here[0])
    return spots


def _at(column: Column, row: int) -> tuple[Spot, Range] | None:
    for spot, value in zip(column.spots, column.values, strict=True):
        if spot[0] == row:
            return spot, value
    return None


def _between(column: Column, row: int, value: Range) -> bool:
    """Whether a value lies between the values of the rows above and below in a column."""
    above, below = _at(column, row - 1), _at(column, row + 1)
    if above is None or below is None:
        return True
    ends = [
        [end for end in (one.low, one.high, one.value) if end is not None]
        for one in (above[1], value, below[1])
    ]
    if not all(ends) or value.unit is not above[1].unit:
        return False
    least, most = min(*ends[0], *ends[2]), max(*ends[0], *ends[2])
    return least <= min(ends[1]) and max(ends[1]) <= most
