"""The length check beside the reasons: plain, or to scale where both lengths are known."""

from __future__ import annotations

import math
from typing import Final

from PySide6.QtCore import QRectF, QSize, Qt
from PySide6.QtGui import QFont, QFontMetricsF, QPainter, QPaintEvent
from PySide6.QtWidgets import QSizePolicy, QWidget

from harmonizer.fit_row import FitRow
from ui.drawing.clearance_shape import ClearanceShape
from ui.drawing.length_painter import paint_clearance, paint_length_check
from ui.drawing.tape_painter import Inks
from ui.dress import Dress
from ui.fitting_page.length_drawing import LengthDrawing, length_drawing
from ui.theme import Ink
from ui.words import Words

HEIGHT: Final = 116.0
_WORDS: Final = 110.0
_BETWEEN: Final = 10.0
_WRAP: Final = int(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignTop) | int(
    Qt.TextFlag.TextWordWrap
)


class LengthCheckView(QWidget):
    """The drawing with its lines of words."""

    def __init__(self, dress: Dress, words: Words, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.dress = dress
        self._words = words
        self._drawing = length_drawing(None, words)
        self.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Expanding)
        self._tell()

    def show_row(self, row: FitRow | None) -> None:
        """Draw this size to scale where seat height and the vest's own length are known."""
        drawing = length_drawing(row, self._words)
        if drawing != self._drawing:
            self._drawing = drawing
            self._tell()
            self.updateGeometry()
            self.update()

    def _tell(self) -> None:
        self.setAccessibleName(self._drawing.title)
        self.setAccessibleDescription(self._drawing.line)

    @property
    def shape(self) -> ClearanceShape | None:
        """The drawing to scale; None while it is the plain check, the same for every model."""
        return self._drawing.shape

    def sizeHint(self) -> QSize:
        """Room for the drawing and the words at its side."""
        type_ = self.dress.type_
        title = QFontMetricsF(type_.small_strong).horizontalAdvance(self._drawing.title)
        words = max(float(type_.px(_WORDS)), title + type_.px(2))
        return QSize(type_.px(HEIGHT + _BETWEEN) + math.ceil(words), type_.px(HEIGHT))

    def paintEvent(self, event: QPaintEvent) -> None:
        """Drawing left, words right."""
        del event
        painter = QPainter(self)
        type_ = self.dress.type_
        side = float(min(self.height(), type_.px(HEIGHT)))
        paint_drawing(painter, QRectF(0, 0, side, self.height()), self.dress.colours, self._drawing)
        left = side + type_.px(_BETWEEN)
        words = QRectF(left, 0, self.width() - left, self.height())
        self._write(painter, words)
        painter.end()

    def _write(self, painter: QPainter, words: QRectF) -> None:
        type_, colours = self.dress.type_, self.dress.colours
        hands: tuple[tuple[QFont, Ink], ...] = (
            (type_.small_strong, Ink.TEXT),
            (type_.small, Ink.TEXT),
            (type_.small, Ink.QUIET),
        )
        top = float(type_.px(4))
        drawing = self._drawing
        lines = (drawing.title, drawing.line, drawing.scale)
        for text, (font, ink) in zip(lines, hands, strict=True):
            painter.setFont(font)
            painter.setPen(colours[ink])
            box = words.adjusted(0, top, 0, 0)
            painter.drawText(box, _WRAP, text)
            top += int(QFontMetricsF(font).boundingRect(box, _WRAP, text).height())
            top += type_.px(4)


def paint_drawing(painter: QPainter, box: QRectF, colours: Inks, drawing: LengthDrawing) -> None:
    """The drawing in the largest square that fits ``box``, for the screen and for paper."""
    if drawing.shape is None:
        paint_length_check(painter, box, colours)
    else:
        paint_clearance(painter, box, colours, drawing.shape, drawing.ink)
