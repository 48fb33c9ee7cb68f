"""Lines without rules put into rows and columns, by where their fields stand."""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence
from dataclasses import dataclass, field
from itertools import pairwise
from typing import Final

from charts.readers.captured.values import is_blank, is_value
from charts.readers.print_words import Field, PrintLine, Word

Span = tuple[float, float]
_BESIDE: Final = 4.0
_AT_EDGE: Final = 0.4
"""Part of the letters' size that a field may be off the edge or the middle of its column."""
_WIDEST_HEADING: Final = 6


@dataclass(frozen=True, slots=True)
class GridCell:
    """A text over the columns from ``first`` to ``last``, both inside.

    ``rows_above`` says how many rows above it began, where its box covers several.
    """

    text: str
    first: int
    last: int
    rows_above: int = 0


@dataclass(slots=True)
class GridRow:
    """One row: its cells, and where on the page it stands."""

    cells: list[GridCell] = field(default_factory=list)
    top: float = 0
    bottom: float = 0


def columns_of(lines: Sequence[PrintLine]) -> list[Span]:
    """Where the columns of ``lines`` begin and end; none where they make no table."""
    wide = [line for line in lines if len(line.fields) > 1]
    counts = Counter(len(line.fields) for line in wide)
    if not counts:
        return []
    width = max(counts, key=lambda count: (counts[count] * count, count))
    usual = [line for line in wide if len(line.fields) == width]
    bodies = [line for line in usual if _is_body(line)]
    for chosen in (usual, bodies, usual[-1:]):
        columns = _hull(chosen, width)
        if columns and all(left[1] < right[0] for left, right in pairwise(columns)):
            return _heads_joined(_with_outsiders(columns, lines), lines)
    return []


def row_of(line: PrintLine, columns: Sequence[Span], *, heading: bool) -> GridRow:
    """One line as a row. A heading may stand over several columns, by where its middle is."""
    row = GridRow([], line.top, line.bottom)
    fields = [part for one in line.fields for part in _split(one, columns)]
    spans = _spans(fields, columns, dear=1.0 if heading else 4.0)
    cells = [
        GridCell(one.text, *(_nearest(one, columns) if spans is None else spans[at]))
        for at, one in enumerate(fields)
    ]
    for cell in cells:
        taken = next((one for one in row.cells if one.last >= cell.first), None)
        if taken is None:
            row.cells.append(cell)
        else:  # two pieces in one column are one cell
            row.cells.remove(taken)
            both = f"{taken.text} {cell.text}"
            row.cells.append(GridCell(both, taken.first, max(taken.last, cell.last)))
    return row


def fits(lines: Sequence[PrintLine], columns: Sequence[Span]) -> bool:
    """Whether ``lines`` stand in ``columns``: every field in one, no two in the same."""
    for line in lines:
        taken: set[int] = set()
        for one in line.fields:
            inside = [at for at, column in enumerate(columns) if _shared(one, column) > 0]
            if len(inside) != 1 or inside[0] in taken:
                return False
            taken.add(inside[0])
    return bool(columns)


def _split(one: Field, columns: Sequence[Span]) -> list[Field]:
    """A field that runs through several columns, cut where its words begin the next of them."""
    groups: list[tuple[int, list[Word]]] = []
    for word in one.words:
        shares = [min(word.x1, right) - max(word.x0, left) for left, right in columns]
        at = shares.index(max(shares)) if max(shares) > 0.4 * (word.x1 - word.x0) else -1
        if groups and at in (-1, groups[-1][0]):
            groups[-1][1].append(word)
        else:
            groups.append((at, [word]))
    parts = [(at, Field.of(words)) for at, words in groups]
    if len(parts) < 2 or not all(_belongs(part, columns[at]) for at, part in parts if at >= 0):
        return [one]
    return [part for _, part in parts]


def _belongs(one: Field, column: Span) -> bool:
    """Whether a field stands at an edge or in the middle of a column."""
    left, right = column
    edges = (one.x0 - left, one.x1 - right, one.centre - (left + right) / 2)
    return min(map(abs, edges)) < _AT_EDGE * one.size


