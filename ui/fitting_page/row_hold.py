"""Holds a row of the table for comparing: by Ctrl and a press, or from the row's menu.

The menu is open to what else can be done with a row.
"""

from __future__ import annotations

from collections.abc import Callable
from functools import partial

from PySide6.QtCore import QEvent, QObject, QPoint, Qt, Signal
from PySide6.QtGui import QContextMenuEvent, QMouseEvent
from PySide6.QtWidgets import QMenu, QTableView

from ui.fitting_page.rows import ModelRow
from ui.fitting_page.table_model import FittingModel

_PRESSES = (QEvent.Type.MouseButtonPress, QEvent.Type.MouseButtonDblClick)


class RowHold(QObject):
    """Watches a table; keeps the right button and Ctrl with a press to itself: no choice moves.

    Attributes:
        opens: shows a menu at a place of the screen.
        adds: puts into a row's menu what else can be done with it.

    Signals:
        pressed(str): the row of this model is to be held, or let go where it is held.
    """

    pressed = Signal(str)

    def __init__(self, table: QTableView, rows: FittingModel) -> None:
        super().__init__(table)
        self._table = table
        self._rows = rows
        self.opens: Callable[[QMenu, QPoint], object] = QMenu.popup
        self.adds: Callable[[QMenu, ModelRow], None] | None = None
        table.installEventFilter(self)
        table.viewport().installEventFilter(self)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """True where the event was about holding a row and is done with."""
        if isinstance(event, QContextMenuEvent):
            return self._open_menu(event)
        if isinstance(event, QMouseEvent) and event.type() in _PRESSES:
            return self._press(event)
        return super().eventFilter(watched, event)

    def _press(self, event: QMouseEvent) -> bool:
        if event.button() is Qt.MouseButton.RightButton:
            return True
        row = self._row_at(event.position().toPoint())
        if row is None or not event.modifiers() & Qt.KeyboardModifier.ControlModifier:
            return False
        self.pressed.emit(row.key)
        return True

    def _open_menu(self, event: QContextMenuEvent) -> bool:
        """The menu of the row under the mouse; by key, of the current one."""
        at, row = event.globalPos(), self._row_at(event.pos())
        if event.reason() is not QContextMenuEvent.Reason.Mouse:
            row = self._model_row(self._table.currentIndex().row())
            at = self._current_place()
        if row is None:
            return False
        self.opens(self._menu_of(row), at)
        return True

    def open_here(self, menu: QMenu) -> None:
        """Show a menu at the current row."""
        self.opens(menu, self._current_place())

    def _current_place(self) -> QPoint:
        middle = self._table.visualRect(self._table.currentIndex()).center()
        return self._table.viewport().mapToGlobal(middle)

    def _menu_of(self, row: ModelRow) -> QMenu:
        """What can be done with one row."""
        menu = QMenu(self._table)
        menu.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        code = "let-go" if row.key == self._rows.held else "action-hold"
        action = menu.addAction(self._rows.words(code))
        action.triggered.connect(partial(self._chosen, row.key))
        if self.adds is not None:
            self.adds(menu, row)
        return menu

    def _chosen(self, key: str, _checked: bool = False) -> None:
        self.pressed.emit(key)

    def _row_at(self, at: QPoint) -> ModelRow | None:
        return self._model_row(self._table.indexAt(at).row())

    def _model_row(self, number: int) -> ModelRow | None:
        row = self._rows.row(number)
        return row if isinstance(row, ModelRow) else None
