"""Rows with fewer cells than columns: a blank cell leaves no trace between single blanks.

The cells go where their kind, their unit and the figures of the rows around let them; where more
than one way is left, the row is put nowhere.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import combinations, pairwise
from statistics import median
from typing import Final

from charts.readers.captured.shared_out.columns import Column, first_number
from charts.readers.captured.shared_out.tokens import Kind, Part, Row

_MOST_WAYS: Final = 300
_NOTHING: Final = Part("", Kind.NOTHING)
_STEPS: Final = 1.5
"""How many steps of its column a figure may lie beside the place its row gives it."""
_LEAST_STEP: Final = 0.012
"""The smallest step of a column, as a share of its figures: two equal rows leave none."""
_Placed = tuple[int, tuple[Part, ...]]


def with_blanks(rows: Sequence[Row], columns: Sequence[Column]) -> list[Row | None]:
    """The rows, short ones with their blank cells; None for one whose cells fit in several ways."""
    width = len(columns)
    full = [(at, row.parts) for at, row in enumerate(rows) if len(row.parts) == width]
    found: list[Row | None] = []
    for at, row in enumerate(rows):
        if len(row.parts) == width:
            found.append(row)
            continue
        ways = [parts for parts in _spread(row.parts, width) if _fits(at, parts, columns, full)]
        found.append(Row(row.name, ways[0], row.line) if len(ways) == 1 else None)
    return found


def _spread(parts: Sequence[Part], width: int) -> Iterator[tuple[Part, ...]]:
    for count, chosen in enumerate(combinations(range(width), len(parts))):
        if count > _MOST_WAYS:
            return
        cells = dict(zip(chosen, parts, strict=True))
        yield tuple(cells.get(at, _NOTHING) for at in range(width))


def _fits(
    at: int, parts: Sequence[Part], columns: Sequence[Column], full: Sequence[_Placed]
) -> bool:
    for place, (part, column) in enumerate(zip(parts, columns, strict=True)):
        if part is _NOTHING:
            continue
        if not column.may_hold(part):
            return False
        series = [(row, cells[place]) for row, cells in full]
        if part.kind is Kind.VALUE and not _continues(at, part.text, series):
            return False
    return True


def _continues(at: int, text: str, series: Sequence[tuple[int, Part]]) -> bool:
    """Whether a figure stands where the figures of its column let it, above and below."""
    number = first_number(text)
    known = [(row, one) for row, part in series if (one := first_number(part.text)) is not None]
    if number is None or not known:
        return False
    steps = [abs(b - a) / (rb - ra) for (ra, a), (rb, b) in pairwise(known)]
    step = max(median(steps) if steps else 0.0, _LEAST_STEP * abs(number))
    before = [one for one in known if one[0] < at][-1:]
    after = [one for one in known if one[0] > at][:1]
    if before and after:
        low, high = sorted((before[0][1], after[0][1]))
        return low - step / 2 <= number <= high + step / 2
    row, value = (before or after)[0]
    rises = known[-1][1] >= known[0][1]
    due = value + step * (at - row) * (1 if rises else -1)
    return abs(number - due) <= _STEPS * step * abs(at - row)
