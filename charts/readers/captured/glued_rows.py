"""Rows whose cells ran together, parted by search: ``1 mois455`` is a size, a weight, a height.

Every line is parted in every way that its headings allow; of all ways to part the block the one is
taken in which no column falls, where that is one alone or more speaks for it than for any other.
A person compares it all the same.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from typing import Final

from charts.dimensions import HeadingReading, Role, read_heading
from charts.readers.captured.arranging.arrangement import Arrangement, Order
from charts.readers.captured.arranging.glued_ways import Parted, parted, rows_parted
from charts.readers.captured.arranging.proofs import proofs
from charts.readers.captured.arranging.search import best_way
from charts.readers.captured.arranging.spans import span_of
from charts.readers.captured.glued import parted_headings
from charts.readers.captured.heads import parted_heads
from charts.readers.captured.lines import Line, LineTable
from charts.readers.captured.run_on import glued_labels
from charts.readers.captured.value_runs import Named, labels_in, rises
from charts.schema import Dimension

_FEWEST_ROWS: Final = 3
_FEWEST_MEASURES: Final = 2
_MOST_HEADS: Final = 7
_MOST_ROWS: Final = 40
_MOST_CHAINS: Final = 300
_LONGEST: Final = 200
_WORDS: Final = re.compile(r"(?:X{0,3}[- ]?(?:SMALL|LARGE)|MEDIUM)", re.IGNORECASE)
_NAME: Final = re.compile(r"(?P<name>[^\W\d_][^\d]{1,60}?)\s*:?\s*(?P<body>\d.*)")


def glued_rows_table(lines: Sequence[Line]) -> LineTable | None:
    """The table of glued rows that ``lines`` begin with; None where no way is the best."""
    if len(lines) <= _FEWEST_MEASURES or not 0 < len(lines[0].text.strip()) <= _LONGEST:
        return None
    return _by_sizes(lines) or _by_measures(lines)


def _by_sizes(lines: Sequence[Line]) -> LineTable | None:
    """Headings over a line for each size."""
    for heads in _headings(lines[0].text):
        headings = [read_heading(one) for one in heads]
        known = len(heads) > _FEWEST_MEASURES and _names_columns(headings)
        table = _under(heads, headings, lines) if known else None
        if table is not None:
            return table
    return None


def _headings(text: str) -> Iterator[list[str]]:
    """The headings where they ran together, or as words with blanks between."""
    yield parted_headings(text)
    for count in range(_FEWEST_MEASURES + 1, _MOST_HEADS + 1):
        if (heads := parted_heads(text, count)) is not None:
            yield heads


def _under(
    heads: Sequence[str], headings: Sequence[HeadingReading], lines: Sequence[Line]
) -> LineTable | None:
    rows: list[list[Parted]] = []
    for line in lines[1 : _MOST_ROWS + 1]:
        ways = rows_parted(line.text.strip()[:_LONGEST], headings[1:])
        if not ways:
            break
        rows.append(ways)
    if len(rows) < _FEWEST_ROWS or _is_figures(lines, len(rows) + 1):
        return None
    used = lines[: len(rows) + 1]
    return _best(_chained(heads, used, rows), len(used))


def _names_columns(headings: Sequence[HeadingReading]) -> bool:
    first, *others = headings
    sizes = first.role is Role.LABEL or first.dimension is Dimension.AGE
    return sizes and all(one.role is Role.MEASURE for one in others)


def _is_figures(lines: Sequence[Line], at: int) -> bool:
    """Whether the block goes on with a line that was not parted: then its rows are not all told."""
    text = lines[at].text.strip() if at < len(lines) else ""
    return len(text) < _LONGEST and sum(map(str.isdigit, text)) * 2 > len(text)


def _chained(
    heads: Sequence[str], used: Sequence[Line], rows: Sequence[Sequence[Parted]]
) -> Iterator[Arrangement]:
    """Every way to part all rows in which the sizes rise and no column falls."""
    names = tuple(Line(text, used[0].number) for text in heads)
    chains: list[list[Parted]] = [[way] for way in rows[0]]
    for row in rows[1:]:
        chains = [[*chain, way] for chain in chains for way in row if _follows(chain[-1], way)]
        if len(chains) > _MOST_CHAINS:
            return
    for chain in chains:
        labels = tuple(
            Line(way.label, line.number) for way, line in zip(chain, used[1:], strict=True)
        )
        grid = tuple(
            tuple(Line(cell, line.number) for cell in way.cells)
            for way, line in zip(chain, used[1:], strict=True)
        )
        yield Arrangement(Order.ROWS, names[0], names[1:], labels, grid, 0, len(used))


def _follows(before: Parted, way: Parted) -> bool:
    if not rises((before.label, way.label)):
        return False
    pairs = zip(map(span_of, before.cells), map(span_of, way.cells), strict=True)
    return all(a and b and a.low <= b.low and a.high <= b.high for a, b in pairs)


def _by_measures(lines: Sequence[Line]) -> LineTable | None:
    """Sizes that ran together over a line for each measure."""
    sizes = _sizes(lines[0].text.strip())
    if sizes is None:
        return None
    names: list[Line] = []
    columns: list[tuple[Line, ...]] = []
    for line in lines[1:_MOST_ROWS]:
        found = _NAME.fullmatch(line.text.strip()[:_LONGEST])
        heading = read_heading(found["name"]) if found is not None else None
        if found is None or heading is None or heading.role is not Role.MEASURE:
            break
        cells = _only(found["body"], heading, sizes.parts)
        if not cells:
            return None
        names.append(Line(found["name"], line.number))
        columns.append(tuple(Line(cell, line.number) for cell in cells))
    if len(names) < _FEWEST_MEASURES:
        return None
    number = lines[0].number
    labels = tuple(Line(text, number) for text in sizes.parts)
    grid = tuple(zip(*columns, strict=True))
    corner = Line(sizes.name, number)
    way = Arrangement(Order.COLUMNS, corner, tuple(names), labels, grid, 0, len(names) + 1)
    return _best(iter((way,)), len(names) + 1)


def _sizes(text: str) -> Named | None:
    """Sizes that ran together as letters or as words; None for sizes that stand apart."""
    words = _WORDS.findall(text)
    if len(words) > 1 and "".join(words) == text:
        return Named("", tuple(words)) if rises(words) else None
    glued = glued_labels(text) or labels_in(text)
    return glued if glued is not None and len(glued.parts) >= _FEWEST_ROWS else None


def _only(body: str, heading: HeadingReading, sizes: Sequence[str]) -> tuple[str, ...]:
    """The one way to part the figures of a measure for which more speaks than for any other."""
    head = (Line("", 1),)
    labels = tuple(Line(text, 1) for text in sizes)
    scored: list[tuple[int, tuple[str, ...]]] = []
    for cells in parted(body, (heading,) * len(sizes)):
        grid = tuple((Line(cell, 1),) for cell in cells)
        count = proofs(Arrangement(Order.COLUMNS, None, head, labels, grid, 0, 0))
        if count is not None:
            scored.append((count, cells))
    most = max((count for count, _ in scored), default=0)
    best = [cells for count, cells in scored if count == most]
    return best[0] if len(best) == 1 else ()


def _best(ways: Iterator[Arrangement], used: int) -> LineTable | None:
    found = best_way(ways)
    if found is None or found.rivals:
        return None
    return LineTable(found.best.rows(), used, inferred=True)
