"""Columns told by the blanks that run down between them, where rows have blank cells.

A printed table keeps each cell in its column even where others are blank: the first row begins at
the second column, a unit stands under the first size only, a note takes a line of its own. What is
blank in every row parts the columns, and the cells of each stand under each other.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass
from itertools import pairwise, takewhile
from typing import Final

from charts.readers.captured.lines import Line, LineCell, LineTable
from charts.readers.captured.shared_out.table import is_shared_row
from charts.readers.captured.values import is_blank, is_value
from charts.readers.captured.worded_sizes import ends_name, worded_row

_FIELD: Final = re.compile(r"\S+(?: \S+)*")
_FIELDS: Final = re.compile(r"\S {2,}\S")
_PARTED: Final = re.compile(r"[\t|;│┃]")
"""Signs that part cells themselves."""
_RULE: Final = re.compile(r"[-=_+\s]{3,}")
_MOST_LINES: Final = 120
_FEWEST_ROWS: Final = 3
_LINES_TO_ROWS: Final = 12
"""So many lines may stand before the first rows of figures: headings above an empty line."""
_LONGEST_FIGURE: Final = 40
_GUTTER: Final = 2
"""So many blanks part two columns; one parts two words."""
_CENTRED: Final = 2
"""By so much the sums of start and end differ where texts are centred in whole blanks."""
_Field = tuple[int, int, str]
_Span = tuple[int, int]


@dataclass(frozen=True, slots=True)
class _Row:
    """The fields of a line, with where they begin and end."""

    fields: tuple[_Field, ...]
    line: int


def gutter_table(lines: Sequence[Line]) -> LineTable | None:
    """The table whose first row ``lines`` begin with; None where its columns are not sure.

    It goes on behind an empty line where the rows below keep to the same columns.
    """
    if not lines or _FIELDS.search(lines[0].text) is None:
        return None
    found = None
    for end in _ends(lines[:_MOST_LINES]):
        longer = _table(lines[:end])
        if longer is None and (found is not None or end > _LINES_TO_ROWS):
            break
        found = longer
    return found


def _ends(lines: Sequence[Line]) -> Iterator[int]:
    """Where the table may end: before each empty line, up to two that follow each other."""
    for at, line in enumerate(lines):
        if not line.text.strip():
            if not lines[at - 1].text.strip():
                return
            yield at
    yield len(lines)


def _table(block: Sequence[Line]) -> LineTable | None:
    if any(_PARTED.search(one.text) for one in block):
        return None
    rows = [_row(one) for one in block if not _RULE.fullmatch(one.text)]
    if _are_parted_names(rows):
        return None
    while rows and len(rows[-1].fields) <= 1:
        rows.pop()  # what stands below the last row is no part of the table
    several = [row for row in rows if len(row.fields) > 1]
    inside = [row for row in rows if any(start for start, _, _ in row.fields)]
    if len(several) < _FEWEST_ROWS:
        return None
    columns = _columns(inside)
    table = [cells for row in rows if (cells := _cells(row, columns)) is not None]
    if len(table) < len(rows) or not _holds_figures(several) or not _stand_in_line(rows, columns):
        return None
    used = rows[-1].line + 1 - block[0].number
    table += _single_blanks(block[used:], len(columns) - 1)
    return LineTable(table, table[-1][-1].line + 1 - block[0].number)


def _single_blanks(lines: Sequence[Line], count: int) -> list[list[LineCell]]:
    """The last rows, whose fields may be parted by single blanks: a long name left no room."""
    parted = ((worded_row(line.text, count), line.number) for line in lines)
    rows = takewhile(lambda one: one[0], parted)
    return [[LineCell(text, number) for text in texts or ()] for texts, number in rows]


def _row(line: Line) -> _Row:
    found = _FIELD.finditer(line.text)
    return _Row(tuple((one.start(), one.end(), one[0]) for one in found), line.number)


def _are_parted_names(rows: Sequence[_Row]) -> bool:
    """Whether a size stands over two lines: ``Extra`` above ``Large  97-102  81-86``."""
    return any(
        1 in (len(row.fields), len(after.fields))
        and row.fields
        and after.fields
        and ends_name(row.fields[0][2], after.fields[0][2])
        for row, after in pairwise(rows)
    )


def _columns(rows: Sequence[_Row]) -> list[_Span]:
    """Where columns begin and end: what is blank in all rows lies between them."""
    found: list[_Span] = []
    for start, end in sorted(field[:2] for row in rows for field in row.fields):
        if found and start < found[-1][1] + _GUTTER:
            found[-1] = (found[-1][0], max(end, found[-1][1]))
        else:
            found.append((start, end))
    return found


def _cells(row: _Row, columns: Sequence[_Span]) -> list[LineCell] | None:
    """The cells of a row; a line alone is one cell where it fits no column; else None."""
    if not row.fields:
        return [LineCell("", row.line)]
    cells = [""] * len(columns)
    for start, end, text in row.fields:
        at = _column_of((start, end), columns)
        if at is None and start == 0 and len(row.fields) == 1:
            return None if _ran_together(text) else [LineCell(text, row.line)]
        if at is None or cells[at]:
            return None
        cells[at] = text
    if len(row.fields) == 1 and cells[0]:
        return [LineCell(cells[0], row.line)]
    return [LineCell(text, row.line) for text in cells]


def _ran_together(text: str) -> bool:
    """Whether a line alone is a row whose fields are parted by single blanks."""
    return sum(map(is_value, text.split())) > 1 and is_shared_row(Line(text, 0))


def _column_of(span: _Span, columns: Sequence[_Span]) -> int | None:
    inside = (at for at, (left, right) in enumerate(columns) if left <= span[0] < right)
    at = next(inside, None)
    return at if at is not None and span[1] <= columns[at][1] else None


def _holds_figures(rows: Sequence[_Row]) -> bool:
    """Whether half of what stands behind the first column holds a figure or the sign for none."""
    texts = [text for row in rows[1:] for _, _, text in row.fields[1:]]
    return sum(map(_is_figure, texts)) * 2 >= len(texts)


def _is_figure(text: str) -> bool:
    """Whether a text can be a cell with a figure, be it of money: no sentence is."""
    return is_blank(text) or (len(text) <= _LONGEST_FIGURE and any(map(str.isdigit, text)))


_EDGES: Final[tuple[tuple[Callable[[_Field], int], int], ...]] = (
    (lambda field: field[0], 0),
    (lambda field: field[1], 0),
    (lambda field: field[0] + field[1], _CENTRED),
)
"""What the cells of a column have in common, and by how much it may differ."""


def _stand_in_line(rows: Sequence[_Row], columns: Sequence[_Span]) -> bool:
    """Whether the cells of each column begin, end or have their middle under each other.

    Headings that fill the first row may be set otherwise than what stands below them.
    """
    tight = rows[1:] if len(rows[0].fields) == len(columns) else rows
    for column in columns:
        inside = (field for row in tight for field in row.fields)
        fields = [field for field in inside if _column_of(field[:2], [column]) is not None]
        if not any(_share(edge, slack, fields) for edge, slack in _EDGES):
            return False
    return True


def _share(edge: Callable[[_Field], int], slack: int, fields: Sequence[_Field]) -> bool:
    places = [edge(field) for field in fields]
    return max(places, default=0) - min(places, default=0) <= slack
