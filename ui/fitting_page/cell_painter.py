"""Paints one cell of the table, for the screen, for print and for PDF."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QFont, QFontMetricsF, QPainter, QPen, QPolygonF

from ui.drawing.marks import paint_mark
from ui.drawing.row_shape import Density
from ui.drawing.scale import Scale
from ui.drawing.tape import picture
from ui.dress import Dress
from ui.fitting_page.columns import PAD_LEFT, Column, tape_scale
from ui.fitting_page.rows import SEPARATOR, BandRow, ModelRow, TapeCell, TapeHead, VerdictWord
from ui.theme import GATE_LOOK, Ink

LEFT: Final = Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter
RIGHT: Final = Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter
BAND_HEIGHT: Final = 25.0


@dataclass(frozen=True, slots=True)
class Spot:
    """Where to paint, and whether that row is chosen."""

    painter: QPainter
    box: QRectF
    chosen: bool = False

    @property
    def ground(self) -> Ink:
        """What lies behind the row."""
        return Ink.CHOSEN if self.chosen else Ink.GROUND

    def moved(self, box: QRectF) -> Spot:
        """The same row, another box."""
        return Spot(self.painter, box, self.chosen)


@dataclass(frozen=True, slots=True)
class Hand:
    """How a line of text is written."""

    font: QFont
    width: QFontMetricsF
    ink: Ink
    flags: Qt.AlignmentFlag = LEFT


class CellPainter:
    """Paints cells in one dress."""

    def __init__(self, dress: Dress) -> None:
        type_ = dress.type_
        self.dress = dress
        self._strong = Hand(type_.strong, dress.strong_width, Ink.TEXT)
        self._quiet = Hand(type_.small, dress.small_width, Ink.QUIET)
        self._small = Hand(type_.small, dress.small_width, Ink.TEXT)
        self._heading = Hand(type_.small_strong, dress.small_strong_width, Ink.TEXT)

    def ground(self, spot: Spot, column: Column) -> None:
        """The row's ground, its hairline, and the bar that marks the chosen row."""
        painter, box, unit = spot.painter, spot.box, self.dress.unit
        painter.fillRect(box, self.dress.colours[spot.ground])
        self._hairline(painter, box)
        if spot.chosen and column is Column.MODEL:
            bar = QRectF(box.left(), box.top(), 3.5 * unit, box.height() - 1)
            painter.fillRect(bar, self.dress.colours[Ink.ACCENT])

    def model(self, spot: Spot, row: ModelRow) -> None:
        """The model's name, for whom it is made, and below it the maker and the edition."""
        unit = self.dress.unit
        box = spot.box.adjusted(PAD_LEFT * unit, 0, -4 * unit, 0)
        below = [row.make, row.edition]
        if not self._is_tall:
            below = [text for text in (SEPARATOR.join(text for text in below if text),) if text]
        lines = self._lines(box, 1 + len([text for text in below if text]))
        self._write(spot.painter, lines[0], row.model, self._strong)
        after = self.dress.strong_width.horizontalAdvance(row.model) + 6 * unit
        if after + self.dress.small_width.horizontalAdvance(row.wearer) <= box.width():
            self._write(spot.painter, lines[0].adjusted(after, 0, 0, 0), row.wearer, self._quiet)
        for line, text in zip(lines[1:], [text for text in below if text], strict=True):
            self._write(spot.painter, line, text, self._quiet)

    def size(self, spot: Spot, row: ModelRow) -> None:
        """The best size with its length, and below it the next one that can be tried."""
        box = spot.box.adjusted(4 * self.dress.unit, 0, -2 * self.dress.unit, 0)
        below = [text for text in (row.length_option, row.also) if text]
        first = row.size
        if len(below) > 1 and not self._is_tall:
            first = f"{row.size} {below.pop(0)}"
        lines = self._lines(box, 1 + len(below))
        self._write(spot.painter, lines[0], first, self._strong)
        for line, text in zip(lines[1:], below, strict=True):
            self._write(spot.painter, line, text, self._quiet)

    def verdict(self, spot: Spot, row: ModelRow) -> None:
        """The two words, each with its mark."""
        lines = self._lines(spot.box.adjusted(4 * self.dress.unit, 0, 0, 0), 2)
        for line, word in zip(lines, (row.girths, row.length), strict=True):
            self._word(spot.moved(line), word)

    def note(self, spot: Spot, row: ModelRow) -> None:
        """What is to be noted beside the tapes; with a mark where it stops the sale."""
        if not row.note:
            return
        unit, colours = self.dress.unit, self.dress.colours
        box = spot.box.adjusted(4 * unit, 0, -6 * unit, -1)
        font, ink = self.dress.type_.small, Ink.TEXT
        if row.stopped:
            side = 9.5 * unit
            sign = QRectF(box.left(), box.center().y() - side / 2, side, side)
            paint_mark(
                spot.painter, sign, GATE_LOOK.mark, colours[GATE_LOOK.ink], colours[spot.ground]
            )
            box = box.adjusted(side + 5 * unit, 0, 4 * unit, 0)
            font, ink = self.dress.type_.small_strong, GATE_LOOK.ink
        spot.painter.setFont(font)
        spot.painter.setPen(colours[ink])
        flags = int(Qt.AlignmentFlag.AlignVCenter) | int(Qt.TextFlag.TextWordWrap)
        spot.painter.drawText(box, flags, row.note)

    def tape(self, spot: Spot, head: TapeHead, cell: TapeCell | None, both: str = "") -> None:
        """One tape; ``both`` stands in the place of the one number where the focus is."""
        scale = self.scale(head, spot.box.left(), spot.box.width())
        tape = self.dress.tape_chosen if spot.chosen else self.dress.tape
        if scale is not None and cell is not None and cell.spans:
            drawn = picture(
                scale,
                cell.spans,
                cell.crossing,
                rider_cm=head.tried_cm,
                layers_cm=cell.layers_cm,
                cap=cell.cap,
            )
            tape.paint(spot.painter, spot.box.top(), scale, drawn, cell.ink)
        elif scale is not None:
            tape.paint_line(spot.painter, rider_x(head, scale), spot.box.top(), spot.box.height())
        if cell is not None and cell.spans:
            self._number(spot, cell, scale, both)
        elif cell is not None:
            self._absence(spot, cell, scale)

    def band(self, spot: Spot, row: BandRow, tapes: list[tuple[TapeHead, float, float]]) -> None:
        """A band's heading, with the rider's line passing through it."""
        painter, box, unit = spot.painter, spot.box, self.dress.unit
        painter.fillRect(box, self.dress.colours[Ink.BAND])
        self._hairline(painter, box)
        for head, left, width in tapes:
            scale = self.scale(head, left, width)
            if scale is not None:
                x = rider_x(head, scale)
                self.dress.tape.paint_line(painter, x, box.top(), box.height())
        self._fold(painter, box, row.folded)
        line = box.adjusted((PAD_LEFT + 15) * unit, 0, 0, -1)
        self._write(painter, line, row.text, self._heading)

    def focus(self, spot: Spot) -> None:
        """The frame of the cell that has the keyboard."""
        wide = 2 * self.dress.unit
        pen = QPen(self.dress.colours[Ink.FOCUS], wide)
        pen.setJoinStyle(Qt.PenJoinStyle.MiterJoin)
        spot.painter.setBrush(Qt.BrushStyle.NoBrush)
        spot.painter.setPen(pen)
        half = wide / 2
        spot.painter.drawRect(spot.box.adjusted(half, half, -half, -half - 1))

    def scale(self, head: TapeHead, left: float, width: float) -> Scale | None:
        """The tape in a column, None before there is a reading."""
        if head.centre_cm is None:
            return None
        return tape_scale(left, width, self.dress.unit, head.centre_cm, head.half_span_cm)

    def _hairline(self, painter: QPainter, box: QRectF) -> None:
        line = QRectF(box.left(), box.bottom() - 1, box.width(), 1)
        painter.fillRect(line, self.dress.colours[Ink.RULE])

    def _word(self, spot: Spot, word: VerdictWord) -> None:
        colours, unit, line = self.dress.colours, self.dress.unit, spot.box
        side = 9.5 * unit
        sign = QRectF(line.left(), line.center().y() - side / 2, side, side)
        paint_mark(spot.painter, sign, word.look.mark, colours[word.look.ink], colours[spot.ground])
        hand = self._small
        if word.look.ink is not Ink.GOOD:
            hand = self._coloured(word.look.ink)
        self._write(spot.painter, line.adjusted(side + 6 * unit, 0, 0, 0), word.text, hand)

    def _number(self, spot: Spot, cell: TapeCell, scale: Scale | None, both: str) -> None:
        """The one number of a cell right of the rider's line, on a plate of the row's ground."""
        unit, shape, box = self.dress.unit, self.dress.shape, spot.box
        hand = self._hand_of(cell)
        right = scale.right if scale else box.right() - 12 * unit
        left = scale.centre + 4 * unit if scale else box.left() + PAD_LEFT * unit
        text = both or cell.number
        if not both and hand.width.horizontalAdvance(text) > right - left:
            text = cell.brief
        wide = min(hand.width.horizontalAdvance(text), right - (left if not both else box.left()))
        line = QRectF(right - wide, box.top() + shape.number_top, wide + 1, shape.number_height)
        plate = line.adjusted(-3 * unit, 0, 2 * unit, 0)
        spot.painter.fillRect(plate, self.dress.colours[spot.ground])
        self._write(spot.painter, line, text, hand)

    def _absence(self, spot: Spot, cell: TapeCell, scale: Scale | None) -> None:
        """Why there is no picture, right of the rider's line, on two lines where need be."""
        unit, box = self.dress.unit, spot.box
        left = scale.centre + 7 * unit if scale else box.left() + PAD_LEFT * unit
        words = QRectF(left, box.top(), box.right() - left - 3 * unit, box.height() - 1)
        spot.painter.setFont(self.dress.type_.small)
        spot.painter.setPen(self.dress.colours[Ink.QUIET])
        flags = int(Qt.AlignmentFlag.AlignVCenter) | int(Qt.TextFlag.TextWordWrap)
        spot.painter.drawText(words, flags, cell.number)

    def _hand_of(self, cell: TapeCell) -> Hand:
        if cell.strong:
            return self._coloured(cell.ink, RIGHT)
        ink = Ink.QUIET if cell.ink is Ink.UNKNOWN else Ink.TEXT
        return Hand(self.dress.type_.small, self.dress.small_width, ink, RIGHT)

    def _coloured(self, ink: Ink, flags: Qt.AlignmentFlag = LEFT) -> Hand:
        return Hand(self.dress.type_.small_strong, self.dress.small_strong_width, ink, flags)

    def _fold(self, painter: QPainter, box: QRectF, folded: bool) -> None:
        """A triangle: pointing right where the rows are folded away, down where they show."""
        unit, y = self.dress.unit, box.center().y() - 0.5
        x = box.left() + (PAD_LEFT + 5) * unit
        points = ((-2, -4), (-2, 4), (3, 0)) if folded else ((-4, -2), (4, -2), (0, 3))
        painter.setRenderHint(QPainter.RenderHint.Antialiasing, True)
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(self.dress.colours[Ink.QUIET])
        painter.drawPolygon(QPolygonF([QPointF(x + a * unit, y + b * unit) for a, b in points]))

    @property
    def _is_tall(self) -> bool:
        """Whether a row has room for three lines."""
        return self.dress.density is not Density.LOW

    def _lines(self, box: QRectF, count: int) -> list[QRectF]:
        """``count`` lines of text in the middle of a row."""
        high = self.dress.type_.line * 0.92
        top = box.center().y() - high * count / 2 - 0.5
        return [QRectF(box.left(), top + high * n, box.width(), high) for n in range(count)]

    def _write(self, painter: QPainter, box: QRectF, text: str, hand: Hand) -> None:
        if not text:
            return
        if hand.width.horizontalAdvance(text) > box.width() + 1:
            text = hand.width.elidedText(text, Qt.TextElideMode.ElideRight, box.width())
        painter.setFont(hand.font)
        painter.setPen(self.dress.colours[hand.ink])
        painter.drawText(box, hand.flags, text)


def rider_x(head: TapeHead, scale: Scale) -> float:
    """Where the rider's line stands on a tape, in pixels."""
    return scale.centre if head.tried_cm is None else scale.x(head.tried_cm)
