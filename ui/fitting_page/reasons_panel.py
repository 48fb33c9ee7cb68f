"""The reasons for the chosen row below the table, and the plain length check beside them."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import Final

from PySide6.QtCore import QEvent, QObject, QRectF, QSize, Qt, QTimer, Signal
from PySide6.QtGui import QFontMetricsF, QPainter, QPaintEvent, QResizeEvent, QStaticText
from PySide6.QtWidgets import (
    QFrame,
    QHBoxLayout,
    QLabel,
    QScrollArea,
    QSizePolicy,
    QVBoxLayout,
    QWidget,
)

from ui.controls.buttons import FlatButton
from ui.drawing.marks import paint_mark
from ui.drawing.unbroken import unbroken
from ui.dress import Dress
from ui.fitting_page.chosen import ChosenReasons, ReasonLine
from ui.fitting_page.length_check_view import LengthCheckView
from ui.fitting_page.two_columns import Split, shared
from ui.theme import Ink
from ui.words import Words

SOON_MS: Final = 80
"""After the frame that shows the verdicts, and before anybody has read them."""

_HEIGHT: Final = 156.0
_LEAST: Final = 84.0
_SHARE: Final = 0.3
_NARROW: Final = 620.0
_LEFT_LINES: Final = 4
_TWO_COLUMNS: Final = 620.0
_SLACK: Final = 1.03
_INDENT: Final = 17.0
_GAP: Final = 24.0
_WRAP: Final = int(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignTop) | int(
    Qt.TextFlag.TextWordWrap
)


class SentenceList(QWidget):
    """Sentences one below the other, each with the mark of its state."""

    def __init__(self, dress: Dress, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.dress = dress
        self._lines: tuple[ReasonLine, ...] = ()
        self._boxes: list[QRectF] = []
        self._texts: list[QStaticText] = []
        self.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Fixed)

    def show_lines(self, lines: tuple[ReasonLine, ...]) -> None:
        """Show other sentences."""
        self._lines = lines
        self.setAccessibleDescription("\n".join(line.text for line in lines))
        self._lay()

    def sizeHint(self) -> QSize:
        """As high as the sentences are."""
        high = self._boxes[-1].bottom() if self._boxes else 0.0
        return QSize(self.dress.type_.px(240), int(high) + 1)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Break the sentences anew."""
        super().resizeEvent(event)
        self._lay()

    def _lay(self) -> None:
        """One column, or two where there is room: the four tapes left, the rest right."""
        unit = self.dress.unit
        gap = _GAP * unit
        lines = self._lines
        two = len(lines) > _LEFT_LINES and self.width() > _TWO_COLUMNS * unit
        split, left = self._shared(gap) if two else (len(lines), float(self.width()))
        self._texts = []
        self._boxes = self._column(lines[:split], 0.0, left)
        if two:
            right = self.width() - left - gap
            self._boxes += self._column(lines[split:], left + gap, right)
        high = max((box.bottom() for box in self._boxes), default=1.0)
        self.setFixedHeight(max(1, int(high) + 1))
        self.update()

    def _shared(self, gap: float) -> Split:
        """How many sentences stand left, and how wide, so that few of them have to break."""
        measure = QFontMetricsF(self.dress.type_.plain)
        # Words never fill a line to its end: each sentence is taken a little longer than it is.
        advances = [measure.horizontalAdvance(line.text) * _SLACK for line in self._lines]
        indent = (_INDENT + 2) * self.dress.unit
        return shared(advances, self.width() - gap, _LEFT_LINES, indent)

    def _column(self, lines: Sequence[ReasonLine], left: float, wide: float) -> list[QRectF]:
        """The boxes of sentences one below the other, broken to ``wide`` pixels."""
        unit = self.dress.unit
        room = max(wide - _INDENT * unit, 40.0)
        boxes: list[QRectF] = []
        top = 0.0
        for line in lines:
            text = QStaticText(unbroken(line.text))
            text.setTextFormat(Qt.TextFormat.PlainText)
            text.setTextWidth(room)
            text.prepare(font=self.dress.type_.plain)
            self._texts.append(text)
            high = text.size().height()
            boxes.append(QRectF(left + _INDENT * unit, top, room, high))
            top += high + 2.5 * unit
        return boxes

    def paintEvent(self, event: QPaintEvent) -> None:
        """Marks and sentences."""
        del event
        painter = QPainter(self)
        colours, unit = self.dress.colours, self.dress.unit
        painter.setFont(self.dress.type_.plain)
        side = 9.5 * unit
        for line, box, text in zip(self._lines, self._boxes, self._texts, strict=True):
            middle = box.top() + self.dress.type_.line / 2
            sign = QRectF(box.left() - (_INDENT - 1) * unit, middle - side / 2, side, side)
            ink = colours[line.look.ink]
            paint_mark(painter, sign, line.look.mark, ink, colours[Ink.GROUND])
            painter.setPen(colours[Ink.TEXT])
            painter.drawStaticText(box.topLeft(), text)
        painter.end()


