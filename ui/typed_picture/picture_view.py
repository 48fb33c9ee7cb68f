"""The picture a chart is typed from: dropped, turned, enlarged; places are drawn on it."""

from __future__ import annotations

from collections.abc import Collection, Mapping
from pathlib import Path
from typing import Final

from PySide6.QtCore import QPointF, QRect, QRectF, Qt, Signal
from PySide6.QtGui import (
    QColor,
    QDragEnterEvent,
    QDragMoveEvent,
    QDropEvent,
    QMouseEvent,
    QPen,
    QPixmap,
)
from PySide6.QtWidgets import QFrame, QGraphicsScene, QGraphicsView, QWidget

from ui.dress import Dress
from ui.theme import Ink
from ui.typed_picture.typed_file import At, Spot

_STEP: Final = 1.25
_LEAST_SPOT: Final = 4


class PictureView(QGraphicsView):
    """Shows one picture. A ``fixed`` one is only looked at: it is moved by dragging.

    Signals:
        dropped(str): the picture at this path is wanted.
        marked(object): a rectangle was drawn, as a Spot in pixels of the picture.
        picked(object): the place of this cell, an At, was pressed on a fixed picture.
    """

    dropped = Signal(str)
    marked = Signal(object)
    picked = Signal(object)

    def __init__(self, dress: Dress, parent: QWidget | None = None, *, fixed: bool = False) -> None:
        super().__init__(parent)
        self._dress = dress
        self._fixed = fixed
        self._spots: dict[At, Spot] = {}
        self._band = QRectF()
        self.turned = 0
        self.path = ""
        self.setScene(QGraphicsScene(self))
        self.setFrameShape(QFrame.Shape.NoFrame)
        modes = QGraphicsView.DragMode
        self.setDragMode(modes.ScrollHandDrag if fixed else modes.RubberBandDrag)
        self.setAcceptDrops(not fixed)
        self.setBackgroundBrush(dress.colours[Ink.PANEL])
        self.rubberBandChanged.connect(self._banded)

    def show_picture(self, path: str, turned: int = 0) -> bool:
        """Show the picture at ``path``; false where there is none that can be shown."""
        pixmap = QPixmap(path)
        if pixmap.isNull():
            return False
        self.scene().clear()
        self.scene().addPixmap(pixmap)
        self.scene().setSceneRect(QRectF(pixmap.rect()))
        self.path, self.turned = path, 0
        self.resetTransform()
        for _ in range(turned // 90):
            self.turn()
        self.fit()
        return True

    def fit(self) -> None:
        """The whole picture in the room there is."""
        self.resetTransform()
        self.rotate(self.turned)
        self.fitInView(self.sceneRect(), Qt.AspectRatioMode.KeepAspectRatio)

    def turn(self) -> None:
        """A quarter to the right."""
        self.turned = (self.turned + 90) % 360
        self.rotate(90)

    def enlarge(self) -> None:
        """One step larger."""
        self.scale(_STEP, _STEP)

    def shrink(self) -> None:
        """One step smaller."""
        self.scale(1 / _STEP, 1 / _STEP)

    def show_spots(self, spots: Mapping[At, Spot], chosen: Collection[At]) -> None:
        """Draw the places; those of the chosen cells stand out, the first comes into sight."""
        self._spots = dict(spots)
        for item in self.scene().items():
            if item.zValue() > 0:
                self.scene().removeItem(item)
        first = True
        for at, spot in sorted(spots.items()):
            out = at in chosen
            colour = QColor(self._dress.colours[Ink.NEAR if out else Ink.FOCUS])
            pen = QPen(colour, 3 if out else 1)
            pen.setCosmetic(True)
            item = self.scene().addRect(QRectF(*spot), pen)
            item.setZValue(2 if out else 1)
            if out and first:
                first = False
                self.ensureVisible(item, 30, 30)

    def _banded(self, rect: QRect, first: QPointF, last: QPointF) -> None:
        if not rect.isNull():
            self._band = QRectF(first, last).normalized()

    def mousePressEvent(self, event: QMouseEvent) -> None:
        """On a fixed picture a place leads to its cell."""
        super().mousePressEvent(event)
        at = self.mapToScene(event.position().toPoint())
        cell = next((one for one, spot in self._spots.items() if QRectF(*spot).contains(at)), None)
        if self._fixed and cell is not None:
            self.picked.emit(cell)

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        """A rectangle that was drawn is the place of the cell at hand."""
        super().mouseReleaseEvent(event)
        if self._fixed:
            return
        band, self._band = self._band.intersected(self.sceneRect()), QRectF()
        if min(band.width(), band.height()) >= _LEAST_SPOT:
            parts = (band.left(), band.top(), band.width(), band.height())
            self.marked.emit(tuple(round(part) for part in parts))

    # Dropping

    def dragEnterEvent(self, event: QDragEnterEvent) -> None:
        """A file may be dropped."""
        if event.mimeData().hasUrls():
            event.acceptProposedAction()

    def dragMoveEvent(self, event: QDragMoveEvent) -> None:
        """The same all over the view."""
        if event.mimeData().hasUrls():
            event.acceptProposedAction()

    def dropEvent(self, event: QDropEvent) -> None:
        """Take the first file."""
        paths = [url.toLocalFile() for url in event.mimeData().urls() if url.isLocalFile()]
        if paths:
            event.acceptProposedAction()
            self.dropped.emit(str(Path(paths[0])))
