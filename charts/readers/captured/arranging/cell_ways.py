"""Every way in which cells one behind the other, without their places, can be a table.

A text gives its cells size by size, heading by heading, or the headings and the sizes first and
the figures behind them; with the names before or behind what they name. Each way has to come out
even, with nothing left over.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from itertools import combinations, product
from math import comb, prod
from typing import Final

from charts.dimensions import Role, read_heading
from charts.readers.captured.arranging.arrangement import Arrangement, Order
from charts.readers.captured.lines import Line
from charts.readers.captured.value_runs import is_cell_value, rises
from charts.readers.captured.values import is_blank
from charts.schema import Dimension
from charts.size_labels import LabelKind, read_label

_FEWEST_SIZES: Final = 3
_FEWEST_BEHIND: Final = 2
"""Headings behind all figures: a lone one may be the title of what follows."""
_MOST_HEADS: Final = 12
_MOST_TITLES: Final = 4
_MOST_GAPS: Final = 400
_MOST_SIZES: Final = 40
Row = tuple[Line, ...]


@dataclass(frozen=True, slots=True)
class Cells:
    """The cells of a text in its order, and what each of them can be; ``named`` are sure sizes."""

    lines: tuple[Line, ...]
    figure: tuple[bool, ...]
    size: tuple[bool, ...]
    head: tuple[bool, ...]
    named: tuple[bool, ...]

    @property
    def bare(self) -> tuple[bool, ...]:
        """Which cells are figures that name no size."""
        return tuple(a and not b for a, b in zip(self.figure, self.named, strict=True))

    def run(self, kind: Sequence[bool], start: int) -> int:
        """Where the run of cells of one kind that begins at ``start`` ends."""
        at = start
        while at < len(kind) and kind[at]:
            at += 1
        return at


def cells_of(lines: Sequence[Line]) -> Cells:
    """The cells with what each can be: a figure or blank, a size, the heading of a measure."""
    texts = [one.text for one in lines]
    figure = tuple(is_cell_value(text) or is_blank(text) for text in texts)
    size = tuple(map(_is_size, texts))
    head = tuple(
        not number and not named and read_heading(text).role is Role.MEASURE
        for text, number, named in zip(texts, figure, size, strict=True)
    )
    named = tuple(
        size and (not number or _is_aged(text))
        for text, number, size in zip(texts, figure, size, strict=True)
    )
    return Cells(tuple(lines), figure, size, head, named)


def ways(cells: Cells) -> Iterator[Arrangement]:
    """Every way to arrange the cells that begin the text, titles before them aside."""
    for start in range(min(_MOST_TITLES + 1, len(cells.lines))):
        if cells.figure[start - 1] and start:
            return
        yield from _from_heads(cells, start)
        yield from _from_sizes(cells, start)
        if _is_corner(cells, start):
            return  # no title stands before it


def _is_size(text: str) -> bool:
    label = read_label(text)
    if label is None or label.doubtful is not None:
        return False
    return label.kind is not LabelKind.WORD


def _is_aged(text: str) -> bool:
    """Whether a text is an age with its word: a size, and no figure of a measure."""
    label = read_label(text)
    aged = label is not None and label.kind is LabelKind.AGE
    return aged and any(map(str.isalpha, text))


def _is_corner(cells: Cells, at: int) -> bool:
    """Whether a heading may be that of the sizes: a word for size or age."""
    if at >= len(cells.lines) or cells.figure[at] or cells.size[at]:
        return False
    heading = read_heading(cells.lines[at].text)
    aged = heading.dimension is Dimension.AGE
    return aged or heading.role is Role.LABEL or (Role.LABEL, None) in heading.candidates


def _from_heads(cells: Cells, start: int) -> Iterator[Arrangement]:
    """The headings first, with the one of the sizes before or behind them."""
    corner = start if _is_corner(cells, start) else None
    first = start if corner is None else start + 1
    end = cells.run(cells.head, first)
    heads = cells.lines[first:end]
    if not 2 <= len(heads) <= _MOST_HEADS:
        return
    if corner is None and _is_corner(cells, end):
        corner, end = end, end + 1
    frame = _Frame(cells, start, end, cells.lines[corner] if corner is not None else None, heads)
    yield from _sizes_then_figures(frame)
    yield from _rows(frame, 0)
    if corner != start:
        yield from _rows(frame, len(heads))
    yield from _rows_with_gaps(frame)
    yield from _numbers_with_gaps(frame)


@dataclass(frozen=True, slots=True)
class _Frame:
    """Headings found, and where what follows them begins."""

    cells: Cells
    start: int
    end: int
    corner: Line | None
    heads: Row

    @property
    def width(self) -> int:
        return len(self.heads)

    def way(self, order: Order, labels: Row, grid: Sequence[Row], used: int) -> Arrangement:
        return Arrangement(order, self.corner, self.heads, labels, tuple(grid), self.start, used)


def _sizes_then_figures(frame: _Frame) -> Iterator[Arrangement]:
    """Headings, then all sizes, then all figures; sizes may be figures themselves."""
    cells, width = frame.cells, frame.width
    end = cells.run(cells.size, frame.end)
    for count in range(_FEWEST_SIZES, min(end - frame.end, _MOST_SIZES) + 1):
        first = frame.end + count
        labels = cells.lines[frame.end : first]
        last = cells.run(cells.figure, first)
        if last - first == count * width and _apart(labels):
            yield from _apart_ways(frame, labels, cells.lines[first:last], last)


def _apart_ways(frame: _Frame, labels: Row, body: Row, used: int) -> Iterator[Arrangement]:
    count, width = len(labels), frame.width
    by_rows = [body[at : at + width] for at in range(0, len(body), width)]
    columns = [body[at : at + count] for at in range(0, len(body), count)]
    yield frame.way(Order.APART_ROWS, labels, by_rows, used)
    yield frame.way(Order.APART_COLUMNS, labels, list(zip(*columns, strict=True)), used)


def _rows(frame: _Frame, at: int) -> Iterator[Arrangement]:
    """A row behind the other, ``at`` the place of the size among its figures: first or last."""
    cells, step = frame.cells, frame.width + 1
    rows: list[Row] = []
    here = frame.end
    while here + step <= len(cells.lines):
        inner = [n for n in range(here, here + step) if n != here + at]
        if not cells.size[here + at] or not all(cells.figure[n] for n in inner):
            break
        rows.append(cells.lines[here : here + step])
        here += step
    labels = tuple(row[at] for row in rows)
    over = here < len(cells.lines) and cells.figure[here]
    if len(rows) >= _FEWEST_SIZES and not over and _apart(labels):
        grid = [(*row[:at], *row[at + 1 :]) for row in rows]
        yield frame.way(Order.ROWS_LAST if at else Order.ROWS, labels, grid, here)


def _rows_with_gaps(frame: _Frame) -> Iterator[Arrangement]:
    """Rows of which some lost a figure: whichever columns it can be missing from."""
    cells = frame.cells
    labels: list[Line] = []
    found: list[Row] = []
    at = frame.end
    while at < len(cells.lines) and cells.named[at]:
        end = cells.run(cells.bare, at + 1)
        if not 0 < end - at - 1 <= frame.width:
            break
        labels.append(cells.lines[at])
        found.append(cells.lines[at + 1 : end])
        at = end
    gaps = sum(frame.width - len(row) for row in found)
    ways = prod(comb(frame.width, len(row)) for row in found)
    few = 0 < gaps * 2 <= len(found) and ways <= _MOST_GAPS
    if len(found) < _FEWEST_SIZES or not few or not _apart(tuple(labels)):
        return
    for grid in product(*(_placed(row, frame.width) for row in found)):
        yield frame.way(Order.ROWS_GAPS, tuple(labels), grid, at)


def _numbers_with_gaps(frame: _Frame) -> Iterator[Arrangement]:
    """Rows whose sizes are figures too, of which one lost a figure: wherever it can be missing."""
    cells, step = frame.cells, frame.width + 1
    end = cells.run(cells.figure, frame.end)
    body = cells.lines[frame.end : end]
    count = -(-len(body) // step)
    if count < _FEWEST_SIZES or count * step - len(body) != 1 or count * step > _MOST_GAPS:
        return
    for at in range(count * step):
        if at % step:
            flat = (*body[:at], Line("", body[at - 1].number), *body[at:])
            rows = [flat[start : start + step] for start in range(0, len(flat), step)]
            labels = tuple(row[0] for row in rows)
            if all(map(_is_size, (one.text for one in labels))) and _apart(labels):
                yield frame.way(Order.ROWS_GAPS, labels, [row[1:] for row in rows], end)


def _placed(row: Row, width: int) -> Iterator[Row]:
    """A row's figures in their order, at every choice of columns."""
    for places in combinations(range(width), len(row)):
        figures = dict(zip(places, row, strict=True))
        empty = Line("", row[0].number)
        yield tuple(figures.get(at, empty) for at in range(width))


