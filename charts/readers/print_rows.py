"""Lines that are one row: cells of several lines, told by rules, by overlap and by distance."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise
from typing import Final

from charts.readers.print_grid import GridCell, GridRow

_OVERLAPPING: Final = -0.15
"""Part of a line's height; lines of print never stand so near to each other."""
_CLEARLY_NEARER: Final = 0.8
_MOST_LINES: Final = 6


def whole_rows(rows: Sequence[GridRow], rules: Sequence[float]) -> list[GridRow]:
    """``rows`` with those put together that are one; ``rules`` are heights of lines across."""
    rows = _overlapping(rows)
    between = [at for at in rules if rows[0].top < at < rows[-1].bottom]
    if len(between) > 1:
        return _by_rules(rows, between)
    return _by_distance(rows)


def _overlapping(rows: Sequence[GridRow]) -> list[GridRow]:
    """A label at half the height of its values: rows that overlap and share no column."""
    found: list[GridRow] = []
    for row in rows:
        if found and _overlap(found[-1], row) > _OVERLAPPING and _apart(found[-1], row):
            found[-1] = _joined([found[-1], row])
        else:
            found.append(row)
    return found


def _apart(above: GridRow, below: GridRow) -> bool:
    """Whether no column is filled in both rows."""
    return not any(
        one.first <= two.last and two.first <= one.last
        for one in above.cells
        for two in below.cells
    )


def _overlap(above: GridRow, below: GridRow) -> float:
    height = min(above.bottom - above.top, below.bottom - below.top)
    return (above.bottom - below.top) / height if height > 0 else 0


def _by_rules(rows: Sequence[GridRow], rules: Sequence[float]) -> list[GridRow]:
    """The lines between two rules are one row where only one of them has a label."""
    groups: list[list[GridRow]] = [[] for _ in range(len(rules) + 1)]
    for row in rows:
        middle = (row.top + row.bottom) / 2
        groups[sum(at < middle for at in rules)].append(row)
    found: list[GridRow] = []
    for number, group in enumerate(groups):
        labelled = sum(_has_label(row) for row in group)
        if number and 1 < len(group) <= _MOST_LINES and labelled == 1:
            found.append(_joined(group))
        else:
            found += group
    return found


def _by_distance(rows: Sequence[GridRow]) -> list[GridRow]:
    """Lines clearly nearer to each other than to the next are one row, led by its label."""
    gaps = [below.top - above.bottom for above, below in pairwise(rows)]
    if len(rows) < 4 or len(set(gaps)) < 2:
        return list(rows)
    ordered = sorted(gaps)
    steps = [(after - before, before, after) for before, after in pairwise(ordered)]
    _, nearest, farther = max(steps)
    heights = [row.bottom - row.top for row in rows]
    pitch = sorted(heights)[len(heights) // 2]
    if nearest + pitch > _CLEARLY_NEARER * (farther + pitch):
        return list(rows)
    groups: list[list[GridRow]] = [[rows[0]]]
    for gap, row in zip(gaps, rows[1:], strict=True):
        if gap <= nearest:
            groups[-1].append(row)
        else:
            groups.append([row])
    led = [len(group) > 1 and sum(map(_has_label, group)) == 1 for group in groups[1:]]
    if len(groups) < 3 or not all(led):
        return list(rows)
    return [*groups[0], *(_joined(group) for group in groups[1:])]


def _has_label(row: GridRow) -> bool:
    return any(cell.first == 0 for cell in row.cells)


def _joined(rows: Sequence[GridRow]) -> GridRow:
    """Several lines as one row: what stands in the same columns becomes lines of one cell."""
    texts: dict[tuple[int, int], list[str]] = {}
    for row in rows:
        for cell in row.cells:
            texts.setdefault((cell.first, cell.last), []).append(cell.text)
    cells = [GridCell("\n".join(lines), *span) for span, lines in sorted(texts.items())]
    return GridRow(cells, min(row.top for row in rows), max(row.bottom for row in rows))
