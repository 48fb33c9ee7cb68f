"""Hands the table's cells to the cell painter."""

from __future__ import annotations

from collections.abc import Callable
from typing import Final

from PySide6.QtCore import QObject, QRectF
from PySide6.QtGui import QPainter
from PySide6.QtWidgets import QStyledItemDelegate, QStyleOptionViewItem

from ui.fitting_page.cell_painter import CellPainter
from ui.fitting_page.columns import TAPE_COLUMNS, Column
from ui.fitting_page.rows import BandRow, ModelRow, TapeHead
from ui.fitting_page.table_model import FittingModel, Index
from ui.fitting_page.tape_cells import Spot

_DIMMED: Final = 0.42

Tapes = Callable[[], list[tuple[TapeHead, float, float]]]
"""The tapes shown as (head, left, width in pixels), for the line through a band's heading."""


class FittingDelegate(QStyledItemDelegate):
    """Paints from the sheet's rows, never through the model's roles.

    Attributes:
        cells: what paints.
        current: row and column of the current cell, set by the view before it paints: to ask the
            style option for it costs more than painting the cell.
        has_keyboard: whether the view has it.
    """

    def __init__(
        self, model: FittingModel, cells: CellPainter, tapes: Tapes, parent: QObject | None = None
    ) -> None:
        super().__init__(parent)
        self._model = model
        self._tapes = tapes
        self.cells = cells
        self.current = (-1, -1)
        self.has_keyboard = False

    def paint(self, painter: QPainter, option: QStyleOptionViewItem, index: Index) -> None:
        """One cell."""
        row = self._model.row(index.row())
        if row is None:
            return
        at = index.row()
        focus = self.has_keyboard and at == self.current[0] and index.column() == self.current[1]
        chosen = at == self.current[0] and isinstance(row, ModelRow)
        spot = Spot(painter, QRectF(option.rect), chosen)
        painter.save()
        if isinstance(row, BandRow):
            self.cells.band(spot, row, self._tapes())
        else:
            self._paint_row(spot, row, Column(index.column()), focus)
        painter.setOpacity(1.0)
        if focus:
            self.cells.focus(spot)
        painter.restore()

    def _paint_row(self, spot: Spot, row: ModelRow, column: Column, focus: bool) -> None:
        self.cells.ground(spot, column)
        if self._model.dimmed:
            spot.painter.setOpacity(_DIMMED)
        if column in TAPE_COLUMNS:
            self._paint_tape(spot, row, column, focus)
            return
        match column:
            case Column.MODEL:
                self.cells.model(spot, row)
            case Column.SIZE:
                self.cells.size(spot, row)
            case Column.NOTE:
                self.cells.note(spot, row)
            case _:
                self.cells.verdict(spot, row)

    def _paint_tape(self, spot: Spot, row: ModelRow, column: Column, focus: bool) -> None:
        sheet, dimension = self._model.sheet, TAPE_COLUMNS[column]
        if sheet is None:
            return
        both = sheet.both_sides(row, dimension) if focus else ""
        self.cells.tapes.paint(spot, sheet.heads[dimension], row.cells.get(dimension), both)