def _from_sizes(cells: Cells, start: int) -> Iterator[Arrangement]:
    """The sizes first, with their heading before or behind them; then headings and figures."""
    corner = cells.lines[start] if _is_corner(cells, start) else None
    first = start if corner is None else start + 1
    end = cells.run(cells.size, first)
    for count in range(_FEWEST_SIZES, min(end - first, _MOST_SIZES) + 1):
        labels = cells.lines[first : first + count]
        if not _apart(labels):
            continue
        here = first + count
        behind = corner is None and _is_corner(cells, here)
        mine = cells.lines[here] if behind else corner
        here += behind
        yield from _columns(cells, start, here, mine, labels)
        yield from _heads_then_figures(cells, start, here, mine, labels)
        yield from _figures_then_heads(cells, start, here, mine, labels)


def _columns(
    cells: Cells, start: int, here: int, corner: Line | None, labels: Row
) -> Iterator[Arrangement]:
    """A heading with a figure for each size, before them or behind them."""
    count, step = len(labels), len(labels) + 1
    for order, at in ((Order.COLUMNS, 0), (Order.COLUMNS_LAST, count)):
        groups: list[Row] = []
        end = here
        while end + step <= len(cells.lines):
            inner = [n for n in range(end, end + step) if n != end + at]
            if not cells.head[end + at] or not all(cells.figure[n] for n in inner):
                break
            groups.append(cells.lines[end : end + step])
            end += step
        over = end < len(cells.lines) and cells.figure[end]
        if len(groups) > 1 and not over:
            heads = tuple(group[at] for group in groups)
            columns = [(*group[:at], *group[at + 1 :]) for group in groups]
            grid = tuple(zip(*columns, strict=True))
            yield Arrangement(order, corner, heads, labels, grid, start, end)


