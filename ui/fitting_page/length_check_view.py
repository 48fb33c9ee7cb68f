"""The length check beside the reasons: plain, or to scale where both lengths are known."""

from __future__ import annotations

import math
from typing import Final

from PySide6.QtCore import QRectF, QSize, Qt
from PySide6.QtGui import QFont, QFontMetricsF, QPainter, QPaintEvent
from PySide6.QtWidgets import QSizePolicy, QWidget

from harmonizer.clearance import Clearance
from harmonizer.fit_row import FitRow
from ui.drawing.clearance_shape import ClearanceShape, clearance_shape
from ui.drawing.length_painter import paint_clearance, paint_length_check
from ui.dress import Dress
from ui.fitting_page.advice_lines import CLEARANCE_LOOKS
from ui.theme import Ink
from ui.words import Words

HEIGHT: Final = 116.0
_WORDS: Final = 110.0
_BETWEEN: Final = 10.0
_WRAP: Final = int(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignTop) | int(
    Qt.TextFlag.TextWordWrap
)


class LengthCheckView(QWidget):
    """The drawing with its lines of words.

    Attributes:
        shape: the drawing to scale; None while it is the plain check, the same for every model.
    """

    def __init__(self, dress: Dress, words: Words, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.dress = dress
        self._words = words
        self.shape: ClearanceShape | None = None
        self._clearance: Clearance | None = None
        self._lines: tuple[str, str, str] = ("", "", "")
        self.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Expanding)
        self.show_row(None)

    def show_row(self, row: FitRow | None) -> None:
        """Draw this size to scale where seat height and the vest's own length are known."""
        clearance = row.clearance if row is not None else None
        seat = row.arrays.body.c7_above_seat if row is not None else None
        self._clearance, self.shape = clearance, None
        if row is None or clearance is None or seat is None:
            self._say_plain()
            return
        settings = row.arrays.settings
        own = seat - clearance.cm - settings.saddle_rise
        self.shape = clearance_shape(seat, own, settings.saddle_rise, settings.hand_width)
        self._say_clearance(clearance, settings.hand_width)

    def _say_plain(self) -> None:
        codes = ("length-check-title", "length-check-line", "length-check-scale")
        self._say(tuple(self._words(code) for code in codes))

    def _say_clearance(self, found: Clearance, hand: float) -> None:
        wording = self._words.wording
        values = {
            "c": wording.margin(abs(found.cm)),
            "hands": wording.number(found.hands),
            "hand": wording.number(hand),
        }
        code = "clearance-line" if found.cm >= 0 else "clearance-under"
        line = wording.say("advice", code, **values)
        title, scale = (wording.say("advice", f"clearance-{one}") for one in ("title", "scale"))
        self._say((title, line, scale))

    def _say(self, lines: tuple[str, ...]) -> None:
        title, line, scale = lines
        self._lines = (title, line, scale)
        self.setAccessibleName(title)
        self.setAccessibleDescription(line)
        self.updateGeometry()
        self.update()

    def sizeHint(self) -> QSize:
        """Room for the drawing and the words at its side."""
        type_ = self.dress.type_
        title = QFontMetricsF(type_.small_strong).horizontalAdvance(self._lines[0])
        words = max(float(type_.px(_WORDS)), title + type_.px(2))
        return QSize(type_.px(HEIGHT + _BETWEEN) + math.ceil(words), type_.px(HEIGHT))

    def paintEvent(self, event: QPaintEvent) -> None:
        """Drawing left, words right."""
        del event
        painter = QPainter(self)
        type_ = self.dress.type_
        side = float(min(self.height(), type_.px(HEIGHT)))
        self._draw(painter, QRectF(0, 0, side, self.height()))
        left = side + type_.px(_BETWEEN)
        words = QRectF(left, 0, self.width() - left, self.height())
        self._write(painter, words)
        painter.end()

    def _draw(self, painter: QPainter, box: QRectF) -> None:
        colours = self.dress.colours
        if self.shape is None or self._clearance is None:
            paint_length_check(painter, box, colours)
        else:
            ink = CLEARANCE_LOOKS[self._clearance.band].ink
            paint_clearance(painter, box, colours, self.shape, ink)

    def _write(self, painter: QPainter, words: QRectF) -> None:
        type_, colours = self.dress.type_, self.dress.colours
        hands: tuple[tuple[QFont, Ink], ...] = (
            (type_.small_strong, Ink.TEXT),
            (type_.small, Ink.TEXT),
            (type_.small, Ink.QUIET),
        )
        top = float(type_.px(4))
        for text, (font, ink) in zip(self._lines, hands, strict=True):
            painter.setFont(font)
            painter.setPen(colours[ink])
            box = words.adjusted(0, top, 0, 0)
            painter.drawText(box, _WRAP, text)
            top += int(QFontMetricsF(font).boundingRect(box, _WRAP, text).height())
            top += type_.px(4)
