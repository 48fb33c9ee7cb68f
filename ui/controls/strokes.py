"""What the small controls share: their measure, and a rounded box with its frame."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPen
from PySide6.QtWidgets import QWidget


def unit_of(widget: QWidget) -> float:
    """A pixel at a line of 16 in the widget's font; every measure is a multiple of it."""
    return widget.fontMetrics().height() / 16.0


def px(widget: QWidget, measure: float) -> int:
    """``measure`` (pixels at a line of 16) in whole pixels for the widget's font."""
    return round(measure * unit_of(widget))


@dataclass(frozen=True, slots=True)
class Box:
    """A rounded box: what fills it, its frame, and how wide the frame is in pixels."""

    fill: QColor | None
    frame: QColor | None
    wide: float = 1.0
    radius: float = 4.0


def paint_box(painter: QPainter, rect: QRectF, box: Box) -> None:
    """Draw ``box`` so that its frame lies wholly inside ``rect``."""
    painter.setRenderHint(QPainter.RenderHint.Antialiasing, True)
    if box.frame is None:
        painter.setPen(Qt.PenStyle.NoPen)
        inner = rect
    else:
        painter.setPen(QPen(box.frame, box.wide))
        half = box.wide / 2
        inner = rect.adjusted(half, half, -half, -half)
    painter.setBrush(box.fill if box.fill is not None else Qt.BrushStyle.NoBrush)
    painter.drawRoundedRect(inner, box.radius, box.radius)
