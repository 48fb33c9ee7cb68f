"""One act under a question: its number, which is its key, and its words in full."""

from __future__ import annotations

from typing import Final

from PySide6.QtCore import QRect, QRectF, QSize, Qt
from PySide6.QtGui import QKeyEvent, QPainter, QPaintEvent, QPalette
from PySide6.QtWidgets import QAbstractButton, QSizePolicy, QWidget

from ui.controls.strokes import Box, paint_box, px, unit_of

_FLAGS: Final = (
    Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter | Qt.TextFlag.TextWordWrap
).value


class ActButton(QAbstractButton):
    """A button whose words break over lines. ``number`` 0 shows none."""

    def __init__(self, number: int, text: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.number = number
        self.setText(text)
        self.setAccessibleName(text)
        self.setFocusPolicy(Qt.FocusPolicy.TabFocus)
        self.setAttribute(Qt.WidgetAttribute.WA_Hover, True)
        policy = QSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        policy.setHeightForWidth(True)
        self.setSizePolicy(policy)

    def hasHeightForWidth(self) -> bool:
        """It is as high as its words need."""
        return True

    def heightForWidth(self, wide: int) -> int:
        """Room for the words at this width."""
        room = QRect(0, 0, wide - self._left() - px(self, 10), 10_000)
        words = self.fontMetrics().boundingRect(room, _FLAGS, self.text())
        return max(words.height() + px(self, 10), px(self, 27))

    def sizeHint(self) -> QSize:
        """As wide as there is room."""
        wide = px(self, 300)
        return QSize(wide, self.heightForWidth(wide))

    def minimumSizeHint(self) -> QSize:
        """One line at least."""
        return QSize(px(self, 120), px(self, 27))

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Enter presses the button."""
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self.click()
            return
        super().keyPressEvent(event)

    def _left(self) -> int:
        return px(self, 30 if self.number else 10)

    def paintEvent(self, event: QPaintEvent) -> None:
        """A box, the number at its left, the words."""
        del event
        painter = QPainter(self)
        palette, unit = self.palette(), unit_of(self)
        role = QPalette.ColorRole.AlternateBase if self.underMouse() else QPalette.ColorRole.Base
        frame = QPalette.ColorRole.Link if self.hasFocus() else QPalette.ColorRole.Mid
        wide = 2 * unit if self.hasFocus() else 1.0
        box = QRectF(self.rect())
        paint_box(painter, box, Box(palette.color(role), palette.color(frame), wide, 4 * unit))
        if self.number:
            plate = QRectF(6 * unit, (box.height() - 17 * unit) / 2, 17 * unit, 17 * unit)
            accent = palette.color(QPalette.ColorRole.Highlight)
            paint_box(painter, plate, Box(accent, None, 1, 3 * unit))
            painter.setPen(palette.color(QPalette.ColorRole.HighlightedText))
            painter.drawText(plate, Qt.AlignmentFlag.AlignCenter.value, str(self.number))
        painter.setPen(palette.color(QPalette.ColorRole.Text))
        painter.drawText(box.adjusted(self._left(), 0, -10 * unit, 0), _FLAGS, self.text())
        painter.end()
