"""One choice out of a few, side by side, all of them in sight."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from PySide6.QtCore import QRectF, QSize, Qt, Signal
from PySide6.QtGui import QKeyEvent, QPainter, QPaintEvent, QPalette
from PySide6.QtWidgets import QAbstractButton, QButtonGroup, QGridLayout, QSizePolicy, QWidget

from ui.controls.strokes import Box, paint_box, px, unit_of

_STEPS = {Qt.Key.Key_Left: -1, Qt.Key.Key_Up: -1, Qt.Key.Key_Right: 1, Qt.Key.Key_Down: 1}


@dataclass(frozen=True, slots=True)
class Choice:
    """One of the choices: its key, its word, and the sentence behind the word."""

    key: str
    text: str
    sentence: str = ""


class Segment(QAbstractButton):
    """One choice as a button that stays pressed."""

    def __init__(self, choice: Choice, parent: QWidget) -> None:
        super().__init__(parent)
        self.key = choice.key
        self.setText(choice.text)
        self.setCheckable(True)
        self.setAutoExclusive(True)
        self.setToolTip(choice.sentence)
        self.setAccessibleName(choice.sentence or choice.text)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)

    def sizeHint(self) -> QSize:
        """Room for the word and a little air."""
        wide = self.fontMetrics().horizontalAdvance(self.text()) + px(self, 14)
        return QSize(wide, px(self, 25))

    def minimumSizeHint(self) -> QSize:
        """The same: a word is never cut."""
        return self.sizeHint()

    def paintEvent(self, event: QPaintEvent) -> None:
        """The pressed one is filled; the one with the keyboard has a frame."""
        del event
        palette, unit = self.palette(), unit_of(self)
        painter = QPainter(self)
        pressed = self.isChecked()
        fill = palette.color(QPalette.ColorRole.Highlight if pressed else QPalette.ColorRole.Base)
        frame = palette.color(QPalette.ColorRole.Highlight if pressed else QPalette.ColorRole.Mid)
        wide = 1.0
        if self.hasFocus():
            frame, wide = palette.color(QPalette.ColorRole.Link), 2.0 * unit
        rect = QRectF(self.rect())
        paint_box(painter, rect, Box(fill, frame, wide, 4 * unit))
        role = QPalette.ColorRole.HighlightedText if pressed else QPalette.ColorRole.Text
        painter.setPen(palette.color(role))
        painter.drawText(self.rect(), Qt.AlignmentFlag.AlignCenter, self.text())
        painter.end()


class Segments(QWidget):
    """A row, or a few rows, of choices of which one is pressed.

    Signals:
        picked(str): the key of the choice that a person pressed.
    """

    picked = Signal(str)

    def __init__(
        self, choices: Sequence[Choice], per_row: int = 0, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self._group = QButtonGroup(self)
        self._segments: list[Segment] = []
        grid = QGridLayout(self)
        grid.setContentsMargins(0, 0, 0, 0)
        grid.setSpacing(px(self, 3))
        across = per_row or len(choices)
        for place, choice in enumerate(choices):
            segment = Segment(choice, self)
            self._segments.append(segment)
            self._group.addButton(segment)
            grid.addWidget(segment, place // across, place % across)
            segment.clicked.connect(self._clicked)
            if place:
                segment.setFocusPolicy(Qt.FocusPolicy.ClickFocus)
        self.setFocusProxy(self._segments[0])

    @property
    def key(self) -> str:
        """The key of the pressed choice, "" where none is."""
        return next((one.key for one in self._segments if one.isChecked()), "")

    def retitle(self, key: str, text: str) -> None:
        """Change the word of one choice."""
        for segment in self._segments:
            if segment.key == key:
                segment.setText(text)
                segment.setAccessibleName(text)
                segment.updateGeometry()

    def press(self, key: str) -> None:
        """Press a choice without telling anybody; a key that is none of them presses none."""
        self._group.setExclusive(False)
        for segment in self._segments:
            segment.setChecked(segment.key == key)
            segment.setFocusPolicy(
                Qt.FocusPolicy.StrongFocus if segment.key == key else Qt.FocusPolicy.ClickFocus
            )
            if segment.key == key:
                self.setFocusProxy(segment)
        self._group.setExclusive(True)
        if not self.key:
            self._segments[0].setFocusPolicy(Qt.FocusPolicy.StrongFocus)
            self.setFocusProxy(self._segments[0])

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Arrows move to the neighbour and press it."""
        step = _STEPS.get(Qt.Key(event.key()))
        if step is None:
            super().keyPressEvent(event)
            return
        keys = [segment.key for segment in self._segments]
        place = keys.index(self.key) if self.key in keys else 0
        key = keys[(place + step) % len(keys)]
        self.press(key)
        self._segments[keys.index(key)].setFocus(Qt.FocusReason.OtherFocusReason)
        self.picked.emit(key)

    def _clicked(self) -> None:
        self.press(self.key)
        self.picked.emit(self.key)
