"""When the rider on the line was measured before; buttons to keep what is read, and to forget."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import Signal
from PySide6.QtGui import QFont, QPalette
from PySide6.QtWidgets import QHBoxLayout, QLabel, QVBoxLayout, QWidget

from charts.wording import Wording
from ui.controls.buttons import FlatButton
from ui.controls.strokes import px

_TOPIC = "rider_book"


@dataclass(frozen=True, slots=True)
class BookState:
    """What the line shows: ``day`` of the last visit in words, "" where there was none.

    ``open_doubts``: something is asked about the readings, so they are not kept yet.
    """

    name: str
    day: str = ""
    kept: bool = False
    can_keep: bool = False
    open_doubts: bool = False


class BookLine(QWidget):
    """Hidden while there is nothing to say and nothing to do.

    Signals:
        keep(): the readings are to be kept for next time.
        forget(): nothing is to be kept of this rider any more.
    """

    keep = Signal()
    forget = Signal()

    def __init__(self, wording: Wording, small: QFont, parent: QWidget) -> None:
        super().__init__(parent)
        self._wording = wording
        self._shown: BookState | None = None
        self.says = QLabel(self)
        self.first = QLabel(wording.say(_TOPIC, "keep-asked"), self)
        for label in (self.says, self.first):
            label.setFont(small)
            label.setWordWrap(True)
            label.setForegroundRole(QPalette.ColorRole.PlaceholderText)
        self.keeps = FlatButton(wording.say(_TOPIC, "keep"), self)
        self.forgets = FlatButton(wording.say(_TOPIC, "forget"), self)
        for button, signal in ((self.keeps, self.keep), (self.forgets, self.forget)):
            button.setFont(small)
            button.clicked.connect(signal)
        row = QHBoxLayout()
        row.setSpacing(px(self, 6))
        row.addWidget(self.says, 1)
        row.addWidget(self.forgets)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, px(self, 2))
        column.setSpacing(px(self, 3))
        column.addLayout(row)
        column.addWidget(self.first)
        column.addWidget(self.keeps)
        self._describe(self.keeps, "keep-sentence")
        self.hide()

    def show_state(self, state: BookState) -> None:
        """Say when the rider was here, and offer what can be done."""
        if state == self._shown:
            return
        self._shown = state
        said = self._said(state)
        self.says.setText(said)
        self.says.setVisible(bool(said))
        self.keeps.setVisible(state.can_keep and not state.open_doubts)
        self.first.setVisible(state.can_keep and state.open_doubts)
        self.forgets.setVisible(state.kept)
        self._describe(self.forgets, "forget-sentence", name=state.name)
        self.setVisible(bool(said) or state.can_keep or state.kept)

    def _said(self, state: BookState) -> str:
        if state.day:
            return self._wording.say(_TOPIC, "measured-before", day=state.day)
        return self._wording.say(_TOPIC, "kept-now") if state.kept else ""

    def _describe(self, button: FlatButton, code: str, **values: str) -> None:
        said = self._wording.say(_TOPIC, code, **values)
        button.setToolTip(said)
        button.setAccessibleDescription(said)
