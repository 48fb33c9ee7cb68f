"""Paints one cell's picture. The same function serves the screen, print and PDF."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from functools import cache
from typing import Final, Self

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QBrush, QColor, QLinearGradient, QPainter, QPen, QPolygonF

from ui.drawing.bar_shape import dashes, hatching, outline
from ui.drawing.row_shape import RowShape
from ui.drawing.scale import Scale
from ui.drawing.smooth import smooth
from ui.drawing.tape import Arrow, Bar, End, Gap, Side, TapePicture
from ui.theme import Ink, Theme

_FADE: Final = 26.0
_NOTCH: Final = 6.0
_WASH: Final = 0.42  # how much of its colour an assumed size keeps inside
_LAYERS_ALPHA: Final = 26
_SPREAD: Final = 0.16  # how much of its grey the spread of an estimate keeps


@dataclass(frozen=True, slots=True)
class Inks:
    """The colours of one theme as Qt wants them, made once."""

    by_ink: dict[Ink, QColor]

    def __getitem__(self, ink: Ink) -> QColor:
        return self.by_ink[ink]


def inks(theme: Theme) -> Inks:
    """The colours of ``theme``."""
    return Inks({ink: QColor(theme.colour(ink)) for ink in Ink})


def mixed(colour: QColor, ground: QColor, share: float) -> QColor:
    """``share`` of ``colour`` over ``ground``, opaque, so that print and screen agree."""
    return _mixed(colour.rgb(), ground.rgb(), share)


@cache
def _mixed(rgb: int, ground_rgb: int, share: float) -> QColor:
    parts = ((rgb >> shift & 255, ground_rgb >> shift & 255) for shift in (16, 8, 0))
    return QColor(*(round(a * share + b * (1 - share)) for a, b in parts))


@dataclass(frozen=True, slots=True)
class TapePainter:
    """Paints pictures of one theme and row shape; ``ground`` is what lies behind the row.

    ``halo`` is the light beside the rider's line, ``veil`` what winter layers are covered with.
    """

    colours: Inks
    shape: RowShape
    ground: Ink
    halo: QColor
    veil: QColor

    @classmethod
    def of(cls, colours: Inks, shape: RowShape, ground: Ink = Ink.GROUND) -> Self:
        """The painter for rows on ``ground``."""
        halo, veil = colours[Ink.HALO], QColor(colours[Ink.RIDER])
        veil.setAlpha(_LAYERS_ALPHA)
        return cls(colours, shape, ground, halo, veil)

    def paint(
        self, painter: QPainter, top: float, scale: Scale, drawn: TapePicture, ink: Ink
    ) -> None:
        """One cell whose row starts at ``top``: bars, the rider's line, then what tells the state.

        Caps and gaps come after the line's halo, so that a rider right at the end hides neither.
        """
        smooth(painter)
        if drawn.spread is not None:
            self._paint_estimate(painter, top, drawn, drawn.spread, self.colours[ink])
            return
        if drawn.winter is not None:
            self._paint_layers(painter, top, drawn.rider, drawn.winter)
        self.paint_bars(painter, top, drawn.bars, ink)
        self.paint_meeting(painter, top, scale, drawn, ink)

    def paint_bars(self, painter: QPainter, top: float, bars: Sequence[Bar], ink: Ink) -> None:
        """The sizes alone: what stays where it is while the rider's line moves."""
        smooth(painter)
        self._paint_others(painter, top, bars)
        for bar in bars:
            if bar.best:
                self._paint_bar(painter, top, bar, self.colours[ink])

    def paint_meeting(
        self, painter: QPainter, top: float, scale: Scale, drawn: TapePicture, ink: Ink
    ) -> None:
        """The rider's line, and how it meets the best size, over bars that are painted."""
        smooth(painter)
        self._paint_halo(painter, drawn.rider, top, self.shape.height)
        for bar in drawn.bars:
            if bar.best:
                self._paint_ends(painter, top, bar, self.colours[ink])
        if drawn.gap is not None:
            self._paint_gap(painter, top, drawn.gap, self.colours[ink])
        if drawn.arrow is not None:
            self._paint_arrow(painter, top, drawn.arrow, scale, self.colours[ink])
        self._paint_core(painter, drawn.rider, top, self.shape.height)
        if drawn.winter is not None:
            self._paint_winter(painter, drawn.winter, top)

    def paint_line(self, painter: QPainter, x: float, top: float, height: float) -> None:
        """The rider's line alone, where it passes a row without a picture."""
        smooth(painter)
        self._paint_halo(painter, x, top, height)
        self._paint_core(painter, x, top, height)

    def paint_guess(
        self, painter: QPainter, x: float, spread: tuple[float, float], top: float, height: float
    ) -> None:
        """An estimate where it passes a row: its spread as a faint band, its middle broken."""
        left, right = spread
        grey = self.colours[Ink.OTHER]
        faint = mixed(grey, self.colours[self.ground], _SPREAD)
        painter.fillRect(QRectF(left, top, right - left, height - 1), faint)
        self._paint_middle(painter, x, top, height)

    def _paint_middle(self, painter: QPainter, x: float, top: float, height: float) -> None:
        wide = max(1.0, 1.3 * self.shape.unit)
        stretches = dashes(top, top + height, 3.6 * self.shape.unit)
        rects = [QRectF(x - wide / 2, start, wide, end - start) for start, end in stretches]
        self._fill_rects(painter, rects, self.colours[Ink.UNKNOWN])

    def _paint_estimate(
        self,
        painter: QPainter,
        top: float,
        drawn: TapePicture,
        spread: tuple[float, float],
        colour: QColor,
    ) -> None:
        """The sizes over the spread of what was not measured; grey, for it tells no state."""
        self.paint_guess(painter, drawn.rider, spread, top, self.shape.height)
        self._paint_others(painter, top, drawn.bars)
        for bar in drawn.bars:
            if bar.best:
                self._paint_bar(painter, top, bar, colour)
                self._paint_ends(painter, top, bar, colour)
        self._paint_middle(painter, drawn.rider, top, self.shape.height)

    def _paint_halo(self, painter: QPainter, x: float, top: float, height: float) -> None:
        half = max(2.0, round(2.2 * self.shape.unit))
        painter.fillRect(QRectF(x - half, top, 2 * half, height), self.halo)

    def _paint_core(self, painter: QPainter, x: float, top: float, height: float) -> None:
        half = max(1.0, round(0.8 * self.shape.unit))
        painter.fillRect(QRectF(x - half, top, 2 * half, height), self.colours[Ink.RIDER])

    def _paint_arrow(
        self, painter: QPainter, top: float, arrow: Arrow, scale: Scale, colour: QColor
    ) -> None:
        """An arrow at the tape's end instead of a bar that lies beyond it."""
        unit, y = self.shape.unit, top + self.shape.lanes[0]
        tip, sign = (scale.right, -1.0) if arrow.side is Side.RIGHT else (scale.left, 1.0)
        near, far = sorted((tip + sign * 20 * unit, tip + sign * 5 * unit))
        painter.fillRect(QRectF(near, y - unit, far - near, 2 * unit), colour)
        back = tip + sign * 8 * unit
        head = [QPointF(tip, y), QPointF(back, y - 5 * unit), QPointF(back, y + 5 * unit)]
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(colour)
        painter.drawPolygon(QPolygonF(head))

    def _paint_layers(self, painter: QPainter, top: float, left: float, right: float) -> None:
        painter.fillRect(QRectF(left, top, right - left, self.shape.height), self.veil)

    def _paint_winter(self, painter: QPainter, x: float, top: float) -> None:
        unit = self.shape.unit
        painter.fillRect(QRectF(x - 1.8 * unit, top, 3.6 * unit, self.shape.height), self.halo)
        wide = 1.6 * unit
        stretches = dashes(top, top + self.shape.height, 2.4 * unit)
        rects = [QRectF(x - wide / 2, start, wide, end - start) for start, end in stretches]
        self._fill_rects(painter, rects, self.colours[Ink.RIDER])

    def _paint_others(self, painter: QPainter, top: float, bars: Sequence[Bar]) -> None:
        """The sizes beside the best one: thin, without ends; open ends fade."""
        thin = self.shape.thin
        plain: list[QRectF] = []
        for bar in bars:
            if bar.best:
                continue
            if End.FADING in (bar.left_end, bar.right_end):
                self._paint_bar(painter, top, bar, self.colours[Ink.OTHER])
                continue
            middle = top + self.shape.lanes[bar.lane]
            plain.append(QRectF(bar.left, middle - thin / 2, bar.right - bar.left, thin))
        if plain:
            self._fill_rects(painter, plain, self.colours[Ink.OTHER])

    def _paint_bar(self, painter: QPainter, top: float, bar: Bar, colour: QColor) -> None:
        middle = top + self.shape.lanes[bar.lane]
        thick = self.shape.bar if bar.best else self.shape.thin
        box = QRectF(bar.left, middle - thick / 2, bar.right - bar.left, thick)
        fill = self._fill(bar, box, colour)
        if bar.notched or End.CUT in (bar.left_end, bar.right_end):
            painter.setPen(Qt.PenStyle.NoPen)
            painter.setBrush(fill)
            painter.drawPath(outline(bar, box, _NOTCH * self.shape.unit))
        else:
            painter.fillRect(box, fill)
        if bar.best:
            self._paint_dress(painter, bar, box, colour)

    def _fill(self, bar: Bar, box: QRectF, colour: QColor) -> QBrush:
        """Full colour; washed where assumed or asked about; fading towards an open end."""
        washed = bar.best and (bar.assumed or bar.questioned)
        inner = mixed(colour, self.colours[self.ground], _WASH) if washed else colour
        if End.FADING not in (bar.left_end, bar.right_end):
            return QBrush(inner)
        clear = QColor(inner)
        clear.setAlpha(0)
        share = min(0.5, _FADE * self.shape.unit / max(box.width(), 1.0))
        fade = QLinearGradient(box.topLeft(), box.topRight())
        fade.setColorAt(0.0, clear if bar.left_end is End.FADING else inner)
        fade.setColorAt(share, inner)
        fade.setColorAt(1.0 - share, inner)
        fade.setColorAt(1.0, clear if bar.right_end is End.FADING else inner)
        return QBrush(fade)

    def _paint_dress(self, painter: QPainter, bar: Bar, box: QRectF, colour: QColor) -> None:
        """Hatching for an open question, a dashed outline for what was assumed."""
        if bar.questioned:
            painter.setPen(QPen(colour, 1.1 * self.shape.unit))
            painter.drawLines(hatching(box, 4.0 * self.shape.unit))
        if not (bar.assumed or bar.questioned):
            return
        wide = 1.2 * self.shape.unit
        stretches = [(box.left(), box.right())]
        if bar.assumed:
            stretches = dashes(box.left(), box.right(), 3.6 * self.shape.unit)
        rects = [
            QRectF(start, y - wide / 2, end - start, wide)
            for y in (box.top(), box.bottom())
            for start, end in stretches
        ]
        self._fill_rects(painter, rects, colour)

    def _paint_ends(self, painter: QPainter, top: float, bar: Bar, colour: QColor) -> None:
        unit, middle = self.shape.unit, top + self.shape.lanes[bar.lane]
        ends = ((bar.left_end, Side.LEFT, bar.left), (bar.right_end, Side.RIGHT, bar.right))
        for end, side, x in ends:
            if end is not End.FIRM:
                continue
            wide, over = (5.0, 3.2) if bar.cap is side else (1.6, 1.6)
            inward = x if side is Side.LEFT else x - wide * unit
            reach = self.shape.bar / 2 + over * unit
            painter.fillRect(QRectF(inward, middle - reach, wide * unit, 2 * reach), colour)

    def _paint_gap(self, painter: QPainter, top: float, gap: Gap, colour: QColor) -> None:
        """A measuring line from the bar to the rider, with a tick at each end."""
        unit, y = self.shape.unit, top + self.shape.lanes[0]
        wide = 1.3 * unit
        reach = self.shape.bar / 2 + 1.2 * unit
        line = QRectF(gap.left, y - wide / 2, gap.right - gap.left, wide)
        ticks = [QRectF(x - wide / 2, y - reach, wide, 2 * reach) for x in (gap.left, gap.right)]
        self._fill_rects(painter, [line, *ticks], colour)

    @staticmethod
    def _fill_rects(painter: QPainter, rects: list[QRectF], colour: QColor) -> None:
        """Straight strokes as filled boxes: a stroked line costs a raster painter far more."""
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(colour)
        painter.drawRects(rects)
