"""What stands where nothing is yet: a drawing, a sentence, and the ways on."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from PySide6.QtCore import QLineF, QRectF, QSize, Qt, Signal
from PySide6.QtGui import QFont, QPainter, QPaintEvent, QPalette, QPen
from PySide6.QtWidgets import QHBoxLayout, QLabel, QVBoxLayout, QWidget

from ui.controls.buttons import FlatButton
from ui.controls.strokes import Box, paint_box, px, unit_of

_BARS: Final = ((0.06, 0.40, 0.16), (0.26, 0.74, 0.39), (0.20, 0.62, 0.62), (0.60, 0.94, 0.85))


class TapePicture(QWidget):
    """A few bars on a tape with the rider's line through them."""

    def sizeHint(self) -> QSize:
        """Small enough to leave room for words."""
        return QSize(px(self, 190), px(self, 104))

    def paintEvent(self, event: QPaintEvent) -> None:
        """Bars in the colour of ornaments, the line in the colour of text."""
        del event
        painter = QPainter(self)
        palette, unit = self.palette(), unit_of(self)
        wide, high = float(self.width()), float(self.height())
        for left, right, y in _BARS:
            through = left < 0.5 < right
            role = QPalette.ColorRole.Highlight if through else QPalette.ColorRole.Mid
            bar = QRectF(left * wide, y * high - 5 * unit, (right - left) * wide, 10 * unit)
            paint_box(painter, bar, Box(palette.color(role), None, 1, 2 * unit))
        painter.setPen(QPen(palette.color(QPalette.ColorRole.Window), 6 * unit))
        painter.drawLine(QLineF(wide / 2, 0, wide / 2, high))
        painter.setPen(QPen(palette.color(QPalette.ColorRole.Text), 2 * unit))
        painter.drawLine(QLineF(wide / 2, 0, wide / 2, high))
        painter.end()


class EmptyState(QWidget):
    """A drawing, a title, a sentence and buttons.

    Signals:
        pressed(str): the key of the button that was pressed.
    """

    pressed = Signal(str)

    def __init__(self, title_font: QFont, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._offers: list[FlatButton] = []
        self.picture = TapePicture(self)
        self.title = QLabel(self)
        self.title.setFont(title_font)
        self.title.setAlignment(Qt.AlignmentFlag.AlignHCenter)
        self.title.setWordWrap(True)
        self.body = QLabel(self)
        self.body.setAlignment(Qt.AlignmentFlag.AlignHCenter)
        self.body.setWordWrap(True)
        self.body.setForegroundRole(QPalette.ColorRole.PlaceholderText)
        self._buttons = QHBoxLayout()
        self._lay()

    def _lay(self) -> None:
        """One below the other, in the upper half."""
        self._buttons.setSpacing(px(self, 8))
        self._buttons.addStretch(1)
        self._buttons.addStretch(1)
        column = QVBoxLayout(self)
        column.setSpacing(px(self, 12))
        column.addStretch(2)
        column.addWidget(self.picture, 0, Qt.AlignmentFlag.AlignHCenter)
        column.addSpacing(px(self, 6))
        column.addWidget(self.title)
        middle = QHBoxLayout()
        middle.addStretch(1)
        middle.addWidget(self.body, 6)
        middle.addStretch(1)
        column.addLayout(middle)
        column.addSpacing(px(self, 4))
        column.addLayout(self._buttons)
        column.addStretch(3)

    def say(self, title: str, body: str) -> None:
        """Change the words."""
        self.title.setText(title)
        self.body.setText(body)

    def offer(self, choices: Sequence[tuple[str, str]]) -> None:
        """Offer buttons as (key, text); the first is the likeliest."""
        for place, (key, text) in enumerate(choices):
            button = FlatButton(text, self, urgent=place == 0)
            button.setProperty("key", key)
            button.clicked.connect(self._clicked)
            self._buttons.insertWidget(place + 1, button)
            self._offers.append(button)

    def show_offers(self, shown: bool) -> None:
        """Show the buttons, or leave them out."""
        for button in self._offers:
            button.setVisible(shown)

    def _clicked(self) -> None:
        self.pressed.emit(str(self.sender().property("key")))
