"""The questions of a file, the acts under the chosen one, and a line to type a cell anew."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from PySide6.QtCore import QEvent, QModelIndex, QObject, QSignalBlocker, Qt, Signal
from PySide6.QtGui import QKeyEvent, QPalette
from PySide6.QtWidgets import (
    QAbstractItemView,
    QFrame,
    QLabel,
    QListView,
    QScrollArea,
    QVBoxLayout,
    QWidget,
)

from ui.controls.field import FramedLine
from ui.dress import Dress
from ui.questions_page.act_button import ActButton
from ui.questions_page.question_model import QuestionDelegate, QuestionModel
from ui.questions_page.question_rows import QuestionRow, Weight
from ui.words import Words

_MOST_KEYS: Final = 9
_TAKE_BACK: Final = (Qt.Key.Key_Delete, Qt.Key.Key_Backspace)


class QuestionPanel(QWidget):
    """Up and Down go through the questions, 1 to 9 take an act, Delete takes an answer back.

    Signals:
        chosen(object): the QuestionRow that is chosen now, or None.
        act_taken(int): the act of this number, from 0, was taken.
        took_back(): the answers of the chosen row are taken back.
        typed(str): the cell in the line reads so.
        replied(str): the maker answered this to the chosen question.
    """

    chosen = Signal(object)
    act_taken = Signal(int)
    took_back = Signal()
    typed = Signal(str)
    replied = Signal(str)

    def __init__(self, words: Words, dress: Dress, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._say = words.wording.say
        self._dress = dress
        self.rows = QuestionModel(words, self)
        self.list = QListView(self)
        self.title = QLabel(self)
        self.head = QLabel(self)
        self.line = FramedLine(self)
        self.line_label = QLabel(self)
        self.reply = FramedLine(self)
        self.reply_label = QLabel(self._say("questions", "maker-answered"), self)
        self.buttons: list[ActButton] = []
        self._build()
        self.show_cell("", "")

    def _build(self) -> None:
        dress, px = self._dress, self._dress.type_.px
        self.setAutoFillBackground(True)
        self.setBackgroundRole(QPalette.ColorRole.Button)
        self.title.setFont(dress.type_.strong)
        self.title.setContentsMargins(px(12), px(8), px(12), px(6))
        self.list.setModel(self.rows)
        self.list.setItemDelegate(QuestionDelegate(self.rows, dress, self.list))
        self.list.setFrameShape(QFrame.Shape.NoFrame)
        self.list.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.list.setVerticalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        self.list.setResizeMode(QListView.ResizeMode.Adjust)
        self.list.setAccessibleName(self._say("questions", "list-name"))
        self.list.installEventFilter(self)
        self.list.selectionModel().currentChanged.connect(self._current_changed)
        self._build_lines()
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        column.addWidget(self.title)
        column.addWidget(self.list, 3)
        column.addWidget(self._answer_box(), 2)

    def _build_lines(self) -> None:
        """The lines to type in, and what stands over them."""
        dress = self._dress
        self.head.setFont(dress.type_.small_strong)
        self.head.setForegroundRole(QPalette.ColorRole.PlaceholderText)
        self.head.setWordWrap(True)
        self.line_label.setFont(dress.type_.small)
        self.line_label.setForegroundRole(QPalette.ColorRole.PlaceholderText)
        self.line_label.setBuddy(self.line.edit)
        self.line.edit.returnPressed.connect(self._typed)
        self.reply_label.setFont(dress.type_.small)
        self.reply_label.setForegroundRole(QPalette.ColorRole.PlaceholderText)
        self.reply_label.setBuddy(self.reply.edit)
        self.reply.edit.returnPressed.connect(self._replied)

    def _answer_box(self) -> QWidget:
        px = self._dress.type_.px
        area = QScrollArea(self)
        area.setFrameShape(QFrame.Shape.NoFrame)
        area.setWidgetResizable(True)
        area.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        area.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        inner = QWidget(area)
        self._answers = QVBoxLayout(inner)
        self._answers.setContentsMargins(px(12), px(9), px(12), px(10))
        self._answers.setSpacing(px(5))
        self._answers.addWidget(self.head)
        self._answers.addSpacing(px(3))
        self._answers.addWidget(self.line_label)
        self._answers.addWidget(self.line)
        self._answers.addWidget(self.reply_label)
        self._answers.addWidget(self.reply)
        self._answers.addStretch(1)
        area.setWidget(inner)
        return area

    # What is shown

    def show_rows(self, rows: Sequence[QuestionRow]) -> None:
        """Show these; the chosen place stays where it was, on the next open question."""
        before = max(self.list.currentIndex().row(), 0)
        with QSignalBlocker(self.list.selectionModel()):
            self.rows.show_rows(rows)
        asked = [at for at, row in enumerate(rows) if row.is_open]
        problem = any(row.weight is Weight.ERROR for row in rows)
        quiet = "title-problem" if problem else "title-none"
        self.title.setText(
            self._say("questions", "title-open", count=len(asked))
            if asked
            else self._say("questions", quiet)
        )
        at = next((at for at in asked if at >= before), asked[0] if asked else 0)
        self.list.setCurrentIndex(self.rows.index(at))
        self._show_acts()

    def choose(self, number: int) -> None:
        """Choose the row at ``number``."""
        if self.rows.row(number) is not None:
            self.list.setCurrentIndex(self.rows.index(number))

    @property
    def current(self) -> QuestionRow | None:
        """The chosen row."""
        return self.rows.row(self.list.currentIndex().row())

    def show_cell(self, place: str, text: str) -> None:
        """Put a cell in the line."""
        self.line_label.setText(
            self._say("questions", "cell-reads", place=place)
            if place
            else self._say("questions", "cell-none")
        )
        self.line.setEnabled(bool(place))
        self.line.edit.setText(text)
        self.line.edit.setModified(False)

    def start_typing(self) -> None:
        """Put the keyboard into the line."""
        self.line.edit.setFocus(Qt.FocusReason.ShortcutFocusReason)
        self.line.edit.selectAll()

    def _current_changed(self, current: QModelIndex, before: QModelIndex) -> None:
        del current, before
        self._show_acts()
        self.chosen.emit(self.current)

    def _show_acts(self) -> None:
        row = self.current
        for button in self.buttons:
            self._answers.removeWidget(button)
            button.hide()
            button.deleteLater()
        self.buttons = []
        self.head.setText(self._say("questions", f"do-{_to_do(row)}"))
        texts = [act.text for act in row.acts] if row else []
        for widget in (self.reply_label, self.reply):
            widget.setVisible(row is not None and row.sent)
        self.reply.edit.clear()
        for number, text in enumerate(texts, 1):
            self._add(ActButton(number if number <= _MOST_KEYS else 0, text, self), number - 1)
        if row is not None and row.given:
            self._add(ActButton(0, self._say("questions", "take-back"), self), 0)

    def _add(self, button: ActButton, number: int) -> None:
        button.setProperty("act", number)
        button.clicked.connect(self._clicked)
        self._answers.insertWidget(1 + number, button)
        self.buttons.append(button)

    # What is done

    def take(self, number: int) -> None:
        """Take the act of this number, from 0; nothing happens where there is none."""
        row = self.current
        if row is None or not 0 <= number < len(self.buttons):
            return
        if row.given:
            self.took_back.emit()
        else:
            self.act_taken.emit(number)

    def _take_by_key(self, number: int) -> None:
        """One figure too many answers nothing, and takes nothing back either."""
        row = self.current
        if row is not None and not row.given:
            self.take(number)

    def _take_back_by_key(self) -> None:
        row = self.current
        if row is not None and row.given:
            self.took_back.emit()

    def _clicked(self) -> None:
        self.take(int(self.sender().property("act")))
        self.list.setFocus(Qt.FocusReason.OtherFocusReason)

    def _typed(self) -> None:
        if self.line.edit.isModified():
            self.typed.emit(self.line.edit.text().strip())
        self.list.setFocus(Qt.FocusReason.OtherFocusReason)

    def _replied(self) -> None:
        text = self.reply.edit.text().strip()
        if text:
            self.replied.emit(text)
        self.list.setFocus(Qt.FocusReason.OtherFocusReason)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """A figure takes the act of its number."""
        if watched is self.list and isinstance(event, QKeyEvent):
            bare = event.modifiers() in (
                Qt.KeyboardModifier.NoModifier,
                Qt.KeyboardModifier.KeypadModifier,
            )
            figure = event.text() if event.type() is QEvent.Type.KeyPress and bare else ""
            if figure and figure in "123456789":
                self._take_by_key(int(figure) - 1)
                return True
            if event.type() is QEvent.Type.KeyPress and event.key() in _TAKE_BACK:
                self._take_back_by_key()
                return True
        return super().eventFilter(watched, event)


def _to_do(row: QuestionRow | None) -> str:
    """What may be done about a row, as the code of its sentence."""
    if row is None:
        return "nothing"
    along = row.weight is Weight.SETTLED and not row.given
    return "settled-along" if along else row.weight.value
