"""The outlines over a sheet: a line of its own for each kind of part, and its tag in words."""

from __future__ import annotations

from typing import Final

from PySide6.QtCore import QLineF, QRectF, Qt
from PySide6.QtGui import QPainter, QPen

from charts.regions import Taken
from ui.dress import Dress
from ui.questions_page.source_shape import Outline
from ui.theme import Ink

TAG_BAND: Final = 15.0
"""How much higher a row is in which a part begins: its tag stands there."""
_SOLID: Final = Qt.PenStyle.SolidLine
_DASHED: Final = Qt.PenStyle.DashLine
_DOTTED: Final = Qt.PenStyle.DotLine
_MIXED: Final = Qt.PenStyle.DashDotLine

_LINES: Final = {
    Taken.SIZES: (Ink.ACCENT, _SOLID, 2.0),
    Taken.LENGTHS: (Ink.ACCENT, _SOLID, 2.0),
    Taken.VALUES: (Ink.GOOD, _SOLID, 1.2),
    Taken.HEADING: (Ink.CHECK, _DASHED, 1.2),
    Taken.UNIT: (Ink.CHECK, _DASHED, 1.2),
    Taken.BAND: (Ink.CHECK, _DASHED, 1.2),
    Taken.MODEL: (Ink.CHECK, _DASHED, 1.2),
    Taken.TOLERANCE: (Ink.CHECK, _DASHED, 1.2),
    Taken.NOT_READ: (Ink.STOP, _MIXED, 1.8),
}
_USUAL: Final = (Ink.UNKNOWN, _DOTTED, 1.0)
_UNSURE: Final = (Ink.NEAR, _MIXED, 1.8)


def paint_frame(painter: QPainter, box: QRectF, outline: Outline, dress: Dress) -> None:
    """The frame of a part. ``box`` begins with the band in which its tag stands."""
    ink, style, wide = _look(outline)
    pen = QPen(dress.colours[ink], wide * dress.unit, style)
    pen.setCapStyle(Qt.PenCapStyle.FlatCap)
    painter.setPen(pen)
    painter.setBrush(Qt.BrushStyle.NoBrush)
    frame = _frame(box, dress)
    for line in _sides(frame, *_tag(frame, outline, dress)):
        painter.drawLine(line)


def paint_tag(painter: QPainter, box: QRectF, outline: Outline, dress: Dress) -> None:
    """The words on the upper line of a frame, over whatever crosses them."""
    left, wide = _tag(_frame(box, dress), outline, dress)
    plate = QRectF(left, box.top() + dress.unit, wide, (TAG_BAND - 1) * dress.unit)
    painter.fillRect(plate, dress.colours[Ink.GROUND])
    words = plate.adjusted(3 * dress.unit, 0, -3 * dress.unit, 0)
    dress.small.left(painter, words, outline.tag, dress.colours[_look(outline)[0]])


def _look(outline: Outline) -> tuple[Ink, Qt.PenStyle, float]:
    return _UNSURE if outline.open else _LINES.get(outline.taken, _USUAL)


def _frame(box: QRectF, dress: Dress) -> QRectF:
    px = dress.unit
    return box.adjusted(1.5 * px, TAG_BAND * px / 2, -2.5 * px, -2.0 * px)


def _tag(frame: QRectF, outline: Outline, dress: Dress) -> tuple[float, float]:
    """Where the tag begins, and how wide it is."""
    room = frame.width() - 8 * dress.unit
    wide = min(dress.small.width(outline.tag) + 7 * dress.unit, room)
    return frame.left() + 4 * dress.unit, max(wide, 0.0)


def _sides(frame: QRectF, tag_left: float, tag_wide: float) -> tuple[QLineF, ...]:
    """The four sides; the upper one leaves the tag free."""
    top, bottom, left, right = frame.top(), frame.bottom(), frame.left(), frame.right()
    return (
        QLineF(left, top, tag_left, top),
        QLineF(min(tag_left + tag_wide, right), top, right, top),
        QLineF(left, top, left, bottom),
        QLineF(right, top, right, bottom),
        QLineF(left, bottom, right, bottom),
    )
