"""A small flat button, and a chip that can be chosen."""

from __future__ import annotations

from PySide6.QtCore import QRectF, QSize, Qt
from PySide6.QtGui import QKeyEvent, QPainter, QPaintEvent, QPalette
from PySide6.QtWidgets import QAbstractButton, QSizePolicy, QWidget

from ui.controls.strokes import Box, paint_box, px, unit_of


class FlatButton(QAbstractButton):
    """A button as high as a line needs; Enter presses it as Space does.

    Attributes:
        urgent: filled with the accent, for the answer most likely wanted.
        plain: without a frame, for words that lead elsewhere.
    """

    def __init__(
        self,
        text: str,
        parent: QWidget | None = None,
        *,
        urgent: bool = False,
        plain: bool = False,
    ) -> None:
        super().__init__(parent)
        self.urgent = urgent
        self.plain = plain
        self.setText(text)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setAttribute(Qt.WidgetAttribute.WA_Hover, True)
        self.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Fixed)

    def sizeHint(self) -> QSize:
        """Room for the words and a little air."""
        wide = self.fontMetrics().horizontalAdvance(self.text()) + px(self, 18)
        return QSize(wide, px(self, 24))

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Enter presses the button."""
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self.click()
            return
        super().keyPressEvent(event)

    def paintEvent(self, event: QPaintEvent) -> None:
        """Filled when urgent or chosen; a frame shows the keyboard."""
        del event
        painter = QPainter(self)
        if self.plain:
            self._paint_plain(painter)
            painter.end()
            return
        palette, unit = self.palette(), unit_of(self)
        filled = self.urgent or self.isChecked()
        fill = palette.color(QPalette.ColorRole.Highlight if filled else QPalette.ColorRole.Base)
        if self.underMouse() and not filled and self.isEnabled():
            fill = palette.color(QPalette.ColorRole.AlternateBase)
        frame = palette.color(QPalette.ColorRole.Highlight if filled else QPalette.ColorRole.Mid)
        wide = 1.0
        if self.hasFocus():
            frame, wide = palette.color(QPalette.ColorRole.Link), 2.0 * unit
        paint_box(painter, QRectF(self.rect()), Box(fill, frame, wide, 4 * unit))
        role = QPalette.ColorRole.HighlightedText if filled else QPalette.ColorRole.Text
        group = QPalette.ColorGroup.Normal if self.isEnabled() else QPalette.ColorGroup.Disabled
        painter.setPen(palette.color(group, role))
        room = self.width() - px(self, 8)
        text = self.fontMetrics().elidedText(self.text(), Qt.TextElideMode.ElideRight, room)
        painter.drawText(self.rect(), Qt.AlignmentFlag.AlignCenter, text)
        painter.end()

    def _paint_plain(self, painter: QPainter) -> None:
        """Words alone, underlined under the pointer, framed with the keyboard."""
        palette, unit = self.palette(), unit_of(self)
        if self.hasFocus():
            frame = palette.color(QPalette.ColorRole.Link)
            paint_box(painter, QRectF(self.rect()), Box(None, frame, 2.0 * unit, 4 * unit))
        font = self.font()
        font.setUnderline(self.underMouse())
        painter.setFont(font)
        painter.setPen(palette.color(QPalette.ColorRole.Link))
        room = self.width() - px(self, 12)
        text = self.fontMetrics().elidedText(self.text(), Qt.TextElideMode.ElideMiddle, room)
        box = self.rect().adjusted(px(self, 6), 0, -px(self, 6), 0)
        side = Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter
        painter.drawText(box, side, text)
