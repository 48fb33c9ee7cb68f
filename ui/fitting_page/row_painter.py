"""Paints whole rows of the table into its viewport.

A view that hands each cell to a delegate spends more on the way there and back than on the cell:
29 microseconds of 57 a cell, measured at 120 cells a frame. So the view calls this for each row.
"""

from __future__ import annotations

from collections.abc import Hashable, Sequence
from dataclasses import dataclass
from functools import partial
from typing import Final

from PySide6.QtCore import QRectF
from PySide6.QtGui import QPainter

from charts.schema import Dimension
from ui.drawing.scale import Scale
from ui.fitting_page.cell_painter import CellPainter
from ui.fitting_page.cell_pictures import CellPictures, Same
from ui.fitting_page.columns import TAPE_COLUMNS, Column
from ui.fitting_page.rows import BandRow, ModelRow, TapeCell, TapeHead
from ui.fitting_page.table_model import FittingModel
from ui.fitting_page.tape_cells import Spot, rider_x

_DIMMED: Final = 0.42

Stretch = tuple[Column, float, float]
"""A column that is shown: which, where it begins, and how wide it is, in pixels."""


@dataclass(frozen=True, slots=True)
class Current:
    """The current cell, and whether the view has the keyboard."""

    row: int
    column: int
    keyboard: bool


class RowPainter:
    """Paints from the sheet's rows, never through the model's roles.

    Attributes:
        cells: what paints.
        pictures: the cells as they were painted before, but for a tape whose line is moved.
    """

    def __init__(self, model: FittingModel, cells: CellPainter) -> None:
        self._model = model
        self.wear(cells)

    def wear(self, cells: CellPainter) -> None:
        """Paint in another dress from now on."""
        self.cells = cells
        self.pictures = CellPictures()

    def paint(
        self,
        painter: QPainter,
        number: int,
        box: QRectF,
        columns: Sequence[Stretch],
        current: Current,
    ) -> None:
        """The row at ``number``, in ``box``.

        The painter's state is not saved and restored from cell to cell: that makes it set its
        clip anew each time. Each cell sets what it needs.
        """
        row = self._model.row(number)
        here = number == current.row
        if isinstance(row, BandRow):
            spot = Spot(painter, box)
            self.cells.band(spot, row, self.tapes(columns))
            if here and current.keyboard:
                self.cells.focus(spot)
        elif row is not None:
            self._paint_cells(painter, box, row, columns, current if here else None)

    def _paint_cells(
        self,
        painter: QPainter,
        box: QRectF,
        row: ModelRow,
        columns: Sequence[Stretch],
        current: Current | None,
    ) -> None:
        held = row.key == self._model.held
        for column, left, width in columns:
            cell = QRectF(left, box.top(), width, box.height())
            spot = Spot(painter, cell, current is not None, held)
            focus = current is not None and current.keyboard and current.column == column
            both = self._both_sides(row, column) if focus else ""
            if self._model.dimmed:
                self.cells.ground(spot, column)
                painter.setOpacity(_DIMMED)
            self._paint_cell(spot, row, column, both)
            if self._model.dimmed:
                painter.setOpacity(1.0)
            if focus:
                self.cells.focus(spot)

    def _both_sides(self, row: ModelRow, column: Column) -> str:
        """What is left at either end, where the keyboard is on a tape."""
        dimension, sheet = TAPE_COLUMNS.get(column), self._model.sheet
        return "" if dimension is None or sheet is None else sheet.both_sides(row, dimension)

    def _paint_cell(self, spot: Spot, row: ModelRow, column: Column, both: str) -> None:
        """The ground and what stands on it: as it was painted before, where it can be."""
        dimension, sheet = TAPE_COLUMNS.get(column), self._model.sheet
        if dimension is None or sheet is None:
            paint = partial(self._paint_words, row=row, column=column)
            self.pictures.paint(spot, words_in(row, column), paint)
            return
        head, cell = sheet.heads[dimension], row.cells.get(dimension)
        if head.tried_cm is None:
            seen = (column, head.centre_cm, head.half_span_cm, head.guess, Same(cell), both)
            tape = partial(self._paint_tape, column=column, head=head, cell=cell, both=both)
            self.pictures.paint(spot, seen, tape)
        else:
            self._paint_tried(spot, column, head, cell, both)

    def _paint_tried(
        self, spot: Spot, column: Column, head: TapeHead, cell: TapeCell | None, both: str
    ) -> None:
        """A tape whose line moves: the bars as they were, the line and what it tells anew."""
        bars = self.cells.tapes.bars_in(head, cell)
        if cell is None or bars is None:
            self._paint_tape(spot, column, head, cell, both)
            return
        seen = (column, bars, Same(cell.spans))
        self.pictures.paint(spot, seen, partial(self._paint_bars, column, head, cell))
        self.cells.tapes.paint_meeting(spot, head, cell, both)

    def _paint_bars(self, column: Column, head: TapeHead, cell: TapeCell, spot: Spot) -> None:
        self.cells.ground(spot, column)
        self.cells.tapes.paint_bars(spot, head, cell)

    def _paint_tape(
        self, spot: Spot, column: Column, head: TapeHead, cell: TapeCell | None, both: str
    ) -> None:
        self.cells.ground(spot, column)
        self.cells.tapes.paint(spot, head, cell, both)

    def _paint_words(self, spot: Spot, row: ModelRow, column: Column) -> None:
        self.cells.ground(spot, column)
        if column is Column.MODEL:
            self.cells.model(spot, row)
        elif column is Column.SIZE:
            self.cells.size(spot, row)
        elif column is Column.VERDICT:
            self.cells.verdict(spot, row)
        else:
            self.cells.note(spot, row)

    def tapes(self, columns: Sequence[Stretch]) -> list[tuple[TapeHead, float, float]]:
        """The tapes among ``columns``, for the rider's line through a heading."""
        sheet = self._model.sheet
        if sheet is None:
            return []
        return [
            (sheet.heads[TAPE_COLUMNS[column]], left, width)
            for column, left, width in columns
            if column in TAPE_COLUMNS
        ]

    def lines(self, columns: Sequence[Stretch]) -> dict[Dimension, tuple[Scale, float]]:
        """The tapes that have a reading, each with its scale and where the rider's line stands."""
        found = {}
        for head, left, width in self.tapes(columns):
            scale = self.cells.tapes.scale(head, left, width)
            if scale is not None and head.centre_cm is not None:
                found[head.dimension] = (scale, rider_x(head, scale))
        return found


def words_in(row: ModelRow, column: Column) -> Hashable:
    """All that stands in a cell that only carries words."""
    match column:
        case Column.MODEL:
            return column, row.model, row.wearer, row.make, row.edition
        case Column.SIZE:
            return column, row.size, row.length_option, row.also
        case Column.VERDICT:
            return column, row.girths, row.length
        case _:
            return column, row.note, row.stopped
