"""Sentences broken to a width: laid out once, as long as the same ones are shown again."""

from __future__ import annotations

from typing import Final

from PySide6.QtCore import Qt
from PySide6.QtGui import QFont, QFontMetricsF, QStaticText

from ui.drawing.unbroken import unbroken

_MOST: Final = 256


class BrokenText:
    """Breaks sentences in one font and remembers them.

    Attributes:
        line: how high one line is, in pixels.
    """

    def __init__(self, font: QFont) -> None:
        self._font = font
        self._metrics = QFontMetricsF(font)
        self.line = self._metrics.height()
        self._known: dict[tuple[str, float], QStaticText] = {}
        self._advances: dict[str, float] = {}

    def advance(self, text: str) -> float:
        """How long a sentence is on one line, in pixels."""
        known = self._advances.get(text)
        if known is None:
            _forget_when_full(self._advances)
            known = self._advances[text] = self._metrics.horizontalAdvance(text)
        return known

    def broken(self, text: str, room: float) -> QStaticText:
        """A sentence over as many lines as it needs where there is ``room`` in pixels."""
        known = self._known.get((text, room))
        if known is None:
            _forget_when_full(self._known)
            known = self._known[text, room] = self._laid(text, room)
        return known

    def _laid(self, text: str, room: float) -> QStaticText:
        laid = QStaticText(unbroken(text))
        laid.setTextFormat(Qt.TextFormat.PlainText)
        laid.setTextWidth(room)
        laid.prepare(font=self._font)
        return laid


def _forget_when_full(known: dict[str, float] | dict[tuple[str, float], QStaticText]) -> None:
    if len(known) >= _MOST:
        known.clear()
