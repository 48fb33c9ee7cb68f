"""Paints pages of the wall sheet: the one painter for PDF, print, web page and screen."""

from __future__ import annotations

from collections.abc import Iterator
from functools import cache, lru_cache
from typing import Final

from PySide6.QtCore import QLineF, QPointF, QRectF, Qt
from PySide6.QtGui import (
    QBrush,
    QColor,
    QFont,
    QFontMetricsF,
    QLinearGradient,
    QPainter,
    QPen,
    QPolygonF,
)

from ui.appearance import FAMILY
from ui.drawing.tape_painter import mixed
from ui.wall_sheet.ink import Area, Bar, End, Page, Stroke, Tone, Words
from ui.wall_sheet.paper import Face

FINENESS: Final = 10
"""Painter's units to a point: fonts have whole sizes there, so 9.5 points stay 9.5."""

TONES: Final = {
    # Equal parts of red, green and blue: a colour printer uses black alone for them.
    Tone.INK: "#161616",
    Tone.SOFT: "#494949",
    Tone.EDGE: "#808080",
    Tone.GRID: "#c4c4c4",
    Tone.THREAD: "#e7e7e7",
    Tone.BAR: "#d8d8d8",
    Tone.WASH: "#eaeaea",
    Tone.PAPER: "#ffffff",
}
_FRAME: Final = 0.8
_FADE: Final = 24.0
_STEPS: Final = 6
_HATCH: Final = 3.6
_DASHES: Final = (3.2, 2.2)


@cache
def font(face: Face) -> QFont:
    """The font of ``face`` in painter's units."""
    made = QFont(FAMILY)
    made.setPixelSize(round(face.size * FINENESS))
    made.setWeight(QFont.Weight.DemiBold if face.strong else QFont.Weight.Normal)
    made.setHintingPreference(QFont.HintingPreference.PreferNoHinting)
    # A figure in another shape than the font's plain one could not be found or copied in a PDF.
    for feature in ("tnum", "calt", "case"):
        made.setFeature(QFont.Tag.fromString(feature), 0)
    return made


@cache
def _metrics(face: Face) -> QFontMetricsF:
    return QFontMetricsF(font(face))


@lru_cache(maxsize=1 << 15)
def measured(text: str, face: Face) -> float:
    """How wide ``text`` is in ``face``, in points."""
    return _metrics(face).horizontalAdvance(text) / FINENESS


def paint(painter: QPainter, page: Page, units_per_point: float) -> None:
    """``page`` from the painter's origin, where a point is ``units_per_point`` of its units."""
    painter.save()
    painter.setRenderHint(QPainter.RenderHint.Antialiasing, True)
    painter.scale(units_per_point / FINENESS, units_per_point / FINENESS)
    for mark in page.marks:
        match mark:
            case Words():
                _paint_words(painter, mark)
            case Stroke():
                _paint_stroke(painter, mark)
            case Area():
                painter.fillRect(_box(mark), QColor(TONES[mark.tone]))
            case Bar():
                _paint_bar(painter, mark)
    painter.restore()


def _box(mark: Area | Bar) -> QRectF:
    return QRectF(
        mark.left * FINENESS,
        mark.top * FINENESS,
        (mark.right - mark.left) * FINENESS,
        (mark.bottom - mark.top) * FINENESS,
    )


def _pen(tone: Tone, width: float, *, dashed: bool = False) -> QPen:
    pen = QPen(QColor(TONES[tone]), width * FINENESS)
    pen.setCapStyle(Qt.PenCapStyle.FlatCap)
    pen.setJoinStyle(Qt.PenJoinStyle.MiterJoin)
    if dashed:
        pen.setDashPattern([dash / width for dash in _DASHES])
    return pen


def _paint_words(painter: QPainter, words: Words) -> None:
    painter.setFont(font(words.face))
    painter.setPen(QColor(TONES[words.tone]))
    painter.drawText(QPointF(words.x * FINENESS, words.y * FINENESS), words.text)


def _paint_stroke(painter: QPainter, stroke: Stroke) -> None:
    painter.setPen(_pen(stroke.tone, stroke.width, dashed=stroke.dashed))
    ends = (stroke.x1, stroke.y1, stroke.x2, stroke.y2)
    painter.drawLine(QLineF(*(end * FINENESS for end in ends)))


