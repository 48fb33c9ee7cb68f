"""Rows to which the source gives fewer cells than to the others: a cell, or a border, is lost.

What stood behind it has moved one column to the left and may fit there: it is asked, whatever the
figures are. A blank cell is printed as a cell and moves nothing.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence, Set
from dataclasses import replace

from charts.columns.values import Filled
from charts.columns.words import Surroundings
from charts.findings import listed
from charts.layout.fields import FieldKind, Table


def short_rows(table: Table) -> frozenset[int]:
    """The rows of the source that end before the last column of values, where most do not.

    A column of prices counts as well that every longer row fills.
    """
    widths = table.sheet.row_widths
    places = {
        (at.row, at.column)
        for field in table.of(FieldKind.VALUES)
        for cell in field.cells
        for at in cell
    }
    rows = {row for row, _ in places}
    last = max((column for _, column in places), default=0)
    last = max((last, *_filled_behind(table, rows)))
    short = frozenset(row for row in rows if widths.get(row, last + 1) <= last)
    return short if 2 * len(short) <= len(rows) else frozenset()


def _filled_behind(table: Table, rows: Set[int]) -> Iterator[int]:
    """The columns that are left out of the chart and have a cell in every row that reaches them."""
    widths = table.sheet.row_widths
    for field in table.of(FieldKind.SKIPPED):
        cells = {at.row: at.column for cell in field.cells for at in cell}
        column = max(cells.values(), default=0)
        if all(row in cells or widths.get(row, column + 1) <= column for row in rows):
            yield column


def short_rows_asked(columns: Sequence[Filled], around: Surroundings) -> list[Filled]:
    """The columns with one question on every value of such rows."""
    short = short_rows(around.table)
    spots = sorted(
        (at.row, at.column)
        for one in columns
        for line in one.ranges
        for at in one.column.field.cells[line]
        if at.row in short
    )
    if not spots:
        return list(columns)
    key = f"short {around.table.area}"
    ident = around.log.add("columns-shifted", around.place(*spots[0]), key=key, case="short")
    return [_asked(one, short, ident) for one in columns]


def _asked(one: Filled, short: frozenset[int], ident: str) -> Filled:
    ranges = {
        line: replace(value, findings=listed(*value.findings, ident))
        if any(at.row in short for at in one.column.field.cells[line])
        else value
        for line, value in one.ranges.items()
    }
    return Filled(one.column, ranges)
