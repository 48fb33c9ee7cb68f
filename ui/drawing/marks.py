"""The small signs beside a verdict: drawn paths in a square of side 1, never glyphs of a font."""

from __future__ import annotations

from functools import cache
from math import cos, pi, sin

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPainterPath, QPen, QPolygonF, QTransform

from ui.drawing.smooth import smooth
from ui.theme import Mark

_STROKE = 0.14
_FILLED = frozenset({Mark.FULL, Mark.STOP})
_DRESSED = frozenset({Mark.HALF, Mark.STOP, Mark.GATE})


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


@cache
def _scaled(mark: Mark, side: float) -> QPainterPath:
    """The outline in a square of ``side`` pixels, made once: a page paints dozens of marks."""
    return QTransform.fromScale(side, side).map(_outline(mark))


@cache
def _pen(mark: Mark, side: float, rgb: int) -> QPen:
    pen = QPen(QColor.fromRgb(rgb), _STROKE * side)
    pen.setJoinStyle(Qt.PenJoinStyle.RoundJoin)
    pen.setCapStyle(Qt.PenCapStyle.RoundCap)
    if mark is Mark.RING:
        pen.setDashPattern([1.6, 1.5])
        pen.setCapStyle(Qt.PenCapStyle.FlatCap)
    return pen


def paint_mark(painter: QPainter, box: QRectF, mark: Mark, colour: QColor, ground: QColor) -> None:
    """Draw ``mark`` in ``box`` (square, pixels); ``ground`` cuts the bar out of a filled sign."""
    side = box.width()
    smooth(painter)
    painter.setPen(_pen(mark, side, colour.rgb()))
    painter.setBrush(colour if mark in _FILLED else Qt.BrushStyle.NoBrush)
    painter.drawPath(_scaled(mark, side).translated(box.topLeft()))
    if mark in _DRESSED:
        _paint_inside(painter, box, mark, colour, ground)


def _paint_inside(
    painter: QPainter, box: QRectF, mark: Mark, colour: QColor, ground: QColor
) -> None:
    side, left, top = box.width(), box.left(), box.top()
    if mark is Mark.HALF:
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(colour)
        whole = box.adjusted(0.07 * side, 0.07 * side, -0.07 * side, -0.07 * side)
        painter.drawPie(whole, 90 * 16, 180 * 16)
    elif mark is Mark.STOP:
        bar = QRectF(left + 0.22 * side, top + 0.41 * side, 0.56 * side, 0.18 * side)
        painter.fillRect(bar, ground)
    elif mark is Mark.GATE:
        near, far = 0.24 * side, 0.76 * side
        ends = QPointF(left + near, top + near), QPointF(left + far, top + far)
        painter.drawLine(*ends)


def paint_opposed(painter: QPainter, box: QRectF, colour: QColor) -> None:
    """Two arrows that point away from each other, one above the other: held to be compared."""
    side = box.width()
    smooth(painter)
    pen = QPen(colour, 0.13 * side)
    pen.setCapStyle(Qt.PenCapStyle.FlatCap)
    for y, tip, back in ((0.27, 1.0, 0.64), (0.73, 0.0, 0.36)):
        tail = 1.0 - tip
        painter.setPen(pen)
        painter.drawLine(_at(box, tail, y), _at(box, back, y))
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(colour)
        head = [_at(box, tip, y), _at(box, back, y - 0.23), _at(box, back, y + 0.23)]
        painter.drawPolygon(QPolygonF(head))


def _at(box: QRectF, x: float, y: float) -> QPointF:
    return QPointF(box.left() + x * box.width(), box.top() + y * box.height())
