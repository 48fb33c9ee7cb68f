"""A table view that paints whole rows itself, and of these only the cells that have changed."""

from __future__ import annotations

from collections.abc import Collection, Iterable, Iterator, Sequence
from typing import Final, cast

from PySide6.QtCore import QModelIndex, QPersistentModelIndex, QRect, QRectF
from PySide6.QtGui import QAccessible, QPainter, QPaintEvent
from PySide6.QtWidgets import QTableView, QWidget

from charts.schema import Dimension
from ui.dress import Dress
from ui.fitting_page.cell_painter import CellPainter
from ui.fitting_page.columns import TAPE_COLUMNS, Column
from ui.fitting_page.row_painter import Current, RowPainter, Stretch, words_in
from ui.fitting_page.rows import BandRow, ModelRow, Sheet
from ui.fitting_page.table_model import FittingModel
from ui.words import Words

Index = QModelIndex | QPersistentModelIndex
_COLUMNS: Final = tuple((column, TAPE_COLUMNS.get(column)) for column in Column)


class PaintedRows(QTableView):
    """Shows the rows of a ``FittingModel``.

    Attributes:
        rows: the model.
    """

    def __init__(self, words: Words, dress: Dress, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.rows = FittingModel(words, self)
        self._painter = RowPainter(self.rows, CellPainter(dress))

    def dataChanged(self, first: Index, last: Index, roles: Sequence[int] = ()) -> None:
        """Nothing to paint: whoever shows a sheet says what changed. A screen reader is told."""
        if QAccessible.isActive():
            super().dataChanged(first, last, list(roles))

    def paint_changes(self, before: Sheet, after: Sheet) -> None:
        """Have those cells in sight painted that are not in ``after`` what they were.

        One stretch a column, from the first to the last of them: a view takes a few large pieces
        faster than many small ones.
        """
        viewport, columns = self.viewport(), self._shown_columns()
        viewport.update(self.visualRect(self.currentIndex()))
        heads = {one for one in after.heads if before.heads[one] != after.heads[one]}
        ends: dict[Column, tuple[int, int]] = {}
        for number in self._in_sight(viewport.rect()):
            for column in changed_in(before.row(number), after.row(number), heads):
                first, _ = ends.get(column, (number, number))
                ends[column] = (first, number)
        for column, left, width in columns:
            if column in ends:
                first, last = ends[column]
                top = self.rowViewportPosition(first)
                end = self.rowViewportPosition(last) + self.rowHeight(last)
                viewport.update(QRect(int(left), top, int(width), end - top))

    def paintEvent(self, event: QPaintEvent) -> None:
        """The cells that are in sight and to be painted."""
        index = self.currentIndex()
        current = Current(index.row(), index.column(), self.hasFocus())
        pieces = list(cast("Iterable[QRect]", event.region()))  # what Qt's stub leaves out
        stretches = [(one, _heights(pieces, one)) for one in self._shown_columns()]
        wide = self.viewport().width()
        painter = QPainter(self.viewport())
        for number in self._in_sight(event.rect()):
            top, high = self.rowViewportPosition(number), self.rowHeight(number)
            columns = [one for one, heights in stretches if _meets(heights, top, top + high)]
            if columns:
                box = QRectF(0, top, wide, high)
                self._painter.paint(painter, number, box, columns, current)
        painter.end()

    def _in_sight(self, rect: QRect) -> Iterator[int]:
        """The rows that stand in a part of the viewport."""
        first, last = self.rowAt(rect.top()), self.rowAt(rect.bottom())
        if first >= 0:
            yield from range(first, self.rows.rowCount() if last < 0 else last + 1)

    def _shown_columns(self) -> list[Stretch]:
        return [
            (column, float(self.columnViewportPosition(column)), float(self.columnWidth(column)))
            for column in Column
            if not self.isColumnHidden(column)
        ]


def _heights(pieces: Sequence[QRect], stretch: Stretch) -> list[tuple[int, int]]:
    """From where to where a column is to be painted, in pixels from the top."""
    _, left, width = stretch
    right = left + width
    return [
        (piece.top(), piece.top() + piece.height())
        for piece in pieces
        if piece.left() < right and piece.left() + piece.width() > left
    ]


def _meets(heights: Sequence[tuple[int, int]], top: int, end: int) -> bool:
    return any(first < end and last > top for first, last in heights)


def changed_in(
    old: ModelRow | BandRow, new: ModelRow | BandRow, heads: Collection[Dimension]
) -> Iterator[Column]:
    """The columns in which a row looks another way now; ``heads`` are the tapes that moved.

    Where the keyboard is a tape tells more than that: that cell is left to whoever asks.
    """
    if not (isinstance(old, ModelRow) and isinstance(new, ModelRow)):
        other = old != new
        yield from (column for column, tape in _COLUMNS if other or tape in heads)
        return
    other = old.key != new.key
    for column, dimension in _COLUMNS:
        if dimension is None:
            if other or words_in(old, column) != words_in(new, column):
                yield column
        elif dimension in heads or old.cells[dimension] is not new.cells[dimension]:
            yield column
