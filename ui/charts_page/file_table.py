"""The view of the files: its columns share the room there is; Enter and a double click open."""

from __future__ import annotations

from typing import Final

from PySide6.QtCore import QModelIndex, QRect, QRectF, QSize, Qt, Signal
from PySide6.QtGui import QKeyEvent, QPainter, QResizeEvent
from PySide6.QtWidgets import QAbstractItemView, QFrame, QHeaderView, QTableView, QWidget

from ui.charts_page.file_model import INDENT, Column, FileDelegate, FileModel
from ui.dress import Dress
from ui.theme import Ink
from ui.words import Words

_SHARES: Final = {
    Column.MAKER: 0.15,
    Column.MODELS: 0.24,
    Column.FILE: 0.22,
    Column.GAVE: 0.13,
    Column.STATE: 0.26,
}
_ROW: Final = 35.0


class QuietHead(QHeaderView):
    """The names of the columns, standing over what they name."""

    def __init__(self, dress: Dress, parent: QWidget) -> None:
        super().__init__(Qt.Orientation.Horizontal, parent)
        self._dress = dress

    def sizeHint(self) -> QSize:
        """One line with some air."""
        return QSize(super().sizeHint().width(), self._dress.type_.px(26))

    def paintSection(self, painter: QPainter, rect: QRect, logicalIndex: int) -> None:  # noqa: N803 - Qt calls it so
        """One name over a hairline."""
        dress, box = self._dress, QRectF(rect)
        painter.fillRect(box, dress.colours[Ink.BAND])
        rule = QRectF(box.left(), box.bottom() - 1, box.width(), 1)
        painter.fillRect(rule, dress.colours[Ink.EDGE])
        name = self.model().headerData(logicalIndex, Qt.Orientation.Horizontal)
        words = box.adjusted(INDENT * dress.unit, 0, 0, 0)
        dress.small_strong.left(painter, words, str(name or ""), dress.colours[Ink.QUIET])


class FileTable(QTableView):
    """One row a file, and one for each of several charts.

    Signals:
        opened(str, str): the file of this name was chosen, and the key of one of its charts, "" for
            the whole file.
    """

    opened = Signal(str, str)

    def __init__(self, words: Words, dress: Dress, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.files = FileModel(words, self)
        self.setModel(self.files)
        self.setItemDelegate(FileDelegate(self.files, dress, self))
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setShowGrid(False)
        self.setWordWrap(False)
        self.setTabKeyNavigation(False)
        self.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectRows)
        self.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        self.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        self.setVerticalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setAccessibleName(words("charts-list"))
        upright, level = self.verticalHeader(), QuietHead(dress, self)
        self.setHorizontalHeader(level)
        upright.hide()
        upright.setSectionResizeMode(QHeaderView.ResizeMode.Fixed)
        upright.setMinimumSectionSize(1)
        upright.setDefaultSectionSize(dress.type_.px(_ROW))
        level.setSectionResizeMode(QHeaderView.ResizeMode.Fixed)
        level.setMinimumSectionSize(1)
        level.setFont(dress.type_.small_strong)
        level.setHighlightSections(False)
        self.doubleClicked.connect(self._open)

    def choose(self, number: int) -> None:
        """Choose the row at ``number``."""
        column = max(self.currentIndex().column(), 0)
        self.setCurrentIndex(self.files.index(number, column))

    def resizeEvent(self, event: QResizeEvent) -> None:
        """The columns share the width."""
        super().resizeEvent(event)
        wide = self.viewport().width()
        for column, share in _SHARES.items():
            self.setColumnWidth(column, round(wide * share))

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Enter opens the chosen file."""
        plain = event.modifiers() in (
            Qt.KeyboardModifier.NoModifier,
            Qt.KeyboardModifier.KeypadModifier,
        )
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter) and plain:
            self._open(self.currentIndex())
            return
        super().keyPressEvent(event)

    def _open(self, index: QModelIndex) -> None:
        row = self.files.row(index.row())
        if row is not None:
            self.opened.emit(row.file, row.chart)
