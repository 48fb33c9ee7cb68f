"""The charts page: the files left, the chosen one right, with its open questions first."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import Final

from PySide6.QtCore import QModelIndex, QTimer, Signal
from PySide6.QtGui import QPalette
from PySide6.QtWidgets import (
    QAbstractItemView,
    QFrame,
    QHBoxLayout,
    QListView,
    QStackedWidget,
    QTextBrowser,
    QWidget,
)

from charts.schema import FileReading
from ui.charts_page.file_model import FileDelegate, FileModel
from ui.charts_page.file_report import HERE, FileReport
from ui.charts_page.file_rows import file_rows
from ui.controls.empty_state import EmptyState
from ui.dress import Dress
from ui.words import Words

_LIST_WIDTH: Final = 330


class ChartsPage(QWidget):
    """Every file that came in; one that failed is a row with its problem.

    Signals:
        wanted(str): do the action of this key.
    """

    wanted = Signal(str)

    def __init__(self, words: Words, dress: Dress, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._words = words
        self._report = FileReport(dress.theme, words)
        self.files = FileModel(self)
        self.list = QListView(self)
        self.text = QTextBrowser(self)
        self.empty = EmptyState(dress.type_.large, self)
        self._place = ""
        self._build(dress)
        self.show_files(())

    def _build(self, dress: Dress) -> None:
        px = dress.type_.px
        self.list.setModel(self.files)
        self.list.setItemDelegate(FileDelegate(self.files, dress, self))
        self.list.setFrameShape(QFrame.Shape.NoFrame)
        self.list.setFixedWidth(px(_LIST_WIDTH))
        self.list.setVerticalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        self.list.setUniformItemSizes(True)
        self.list.setAccessibleName(self._words("charts-list"))
        self.list.selectionModel().currentChanged.connect(self._current_changed)
        self._build_report(px)
        self._build_empty()
        self._lay()

    def _build_report(self, px: Callable[[float], int]) -> None:
        self.text.setFrameShape(QFrame.Shape.NoFrame)
        self.text.document().setDocumentMargin(px(18))
        self.text.setAccessibleName(self._words("charts-report"))
        self.text.setBackgroundRole(QPalette.ColorRole.Base)

    def _build_empty(self) -> None:
        self.empty.offer(
            [
                ("open-files", self._words("empty-open")),
                ("open-folder", self._words("empty-folder")),
                ("demo", self._words("empty-demo")),
            ]
        )
        self.empty.say(self._words("empty-title"), self._words("empty-body"))
        self.empty.pressed.connect(self.wanted)

    def _lay(self) -> None:
        self.stack = QStackedWidget(self)
        whole = QWidget(self.stack)
        row = QHBoxLayout(whole)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(1)
        row.addWidget(self.list)
        row.addWidget(self.text, 1)
        self.stack.addWidget(self.empty)
        self.stack.addWidget(whole)
        outer = QHBoxLayout(self)
        outer.setContentsMargins(0, 0, 0, 0)
        outer.addWidget(self.stack)

    def show_files(self, readings: Sequence[FileReading]) -> None:
        """Show these files, keeping the chosen one chosen where it is still there."""
        before = self.files.row(self.list.currentIndex().row())
        self.files.show_rows(file_rows(readings, self._words))
        self.stack.setCurrentIndex(1 if readings else 0)
        at = self.files.find(before.reading.file) if before else 0
        self.list.setCurrentIndex(self.files.index(max(at, 0)))

    def show_place(self, file: str, place: str) -> None:
        """Show one cell of one file."""
        at = self.files.find(file)
        if at < 0:
            return
        self._place = place
        self.list.setCurrentIndex(self.files.index(at))
        self._show(at)
        QTimer.singleShot(0, self._go_there)

    def _current_changed(self, current: QModelIndex, before: QModelIndex) -> None:
        del before
        self._show(current.row())

    def _show(self, number: int) -> None:
        row = self.files.row(number)
        self.text.setHtml(self._report.page(row, self._place) if row else "")

    def _go_there(self) -> None:
        self.text.scrollToAnchor(HERE)
        bar = self.text.verticalScrollBar()
        bar.setValue(bar.value() - self.text.viewport().height() // 3)
        self._place = ""
