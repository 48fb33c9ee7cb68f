"""The two tables of the questions page with their captions: as it came, as understood."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from PySide6.QtCore import QSignalBlocker, Signal
from PySide6.QtGui import QPalette
from PySide6.QtWidgets import QHBoxLayout, QLabel, QTabBar, QVBoxLayout, QWidget

from charts.regions import SheetRegions
from ui.controls.buttons import FlatButton
from ui.dress import Dress
from ui.questions_page.source_model import Said
from ui.questions_page.source_shape import At, shape_of
from ui.questions_page.source_view import SourceView
from ui.questions_page.understood_view import UnderstoodView
from ui.words import Words


def _caption(text: str, dress: Dress, parent: QWidget) -> QLabel:
    label = QLabel(text, parent)
    label.setFont(dress.type_.small_strong)
    label.setForegroundRole(QPalette.ColorRole.PlaceholderText)
    return label


def _stand(pane: QWidget, line: QHBoxLayout, table: QWidget, dress: Dress) -> None:
    """A caption line over a table."""
    px = dress.type_.px
    pane.setAutoFillBackground(True)
    pane.setBackgroundRole(QPalette.ColorRole.Window)
    line.setContentsMargins(px(12), px(3), px(8), px(3))
    line.setSpacing(px(10))
    column = QVBoxLayout(pane)
    column.setContentsMargins(0, 0, 0, 0)
    column.setSpacing(0)
    column.addLayout(line)
    column.addWidget(table, 1)


class SheetPane(QWidget):
    """The source as it came; one sheet at a time.

    Signals:
        sheet_picked(int): another sheet is to be shown.
    """

    sheet_picked = Signal(int)

    def __init__(
        self, words: Words, dress: Dress, says: Said, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self._words = words
        self.view = SourceView(says, dress, self)
        self.view.setAccessibleName(words.wording.say("questions", "source-name"))
        self.tabs = QTabBar(self)
        self.tabs.setFont(dress.type_.small)
        self.tabs.setDrawBase(False)
        self.tabs.setExpanding(False)
        self.tabs.setUsesScrollButtons(True)
        self.tabs.currentChanged.connect(self.sheet_picked)
        self.table_button = FlatButton(words.wording.say("questions", "table-menu"), self)
        self.table_button.setFont(dress.type_.small)
        line = QHBoxLayout()
        line.addWidget(_caption(words.wording.say("questions", "source-caption"), dress, self))
        line.addWidget(self.tabs, 1)
        line.addStretch(0)
        line.addWidget(self.table_button)
        _stand(self, line, self.view, dress)

    @property
    def number(self) -> int:
        """Which sheet is shown."""
        return max(self.tabs.currentIndex(), 0)

    def show_sheets(
        self, sheets: Sequence[SheetRegions], asked: frozenset[str], *, again: bool
    ) -> None:
        """Offer these sheets; of the same file the one that was shown stays."""
        before = self.number if again else self._first(sheets)
        say = self._words.wording.say
        with QSignalBlocker(self.tabs):
            while self.tabs.count():
                self.tabs.removeTab(0)
            for one in sheets:
                name = one.sheet.name
                marked = say("questions", "sheet-asked", name=name) if name in asked else name
                self.tabs.addTab(marked)
            self.tabs.setCurrentIndex(min(before, len(sheets) - 1))
        self.tabs.setVisible(len(sheets) > 1)

    @staticmethod
    def _first(sheets: Sequence[SheetRegions]) -> int:
        """The first sheet that holds a table."""
        return next((at for at, one in enumerate(sheets) if one.tables), 0)

    def pick(self, number: int) -> None:
        """Show another sheet without telling anybody."""
        with QSignalBlocker(self.tabs):
            self.tabs.setCurrentIndex(number)

    def show_sheet(self, one: SheetRegions | None, asked: Iterable[At]) -> None:
        """Show a sheet with its open cells."""
        self.table_button.setEnabled(one is not None)
        shape = shape_of(one, self._words.wording) if one is not None else None
        self.view.show_shape(shape, asked)


class UnderstoodPane(QWidget):
    """The charts of the sheet as they were understood."""

    def __init__(self, words: Words, dress: Dress, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.view = UnderstoodView(dress, self)
        self.view.setAccessibleName(words.wording.say("questions", "understood-name"))
        line = QHBoxLayout()
        line.addWidget(_caption(words.wording.say("questions", "understood-caption"), dress, self))
        line.addStretch(1)
        _stand(self, line, self.view, dress)
