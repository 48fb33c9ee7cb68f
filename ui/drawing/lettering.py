"""Text for painters that paint the same words again and again: laid out once, drawn many times."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QFont, QFontMetricsF, QPainter, QStaticText

_MOST: Final = 4096


@dataclass(frozen=True, slots=True)
class Laid:
    """One text in one font: ready to be drawn, and its size in pixels."""

    text: QStaticText
    width: float
    height: float


class Lettering:
    """Lays texts out in one font and remembers them; shortens what does not fit."""

    def __init__(self, font: QFont) -> None:
        self._font = font
        self._metrics = QFontMetricsF(font)
        self._known: dict[str, Laid] = {}
        self._shortened: dict[tuple[str, int, Qt.TextElideMode], str] = {}

    def width(self, text: str) -> float:
        """How wide ``text`` is, in pixels."""
        return self._laid(text).width

    def left(self, painter: QPainter, box: QRectF, text: str, colour: QColor) -> None:
        """Write ``text`` at the left of ``box``, in the middle of its height."""
        laid = self._fitting(text, box.width())
        self._draw(painter, box.left(), box, laid, colour)

    def name(self, painter: QPainter, box: QRectF, text: str, colour: QColor) -> None:
        """Write ``text`` at the left; a long name keeps its end, which tells it from others."""
        laid = self._fitting(text, box.width(), Qt.TextElideMode.ElideMiddle)
        self._draw(painter, box.left(), box, laid, colour)

    def right(self, painter: QPainter, box: QRectF, text: str, colour: QColor) -> None:
        """Write ``text`` at the right of ``box``."""
        laid = self._fitting(text, box.width())
        self._draw(painter, box.right() - laid.width, box, laid, colour)

    def centred(self, painter: QPainter, x: float, box: QRectF, text: str, colour: QColor) -> None:
        """Write ``text`` with its middle at ``x``, whatever the width of ``box``."""
        laid = self._laid(text)
        self._draw(painter, x - laid.width / 2, box, laid, colour)

    def _draw(self, painter: QPainter, x: float, box: QRectF, laid: Laid, colour: QColor) -> None:
        painter.setFont(self._font)
        painter.setPen(colour)
        y = box.top() + (box.height() - laid.height) / 2
        painter.drawStaticText(QPointF(x, y), laid.text)

    def _fitting(
        self, text: str, width: float, left_out: Qt.TextElideMode = Qt.TextElideMode.ElideRight
    ) -> Laid:
        laid = self._laid(text)
        if laid.width <= width + 1:
            return laid
        key = (text, int(width), left_out)
        short = self._shortened.get(key)
        if short is None:
            short = self._metrics.elidedText(text, left_out, width)
            self._shortened[key] = short
        return self._laid(short)

    def _laid(self, text: str) -> Laid:
        laid = self._known.get(text)
        if laid is None:
            laid = self._lay(text)
        return laid

    def _lay(self, text: str) -> Laid:
        if len(self._known) >= _MOST:
            self._known.clear()
            self._shortened.clear()
        static = QStaticText(text)
        static.setTextFormat(Qt.TextFormat.PlainText)
        static.setPerformanceHint(QStaticText.PerformanceHint.AggressiveCaching)
        static.prepare(font=self._font)
        laid = Laid(static, self._metrics.horizontalAdvance(text), static.size().height())
        self._known[text] = laid
        return laid