class ReasonsPanel(QFrame):
    """Heading, sentences and source of the chosen row.

    Signals:
        wanted_place(str, str): show this place of this file.
    """

    wanted_place = Signal(str, str)

    def __init__(self, dress: Dress, words: Words, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.dress = dress
        self._words = words
        self._shown: ChosenReasons | None = None
        self._more: Callable[[], ChosenReasons] | None = None
        self._soon = QTimer(self)
        self._soon.setSingleShot(True)
        self._soon.setInterval(SOON_MS)
        self._soon.timeout.connect(self.say_more)
        self.setFixedHeight(dress.type_.px(_HEIGHT))
        # With a ground of its own, nothing that lies below it is painted when a sentence changes.
        self.setAutoFillBackground(True)
        self.heading = QLabel(self)
        self.heading.setFont(dress.type_.title)
        self.source = FlatButton("", self, plain=True)
        self.source.setFont(dress.type_.small)
        self.source.clicked.connect(self.ask_place)
        self.sentences = SentenceList(dress, self)
        self.check = LengthCheckView(dress, words, self)
        self._build()
        self.show_reasons(None)

    def _build(self) -> None:
        px = self.dress.type_.px
        scroll = QScrollArea(self)
        scroll.setFrameShape(QFrame.Shape.NoFrame)
        scroll.setWidgetResizable(True)
        scroll.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        scroll.setWidget(self.sentences)
        # Arrows and page keys scroll what does not fit; the hairline above says where the keys go.
        scroll.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        scroll.installEventFilter(self)
        self.room = scroll
        top = QHBoxLayout()
        top.setSpacing(px(10))
        top.addWidget(self.heading)
        top.addStretch(1)
        top.addWidget(self.source)
        left = QVBoxLayout()
        left.setSpacing(px(4))
        left.addLayout(top)
        left.addWidget(scroll, 1)
        row = QHBoxLayout(self)
        row.setContentsMargins(px(10), px(7), px(12), px(4))
        row.setSpacing(px(16))
        row.addLayout(left, 1)
        row.addWidget(self.check)

    def paintEvent(self, event: QPaintEvent) -> None:
        """A hairline that parts the reasons from the table."""
        super().paintEvent(event)
        painter = QPainter(self)
        focus = self.room.hasFocus()
        high = self.dress.type_.px(2) if focus else 1
        ink = Ink.FOCUS if focus else Ink.EDGE
        painter.fillRect(0, 0, self.width(), high, self.dress.colours[ink])
        painter.end()

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Show that the keys scroll the sentences."""
        if watched is self.room and event.type() in (QEvent.Type.FocusIn, QEvent.Type.FocusOut):
            self.update()
        return super().eventFilter(watched, event)

    def take_room(self, px: Callable[[float], int], width: int, height: int) -> None:
        """As high as usual, but never more than a share of a low page; the drawing may go."""
        self.setFixedHeight(max(px(_LEAST), min(px(_HEIGHT), round(height * _SHARE))))
        self.check.setVisible(width > px(_NARROW) and height * _SHARE > px(_LEAST))

    def show_reasons(
        self, reasons: ChosenReasons | None, more: Callable[[], ChosenReasons] | None = None
    ) -> None:
        """Speak of another row, or of none; ``more`` follows once the verdicts are painted."""
        self._shown = reasons
        self._more = more
        if more is not None:
            self._soon.start()
        self._head(reasons.heading if reasons else self._words("reasons-none"))
        self.room.verticalScrollBar().setValue(0)
        self.source.setVisible(reasons is not None)
        if reasons is not None:
            self.source.setText(reasons.source)
            self.source.updateGeometry()
        self.sentences.show_lines(reasons.lines if reasons else ())

    def say_more(self) -> None:
        """Say now what was to follow."""
        self._soon.stop()
        more, self._more = self._more, None
        if more is not None:
            self._shown = more()
            self._head(self._shown.heading)
            self.sentences.show_lines(self._shown.lines)

    def _head(self, text: str) -> None:
        self.heading.setText(text)
        self.room.setAccessibleName(text)

    def ask_place(self) -> None:
        """Ask for the place in the supplier's file."""
        if self._shown is not None:
            self.wanted_place.emit(self._shown.file, self._shown.place)
