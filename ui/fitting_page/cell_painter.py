"""Paints one cell of the table, for the screen, for print and for PDF."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QFont, QFontMetricsF, QPainter, QPen, QPolygonF

from ui.drawing.bar_shape import dashes
from ui.drawing.marks import paint_mark, paint_opposed
from ui.drawing.row_shape import Density
from ui.drawing.smooth import smooth
from ui.dress import Dress
from ui.fitting_page.columns import PAD_LEFT, Column
from ui.fitting_page.rows import SEPARATOR, BandRow, ModelRow, TapeHead, VerdictWord
from ui.fitting_page.tape_cells import Spot, TapeCells
from ui.theme import GATE_LOOK, Ink

BAND_HEIGHT: Final = 25.0
_WRAPPED: Final = int(Qt.AlignmentFlag.AlignVCenter) | int(Qt.TextFlag.TextWordWrap)
_FOLDED: Final = ((-2, -4), (-2, 4), (3, 0))
_UNFOLDED: Final = ((-4, -2), (4, -2), (0, 3))


class CellPainter:
    """Paints cells in one dress.

    Attributes:
        tapes: paints the cells that are tapes.
    """

    def __init__(self, dress: Dress) -> None:
        self.dress = dress
        self.tapes = TapeCells(dress)
        self._tall = dress.density is not Density.LOW
        self._line = dress.type_.line * 0.92

    def ground(self, spot: Spot, column: Column) -> None:
        """The row's ground, its hairline, and the bar of the chosen row, broken on one held."""
        painter, box = spot.painter, spot.box
        painter.fillRect(box, self.dress.colours[spot.ground])
        self._hairline(painter, box)
        if not (spot.chosen or spot.held) or column is not Column.MODEL:
            return
        bar = QRectF(box.left(), box.top(), 3.5 * self.dress.unit, box.height() - 1)
        if spot.chosen:
            painter.fillRect(bar, self.dress.colours[Ink.ACCENT])
            return
        for top, end in dashes(bar.top(), bar.bottom(), 4.0 * self.dress.unit):
            piece = QRectF(bar.left(), top, bar.width(), end - top)
            painter.fillRect(piece, self.dress.colours[Ink.ACCENT])

    def model(self, spot: Spot, row: ModelRow) -> None:
        """The model's name, for whom it is made, and below it the maker and the edition."""
        dress, unit = self.dress, self.dress.unit
        below = [text for text in (row.make, row.edition) if text]
        if not self._tall:
            below = [SEPARATOR.join(below)]
        name, *lines = self._lines(spot.box.adjusted(PAD_LEFT * unit, 0, -4 * unit, 0), below)
        if spot.held:
            name = self._held(spot, name)
        dress.strong.name(spot.painter, name, row.model, dress.colours[Ink.TEXT])
        after = dress.strong.width(row.model) + 6 * unit
        if row.wearer and after + dress.small.width(row.wearer) <= name.width():
            rest = name.adjusted(after, 0, 0, 0)
            dress.small.left(spot.painter, rest, row.wearer, dress.colours[Ink.QUIET])
        for line, text in zip(lines, below, strict=True):
            dress.small.name(spot.painter, line, text, dress.colours[Ink.QUIET])

    def _held(self, spot: Spot, line: QRectF) -> QRectF:
        """The sign of a row that others are compared with; returns what is left of its line."""
        unit = self.dress.unit
        side = 11.0 * unit
        sign = QRectF(line.right() - side, line.center().y() - side / 2, side, side)
        paint_opposed(spot.painter, sign, self.dress.colours[Ink.ACCENT])
        return line.adjusted(0, 0, -side - 4 * unit, 0)

    def size(self, spot: Spot, row: ModelRow) -> None:
        """The best size with its length, and below it the next one that can be tried."""
        dress, unit = self.dress, self.dress.unit
        below = [text for text in (row.length_option, row.also) if text]
        first = row.size
        if len(below) > 1 and not self._tall:
            first = f"{row.size} {below.pop(0)}"
        upper, *lines = self._lines(spot.box.adjusted(4 * unit, 0, -2 * unit, 0), below)
        dress.strong.left(spot.painter, upper, first, dress.colours[Ink.TEXT])
        for line, text in zip(lines, below, strict=True):
            dress.small.left(spot.painter, line, text, dress.colours[Ink.QUIET])

    def verdict(self, spot: Spot, row: ModelRow, sure: str = "") -> None:
        """The two words, each with its mark; below them how ``sure`` the size is, where said."""
        words = (row.girths, row.length)
        below = (*words[1:], *((sure,) if sure else ()))
        lines = self._lines(spot.box.adjusted(4 * self.dress.unit, 0, 0, 0), below)
        for line, word in zip(lines, words, strict=False):
            self._word(spot, line, word)
        if sure:
            self.dress.small.left(spot.painter, lines[-1], sure, self.dress.colours[Ink.QUIET])

    def note(self, spot: Spot, row: ModelRow) -> None:
        """What is to be noted beside the tapes; with a mark where it stops the sale."""
        if not row.note:
            return
        dress, unit = self.dress, self.dress.unit
        box = spot.box.adjusted(4 * unit, 0, -6 * unit, -1)
        font, ink = dress.type_.small, Ink.TEXT
        if row.stopped:
            side = 9.5 * unit
            sign = QRectF(box.left(), box.center().y() - side / 2, side, side)
            colour = dress.colours[GATE_LOOK.ink]
            paint_mark(spot.painter, sign, GATE_LOOK.mark, colour, dress.colours[spot.ground])
            box = box.adjusted(side + 5 * unit, 0, 4 * unit, 0)
            ink = GATE_LOOK.ink
            longest = max(dress.small_strong.width(word) for word in row.note.split())
            font = dress.type_.small_strong if longest <= box.width() else font
        spot.painter.setFont(font)
        spot.painter.setPen(dress.colours[ink])
        spot.painter.drawText(box, _WRAPPED, note_in(box, row, font))

    def band(self, spot: Spot, row: BandRow, tapes: list[tuple[TapeHead, float, float]]) -> None:
        """A band's heading, with the rider's line passing through it."""
        painter, box = spot.painter, spot.box
        painter.fillRect(box, self.dress.colours[Ink.BAND])
        self._hairline(painter, box)
        for head, left, width in tapes:
            scale = self.tapes.scale(head, left, width)
            if scale is not None:
                self.tapes.line(spot, head, scale)
        self._fold(painter, box, row.folded)
        line = box.adjusted((PAD_LEFT + 15) * self.dress.unit, 0, 0, -1)
        self.dress.small_strong.left(painter, line, row.text, self.dress.colours[Ink.TEXT])

    def focus(self, spot: Spot) -> None:
        """The frame of the cell that has the keyboard."""
        wide = 2 * self.dress.unit
        pen = QPen(self.dress.colours[Ink.FOCUS], wide)
        pen.setJoinStyle(Qt.PenJoinStyle.MiterJoin)
        spot.painter.setBrush(Qt.BrushStyle.NoBrush)
        spot.painter.setPen(pen)
        half = wide / 2
        spot.painter.drawRect(spot.box.adjusted(half, half, -half, -half - 1))

    def _hairline(self, painter: QPainter, box: QRectF) -> None:
        line = QRectF(box.left(), box.bottom() - 1, box.width(), 1)
        painter.fillRect(line, self.dress.colours[Ink.RULE])

    def _word(self, spot: Spot, line: QRectF, word: VerdictWord) -> None:
        dress, unit = self.dress, self.dress.unit
        side, look = 9.5 * unit, word.look
        sign = QRectF(line.left(), line.center().y() - side / 2, side, side)
        colour = dress.colours[look.ink]
        paint_mark(spot.painter, sign, look.mark, colour, dress.colours[spot.ground])
        words = line.adjusted(side + 6 * unit, 0, 0, 0)
        if look.ink is Ink.GOOD:
            dress.small.left(spot.painter, words, word.text, dress.colours[Ink.TEXT])
        else:
            dress.small_strong.left(spot.painter, words, word.text, colour)

    def _fold(self, painter: QPainter, box: QRectF, folded: bool) -> None:
        """A triangle: pointing right where the rows are folded away, down where they show."""
        unit, y = self.dress.unit, box.center().y() - 0.5
        x = box.left() + (PAD_LEFT + 5) * unit
        corners = _FOLDED if folded else _UNFOLDED
        smooth(painter)
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(self.dress.colours[Ink.QUIET])
        painter.drawPolygon(QPolygonF([QPointF(x + a * unit, y + b * unit) for a, b in corners]))

    def _lines(self, box: QRectF, below: Sequence[object]) -> list[QRectF]:
        """One line of text and one for each of ``below``, in the middle of a row."""
        count = 1 + len(below)
        high = self._line
        top = box.center().y() - high * count / 2 - 0.5
        return [QRectF(box.left(), top + high * n, box.width(), high) for n in range(count)]


def note_in(box: QRectF, row: ModelRow, font: QFont) -> str:
    """The note of a row as it fits ``box``: whole where all its lines do, else its brief form."""
    if not row.note_brief:
        return row.note
    needed = QFontMetricsF(font).boundingRect(box, _WRAPPED, row.note)
    return row.note if needed.height() <= box.height() else row.note_brief
