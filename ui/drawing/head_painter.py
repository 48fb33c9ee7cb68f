"""Paints the head of a tape: inches above, centimetres below, and the rider's mark."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from PySide6.QtCore import QLineF, QPointF, QRectF, Qt
from PySide6.QtGui import QPainter, QPen, QPolygonF

from ui.appearance import Type
from ui.drawing.lettering import Lettering
from ui.drawing.scale import Scale, Tick
from ui.drawing.smooth import smooth
from ui.drawing.tape_painter import Inks
from ui.theme import Ink


@dataclass(frozen=True, slots=True)
class HeadPainter:
    """Paints the ticks of one tape between ``top`` and ``bottom``; the line lies in the middle."""

    colours: Inks
    type_: Type
    letters: Lettering

    def paint(
        self,
        painter: QPainter,
        scale: Scale,
        edges: tuple[float, float],
        rider: float,
        *,
        measured: bool = True,
    ) -> None:
        """Both edges of the tape with the figures, and the rider's mark at ``rider`` (pixels).

        ``edges`` are the tape's upper and lower end. Off the centre, a hollow mark stays there;
        over an estimate, which nobody ``measured``, there is no other.
        """
        top, bottom = edges
        unit = self.type_.line / 16.0
        middle = (top + bottom) / 2
        smooth(painter)
        painter.setPen(QPen(self.colours[Ink.OTHER], unit))
        painter.drawLine(QLineF(scale.left, middle, scale.right, middle))
        wide = self.letters.width("00")
        self._edge(painter, scale.inch_ticks(wide), middle, -1.0, top)
        below = _clear_of(scale.cm_ticks(wide), rider, wide / 2 + 5 * unit)
        self._edge(painter, below, middle, 1.0, bottom)
        if not measured or abs(rider - scale.centre) > 0.5:
            self._pointer(painter, scale.centre, middle, hollow=True)
        if measured:
            self._rider(painter, rider, middle, bottom)

    def _edge(
        self, painter: QPainter, ticks: Sequence[Tick], middle: float, side: float, edge: float
    ) -> None:
        unit = self.type_.line / 16.0
        painter.setPen(QPen(self.colours[Ink.OTHER], unit))
        low, tall = middle + side * unit * 3.0, middle + side * unit * 5.0
        painter.drawLines(
            [QLineF(tick.x, middle, tick.x, low if tick.figure is None else tall) for tick in ticks]
        )
        quiet = self.colours[Ink.QUIET]
        high = abs(edge - middle) - 5.0 * unit
        upper = edge if side < 0 else middle + 5.0 * unit
        for tick in ticks:
            if tick.figure is not None:
                line = QRectF(0.0, upper, 0.0, high)
                self.letters.centred(painter, tick.x, line, str(tick.figure), quiet)

    def _rider(self, painter: QPainter, x: float, middle: float, bottom: float) -> None:
        """A pointer on the tape and the beginning of the rider's line below it."""
        unit, below = self.type_.line / 16.0, bottom - middle
        painter.fillRect(QRectF(x - 2.2 * unit, middle, 4.4 * unit, below), self.colours[Ink.BAND])
        self._pointer(painter, x, middle, hollow=False)
        half = max(1.0, round(0.8 * unit))
        line = QRectF(x - half, middle, 2 * half, below)
        painter.fillRect(line, self.colours[Ink.RIDER])

    def _pointer(self, painter: QPainter, x: float, middle: float, *, hollow: bool) -> None:
        """Filled where the line stands; hollow where it was measured while another is tried."""
        unit, rider = self.type_.line / 16.0, self.colours[Ink.RIDER]
        painter.setPen(QPen(rider, unit) if hollow else Qt.PenStyle.NoPen)
        painter.setBrush(self.colours[Ink.BAND] if hollow else rider)
        upper = middle - 5 * unit
        tip = QPointF(x, middle + 3 * unit)
        corners = [QPointF(x - 5 * unit, upper), QPointF(x + 5 * unit, upper), tip]
        painter.drawPolygon(QPolygonF(corners))


def _clear_of(ticks: Sequence[Tick], x: float, distance: float) -> list[Tick]:
    """The ticks without the figures that would stand under the rider's line."""
    return [tick if abs(tick.x - x) > distance else Tick(tick.x) for tick in ticks]
