"""The readings folded to a strip: each with its name, and a press that unfolds them."""

from __future__ import annotations

from PySide6.QtCore import QRectF, QSize, Qt, Signal
from PySide6.QtGui import QMouseEvent, QPainter, QPaintEvent
from PySide6.QtWidgets import QSizePolicy, QWidget

from ui.dress import Dress
from ui.fitting_page.draft import ASKED, Draft
from ui.theme import Ink
from ui.words import Words

_CENTRE = Qt.AlignmentFlag.AlignCenter


class FoldedReadings(QWidget):
    """The values of one draft, one below the other.

    Signals:
        pressed(): show the readings whole again.
    """

    pressed = Signal()

    def __init__(self, dress: Dress, words: Words, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.dress = dress
        self._words = words
        self._rows: list[tuple[str, str]] = []
        self.setToolTip(words("action-fold-readings"))
        self.setCursor(Qt.CursorShape.PointingHandCursor)
        self.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Expanding)

    def sizeHint(self) -> QSize:
        """As wide as a name of a reading."""
        return QSize(self.dress.type_.px(78), self.dress.type_.px(300))

    def show_draft(self, draft: Draft) -> None:
        """Show the readings of ``draft``."""
        self._rows = []
        for measure in ASKED:
            reading = draft.reading(measure)
            if reading is not None:
                name = self._words(f"field-{measure.value}")
                self._rows.append((name, self._words.cm(float(reading.value))))
        said = "\n".join(f"{name} {value}" for name, value in self._rows)
        self.setAccessibleName(said)
        self.update()

    def mousePressEvent(self, event: QMouseEvent) -> None:
        """A press unfolds."""
        del event
        self.pressed.emit()

    def paintEvent(self, event: QPaintEvent) -> None:
        """Name and value of each reading."""
        del event
        type_, colours = self.dress.type_, self.dress.colours
        painter = QPainter(self)
        painter.fillRect(self.rect(), colours[Ink.PANEL])
        top = float(type_.px(14))
        for name, value in self._rows:
            for text, font, ink in (
                (name, type_.small, Ink.QUIET),
                (value, type_.strong, Ink.TEXT),
            ):
                painter.setFont(font)
                painter.setPen(colours[ink])
                box = QRectF(0, top, self.width(), type_.line)
                painter.drawText(box, _CENTRE, text)
                top += type_.line
            top += type_.px(10)
        painter.end()
