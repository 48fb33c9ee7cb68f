"""A box to tick with its words, drawn so that its frame shows in every scheme."""

from __future__ import annotations

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QPainter, QPaintEvent, QPalette, QPen, QPolygonF
from PySide6.QtWidgets import QAbstractButton, QSizePolicy, QWidget

from ui.controls.strokes import Box, paint_box, px, unit_of


class CheckLine(QAbstractButton):
    """One line that is ticked or not."""

    def __init__(self, text: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setText(text)
        self.setCheckable(True)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)

    def sizeHint(self) -> QSize:
        """The box and the words."""
        wide = self.fontMetrics().horizontalAdvance(self.text()) + px(self, 28)
        return QSize(wide, px(self, 22))

    def paintEvent(self, event: QPaintEvent) -> None:
        """The box, its tick, the words."""
        del event
        painter = QPainter(self)
        palette, unit = self.palette(), unit_of(self)
        side = 14 * unit
        box = QRectF(0.5, (self.height() - side) / 2, side, side)
        role = QPalette.ColorRole.Link if self.hasFocus() else QPalette.ColorRole.Mid
        filled = QPalette.ColorRole.Highlight if self.isChecked() else QPalette.ColorRole.Base
        wide = 2 * unit if self.hasFocus() else 1.0
        paint_box(painter, box, Box(palette.color(filled), palette.color(role), wide, 3 * unit))
        if self.isChecked():
            tick = [(0.24, 0.52), (0.43, 0.72), (0.78, 0.30)]
            points = [QPointF(box.left() + x * side, box.top() + y * side) for x, y in tick]
            painter.setPen(QPen(palette.color(QPalette.ColorRole.HighlightedText), 1.8 * unit))
            painter.drawPolyline(QPolygonF(points))
        painter.setPen(palette.color(QPalette.ColorRole.WindowText))
        words = self.rect().adjusted(px(self, 20), 0, 0, 0)
        side_flags = Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter
        painter.drawText(words, side_flags, self.text())
        painter.end()
