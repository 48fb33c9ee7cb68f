"""Words on the fitting sheet: lines, lines that break, sentences with the mark of their state."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from PySide6.QtCore import QRectF, Qt
from PySide6.QtGui import QFont, QFontMetricsF, QPainter

from ui.drawing.marks import paint_mark
from ui.drawing.unbroken import unbroken
from ui.dress import Dress
from ui.fitting_page.chosen import ReasonLine
from ui.theme import Ink

_WRAP: Final = int(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignTop) | int(
    Qt.TextFlag.TextWordWrap
)
LEFT: Final = Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter
RIGHT: Final = Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter
_FAR: Final = 1000.0
_INDENT: Final = 13.0
_SIGN: Final = 7.5
_BETWEEN: Final = 1.5


class PaperText:
    """Writes on one painter in one dress."""

    def __init__(self, painter: QPainter, dress: Dress) -> None:
        self.painter = painter
        self.dress = dress

    def write(
        self,
        box: QRectF,
        text: str,
        font: QFont,
        ink: Ink = Ink.TEXT,
        side: Qt.AlignmentFlag = LEFT,
    ) -> None:
        """One line in the middle of the height of ``box``."""
        self.painter.setFont(font)
        self.painter.setPen(self.dress.colours[ink])
        self.painter.drawText(box, side, text)

    def broken(self, box: QRectF, text: str, font: QFont, ink: Ink = Ink.TEXT) -> float:
        """A text that breaks to the width of ``box``; returns where it ends."""
        room = QRectF(box.left(), box.top(), box.width(), _FAR)
        self.painter.setFont(font)
        self.painter.setPen(self.dress.colours[ink])
        self.painter.drawText(room, _WRAP, unbroken(text))
        return box.top() + self.height(text, box.width(), font)

    def lines(self, box: QRectF, lines: Sequence[str], ink: Ink = Ink.TEXT) -> float:
        """Small lines one below the other; returns where they end."""
        top = box.top()
        for line in lines:
            row = QRectF(box.left(), top, box.width(), _FAR)
            top = self.broken(row, line, self.dress.type_.small, ink) + self._gap
        return top

    def sentences(self, box: QRectF, lines: Sequence[ReasonLine]) -> float:
        """Sentences with their marks one below the other; returns where they end."""
        unit, small = self.dress.unit, self.dress.type_.small
        line_high = QFontMetricsF(small).height()
        top, side = box.top(), _SIGN * unit
        for line in lines:
            colour = self.dress.colours[line.look.ink]
            sign = QRectF(box.left(), top + (line_high - side) / 2, side, side)
            ground = self.dress.colours[Ink.GROUND]
            paint_mark(self.painter, sign, line.look.mark, colour, ground)
            room = box.adjusted(_INDENT * unit, 0, 0, 0)
            room.moveTop(top)
            top = self.broken(room, line.text, small) + self._gap
        return top

    def in_columns(self, box: QRectF, lines: Sequence[ReasonLine], gap: float) -> float:
        """Sentences in two columns of one height, as near as may be; returns where they end."""
        wide = (box.width() - gap) / 2
        split = self._split(lines, wide - _INDENT * self.dress.unit)
        left = QRectF(box.left(), box.top(), wide, box.height())
        right = left.translated(wide + gap, 0)
        return max(self.sentences(left, lines[:split]), self.sentences(right, lines[split:]))

    def _split(self, lines: Sequence[ReasonLine], room: float) -> int:
        """How many of the sentences stand in the left column: half of their height, or more."""
        small = self.dress.type_.small
        highs = [self.height(line.text, room, small) + self._gap for line in lines]
        for count in range(len(lines) + 1):
            if sum(highs[:count]) >= sum(highs[count:]):
                return count
        return len(lines)

    def height(self, text: str, width: float, font: QFont) -> float:
        """How high a text is that breaks to ``width``."""
        room = QRectF(0.0, 0.0, width, _FAR)
        return QFontMetricsF(font).boundingRect(room, _WRAP, unbroken(text)).height()

    @property
    def _gap(self) -> float:
        return _BETWEEN * self.dress.unit
