"""Rows with one cell more in front than the headings, or one less: all stand one column off.

``Size | Chest | Waist`` over ``Women | S | 82-86 | 66-70``: the band or the model in front has no
heading, and the last column has none either. A size under the name of a measure proves it; of
numbers it has to be told by what the columns measure, with and without the step to the right.
``Gender | Size | Chest | Waist`` over ``S | 82-86 | 66-70`` is the same the other way round.
Nor has a second name of the sizes a heading in ``Size | Chest | Waist`` over ``S | 36 | 82-86 |
66-70``.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from typing import Final

from charts.dimensions import HeadingReading, Role
from charts.layout.fields import Field, FieldKind, Table
from charts.layout.heads import combined, heads_of
from charts.layout.looks import Look, look
from charts.layout.missing_corner import all_usual
from charts.layout.view import At, View
from charts.schema import Dimension

_OVER_NAMES: Final = frozenset({None, Dimension.AGE, Dimension.OTHER})
"""Measures under which a word may stand: ages, and things that are no measure of a body."""
_FEWEST_ROWS: Final = 2
_NUMBER: Final = re.compile(r"[0-9]{1,2}")


def in_front(view: View, rows: int) -> bool:
    """Whether the headings belong one column further to the right, over all but the first cells."""
    if rows == 0 or view.width < 3 or view.height - rows < _FEWEST_ROWS:
        return False
    given = [heads_of(view, column, rows) for column in range(view.width)]
    if not all(given[:-1]) or given[-1]:
        return False
    heads = [combined(one) for one in given[:-1]]
    columns = [
        [look(at.text) for at in list(view.column(column))[rows:] if at is not None]
        for column in range(view.width)
    ]
    if heads[0].role is Role.MEASURE or not all(map(_holds_values, columns[2:])):
        return False
    if _sizes_under_a_measure(heads[1], columns) or _told_by_figures(heads, columns):
        return True
    return _numbers_behind_sizes(heads, columns)


def heads_in_front(view: View, column: int, rows: int) -> tuple[At, ...]:
    """The heading of a column where the rows have a cell in front.

    A word for size stands over the sizes; any other word, or one over sizes that have a length
    beside them, may be the first cells' own.
    """
    first = heads_of(view, 0, rows)
    second = [look(at.text) for at in list(view.column(1))[rows:] if at is not None]
    if combined(first).role is Role.LABEL and not _most_lengths(second):
        return heads_of(view, column - 1, rows) if column else ()
    if column < 2:
        return () if column else first
    return heads_of(view, column - 1, rows)


def lacks_in_front(view: View, rows: int) -> bool:
    """Whether the headings belong one column further to the left: the first stands over nothing.

    The last column is headed and empty, a word for size stands over figures and the sizes before
    it, and all figures are usual under the next heading.
    """
    if rows == 0 or view.width < 3 or view.height - rows < _FEWEST_ROWS:
        return False
    heads = [combined(heads_of(view, column, rows)) for column in range(view.width)]
    columns = [
        [look(at.text) for at in list(view.column(column))[rows:] if at is not None]
        for column in range(view.width)
    ]
    if columns[-1] or not all(columns[:-1]) or heads[0].role in {Role.LABEL, Role.MEASURE}:
        return False
    if heads[1].role is not Role.LABEL or any(one.role is not Role.MEASURE for one in heads[2:]):
        return False
    sizes = columns[0]
    sized = len(sizes) > 1 and all(one.sure_label and not one.bare_band for one in sizes)
    figures = all(map(_holds_values, columns[1:-1]))
    return sized and figures and all_usual(heads[2:], columns[1:-1])


def headed_elsewhere(table: Table) -> int:
    """1 where the measures of a table are headed one column too early, -1 one too late, else 0."""
    if table.gridded or len(table.fields) < 3:
        return 0
    values = [one for one in table.of(FieldKind.VALUES) if one.heads]
    steps = {_step(one, turned=table.turned) for one in values}
    if steps == {1} and table.fields[1].kind is FieldKind.VALUES:
        return 0  # all stand one column too early: it is the heading of the sizes that is lost
    return steps.pop() if steps in ({1}, {-1}) else 0


def _step(field: Field, *, turned: bool) -> int:
    head, cell = field.heads[0], next((one[0] for one in field.cells if one), None)
    if cell is None:
        return 0
    return cell.row - head.row if turned else cell.column - head.column


def _holds_values(column: Sequence[Look]) -> bool:
    return 2 * sum(one.value and not one.wordy_label for one in column) > len(column)


def _sizes_under_a_measure(head: HeadingReading, columns: Sequence[Sequence[Look]]) -> bool:
    """``S``, ``M`` under ``Chest``: no girth is a word."""
    if head.role is not Role.MEASURE or head.dimension in _OVER_NAMES or head.candidates:
        return False
    names = columns[1]
    return len(names) > 1 and all(one.sure_label or _is_length(one) for one in names)


def _numbers_behind_sizes(
    heads: Sequence[HeadingReading], columns: Sequence[Sequence[Look]]
) -> bool:
    """``S | 36``: a second number of each size, and figures that suit the next headings only."""
    names, full = columns[0], all(len(column) == len(columns[0]) for column in columns)
    sized = heads[0].role is Role.LABEL and all(one.label is not None for one in names)
    if not (sized and full and size_numbers([one.text for one in columns[1]])):
        return False
    if any(one.role is not Role.MEASURE or one.candidates for one in heads[1:]):
        return False
    return all_usual(heads[1:], columns[2:]) and not all_usual(heads[1:], columns[1:-1])


def size_numbers(texts: Sequence[str]) -> bool:
    """``34``, ``36``, ``38``: whole numbers of two digits or one, as sizes are called."""
    return len(texts) >= _FEWEST_ROWS and all(_NUMBER.fullmatch(text.strip()) for text in texts)


def _most_lengths(names: Sequence[Look]) -> bool:
    return 2 * sum(map(_is_length, names)) > len(names)


def _is_length(one: Look) -> bool:
    """A word such as Short; letters are sizes as well."""
    return one.length is not None and len(one.text) > 2


def _told_by_figures(heads: Sequence[HeadingReading], columns: Sequence[Sequence[Look]]) -> bool:
    """Whether a word in front holds for many rows, and the figures suit the next headings only."""
    front, sizes = columns[0], columns[1]
    shared = not any(one.value for one in front) and 2 * len({one.text for one in front}) <= len(
        sizes
    )
    named = len({one.text for one in sizes}) > 1 and all(one.label is not None for one in sizes)
    full = all(len(column) == len(sizes) for column in columns[1:])
    measured = sum(one.role is Role.MEASURE for one in heads) > 1
    if not (front and shared and named and full and measured):
        return False
    return all_usual(heads, columns[1:]) and not all_usual(heads, columns[:-1])
