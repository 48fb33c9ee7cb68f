"""The small signs beside a verdict: drawn paths in a square of side 1, never glyphs of a font."""

from __future__ import annotations

from functools import cache
from math import cos, pi, sin

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPainterPath, QPen, QPolygonF

from ui.theme import Mark

_STROKE = 0.14


@cache
def _outline(mark: Mark) -> QPainterPath:
    path = QPainterPath()
    match mark:
        case Mark.UP:
            path.addPolygon(_polygon((0.5, 0.1), (0.94, 0.88), (0.06, 0.88)))
            path.closeSubpath()
        case Mark.DOWN:
            path.addPolygon(_polygon((0.06, 0.12), (0.94, 0.12), (0.5, 0.9)))
            path.closeSubpath()
        case Mark.CROSS:
            path.moveTo(0.14, 0.14)
            path.lineTo(0.86, 0.86)
            path.moveTo(0.86, 0.14)
            path.lineTo(0.14, 0.86)
        case Mark.STOP:
            turns = [pi / 8 + pi / 4 * n for n in range(8)]
            path.addPolygon(_polygon(*((0.5 + 0.54 * cos(t), 0.5 + 0.54 * sin(t)) for t in turns)))
            path.closeSubpath()
        case _:
            path.addEllipse(QRectF(0.07, 0.07, 0.86, 0.86))
    return path


def _polygon(*points: tuple[float, float]) -> QPolygonF:
    return QPolygonF([QPointF(x, y) for x, y in points])


def paint_mark(painter: QPainter, box: QRectF, mark: Mark, colour: QColor, ground: QColor) -> None:
    """Draw ``mark`` in ``box`` (square, pixels); ``ground`` cuts the bar out of a filled sign."""
    painter.save()
    painter.translate(box.topLeft())
    painter.scale(box.width(), box.height())
    pen = QPen(colour, _STROKE)
    pen.setJoinStyle(Qt.PenJoinStyle.RoundJoin)
    pen.setCapStyle(Qt.PenCapStyle.RoundCap)
    filled = mark in {Mark.FULL, Mark.STOP}
    if mark is Mark.RING:
        pen.setDashPattern([1.6, 1.5])
        pen.setCapStyle(Qt.PenCapStyle.FlatCap)
    painter.setPen(pen)
    painter.setBrush(colour if filled else Qt.BrushStyle.NoBrush)
    painter.drawPath(_outline(mark))
    _paint_inside(painter, mark, colour, ground)
    painter.restore()


def _paint_inside(painter: QPainter, mark: Mark, colour: QColor, ground: QColor) -> None:
    if mark is Mark.HALF:
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(colour)
        painter.drawPie(QRectF(0.07, 0.07, 0.86, 0.86), 90 * 16, 180 * 16)
    elif mark is Mark.STOP:
        painter.fillRect(QRectF(0.22, 0.41, 0.56, 0.18), ground)
    elif mark is Mark.GATE:
        painter.drawLine(QPointF(0.24, 0.24), QPointF(0.76, 0.76))