def _heads_then_figures(
    cells: Cells, start: int, here: int, corner: Line | None, labels: Row
) -> Iterator[Arrangement]:
    end = cells.run(cells.head, here)
    heads = cells.lines[here:end]
    last = cells.run(cells.figure, end)
    if len(heads) > 1 and last - end == len(labels) * len(heads):
        frame = _Frame(cells, start, end, corner, heads)
        yield from _apart_ways(frame, labels, cells.lines[end:last], last)


def _figures_then_heads(
    cells: Cells, start: int, here: int, corner: Line | None, labels: Row
) -> Iterator[Arrangement]:
    """The headings behind all the figures, the one of the sizes first or last among them."""
    last = cells.run(cells.figure, here)
    behind = corner is None and _is_corner(cells, last)
    end = cells.run(cells.head, last + behind)
    heads = cells.lines[last + behind : end]
    if len(heads) < _FEWEST_BEHIND or last - here != len(labels) * len(heads):
        return
    mine = cells.lines[last] if behind else corner
    if mine is None and _is_corner(cells, end):
        mine, end = cells.lines[end], end + 1
    if end < len(cells.lines) and (cells.figure[end] or cells.size[end]):
        return  # the headings of the next table
    frame = _Frame(cells, start, end, mine, heads)
    yield from _apart_ways(frame, labels, cells.lines[here:last], end)


def _apart(labels: Sequence[Line]) -> bool:
    """Whether the sizes are sizes in their order, each another."""
    texts = [one.text for one in labels]
    return len(set(texts)) == len(texts) and rises(texts)
