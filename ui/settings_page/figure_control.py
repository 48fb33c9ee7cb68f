"""What a figure is changed with: a line to type in, or a button with the definitions there are."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QObject, QPoint, QSize, Qt, Signal
from PySide6.QtGui import QAction, QFont, QKeyEvent, QKeySequence
from PySide6.QtWidgets import QMenu, QWidget

from charts.reason import Reason
from charts.schema import Definition
from charts.wording import Wording
from harmonizer.setting_checks import CHOICES
from harmonizer.setting_words import bare, name, unit
from ui.controls.buttons import FlatButton
from ui.controls.field import FramedLine
from ui.controls.strokes import px
from ui.settings_page.typed_figure import typed_figure

_WIDE = 132


class FigureLine(FramedLine):
    """A number to type over; it counts on Enter and when the line is left.

    Signals:
        given(object): a figure to take, or the Reason why what was typed is none.
        put_back(): what was typed is gone again.
    """

    given = Signal(object)
    put_back = Signal()

    def __init__(self, key: str, wording: Wording, small: QFont, parent: QWidget) -> None:
        super().__init__(parent)
        self._key = key
        self._shown = ""
        self._wording = wording
        said = wording.say(
            "settings", "field-sentence", name=name(key, wording), unit=unit(key, wording)
        )
        self.edit.setAccessibleName(said)
        self.echo.setFont(small)
        self.echo.setText(unit(key, wording))
        self.setFixedWidth(px(self, _WIDE))
        self.left.connect(self.count_now)

    def show_value(self, value: float | Definition) -> None:
        """Put a figure in the line."""
        self._shown = bare(value, self._wording)
        self.edit.setText(self._shown)
        self.want(False)

    def say(self, sentence: str) -> None:
        """Say beside the line's name what is known of it."""
        self.edit.setAccessibleDescription(sentence)

    def count_now(self) -> None:
        """Let what stands in the line count, if it is another figure."""
        if self.edit.text().strip() == self._shown:
            return
        figure = typed_figure(self._key, self.edit.text())
        self.want(isinstance(figure, Reason))
        self.given.emit(figure)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Enter counts; Escape puts the figure back that is in force."""
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self.count_now()
            self.edit.selectAll()
            return
        if event.key() == Qt.Key.Key_Escape and self.edit.text() != self._shown:
            self.edit.setText(self._shown)
            self.want(False)
            self.put_back.emit()
            return
        super().keyPressEvent(event)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Undo and redo mean figures, once nothing in the line itself is left to undo."""
        override = event.type() is QEvent.Type.ShortcutOverride
        if override and isinstance(event, QKeyEvent) and self._is_for_figures(event):
            event.ignore()
            return True
        return super().eventFilter(watched, event)

    def _is_for_figures(self, event: QKeyEvent) -> bool:
        undo = event.matches(QKeySequence.StandardKey.Undo) and not self.edit.isUndoAvailable()
        redo = event.matches(QKeySequence.StandardKey.Redo) and not self.edit.isRedoAvailable()
        return undo or redo


class DefinitionChoice(FlatButton):
    """Where a silent side is taken to be measured; pressing shows what there is.

    Signals:
        given(object): the Definition that was picked.
        put_back(): never told; a pick needs no second thought.
    """

    given = Signal(object)
    put_back = Signal()

    def __init__(self, key: str, wording: Wording, small: QFont, parent: QWidget) -> None:
        super().__init__("", parent)
        self._name = name(key, wording)
        self._wording = wording
        self.setFont(small)
        self.menu = QMenu(self)
        for one in CHOICES[key]:
            action = QAction(bare(one, wording), self.menu)
            action.setData(one.value)
            action.setCheckable(True)
            self.menu.addAction(action)
        self.menu.triggered.connect(self._picked)
        self.clicked.connect(self._open)

    def sizeHint(self) -> QSize:
        """As wide as the longest definition needs, so that nothing moves when one is picked."""
        measure = self.fontMetrics()
        longest = max(measure.horizontalAdvance(one.text()) for one in self.menu.actions())
        return QSize(longest + px(self, 24), px(self, 28))

    def show_value(self, value: float | Definition) -> None:
        """Show what is in force."""
        self.setText(bare(value, self._wording))
        for action in self.menu.actions():
            action.setChecked(action.data() == value)

    def say(self, sentence: str) -> None:
        """Say beside the button's name what is known of it."""
        self.setAccessibleName(self._name)
        self.setAccessibleDescription(sentence)

    def count_now(self) -> None:
        """Nothing waits: a pick counts at once."""

    def want(self, wanting: bool) -> None:
        """A pick is never in doubt."""
        del wanting

    def _open(self) -> None:
        self.menu.popup(self.mapToGlobal(QPoint(0, self.height())))

    def _picked(self, action: QAction) -> None:
        self.given.emit(Definition(str(action.data())))
