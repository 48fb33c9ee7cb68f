"""A doubt below its field: the question, a button for the other reading, one for this one."""

from __future__ import annotations

from PySide6.QtCore import QRectF, Signal
from PySide6.QtGui import QFont, QPainter, QPaintEvent, QPalette
from PySide6.QtWidgets import QHBoxLayout, QLabel, QVBoxLayout, QWidget

from charts.wording import Wording
from ui.controls.buttons import FlatButton
from ui.controls.strokes import px
from ui.fitting_page.doubts import Doubt


class DoubtBox(QWidget):
    """Hidden while nothing is in doubt. It stands in nobody's way: the call goes on beside it.

    Signals:
        taken(object): the other reading, as a Typed.
        taken_again(object): the readings of last time.
        kept(str): the reading is right; the doubt's key.
    """

    taken = Signal(object)
    taken_again = Signal(object)
    kept = Signal(str)

    def __init__(self, name: str, wording: Wording, small: QFont, parent: QWidget) -> None:
        super().__init__(parent)
        self._name = name
        self._wording = wording
        self.shown: Doubt | None = None
        self.asks = QLabel(self)
        self.asks.setFont(small)
        self.asks.setWordWrap(True)
        self.asks.setForegroundRole(QPalette.ColorRole.LinkVisited)
        self.other = FlatButton("", self, urgent=True)
        self.keep = FlatButton("", self)
        for button in (self.other, self.keep):
            button.setFont(small)
        self.other.clicked.connect(self._take)
        self.keep.clicked.connect(self._keep)
        self._lay()
        self.hide()

    def _lay(self) -> None:
        buttons = QHBoxLayout()
        buttons.setSpacing(px(self, 6))
        buttons.addWidget(self.other)
        buttons.addWidget(self.keep)
        buttons.addStretch(1)
        column = QVBoxLayout(self)
        column.setContentsMargins(px(self, 9), px(self, 1), 0, px(self, 3))
        column.setSpacing(px(self, 3))
        column.addWidget(self.asks)
        column.addLayout(buttons)

    def show_doubt(self, doubt: Doubt | None) -> None:
        """Ask this, or nothing."""
        if doubt == self.shown:
            return
        self.shown = doubt
        self.setVisible(doubt is not None)
        if doubt is None:
            return
        self.asks.setText(doubt.asks)
        self.setAccessibleName(doubt.asks)
        self.keep.setVisible(doubt.may_stay)
        self._word(self.keep, "advice", "keep-this", x=doubt.text)
        self.other.setVisible(doubt.other is not None)
        # A body changes: of now and then neither is the likelier answer.
        self.other.urgent = doubt.earlier is None
        if doubt.earlier is not None:
            then = doubt.earlier
            self._word(self.other, "rider_book", "take-earlier", text=then.text, day=then.day)
        elif doubt.other is not None:
            figure = self._wording.number(doubt.other.value or 0)
            self._word(self.other, "advice", "take-other", other=figure)

    def _word(self, button: FlatButton, topic: str, code: str, **values: str) -> None:
        button.setText(self._wording.say(topic, code, **values))
        said = self._wording.say(topic, f"{code}-sentence", name=self._name, **values)
        button.setAccessibleName(said)
        button.updateGeometry()

    def paintEvent(self, event: QPaintEvent) -> None:
        """A bar at the side, so that the question is not told by its colour alone."""
        del event
        painter = QPainter(self)
        wide = px(self, 5 if self.shown is not None and self.shown.alarm else 3)
        bar = QRectF(0, px(self, 2), wide, self.height() - px(self, 5))
        painter.fillRect(bar, self.palette().color(QPalette.ColorRole.LinkVisited))
        painter.end()

    def _take(self) -> None:
        if self.shown is None:
            return
        if self.shown.earlier is not None:
            self.taken_again.emit(self.shown.earlier.readings)
        elif self.shown.other is not None:
            self.taken.emit(self.shown.other)

    def _keep(self) -> None:
        if self.shown is not None:
            self.kept.emit(self.shown.key)
