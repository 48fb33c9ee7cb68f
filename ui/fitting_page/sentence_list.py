"""Sentences one below the other, each with the mark of its state; never half a line of one."""

from __future__ import annotations

import math
from collections.abc import Sequence
from typing import Final

from PySide6.QtCore import QRect, QRectF, QSize
from PySide6.QtGui import QPainter, QPaintEvent, QResizeEvent, QStaticText
from PySide6.QtWidgets import QSizePolicy, QWidget

from ui.drawing.broken_text import BrokenText
from ui.drawing.marks import paint_mark
from ui.dress import Dress
from ui.fitting_page.chosen import ReasonLine
from ui.fitting_page.two_columns import Split, shared
from ui.theme import Ink

_LEFT_LINES: Final = 4
_TWO_COLUMNS: Final = 620.0
_SLACK: Final = 1.03
_INDENT: Final = 17.0
_GAP: Final = 24.0
_CUT: Final = 1.5
"""A line may lose so many pixels of its air and counts as whole."""


Written = tuple[QRectF, QStaticText, ReasonLine]
"""Where a sentence stands, how it is broken, and what it says with which mark."""


class SentenceList(QWidget):
    """Sentences one below the other, each with the mark of its state."""

    def __init__(self, dress: Dress, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.dress = dress
        self._lines: tuple[ReasonLine, ...] = ()
        self._written: list[Written] = []
        self._writing = BrokenText(dress.type_.plain)
        self.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Fixed)

    def show_lines(self, lines: tuple[ReasonLine, ...]) -> None:
        """Show other sentences."""
        if lines == self._lines:
            return
        self._lines = lines
        self.setAccessibleDescription("\n".join(line.text for line in lines))
        self._lay()

    def sizeHint(self) -> QSize:
        """As high as the sentences are."""
        return QSize(self.dress.type_.px(240), self.height())

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Break the sentences anew."""
        super().resizeEvent(event)
        self._lay()

    def _lay(self) -> None:
        before = self._written
        boxes, texts = self._broken(float(self.width()))
        if self.minimumHeight() != (high := _ends(boxes)):
            self.setFixedHeight(high)
        self._written = list(zip(boxes, texts, self._lines, strict=True))
        self._update(before, self._written)

    def _update(self, before: Sequence[Written], now: Sequence[Written]) -> None:
        """Have painted anew what stands otherwise: while a line is moved, one sentence of many."""
        if [box for box, *_ in before] != [box for box, *_ in now]:
            self.update()
            return
        for old, new in zip(before, now, strict=True):
            if old != new:
                self.update(self._around(new[0]))

    def _around(self, box: QRectF) -> QRect:
        """A sentence with its mark, in whole pixels."""
        return box.adjusted(-_INDENT * self.dress.unit, -1.0, _INDENT, 1.0).toAlignedRect()

    def height_at(self, width: int) -> int:
        """How high the sentences are, in pixels, where there is room of ``width``."""
        return self.height() if width == self.width() else _ends(self._broken(float(width))[0])

    def _broken(self, width: float) -> tuple[list[QRectF], list[QStaticText]]:
        """One column, or two where there is room: the four tapes left, the rest right."""
        unit, lines = self.dress.unit, self._lines
        gap = _GAP * unit
        if len(lines) <= _LEFT_LINES or width <= _TWO_COLUMNS * unit:
            return self._column(lines, 0.0, width)
        split, left = self._shared(width - gap)
        boxes, texts = self._column(lines[:split], 0.0, left)
        right = self._column(lines[split:], left + gap, width - left - gap)
        return [*boxes, *right[0]], [*texts, *right[1]]

    def _shared(self, room: float) -> Split:
        """How many sentences stand left, and how wide, so that few of them have to break."""
        # Words never fill a line to its end: each sentence is taken a little longer than it is.
        advances = [self._writing.advance(line.text) * _SLACK for line in self._lines]
        return shared(advances, room, _LEFT_LINES, (_INDENT + 2) * self.dress.unit)

    def _column(
        self, lines: Sequence[ReasonLine], left: float, wide: float
    ) -> tuple[list[QRectF], list[QStaticText]]:
        """Sentences one below the other, broken to ``wide`` pixels, and their boxes."""
        unit = self.dress.unit
        room = max(wide - _INDENT * unit, 40.0)
        boxes: list[QRectF] = []
        texts: list[QStaticText] = []
        top = 0.0
        for line in lines:
            text = self._writing.broken(line.text, room)
            texts.append(text)
            high = text.size().height()
            boxes.append(QRectF(left + _INDENT * unit, top, room, high))
            top += high + 2.5 * unit
        return boxes, texts

    def paintEvent(self, event: QPaintEvent) -> None:
        """Marks and sentences; a line that is cut by an edge waits until it is scrolled whole."""
        painter = QPainter(self)
        painter.setFont(self.dress.type_.plain)
        painter.setPen(self.dress.colours[Ink.TEXT])
        for box, text, line in self._written:
            first, last = self.whole_lines(box)
            if first >= last or not event.region().intersects(self._around(box)):
                continue
            high = box.height() / self._count(box)
            whole = QRectF(box.left(), box.top() + first * high, box.width(), (last - first) * high)
            painter.setClipRect(whole.adjusted(-_INDENT * self.dress.unit, 0, _INDENT, 0))
            if first == 0:
                self._paint_mark(painter, line, box)
            painter.drawStaticText(box.topLeft(), text)
        painter.end()

    def _paint_mark(self, painter: QPainter, line: ReasonLine, box: QRectF) -> None:
        colours, unit = self.dress.colours, self.dress.unit
        side = 9.5 * unit
        middle = box.top() + self.dress.type_.line / 2
        sign = QRectF(box.left() - (_INDENT - 1) * unit, middle - side / 2, side, side)
        paint_mark(painter, sign, line.look.mark, colours[line.look.ink], colours[Ink.GROUND])
        painter.setPen(colours[Ink.TEXT])

    def _count(self, box: QRectF) -> int:
        """Over how many lines a sentence goes."""
        return max(1, round(box.height() / self._writing.line))

    def whole_lines(self, box: QRectF) -> tuple[int, int]:
        """The first line of a sentence that is seen whole, and the one after the last."""
        count = self._count(box)
        high = box.height() / count
        top = float(-self.y())
        holder = self.parentWidget()
        bottom = top + (holder.height() if holder is not None else self.height())
        first = math.ceil((top - _CUT - box.top()) / high)
        last = math.floor((bottom + _CUT - box.top()) / high)
        return max(first, 0), min(last, count)

    @property
    def boxes(self) -> tuple[QRectF, ...]:
        """Where the sentences stand."""
        return tuple(box for box, *_ in self._written)


def _ends(boxes: Sequence[QRectF]) -> int:
    """Where the lowest of the sentences ends, in whole pixels."""
    return max(1, int(max((box.bottom() for box in boxes), default=1.0)) + 1)
