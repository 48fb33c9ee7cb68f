"""Rows that a bar opens and whose cells stand one a line, each closed by a bar.

``| Bust |`` / ``28 |`` / ``30 |`` / ``| Hip |`` / ``34 |`` / ``36 |``: a page whose table was
copied row by row. Only the bar in front tells where a row begins; rows of bars alone are blank.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import takewhile
from typing import Final

from charts.dimensions import Role, read_heading
from charts.readers.captured.lines import Line, LineCell, LineTable
from charts.readers.captured.values import is_blank, is_value
from charts.readers.plain_text import tidy

_BAR: Final = "|"
_FEWEST_COLUMNS: Final = 3
_FEWEST_ROWS: Final = 2
_LONGEST: Final = 60
_Row = tuple[list[LineCell], int]


def bar_opened_table(lines: Sequence[Line]) -> LineTable | None:
    """The table of rows opened by bars that ``lines`` begin with; else None."""
    if not lines or not _is_opened(lines[0]) or _is_row_alone(lines):
        return None
    rows = list(_even(_rows(lines)))
    cells = [row for row, _ in rows]
    if len(rows) < _FEWEST_ROWS or not _is_chart([[one.text for one in row] for row in cells]):
        return None
    return LineTable(cells, rows[-1][1], inferred=True)


def _is_opened(line: Line) -> bool:
    return line.text.lstrip().startswith(_BAR)


def _is_row_alone(lines: Sequence[Line]) -> bool:
    """Whether no cell stands on a line below the bar: whole rows on a line are read elsewhere."""
    following = next((line for line in lines[1:] if line.text.strip()), None)
    return following is None or _is_opened(following)


def _rows(lines: Sequence[Line]) -> Iterator[_Row]:
    """The rows that are not blank, and how many lines are behind each."""
    start = 0
    for end in range(1, len(lines) + 1):
        if end < len(lines) and not _is_opened(lines[end]):
            continue
        cells = _cells(lines[start:end])
        if any(cell.text for cell in cells):
            yield cells, end
        start = end


def _cells(lines: Sequence[Line]) -> list[LineCell]:
    """The cells of a row: a bar ends each, and what stands on lines before it is one text."""
    found: list[LineCell] = []
    open_texts: list[str] = []
    first = 0
    for number, line in enumerate(lines):
        *closed, rest = line.text.strip().removeprefix(_BAR if not number else "").split(_BAR)
        for text in closed:
            found.append(_cell([*open_texts, text], first or line.number))
            open_texts, first = [], 0
        if rest.strip():
            open_texts.append(rest)
            first = first or line.number
    return [*found, _cell(open_texts, first)] if open_texts else found


def _cell(texts: Sequence[str], line: int) -> LineCell:
    return LineCell(tidy(" ".join(texts)), line)


def _even(rows: Iterator[_Row]) -> Iterator[_Row]:
    """The first rows that are as wide as each other; a text among them ends the table."""
    width = 0
    for cells, end in takewhile(lambda row: _is_short(row[0]), rows):
        if width and len(cells) != width:
            return
        width = len(cells)
        yield cells, end


def _is_short(cells: Sequence[LineCell]) -> bool:
    return all(len(cell.text) <= _LONGEST for cell in cells)


def _is_chart(rows: Sequence[Sequence[str]]) -> bool:
    """Whether names open rows of figures, one of them that of a measure, none given twice."""
    names = [row[0] for row in rows]
    if len(rows[0]) < _FEWEST_COLUMNS or len({*names}) < len(names):
        return False
    figures = all(is_value(text) or is_blank(text) for row in rows[1:] for text in row[1:])
    measures = any(read_heading(name).role is Role.MEASURE for name in names)
    return figures and measures and not any(map(is_value, names))
