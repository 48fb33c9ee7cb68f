"""The reasons for the chosen row below the table, and the plain length check beside them."""

from __future__ import annotations

from collections.abc import Callable
from typing import Final

from PySide6.QtCore import QEvent, QObject, Qt, QTimer, Signal
from PySide6.QtGui import QPainter, QPaintEvent
from PySide6.QtWidgets import QFrame, QHBoxLayout, QLabel, QScrollArea, QVBoxLayout, QWidget

from ui.controls.buttons import FlatButton
from ui.dress import Dress
from ui.fitting_page.chosen import ChosenReasons
from ui.fitting_page.length_check_view import LengthCheckView
from ui.fitting_page.sentence_list import SentenceList
from ui.theme import Ink
from ui.words import Words

SOON_MS: Final = 80
"""After the frame that shows the verdicts, and before anybody has read them."""

_MARGINS: Final = (10.0, 7.0, 12.0, 4.0)
_BELOW_HEADING: Final = 4.0


class ReasonsPanel(QFrame):
    """Heading, sentences and source of the chosen row.

    Signals:
        wanted_place(str, str): show this place of this file.
        said(): everything there is to say of the row stands there now.
    """

    wanted_place = Signal(str, str)
    said = Signal()

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
        scroll.viewport().installEventFilter(self)
        scroll.verticalScrollBar().valueChanged.connect(self.sentences.update)
        self.room = scroll
        top = QHBoxLayout()
        top.setSpacing(px(10))
        top.addWidget(self.heading)
        top.addStretch(1)
        top.addWidget(self.source)
        left = QVBoxLayout()
        left.setSpacing(px(_BELOW_HEADING))
        left.addLayout(top)
        left.addWidget(scroll, 1)
        row = QHBoxLayout(self)
        row.setContentsMargins(*(px(side) for side in _MARGINS))
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
        """Show that the keys scroll the sentences, and which of their lines are whole now."""
        if watched is self.room.viewport() and event.type() is QEvent.Type.Resize:
            self.sentences.update()
        if watched is self.room and event.type() in (QEvent.Type.FocusIn, QEvent.Type.FocusOut):
            self.update()
        return super().eventFilter(watched, event)

    @property
    def wanted_height(self) -> int:
        """How high the panel has to be, in pixels, for every sentence to be seen unscrolled."""
        px = self.dress.type_.px
        top = max(self.heading.sizeHint().height(), self.source.sizeHint().height())
        around = px(_MARGINS[1]) + px(_BELOW_HEADING) + px(_MARGINS[3])
        bar = self.room.verticalScrollBar()
        beside = bar.width() if bar.isVisibleTo(self.room) else 0
        wide = self.room.viewport().width() + beside
        return around + top + self.sentences.height_at(wide)

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
        if reasons is not None and reasons.source != self.source.text():
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
            self.said.emit()

    def _head(self, text: str) -> None:
        if text != self.heading.text():
            self.heading.setText(text)
        self.room.setAccessibleName(text)

    def ask_place(self) -> None:
        """Ask for the place in the supplier's file."""
        if self._shown is not None:
            self.wanted_place.emit(self._shown.file, self._shown.place)
