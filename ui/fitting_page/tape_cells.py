"""Paints the cells that are tapes: the picture, its number, and the names of the other sizes."""

from __future__ import annotations

from collections.abc import Hashable
from dataclasses import dataclass
from typing import Final

from PySide6.QtCore import QRectF, Qt
from PySide6.QtGui import QPainter

from ui.drawing.scale import Scale
from ui.drawing.tape import (
    Crossing,
    SizeSpan,
    TapePicture,
    estimate_picture,
    picture,
    spread_of,
)
from ui.drawing.tape_painter import TapePainter
from ui.dress import Dress
from ui.fitting_page.columns import PAD_LEFT, tape_scale
from ui.fitting_page.rows import TapeCell, TapeHead
from ui.theme import Ink

_WRAPPED: Final = int(Qt.AlignmentFlag.AlignVCenter) | int(Qt.TextFlag.TextWordWrap)


@dataclass(frozen=True, slots=True)
class Spot:
    """Where to paint, whether that row is chosen, and whether others are compared with it."""

    painter: QPainter
    box: QRectF
    chosen: bool = False
    held: bool = False

    @property
    def ground(self) -> Ink:
        """What lies behind the row."""
        return Ink.CHOSEN if self.chosen else Ink.GROUND


class TapeCells:
    """Paints tapes in one dress."""

    def __init__(self, dress: Dress) -> None:
        self.dress = dress

    def paint(self, spot: Spot, head: TapeHead, cell: TapeCell | None, both: str = "") -> None:
        """One tape; ``both`` stands in the place of the one number where the focus is."""
        box = spot.box
        scale = self.scale(head, box.left(), box.width())
        tape = self._tape(spot)
        if scale is None or cell is None or not cell.spans:
            if scale is not None:
                self.line(spot, head, scale)
            self._absence(spot, cell, scale, None if scale is None else rider_x(head, scale))
            return
        drawn = _drawn(head, cell, scale)
        tape.paint(spot.painter, box.top(), scale, drawn, cell.ink)
        if self.dress.shape.names:
            self._size_names(spot, drawn)
        self._number(spot, cell, scale, both)

    def bars_in(self, head: TapeHead, cell: TapeCell | None) -> Hashable | None:
        """How ``paint_bars`` draws the sizes of a cell; None where they are not painted alone.

        Winter layers lie below the bars, and names of sizes make way for the rider's line.
        """
        if cell is None or not cell.spans or cell.estimated or cell.layers_cm > 0:
            return None
        if head.centre_cm is None or self.dress.shape.names:
            return None
        notched = cell.crossing is Crossing.TOO_LONG
        return cell.ink, notched, head.centre_cm, head.half_span_cm

    def paint_bars(self, spot: Spot, head: TapeHead, cell: TapeCell) -> None:
        """The sizes of one tape, without the rider."""
        scale = self.scale(head, spot.box.left(), spot.box.width())
        if scale is not None:
            bars = _drawn(head, cell, scale).bars
            self._tape(spot).paint_bars(spot.painter, spot.box.top(), bars, cell.ink)

    def paint_meeting(self, spot: Spot, head: TapeHead, cell: TapeCell, both: str) -> None:
        """The rider on a tape whose bars are painted, and the number."""
        scale = self.scale(head, spot.box.left(), spot.box.width())
        if scale is not None:
            best = tuple(span for span in cell.spans if span.best)
            drawn = _met(head, cell, best, scale)
            self._tape(spot).paint_meeting(spot.painter, spot.box.top(), scale, drawn, cell.ink)
            self._number(spot, cell, scale, both)

    def _tape(self, spot: Spot) -> TapePainter:
        return self.dress.tape_chosen if spot.chosen else self.dress.tape

    def line(self, spot: Spot, head: TapeHead, scale: Scale) -> None:
        """The rider's line where it passes a row without a picture; in grey what is estimated."""
        tape = self._tape(spot)
        top, height = spot.box.top(), spot.box.height()
        if head.centre_cm is None and head.guess is not None:
            spread = spread_of(scale, (head.guess.low_cm, head.guess.high_cm))
            tape.paint_guess(spot.painter, scale.centre, spread, top, height)
        else:
            tape.paint_line(spot.painter, rider_x(head, scale), top, height)

    def scale(self, head: TapeHead, left: float, width: float) -> Scale | None:
        """The tape in a column, None while there is neither a reading nor an estimate."""
        if head.middle_cm is None:
            return None
        return tape_scale(left, width, self.dress.unit, head.middle_cm, head.half_span_cm)

    def _number(self, spot: Spot, cell: TapeCell, scale: Scale, both: str) -> None:
        """The one number of a cell, right of the rider's line."""
        dress, unit, box = self.dress, self.dress.unit, spot.box
        letters = dress.small_strong if cell.strong else dress.small
        whole = bool(both) or cell.estimated
        left = box.left() if both else scale.left if whole else scale.centre + 4 * unit
        text = both or cell.number
        if not both and letters.width(text) > scale.right - left:
            text = cell.brief
        wide = min(letters.width(text), scale.right - left)
        shape = dress.shape
        line = QRectF(
            scale.right - wide, box.top() + shape.number_top, wide + 1, shape.number_height
        )
        crossed = whole and line.left() < scale.centre + 4 * unit
        if cell.layers_cm > 0 or both or crossed:
            # A line would run through the figures: give them a ground of their own.
            plate = line.adjusted(-3 * unit, 0, 2 * unit, 0)
            spot.painter.fillRect(plate, dress.colours[spot.ground])
        quiet = Ink.QUIET if cell.estimated else Ink.TEXT
        letters.right(spot.painter, line, text, dress.colours[cell.ink if cell.strong else quiet])

    def _absence(
        self, spot: Spot, cell: TapeCell | None, scale: Scale | None, rider: float | None
    ) -> None:
        """Why there is no picture, right of the tape's middle, on two lines where need be."""
        if cell is None:
            return
        unit, box = self.dress.unit, spot.box
        left = scale.centre + 7 * unit if scale else box.left() + PAD_LEFT * unit
        words = QRectF(left, box.top(), box.right() - left - 3 * unit, box.height() - 1)
        spot.painter.setFont(self.dress.type_.small)
        spot.painter.setPen(self.dress.colours[Ink.QUIET])
        taken = spot.painter.boundingRect(words, _WRAPPED, cell.number)
        if rider is not None and taken.left() - 2 * unit < rider < taken.right() + 2 * unit:
            # A line that is tried would run through the words: give them a ground of their own.
            plate = taken.adjusted(-3 * unit, 0, 3 * unit, 0)
            spot.painter.fillRect(plate, self.dress.colours[spot.ground])
        spot.painter.drawText(words, _WRAPPED, cell.number)

    def _size_names(self, spot: Spot, drawn: TapePicture) -> None:
        """The labels of the other sizes above their bars, as far as they do not touch."""
        unit, small = self.dress.unit, self.dress.small
        end = spot.box.left()
        others = sorted((bar for bar in drawn.bars if not bar.best), key=lambda bar: bar.left)
        for bar in others:
            wide = small.width(bar.label)
            left = (bar.left + bar.right - wide) / 2
            crosses = abs(left + wide / 2 - drawn.rider) < wide / 2 + 4 * unit
            if wide > bar.right - bar.left or left < end or crosses:
                continue
            line = QRectF(left, spot.box.top() + 1.5 * unit, wide + 1, 14 * unit)
            small.left(spot.painter, line, bar.label, self.dress.colours[Ink.QUIET])
            end = left + wide + 4 * unit


def _drawn(head: TapeHead, cell: TapeCell, scale: Scale) -> TapePicture:
    """The picture of one cell: about the reading, or about what is estimated in its place."""
    guess = head.guess
    if cell.estimated and guess is not None:
        ends = (guess.low_cm, guess.high_cm)
        return estimate_picture(scale, cell.spans, guess.mean_cm, ends)
    return _met(head, cell, cell.spans, scale)


def _met(head: TapeHead, cell: TapeCell, spans: tuple[SizeSpan, ...], scale: Scale) -> TapePicture:
    """The rider among some of the sizes of one cell."""
    return picture(
        scale,
        spans,
        cell.crossing,
        rider_cm=head.tried_cm,
        layers_cm=cell.layers_cm,
        cap=cell.cap,
    )


def rider_x(head: TapeHead, scale: Scale) -> float:
    """Where the rider's line stands on a tape, in pixels."""
    return scale.centre if head.tried_cm is None else scale.on_tape(head.tried_cm)
