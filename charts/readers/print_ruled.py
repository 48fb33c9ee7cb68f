"""Ruled tables of a printed page: every cell is a box, and words belong to the box they lie in."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field, replace
from typing import Any, Final

from charts.readers.print_grid import GridCell, GridRow, Span
from charts.readers.print_words import PrintLine, Word, lines_of, text_of

Box = tuple[float, float, float, float]
"""Left, top, right, bottom; in points from the top left of the page."""
Filled = dict[tuple[int, int, int], list[Word]]
"""The words of each box by its row, its first and its last column."""
_SAME_EDGE: Final = 2.5
_MOST_EDGES: Final = 2_500
"""Rules of a page; a page full of drawings has more, and no table is found among them."""


@dataclass(slots=True)
class RuledTable:
    """One table: where it stands, its rows and columns, and the words in its boxes."""

    box: Box
    rows: list[GridRow] = field(default_factory=list)
    columns: list[Span] = field(default_factory=list)
    words: list[Word] = field(default_factory=list)


def ruled_tables(page: Any, words: Sequence[Word]) -> list[RuledTable]:
    """The tables of ``page`` (a page of pdfplumber) whose rules make boxes round all cells."""
    if len(page.edges) > _MOST_EDGES:
        return []
    found = []
    for one in page.find_tables({"vertical_strategy": "lines", "horizontal_strategy": "lines"}):
        boxes = [tuple(float(edge) for edge in box) for box in one.cells]
        table = _read([box for box in boxes if len(box) == 4], words)
        if table is not None and not _leaves_out(table, words):
            found.append(table)
    return [one for one in found if not any(_inside(one.box, other.box) for other in found)]


def _read(boxes: list[Any], words: Sequence[Word]) -> RuledTable | None:
    """The table of these boxes; None when it has not at least two rows and two columns."""
    lefts = _edges([box[0] for box in boxes])
    tops = _edges([box[1] for box in boxes])
    filled: Filled = {}
    table = RuledTable(
        (
            min(box[0] for box in boxes),
            min(box[1] for box in boxes),
            max(box[2] for box in boxes),
            max(box[3] for box in boxes),
        )
    )
    for box in boxes:
        inside = [word for word in words if _holds(box, word)]
        if inside:
            last = max(at for at, left in enumerate(lefts) if left < box[2] - _SAME_EDGE)
            filled[_index(tops, box[1]), _index(lefts, box[0]), last] = inside
            table.words += inside
    rights = [*lefts[1:], table.box[2]]
    table.columns = list(zip(lefts, rights, strict=True))
    rows = {row for row, _, _ in filled}
    if len(rows) < 2 or len({first for _, first, _ in filled}) < 2:
        return None
    groups = {row: _rows_at(row, filled, tops[row]) for row in sorted(rows)}
    if all(len(group) == 1 for group in groups.values()):
        _reach_down({row: group[0] for row, group in groups.items()}, boxes, tops, lefts)
    table.rows = [row for group in groups.values() for row in group]
    return table


def _rows_at(row: int, filled: Filled, top: float) -> list[GridRow]:
    return _rows(
        {(first, last): own for (at, first, last), own in filled.items() if at == row}, top
    )


def _reach_down(
    rows: dict[int, GridRow], boxes: list[Any], tops: Sequence[float], lefts: Sequence[float]
) -> None:
    """A box as high as several rows shows its text in each of them."""
    order = list(rows)
    for box in boxes:
        top, first = _index(tops, box[1]), _index(lefts, box[0])
        own = [cell for cell in rows[top].cells if cell.first == first] if top in rows else []
        covered = [row for row in order if row > top and tops[row] < box[3] - _SAME_EDGE]
        for cell in own:
            for row in covered:
                above = order.index(row) - order.index(top)
                rows[row].cells.append(replace(cell, rows_above=above))


def _rows(cells: dict[tuple[int, int], list[Word]], top: float) -> list[GridRow]:
    """One row of boxes; where the boxes hold the same lines, each line is a row."""
    lines = {span: lines_of(words) for span, words in cells.items()}
    counts = {len(own) for own in lines.values()}
    if len(cells) > 1 and len(counts) == 1 and (count := counts.pop()) > 2 and _level(lines):
        return [
            GridRow([GridCell(own[at].text, *span) for span, own in sorted(lines.items())], top)
            for at in range(count)
        ]
    return [
        GridRow([GridCell(text_of(words), *span) for span, words in sorted(cells.items())], top)
    ]


def _level(lines: dict[tuple[int, int], list[PrintLine]]) -> bool:
    """Whether the lines of all boxes stand at the same heights."""
    columns = list(lines.values())
    return all(
        abs(line.bottom - first.bottom) < line.size / 2
        for own in columns[1:]
        for line, first in zip(own, columns[0], strict=True)
    )


def _leaves_out(table: RuledTable, words: Sequence[Word]) -> bool:
    """Whether words stand beside the boxes at their height, close by: a column has no rules."""
    left, top, right, bottom = table.box
    taken = {id(word) for word in table.words}
    width = right - left
    return any(
        id(word) not in taken
        and top < word.middle[1] < bottom
        and left - width / 2 < word.middle[0] < right + width / 2
        and not _between_tables(word, table)
        for word in words
    )


def _between_tables(word: Word, table: RuledTable) -> bool:
    left, _, right, _ = table.box
    apart = max(left - word.x1, word.x0 - right)
    return apart > 3 * word.size


def _inside(inner: Box, outer: Box) -> bool:
    return inner != outer and (
        inner[0] >= outer[0] - _SAME_EDGE
        and inner[1] >= outer[1] - _SAME_EDGE
        and inner[2] <= outer[2] + _SAME_EDGE
        and inner[3] <= outer[3] + _SAME_EDGE
    )


def _holds(box: Any, word: Word) -> bool:
    across, down = word.middle
    return bool(box[0] <= across <= box[2] and box[1] <= down <= box[3])


def _edges(values: Sequence[float]) -> list[float]:
    found: list[float] = []
    for value in sorted(values):
        if not found or value - found[-1] > _SAME_EDGE:
            found.append(value)
    return found


def _index(edges: Sequence[float], value: float) -> int:
    return min(range(len(edges)), key=lambda at: abs(edges[at] - value))