def _is_body(line: PrintLine) -> bool:
    values = sum(is_value(one.text) or is_blank(one.text) for one in line.fields[1:])
    return values * 2 >= len(line.fields) - 1


def is_heading(line: PrintLine) -> bool:
    """Whether a line of several fields holds no value yet."""
    return not any(is_value(one.text) for one in line.fields[1:])


def _hull(lines: Sequence[PrintLine], width: int) -> list[Span]:
    if not lines:
        return []
    return [
        (min(line.fields[at].x0 for line in lines), max(line.fields[at].x1 for line in lines))
        for at in range(width)
    ]


def _with_outsiders(columns: list[Span], lines: Sequence[PrintLine]) -> list[Span]:
    """A column more for values that stand apart from all others, and for what stands outside."""
    found = list(columns)
    left, right = columns[0][0], columns[-1][1]
    for line in lines:
        body = _is_body(line)
        for one in line.fields if len(line.fields) > 1 else ():
            outside = one.x1 < left or one.x0 > right
            apart = all(_shared(one, column) <= 0 for column in found)
            if apart and (body or outside):
                found = sorted([*found, (one.x0, one.x1)])
    return found


def _heads_joined(columns: list[Span], lines: Sequence[PrintLine]) -> list[Span]:
    """A heading on the left of its column and values on the right of it are one column."""
    found = list(columns[:1])
    for column in columns[1:]:
        left = found[-1]
        beside = column[0] - left[1] < _BESIDE * max(line.size for line in lines)
        filled = [(_fills(line, left), _fills(line, column)) for line in lines]
        both = any(one and other for one, other in filled)
        heads = [is_heading(line) for line in lines]
        split = all(
            one if head else not one
            for head, (one, other) in zip(heads, filled, strict=True)
            if one or other
        )
        if beside and not both and split and any(heads):
            found[-1] = (left[0], column[1])
        else:
            found.append(column)
    return found


def _fills(line: PrintLine, column: Span) -> bool:
    return any(_shared(one, column) > 0 for one in line.fields)


def _shared(one: Field, column: Span) -> float:
    return min(one.x1, column[1]) - max(one.x0, column[0])


def _nearest(one: Field, columns: Sequence[Span]) -> tuple[int, int]:
    at = max(range(len(columns)), key=lambda column: _shared(one, columns[column]))
    return at, at


def _spans(
    fields: Sequence[Field], columns: Sequence[Span], dear: float
) -> list[tuple[int, int]] | None:
    """The columns each field stands over, from left to right and none twice, at the least cost.

    Columns may stay empty. ``dear`` is what each further column under one field costs, in
    letters' sizes. None where there are more fields than columns.
    """
    ways: list[tuple[float, list[tuple[int, int]]] | None] = [(0.0, [])] * (len(columns) + 1)
    for one in fields:
        after: list[tuple[float, list[tuple[int, int]]] | None] = [None] * (len(columns) + 1)
        for end in range(1, len(columns) + 1):
            best = after[end - 1]
            for first in range(max(0, end - _WIDEST_HEADING), end):
                before = ways[first]
                if before is None:
                    continue
                cost = before[0] + _cost(one, columns, first, end - 1, dear)
                if best is None or cost < best[0]:
                    best = (cost, [*before[1], (first, end - 1)])
            after[end] = best
        ways = after
    return ways[-1][1] if ways[-1] is not None else None


def _cost(one: Field, columns: Sequence[Span], first: int, last: int, dear: float) -> float:
    """How badly a field stands over some columns: off their edges or middle, or beside them."""
    left, right = columns[first][0], columns[last][1]
    apart = min(abs(one.centre - (left + right) / 2), abs(one.x0 - left), abs(one.x1 - right))
    beside = max(0.0, -_shared(one, (left, right)))
    outside = max(0.0, left - one.x0) + max(0.0, one.x1 - right)
    return (apart + outside / 4 + 4 * beside) / one.size + dear * (last - first)