def _paint_bar(painter: QPainter, bar: Bar) -> None:
    """The body, then what is open about it, then its frame."""
    box = _box(bar)
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(_body(bar, box))
    painter.drawRect(box)
    if bar.hatched:
        painter.setPen(_pen(Tone.EDGE, 0.6))
        painter.drawLines(list(_hatching(bar)))
    _paint_frame(painter, bar, box)


def _body(bar: Bar, box: QRectF) -> QBrush:
    tone = QColor(TONES[Tone.PAPER if bar.hollow else Tone.BAR])
    if End.OPEN not in (bar.left_end, bar.right_end) or bar.hollow:
        return QBrush(tone)
    fade = QLinearGradient(box.topLeft(), box.topRight())
    share = _fade_of(box) / box.width()
    paper = QColor(TONES[Tone.PAPER])
    fade.setColorAt(0.0, paper if bar.left_end is End.OPEN else tone)
    fade.setColorAt(share, tone)
    fade.setColorAt(1.0 - share, tone)
    fade.setColorAt(1.0, paper if bar.right_end is End.OPEN else tone)
    return QBrush(fade)


def _fade_of(box: QRectF) -> float:
    return min(0.55 * box.width(), _FADE * FINENESS)


def _hatching(bar: Bar) -> Iterator[QLineF]:
    """Slanted lines inside the bar, none of them through its label."""
    high = bar.bottom - bar.top
    x = bar.left + _HATCH / 2 - high
    while x < bar.right:
        low, far = max(x, bar.left), min(x + high, bar.right)
        if far > low and not (low < bar.clear_right and far > bar.clear_left):
            yield QLineF(
                low * FINENESS,
                (bar.bottom - (low - x)) * FINENESS,
                far * FINENESS,
                (bar.bottom - (far - x)) * FINENESS,
            )
        x += _HATCH


def _paint_frame(painter: QPainter, bar: Bar, box: QRectF) -> None:
    """All four sides where both ends are firm; an arrow's tip where one is open."""
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.setPen(_pen(Tone.INK, _FRAME, dashed=bar.dashed))
    if bar.left_end is End.FIRM and bar.right_end is End.FIRM:
        inset = _FRAME / 2 * FINENESS
        painter.drawRect(box.adjusted(inset, inset, -inset, -inset))
        return
    for end, x, inward in (
        (bar.left_end, box.left(), 1.0),
        (bar.right_end, box.right(), -1.0),
    ):
        if end is End.FIRM:
            at = x + inward * _FRAME / 2 * FINENESS
            painter.drawLine(QLineF(at, box.top(), at, box.bottom()))
        else:
            _paint_tip(painter, box, x, inward)
    for y in (box.top() + _FRAME / 2 * FINENESS, box.bottom() - _FRAME / 2 * FINENESS):
        _paint_edge(painter, bar, box, y)


def _paint_edge(painter: QPainter, bar: Bar, box: QRectF, y: float) -> None:
    """The upper or lower side; towards an open end it pales step by step."""
    fade = _fade_of(box)
    left = box.left() + (fade if bar.left_end is End.OPEN else 0.0)
    right = box.right() - (fade if bar.right_end is End.OPEN else 0.0)
    painter.setPen(_pen(Tone.INK, _FRAME, dashed=bar.dashed))
    painter.drawLine(QLineF(left, y, right, y))
    for end, start, outward in ((bar.left_end, left, -1.0), (bar.right_end, right, 1.0)):
        if end is End.OPEN:
            for step in range(_STEPS):
                near, far = (start + outward * fade * (step + more) / _STEPS for more in (0, 1))
                tone = mixed(
                    QColor(TONES[Tone.INK]), QColor(TONES[Tone.PAPER]), 1 - (step + 1) / _STEPS
                )
                painter.setPen(QPen(tone, _FRAME * FINENESS))
                painter.drawLine(QLineF(near, y, far, y))


def _paint_tip(painter: QPainter, box: QRectF, x: float, inward: float) -> None:
    high = box.height() * 0.32
    wide = 3.6 * FINENESS * inward
    middle = box.center().y()
    painter.setPen(_pen(Tone.INK, 1.1))
    tip = x + inward * 0.8 * FINENESS
    painter.drawPolyline(
        QPolygonF(
            [
                QPointF(tip + wide, middle - high),
                QPointF(tip, middle),
                QPointF(tip + wide, middle + high),
            ]
        )
    )
