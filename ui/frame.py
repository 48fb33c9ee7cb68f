"""The window itself: shown at once and empty, furnished with its pages a moment later.

Everything heavy waits until the frame has been painted once, so this file imports next to nothing.
"""

from __future__ import annotations

from pathlib import Path
from typing import Final

from PySide6.QtCore import QMimeData, QRectF, Qt, Signal
from PySide6.QtGui import (
    QCloseEvent,
    QColor,
    QDragEnterEvent,
    QDropEvent,
    QPainter,
    QPaintEvent,
)
from PySide6.QtWidgets import QLayout, QMainWindow, QWidget

from ui.theme import Ink, Theme

# Measures in pixels at a line of 16, as everywhere.
_STRIP: Final = 62.0
_PANEL: Final = 272.0
_PICTURE: Final = (190.0, 104.0)
_BARS: Final = ((0.06, 0.40, 0.16), (0.26, 0.74, 0.39), (0.20, 0.62, 0.62), (0.60, 0.94, 0.85))


class BareFloor(QWidget):
    """The grounds of the page, and the picture of a tape, before anything is there.

    Signals:
        painted(): it has been painted.
    """

    painted = Signal()

    def __init__(self, theme: Theme, parent: QWidget) -> None:
        super().__init__(parent)
        self._theme = theme

    def paintEvent(self, event: QPaintEvent) -> None:
        """Grounds, a few bars, and the rider's line."""
        del event
        painter = QPainter(self)
        unit = self.fontMetrics().height() / 16.0
        panel, strip = _PANEL * unit, _STRIP * unit
        painter.fillRect(self.rect(), self._colour(Ink.WINDOW))
        side = QRectF(0, strip, panel, self.height() - strip)
        painter.fillRect(side, self._colour(Ink.PANEL))
        wide, high = (part * unit for part in _PICTURE)
        left = panel + (self.width() - panel - wide) / 2
        self._paint_picture(painter, QRectF(left, self.height() * 0.4 - high / 2, wide, high))
        painter.end()
        self.painted.emit()

    def _paint_picture(self, painter: QPainter, box: QRectF) -> None:
        unit = box.height() / _PICTURE[1]
        for start, end, y in _BARS:
            ink = Ink.ACCENT if start < 0.5 < end else Ink.EDGE
            bar = QRectF(
                box.left() + box.width() * start, 0, box.width() * (end - start), 10 * unit
            )
            bar.moveTop(box.top() + box.height() * y - 5 * unit)
            painter.fillRect(bar, self._colour(ink))
        for ink, thick in ((Ink.WINDOW, 6 * unit), (Ink.RIDER, 2 * unit)):
            line = QRectF(box.center().x() - thick / 2, box.top(), thick, box.height())
            painter.fillRect(line, self._colour(ink))

    def _colour(self, ink: Ink) -> QColor:
        return QColor(self._theme.colour(ink))


class Frame(QMainWindow):
    """The top-level window: what is dragged onto it and that it is closed is told to others.

    Signals:
        dropped(object): a list of the paths that were dragged onto the window.
        closing(): the window is about to go.
    """

    dropped = Signal(object)
    closing = Signal()

    def __init__(self, theme: Theme) -> None:
        super().__init__()
        self.setAcceptDrops(True)
        # The pages shrink by their own rules; what they would like to be never moves the frame.
        frame = self.layout()
        if frame is not None:
            frame.setSizeConstraint(QLayout.SizeConstraint.SetNoConstraint)
        self.floor = BareFloor(theme, self)
        self.setCentralWidget(self.floor)

    def dragEnterEvent(self, event: QDragEnterEvent) -> None:
        """Files and folders are welcome."""
        if dropped_paths(event.mimeData()):
            event.setDropAction(Qt.DropAction.CopyAction)
            event.accept()

    def dropEvent(self, event: QDropEvent) -> None:
        """Tell what was dropped."""
        paths = dropped_paths(event.mimeData())
        if paths:
            event.setDropAction(Qt.DropAction.CopyAction)
            event.accept()
            self.dropped.emit(paths)

    def closeEvent(self, event: QCloseEvent) -> None:
        """Tell that the window goes."""
        self.closing.emit()
        event.accept()


def dropped_paths(data: QMimeData) -> list[Path]:
    """The local files and folders of something dragged."""
    return [Path(url.toLocalFile()) for url in data.urls() if url.isLocalFile()]
