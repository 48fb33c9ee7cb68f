"""The line over a file: its name, how it stands, who answers, and what closes it."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QRectF, QSize, Qt, Signal
from PySide6.QtGui import QAction, QPainter, QPaintEvent, QPalette, QResizeEvent
from PySide6.QtWidgets import (
    QBoxLayout,
    QHBoxLayout,
    QLabel,
    QMenu,
    QSizePolicy,
    QVBoxLayout,
    QWidget,
)

from ui.controls.buttons import FlatButton
from ui.controls.field import FramedLine
from ui.drawing.marks import paint_mark
from ui.dress import Dress
from ui.file_states import LOOK_OF, open_count
from ui.questions_page.case import Case
from ui.questions_page.chart_choice import ChartChoice, Standing
from ui.theme import Ink, Look
from ui.words import Words

LETTERS = ("letter-en", "letter-de", "letter-page-en", "letter-page-de")


class StateMark(QWidget):
    """The drawn sign of a state."""

    def __init__(self, dress: Dress, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._dress = dress
        self._look: Look | None = None
        self.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Fixed)

    def sizeHint(self) -> QSize:
        """As large as a letter."""
        side = self._dress.type_.px(11)
        return QSize(side, side)

    def show_look(self, look: Look) -> None:
        """Show the sign of another state."""
        self._look = look
        self.update()

    def paintEvent(self, event: QPaintEvent) -> None:
        """The sign."""
        del event
        if self._look is None:
            return
        painter = QPainter(self)
        colours = self._dress.colours
        box = QRectF(self.rect())
        paint_mark(painter, box, self._look.mark, colours[self._look.ink], colours[Ink.WINDOW])
        painter.end()


class Head(QWidget):
    """Name and state left, what closes the file right.

    Signals:
        wanted(str): "back", or the key of the action that was pressed.
        signed(str): this name stands under the answers from now on.
    """

    wanted = Signal(str)
    signed = Signal(str)

    def __init__(self, words: Words, dress: Dress, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._say = words.wording.say
        self.back = FlatButton(self._say("questions", "back"), self)
        self.title = QLabel(self)
        self.title.setFont(dress.type_.title)
        self.mark = StateMark(dress, self)
        self.state = QLabel(self)
        self.charts = ChartChoice(words, dress, self)
        self.by = FramedLine(self)
        self.letter = FlatButton(self._say("questions", "letter"), self)
        self.aside = FlatButton("", self)
        self.approve = FlatButton("", self, urgent=True)
        self._lay(dress)
        for button, key in (
            (self.back, "back"),
            (self.aside, "keep-aside"),
            (self.approve, "approve"),
        ):
            button.setProperty("key", key)
            button.clicked.connect(self._pressed)
        self._letters = QMenu(self)
        for key in LETTERS:
            action = self._letters.addAction(words(f"action-{key}"))
            action.setData(key)
        self._letters.triggered.connect(self._letter_chosen)
        self.letter.clicked.connect(self._open_letters)
        self.by.edit.editingFinished.connect(self._signed)

    def _lay(self, dress: Dress) -> None:
        px = dress.type_.px
        self.state.setFont(dress.type_.small)
        label = QLabel(self._say("questions", "by"), self)
        label.setFont(dress.type_.small)
        label.setForegroundRole(QPalette.ColorRole.PlaceholderText)
        label.setBuddy(self.by.edit)
        self.by.setFixedWidth(px(116))
        self.by.edit.setAccessibleName(self._say("questions", "by"))
        below = QHBoxLayout()
        below.setSpacing(px(6))
        below.addWidget(self.mark, 0, Qt.AlignmentFlag.AlignVCenter)
        below.addWidget(self.state, 1)
        names = QVBoxLayout()
        names.setSpacing(px(1))
        names.addWidget(self.title)
        names.addLayout(below)
        self._part(label, names, px)

    def _part(self, label: QLabel, names: QVBoxLayout, px: Callable[[float], int]) -> None:
        """Two sides, beside each other where there is room."""
        left, right = QHBoxLayout(), QHBoxLayout()
        for side in (left, right):
            side.setSpacing(px(8))
        left.addWidget(self.back)
        left.addSpacing(px(4))
        left.addLayout(names, 1)
        left.addWidget(self.charts)
        right.addStretch(1)
        right.addWidget(label)
        right.addWidget(self.by)
        right.addSpacing(px(6))
        for button in (self.letter, self.aside, self.approve):
            right.addWidget(button)
        self._row = QBoxLayout(QBoxLayout.Direction.LeftToRight, self)
        self._row.setContentsMargins(px(12), px(7), px(12), px(7))
        self._row.setSpacing(px(8))
        self._row.addLayout(left, 1)
        self._row.addLayout(right)
        self._sides = (left, right)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Two lines where one has no room: nothing is cut."""
        super().resizeEvent(event)
        self._settle()

    def _settle(self) -> None:
        wide = self._row.contentsMargins().left() * 2 + self._row.spacing()
        wide += sum(side.sizeHint().width() for side in self._sides)
        across = QBoxLayout.Direction.LeftToRight
        self._row.setDirection(across if wide <= self.width() else QBoxLayout.Direction.TopToBottom)

    def show_case(self, case: Case, standing: Standing, name: str, by: str) -> None:
        """Show the file, and how it or the chosen one of its charts stands."""
        self.title.setText(name)
        self.mark.show_look(LOOK_OF[standing.state])
        self.state.setText(standing.says)
        self.by.edit.setText(by)
        which = "-chart" if standing.chart else ""
        aside = "reopen" if standing.closed else "keep-aside"
        self.aside.setText(self._say("questions", f"{aside}{which}"))
        self.aside.setProperty("key", aside)
        approve = f"approve{which}-open" if standing.asked else f"approve{which}"
        self.approve.setText(self._say("questions", approve))
        self.approve.setEnabled(standing.has_charts and not standing.closed)
        self.approve.setVisible(not standing.closed)
        self.approve.urgent = not standing.asked and standing.has_charts
        self.letter.setEnabled(open_count(case.state) > 0)
        for button in (self.aside, self.approve):
            button.updateGeometry()
        self._settle()

    def _pressed(self) -> None:
        self.wanted.emit(str(self.sender().property("key")))

    def _open_letters(self) -> None:
        self._letters.popup(self.letter.mapToGlobal(self.letter.rect().bottomLeft()))

    def _letter_chosen(self, action: QAction) -> None:
        self.wanted.emit(str(action.data()))

    def _signed(self) -> None:
        self.signed.emit(self.by.edit.text())
