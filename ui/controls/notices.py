"""Two strips over a page: how far a job has come, and what the program has to say."""

from __future__ import annotations

from PySide6.QtCore import QRectF, QSize, Qt, Signal
from PySide6.QtGui import QPainter, QPaintEvent, QPalette
from PySide6.QtWidgets import QHBoxLayout, QLabel, QSizePolicy, QWidget

from ui.controls.buttons import FlatButton
from ui.controls.strokes import Box, paint_box, px


class ProgressLine(QWidget):
    """A slim bar from nothing to done."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._fraction = 0.0
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)

    def sizeHint(self) -> QSize:
        """Slim."""
        return QSize(px(self, 160), px(self, 6))

    def show_fraction(self, fraction: float) -> None:
        """How much is done, 0 to 1."""
        self._fraction = max(0.0, min(1.0, fraction))
        self.setAccessibleDescription(f"{round(self._fraction * 100)} %")
        self.update()

    def paintEvent(self, event: QPaintEvent) -> None:
        """The bar in the accent on a quiet ground."""
        del event
        painter = QPainter(self)
        whole = QRectF(self.rect())
        half = whole.height() / 2
        palette = self.palette()
        paint_box(painter, whole, Box(palette.color(QPalette.ColorRole.Midlight), None, 1, half))
        done = QRectF(0, 0, max(whole.height(), whole.width() * self._fraction), whole.height())
        paint_box(painter, done, Box(palette.color(QPalette.ColorRole.Highlight), None, 1, half))
        painter.end()


class ProgressStrip(QWidget):
    """What a job is doing, how far it has come, and a button that stops it.

    Signals:
        cancelled(): the button was pressed.
    """

    cancelled = Signal()

    def __init__(self, stop: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setBackgroundRole(QPalette.ColorRole.Base)
        self.setAutoFillBackground(True)
        self.says = QLabel(self)
        self.line = ProgressLine(self)
        self.stop = FlatButton(stop, self)
        self.stop.clicked.connect(self.cancelled)
        row = QHBoxLayout(self)
        row.setContentsMargins(px(self, 14), px(self, 5), px(self, 12), px(self, 5))
        row.setSpacing(px(self, 12))
        row.addWidget(self.says, 2)
        row.addWidget(self.line, 3, Qt.AlignmentFlag.AlignVCenter)
        row.addWidget(self.stop)
        self.hide()

    def show_progress(self, says: str, fraction: float) -> None:
        """Show how far the job has come."""
        self.says.setText(says)
        self.line.show_fraction(fraction)
        self.show()


class NoticeStrip(QWidget):
    """One sentence that stays until it is put away or another takes its place.

    Signals:
        pressed(str): the button that leads on was pressed; the action that it leads to.
    """

    pressed = Signal(str)

    def __init__(self, close: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setBackgroundRole(QPalette.ColorRole.ToolTipBase)
        self.setAutoFillBackground(True)
        self.says = QLabel(self)
        self.says.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
        self.says.setWordWrap(True)
        self.onward = FlatButton("", self)
        self._leads_to = ""
        self.onward.clicked.connect(self._pressed)
        self.close_button = FlatButton(close, self)
        self.close_button.clicked.connect(self.hide)
        row = QHBoxLayout(self)
        row.setContentsMargins(px(self, 14), px(self, 5), px(self, 12), px(self, 5))
        row.setSpacing(px(self, 10))
        row.addWidget(self.says, 1)
        row.addWidget(self.onward)
        row.addWidget(self.close_button)
        self.hide()

    def _pressed(self) -> None:
        self.pressed.emit(self._leads_to)

    def say(self, sentence: str, onward: str = "", leads_to: str = "page-charts") -> None:
        """Show ``sentence``, with a button that leads on where ``onward`` names one.

        ``leads_to`` is the key of the action that the button does.
        """
        self._leads_to = leads_to
        self.says.setText(sentence)
        self.says.setAccessibleName(sentence)
        self.onward.setText(onward)
        self.onward.setVisible(bool(onward))
        self.onward.updateGeometry()
        self.show()
