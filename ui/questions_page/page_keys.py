"""The keys of the questions page, and the menu that shows those of the table."""

from __future__ import annotations

from collections.abc import Sequence
from functools import partial
from typing import Final

from PySide6.QtCore import QObject, QPoint, Qt, Signal
from PySide6.QtGui import QAction, QKeySequence
from PySide6.QtWidgets import QMenu, QWidget

from ui.controls.buttons import FlatButton
from ui.questions_page.table_acts import TableAct
from ui.words import Words

_TABLE_KEYS: Final = {
    TableAct.TURN: "Ctrl+Alt+T",
    TableAct.TOP: "Alt+Shift+Up",
    TableAct.BOTTOM: "Alt+Shift+Down",
    TableAct.LEFT: "Alt+Shift+Left",
    TableAct.RIGHT: "Alt+Shift+Right",
    TableAct.OUT_ROW: "Ctrl+Alt+R",
    TableAct.OUT_COLUMN: "Ctrl+Alt+C",
    TableAct.OUT_TABLE: "",
    TableAct.OUT_SHEET: "",
}
_NEW_GROUP: Final = frozenset({TableAct.TURN, TableAct.TOP, TableAct.OUT_ROW})


class PageKeys(QObject):
    """Keys that work wherever the keyboard is on the page.

    Attributes:
        table_actions: what stands in the table's menu.

    Signals:
        table_act(str): the act of this key of the table's menu.
        back(): Escape was pressed.
        type_cell(): the chosen cell is to be typed.
        opening(): the menu is about to open; what can be said of the column is wanted.
        column_word(int): what was offered at this place is said of the column.
    """

    table_act = Signal(str)
    back = Signal()
    type_cell = Signal()
    opening = Signal()
    column_word = Signal(int)

    def __init__(self, page: QWidget, words: Words, button: FlatButton) -> None:
        super().__init__(page)
        self._page = page
        self._button = button
        self.menu = QMenu(page)
        self.column_menu = QMenu(words.wording.say("questions", "column-menu"), self.menu)
        self.column_menu.triggered.connect(self._column_word)
        self.menu.addMenu(self.column_menu)
        self.menu.aboutToShow.connect(self.opening)
        self.table_actions: list[QAction] = []
        for kind, key in _TABLE_KEYS.items():
            if kind in _NEW_GROUP:
                self.menu.addSeparator()
            action = self._action(words.wording.say("questions", f"table-{kind.value}"), key)
            action.triggered.connect(partial(self._table_act, kind.value))
            self.menu.addAction(action)
            self.table_actions.append(action)
        self._action("", "Escape").triggered.connect(self.back)
        self._action("", "F2").triggered.connect(self.type_cell)
        button.clicked.connect(self._open)

    def _action(self, text: str, key: str) -> QAction:
        action = QAction(text, self._page)
        action.setShortcutContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
        if key:
            action.setShortcut(QKeySequence(key))
        self._page.addAction(action)
        return action

    def offer(self, texts: Sequence[str]) -> None:
        """Offer these words for the column of the chosen cell."""
        self.column_menu.clear()
        self.column_menu.setEnabled(bool(texts))
        for number, text in enumerate(texts):
            self.column_menu.addAction(text).setData(number)

    def popup(self, at: QPoint) -> None:
        """Open the menu at a point of the screen."""
        self.menu.popup(at)

    def _column_word(self, action: QAction) -> None:
        self.column_word.emit(int(action.data()))

    def _table_act(self, key: str, checked: bool = False) -> None:
        del checked
        self.table_act.emit(key)

    def _open(self) -> None:
        self.menu.popup(self._button.mapToGlobal(self._button.rect().bottomLeft()))
