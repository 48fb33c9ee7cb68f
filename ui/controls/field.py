"""A line to type in, in a frame of its own, with the value as it was understood at its end."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QObject, QRectF, QSize, Signal
from PySide6.QtGui import QPainter, QPaintEvent, QPalette
from PySide6.QtWidgets import QFrame, QHBoxLayout, QLabel, QLineEdit, QSizePolicy, QWidget

from ui.controls.strokes import Box, paint_box, px, unit_of


class FramedLine(QFrame):
    """A line edit without a frame inside a rounded box, and a quiet word at its end.

    Attributes:
        edit: the line itself.
        wanting: an answer is wanted here; the frame says so.

    Signals:
        entered(): the line took the keyboard.
        left(): the line gave the keyboard away.
    """

    entered = Signal()
    left = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.wanting = False
        self.edit = QLineEdit(self)
        self.edit.setFrame(False)
        self.edit.installEventFilter(self)
        self.echo = QLabel(self)
        self.echo.setForegroundRole(QPalette.ColorRole.PlaceholderText)
        row = QHBoxLayout(self)
        row.setContentsMargins(px(self, 6), px(self, 2), px(self, 8), px(self, 2))
        row.setSpacing(px(self, 4))
        row.addWidget(self.edit, 1)
        row.addWidget(self.echo)
        self.setFocusProxy(self.edit)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)

    def sizeHint(self) -> QSize:
        """One line of text with some air."""
        return QSize(px(self, 150), px(self, 28))

    def minimumSizeHint(self) -> QSize:
        """Room for a few figures."""
        return QSize(px(self, 90), px(self, 28))

    def want(self, wanting: bool) -> None:
        """Show, or stop showing, that an answer is wanted."""
        self.wanting = wanting
        self.update()

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Repaint the frame when the keyboard comes or goes."""
        if watched is self.edit and event.type() in (QEvent.Type.FocusIn, QEvent.Type.FocusOut):
            self.update()
            (self.entered if event.type() is QEvent.Type.FocusIn else self.left).emit()
        return super().eventFilter(watched, event)

    def paintEvent(self, event: QPaintEvent) -> None:
        """The box: its frame is wide where the keyboard is or an answer is wanted."""
        del event
        palette, unit = self.palette(), unit_of(self)
        role = QPalette.ColorRole.Mid
        wide = 1.0
        if self.wanting:
            role, wide = QPalette.ColorRole.LinkVisited, 2.0 * unit
        if self.edit.hasFocus():
            role, wide = QPalette.ColorRole.Link, 2.0 * unit
        painter = QPainter(self)
        box = Box(palette.color(QPalette.ColorRole.Base), palette.color(role), wide, 4 * unit)
        paint_box(painter, QRectF(self.rect()), box)
        painter.end()
