"""The source as it came: a grid with joined cells, outlined parts, and the asked cells framed."""

from __future__ import annotations

from collections.abc import Iterable
from typing import Final

from PySide6.QtCore import QModelIndex, QRect, QRectF, Qt, Signal
from PySide6.QtGui import QContextMenuEvent, QFontMetricsF, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QAbstractItemView, QFrame, QHeaderView, QTableView, QWidget

from charts.places import Rectangle
from charts.sheet import Addressing
from ui.dress import Dress
from ui.questions_page.outlines import TAG_BAND, paint_frame, paint_tag
from ui.questions_page.source_cells import SIDE, SourceDelegate
from ui.questions_page.source_model import Said, SourceModel
from ui.questions_page.source_shape import At, SourceShape
from ui.theme import Ink

_ROW: Final = 24.0
_LEAST: Final = 58.0
_MOST: Final = 190.0


class SourceView(QTableView):
    """Shows one sheet.

    Signals:
        went(int, int): this row and column of the grid are chosen now.
        marked(object): the cells of the sheet that are framed, else the chosen one, as a list.
        menu_wanted(object): the menu is wanted at this point of the screen.
    """

    went = Signal(int, int)
    marked = Signal(object)
    menu_wanted = Signal(object)

    def __init__(self, says: Said, dress: Dress, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._dress = dress
        self.cells = SourceModel(says, self)
        self._delegate = SourceDelegate(self.cells, dress, self)
        self.setModel(self.cells)
        self.setItemDelegate(self._delegate)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setShowGrid(False)
        self.setTabKeyNavigation(False)
        self.setSelectionMode(QAbstractItemView.SelectionMode.NoSelection)
        self.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        self.setHorizontalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        self.setVerticalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        self.setCornerButtonEnabled(False)
        for header in (self.horizontalHeader(), self.verticalHeader()):
            header.setFont(dress.type_.small)
            header.setSectionResizeMode(QHeaderView.ResizeMode.Fixed)
            header.setMinimumSectionSize(1)
            header.setHighlightSections(True)
        self.verticalHeader().setMinimumWidth(dress.type_.px(34))
        self.selectionModel().currentChanged.connect(self._current_changed)

    def show_shape(self, shape: SourceShape | None, asked: Iterable[At]) -> None:
        """Show a sheet with the cells that are asked about; the place in it stays."""
        before = self.currentIndex()
        bars = (self.horizontalScrollBar(), self.verticalScrollBar())
        places = [bar.value() for bar in bars]
        self.clearSpans()
        self.cells.show_shape(shape)
        self._delegate.asked = self._here(asked)
        self._delegate.framed = frozenset()
        if shape is None:
            return
        self.horizontalHeader().setVisible(shape.sheet.addressing is not Addressing.LINE)
        self._lay(shape)
        self.setCurrentIndex(self.cells.index(before.row(), before.column()))
        for bar, place in zip(bars, places, strict=True):
            bar.setValue(place)

    def frame_cells(self, cells: Iterable[At]) -> None:
        """Frame these cells of the sheet and bring the first of them into sight."""
        framed = self._here(cells)
        self._delegate.framed = framed
        self.viewport().update()
        if framed:
            self.setCurrentIndex(self.cells.index(*min(framed)))
            self.show_framed()
        self._tell_marked()

    def _tell_marked(self) -> None:
        shape, current = self.cells.shape, self.currentIndex()
        here = (current.row(), current.column())
        framed = self._delegate.framed
        marked = framed if here in framed or not current.isValid() else {here}
        self.marked.emit([shape.there(*at) for at in sorted(marked)] if shape is not None else [])

    def show_framed(self) -> None:
        """Bring the framed cells into sight, the first of them at any rate."""
        for at in sorted(self._delegate.framed, reverse=True):
            hint = QAbstractItemView.ScrollHint.EnsureVisible
            self.scrollTo(self.cells.index(*at), hint)

    def go_home(self) -> None:
        """Go to the beginning of the sheet."""
        for bar in (self.horizontalScrollBar(), self.verticalScrollBar()):
            bar.setValue(0)

    @property
    def framed(self) -> frozenset[tuple[int, int]]:
        """The framed cells, in the grid's rows and columns."""
        return self._delegate.framed

    def _here(self, cells: Iterable[At]) -> frozenset[tuple[int, int]]:
        shape = self.cells.shape
        places = [shape.here(at) for at in cells] if shape is not None else []
        return frozenset(place for place in places if place is not None)

    def contextMenuEvent(self, event: QContextMenuEvent) -> None:
        """The menu of the cell, by mouse at the pointer, by key at the cell."""
        at = event.pos()
        if event.reason() is QContextMenuEvent.Reason.Keyboard:
            at = self.visualRect(self.currentIndex()).center()
        else:
            self.setCurrentIndex(self.indexAt(self.viewport().mapFromGlobal(event.globalPos())))
            at = self.viewport().mapFromGlobal(event.globalPos())
        self.menu_wanted.emit(self.viewport().mapToGlobal(at))

    # Rows and columns

    def _lay(self, shape: SourceShape) -> None:
        for area in shape.joined:
            down, across = area.bottom - area.top + 1, area.right - area.left + 1
            self.setSpan(area.top, area.left, down, across)
        for column in range(len(shape.columns)):
            self.setColumnWidth(column, round(self._width(shape, column)))
        for row in range(len(shape.rows)):
            self.setRowHeight(row, round(self._height(shape, row)))

    def _width(self, shape: SourceShape, column: int) -> float:
        """Room for the widest text that stands in one column alone, and for the tags."""
        dress, wide = self._dress, {area for area in shape.joined if area.left != area.right}
        alone = [
            dress.strong.width(line)
            for row in range(len(shape.rows))
            if not any(area.holds(row, column) for area in wide)
            for line in self._lines(row, column)
        ]
        tags = [
            dress.small.width(outline.tag) + 8 * dress.unit
            for outline in shape.outlines
            if outline.cells.left == outline.cells.right == column
        ]
        wanted = max((*alone, *tags), default=0.0) + (2 * SIDE + 14) * dress.unit
        return min(max(wanted, _LEAST * dress.unit), _MOST * dress.unit)

    def _lines(self, row: int, column: int) -> list[str]:
        cell = self.cells.cell(row, column)
        if cell is None or cell.shared_from is not None:
            return []
        if cell.corrected is not None:
            return [f"{cell.printed}  {cell.text}"]
        return cell.printed.splitlines()

    def _height(self, shape: SourceShape, row: int) -> float:
        unit = self._dress.unit
        metrics = QFontMetricsF(self._dress.type_.plain)
        highest = _ROW * unit
        for column in range(len(shape.columns)):
            text = "\n".join(self._lines(row, column))
            if text and self.rowSpan(row, column) == 1:
                span = self.columnSpan(row, column)
                wide = sum(self.columnWidth(column + more) for more in range(span))
                room = QRectF(0, 0, wide - 2 * SIDE * unit, 10_000)
                flags = Qt.TextFlag.TextWordWrap.value
                needed = metrics.boundingRect(room, flags, text).height() + 8 * unit
                highest = max(highest, needed)
        return highest + (TAG_BAND * unit if row in shape.tagged_rows else 0)

    # Painting

    def paintEvent(self, event: QPaintEvent) -> None:
        """The cells, the outlines over them, and the frame of what is asked."""
        super().paintEvent(event)
        shape = self.cells.shape
        if shape is None:
            return
        painter = QPainter(self.viewport())
        for outline in shape.outlines:
            paint_frame(painter, self._box(outline.cells), outline, self._dress)
        pen = QPen(self._dress.colours[Ink.NEAR], 2.5 * self._dress.unit)
        pen.setJoinStyle(Qt.PenJoinStyle.MiterJoin)
        painter.setPen(pen)
        painter.setBrush(Qt.BrushStyle.NoBrush)
        for area in _rectangles(self._delegate.framed):
            painter.drawRect(self._box(area).adjusted(1.5, 1.5, -2.5, -2.5))
        for outline in shape.outlines:
            paint_tag(painter, self._box(outline.cells), outline, self._dress)
        painter.end()

    def _box(self, area: Rectangle) -> QRectF:
        first = self.visualRect(self.cells.index(area.top, area.left))
        last = self.visualRect(self.cells.index(area.bottom, area.right))
        return QRectF(QRect(first.topLeft(), first.bottomRight()).united(last))

    def _current_changed(self, current: QModelIndex, before: QModelIndex) -> None:
        del before
        if current.isValid():
            self.went.emit(current.row(), current.column())
            self._tell_marked()


def _rectangles(cells: Iterable[tuple[int, int]]) -> list[Rectangle]:
    """Cells as few rectangles: runs down each column, joined where they are equally long."""
    runs: list[Rectangle] = []
    for row, column in sorted(cells, key=lambda at: (at[1], at[0])):
        last = runs[-1] if runs else None
        if last is not None and last.left == column and last.bottom == row - 1:
            runs[-1] = Rectangle(last.top, column, row, column)
        else:
            runs.append(Rectangle(row, column, row, column))
    joined: list[Rectangle] = []
    for run in runs:
        last = joined[-1] if joined else None
        if last and last.right == run.left - 1 and (last.top, last.bottom) == (run.top, run.bottom):
            joined[-1] = Rectangle(last.top, last.left, last.bottom, run.right)
        else:
            joined.append(run)
    return joined
