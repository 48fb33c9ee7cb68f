"""Paints the length check, plain and to scale, for the screen and for print."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QLineF, QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPainterPath, QPen

from ui.drawing.clearance_shape import ClearanceShape
from ui.drawing.length_check import (
    BODY,
    EDGE_Y,
    HAND_X,
    HEAD,
    NECK_BONE,
    SADDLE,
    SEAT_Y,
    VEST,
    Curve,
    Finger,
    hand,
    palm,
)
from ui.drawing.smooth import smooth
from ui.drawing.tape_painter import Inks, mixed
from ui.theme import Ink


def paint_length_check(painter: QPainter, box: QRectF, colours: Inks) -> None:
    """The drawing in the largest square that fits ``box``."""
    painter.save()
    _begin(painter, box, colours)
    _fill(painter, VEST, mixed(colours[Ink.GOOD], colours[Ink.GROUND], 0.55), colours[Ink.GOOD])
    flat = palm()
    _hand(painter, colours, (flat, *hand()))
    _levels(painter, colours, (EDGE_Y, SEAT_Y))
    _end(painter, colours)


def paint_clearance(
    painter: QPainter, box: QRectF, colours: Inks, shape: ClearanceShape, ink: Ink
) -> None:
    """One vest on one rider with the heights to scale; ``ink`` is that of its state."""
    painter.save()
    _begin(painter, box, colours)
    _fill(painter, shape.vest, mixed(colours[ink], colours[Ink.GROUND], 0.55), colours[ink])
    _hand(painter, colours, shape.fingers)
    _levels(painter, colours, (shape.edge_y, shape.saddle_y))
    _end(painter, colours)


def _begin(painter: QPainter, box: QRectF, colours: Inks) -> None:
    """The rider on the saddle, in the largest square that fits ``box``."""
    side = min(box.width(), box.height())
    smooth(painter)
    painter.translate(box.left() + (box.width() - side) / 2, box.top() + (box.height() - side) / 2)
    painter.scale(side / 100.0, side / 100.0)
    ground, text = colours[Ink.GROUND], colours[Ink.TEXT]
    _fill(painter, SADDLE, mixed(text, ground, 0.62), None)
    _fill(painter, BODY, mixed(text, ground, 0.10), mixed(text, ground, 0.55))
    painter.drawEllipse(QPointF(*HEAD[0]), HEAD[1], HEAD[1])


def _end(painter: QPainter, colours: Inks) -> None:
    """The bone at the neck over everything; the painter as it was."""
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(colours[Ink.TEXT])
    painter.drawEllipse(QPointF(*NECK_BONE), 1.9, 1.9)
    painter.restore()


def _path(curve: Curve) -> QPainterPath:
    path = QPainterPath(QPointF(*curve.start))
    for first, second, end in curve.pieces:
        path.cubicTo(QPointF(*first), QPointF(*second), QPointF(*end))
    if curve.closed:
        path.closeSubpath()
    return path


def _fill(painter: QPainter, curve: Curve, fill: QColor, line: QColor | None) -> None:
    painter.setPen(Qt.PenStyle.NoPen if line is None else QPen(line, 1.2))
    painter.setBrush(fill)
    painter.drawPath(_path(curve))


def _hand(painter: QPainter, colours: Inks, parts: Sequence[Finger]) -> None:
    # A hand to scale is small: thinner strokes keep its fingers apart.
    stroke = min(1.1, 0.28 * min(part.height for part in parts))
    painter.setPen(QPen(colours[Ink.NEAR], stroke))
    painter.setBrush(mixed(colours[Ink.NEAR], colours[Ink.GROUND], 0.22))
    for part in parts:
        round_ = min(part.height / 2, 4.0)
        bar = QRectF(part.left, part.top, part.width, part.height)
        painter.drawRoundedRect(bar, round_, round_)


def _levels(painter: QPainter, colours: Inks, levels: tuple[float, float]) -> None:
    """Dotted levels at the vest's edge and at the seat, or the saddle, below it."""
    pen = QPen(colours[Ink.TEXT], 0.9)
    pen.setDashPattern([2.0, 2.0])
    painter.setPen(pen)
    for y in levels:
        painter.drawLine(QLineF(54.0, y, HAND_X[1] + 13.0, y))
