"""A rectangle of a sheet, perhaps turned, whose rows need not be neighbours.

Turning is done here once. All that follows sees sizes down the rows, so a table and its
transpose cannot be read differently. A band further down shares the heading of the first by
being a view of the heading's rows and its own.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from charts.remembered import remembered
from charts.sheet import Cell, Sheet


@dataclass(frozen=True, slots=True)
class At:
    """A cell and where it stands in its sheet (0-based row and column of the source)."""

    cell: Cell
    row: int
    column: int

    @property
    def text(self) -> str:
        """The printed text."""
        return self.cell.text

    @property
    def origin(self) -> tuple[int, int]:
        """Where the text is written: the first cell of a merged area, else the cell itself."""
        return self.cell.shared_from or (self.row, self.column)


@dataclass(frozen=True, slots=True)
class View:
    """Some rows and columns of a sheet. ``turned``: the view's rows are the sheet's columns."""

    sheet: Sheet
    rows: tuple[int, ...]
    columns: tuple[int, ...]
    turned: bool = False

    @property
    def height(self) -> int:
        """Rows of the view."""
        return len(self.columns) if self.turned else len(self.rows)

    @property
    def width(self) -> int:
        """Columns of the view."""
        return len(self.rows) if self.turned else len(self.columns)

    def at(self, row: int, column: int) -> At | None:
        """The cell at a place of the view; None where nothing stands."""
        if self.turned:
            row, column = column, row
        place = (self.rows[row], self.columns[column])
        cell = self.sheet.cells.get(place)
        return At(cell, *place) if cell is not None and cell.text.strip() else None

    def row(self, row: int) -> Iterator[At | None]:
        """One row of the view from left to right."""
        return iter(_row(self, row))

    def column(self, column: int) -> Iterator[At | None]:
        """One column of the view from top to bottom."""
        return iter(_column(self, column))

    def turn(self) -> View:
        """The same cells with rows and columns exchanged."""
        return View(self.sheet, self.rows, self.columns, not self.turned)

    def with_rows(self, rows: tuple[int, ...]) -> View:
        """The same columns over other rows of the sheet."""
        return View(self.sheet, rows, self.columns, self.turned)

    @property
    def area(self) -> str:
        """The rectangle's place in the source, trimmed to its filled cells."""
        filled = [
            (row, column)
            for row in self.rows
            for column in self.columns
            if (row, column) in self.sheet.cells
        ]
        if not filled:
            return self.sheet.place(self.rows[0], self.columns[0])
        first = (min(row for row, _ in filled), min(column for _, column in filled))
        last = (max(row for row, _ in filled), max(column for _, column in filled))
        return self.sheet.area(first, last)


@remembered
def _row(view: View, row: int) -> tuple[At | None, ...]:
    return tuple(view.at(row, column) for column in range(view.width))


@remembered
def _column(view: View, column: int) -> tuple[At | None, ...]:
    return tuple(view.at(row, column) for row in range(view.height))
