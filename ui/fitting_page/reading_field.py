"""One reading: its name, the line to type in, what to ask the client, and the unit if need be."""

from __future__ import annotations

from dataclasses import replace
from typing import Final

from PySide6.QtCore import Qt, QTimer, Signal
from PySide6.QtGui import QFont, QKeyEvent, QPalette
from PySide6.QtWidgets import QGridLayout, QLabel, QWidget

from charts.quantities import Unit
from charts.schema import Definition
from harmonizer.rider import Measure
from ui.controls.field import FramedLine
from ui.controls.strokes import px
from ui.fitting_page.doubt_box import DoubtBox
from ui.fitting_page.doubts import Doubt
from ui.fitting_page.draft import asked_definition
from ui.fitting_page.past import LastTime
from ui.fitting_page.typed import Standing, Typed, interpret, tidy, with_unit
from ui.fitting_page.unit_question import UnitQuestion
from ui.words import Words

_COUNTS_AFTER_MS: Final = 600


class ReadingField(QWidget):
    """A value counts on Enter, on Tab, or a moment after a plausible whole value.

    Signals:
        edited(): the text changed and does not count yet.
        committed(object): a Typed counts now: plain, or empty to take the reading back.
        taken_back(): what did not count yet is gone again.
        advance(): Enter was pressed and the next field is due.
        confirmed(str): the doubt of this key was answered: the reading is right.
        corrected(object): the other reading of a doubt, a Typed, counts now.
        taken_again(object): the readings of last time count again.
        taker_wanted(): another one is to hold the tape for this reading alone.
    """

    edited = Signal()
    committed = Signal(object)
    taken_back = Signal()
    advance = Signal()
    confirmed = Signal(str)
    corrected = Signal(object)
    taken_again = Signal(object)
    taker_wanted = Signal()

    def __init__(self, measure: Measure, words: Words, small: QFont, parent: QWidget) -> None:
        super().__init__(parent)
        self.measure = measure
        self.definition = asked_definition(measure)
        self.child = False
        self.setBackgroundRole(QPalette.ColorRole.Button)
        self.setAutoFillBackground(True)
        self.spoken: Unit | None = None
        self._taker = ""
        self._estimate = ""
        self._tape = ""
        self._last: LastTime | None = None
        self._words = words
        self._counted = Typed(Standing.EMPTY)
        self._typed = self._counted
        self._asked: Typed | None = None
        self._moment = QTimer(self)
        self._moment.setSingleShot(True)
        self._moment.setInterval(_COUNTS_AFTER_MS)
        self._moment.timeout.connect(self._moment_passed)
        self._build(small)

    def _build(self, small: QFont) -> None:
        self.label = QLabel(self._words(f"field-{self.measure.value}"), self)
        self.line = FramedLine(self)
        self.line.echo.setFont(small)
        self.label.setBuddy(self.line.edit)
        self.label.setToolTip(self._words.wording.say("takers", "key"))
        self.line.edit.setAccessibleName(self.label.text())
        self.line.edit.setAccessibleDescription(self._hint())
        self.line.edit.textEdited.connect(self._text_edited)
        self.line.left.connect(self.count_now)
        self.hint = QLabel(self._hint(), self)
        self.hint.setFont(small)
        self.hint.setWordWrap(True)
        self.hint.setForegroundRole(QPalette.ColorRole.PlaceholderText)
        self.question = UnitQuestion(self._words, small, self)
        self.question.answered.connect(self._unit_given)
        self.doubt = DoubtBox(self.label.text(), self._words.wording, small, self)
        self.doubt.taken.connect(self._other_taken)
        self.doubt.taken_again.connect(self._last_taken)
        self.doubt.kept.connect(self._kept)
        self.last = QLabel(self)
        self.last.setFont(small)
        self.last.setWordWrap(True)
        self.last.setForegroundRole(QPalette.ColorRole.PlaceholderText)
        self.last.hide()
        self._lay()

    def _lay(self) -> None:
        grid = QGridLayout(self)
        grid.setContentsMargins(0, 0, 0, 0)
        grid.setHorizontalSpacing(px(self, 8))
        grid.setVerticalSpacing(px(self, 1))
        grid.setColumnMinimumWidth(0, px(self, 76))
        grid.setColumnStretch(1, 1)
        grid.addWidget(self.label, 0, 0)
        grid.addWidget(self.line, 0, 1)
        grid.addWidget(self.hint, 1, 0, 1, 2)
        grid.addWidget(self.question, 1, 0, 1, 2)
        grid.addWidget(self.last, 2, 0, 1, 2)
        grid.addWidget(self.doubt, 3, 0, 1, 2)

    @property
    def pending(self) -> bool:
        """Whether something stands in the line that does not count yet."""
        return self._typed != self._counted

    def show_value(self, text: str, echo: str) -> None:
        """Put a counted value in the line, as a file or another rider gave it."""
        self._moment.stop()
        self._counted = self._typed = Typed(Standing.PLAIN, text) if text else Typed(Standing.EMPTY)
        self.line.edit.setText(text)
        self.line.echo.setText(echo)
        self._calm()

    def show_echo(self, echo: str) -> None:
        """Say at the line's end how the value was understood."""
        self.line.echo.setText(echo)

    def ask_for(self, definition: Definition) -> None:
        """Tell the client to measure there from now on."""
        if definition is not self.definition:
            self.definition = definition
            self._describe()
            if self._asked is None:
                self.hint.setText(self._hint())

    def show_taker(self, sentence: str) -> None:
        """Say below the line who holds the tape for this reading alone; "" for all alike."""
        if sentence != self._taker:
            self._taker = sentence
            self._describe()
            if self._asked is None:
                self.hint.setText(self._hint())

    def show_estimate(self, sentence: str) -> None:
        """Show in grey what is to be expected while nothing is typed; it never counts."""
        if self._estimate == sentence:
            return
        self._estimate = sentence
        self.line.edit.setPlaceholderText(sentence)
        self._describe()

    def show_tape(self, sentence: str) -> None:
        """Say to who points at the line, or hears it, how sure its reading is; "" for nothing."""
        if self._tape != sentence:
            self._tape = sentence
            self.line.setToolTip(sentence)
            self._describe()

    def show_last(self, last: LastTime | None) -> None:
        """Say in grey below the line what was read last time, or nothing."""
        if last == self._last:
            return
        self._last = last
        wording = self._words.wording
        self.last.setText(last.beside(wording) if last else "")
        self.last.setToolTip(last.sentence(wording) if last else "")
        self.last.setAccessibleName(last.sentence(wording) if last else "")
        self.last.setVisible(last is not None)
        self._describe()

    def _describe(self) -> None:
        """What is said of the line to whoever hears it: where to measure, and what is known."""
        wording, said = self._words.wording, self._hint()
        if self._estimate:
            said = wording.say("advice", "hint-estimate", hint=said, estimate=self._estimate)
        if self._tape:
            said = wording.say("advice", "hint-tape", hint=said.rstrip("."), tape=self._tape)
        if self._last is not None:
            beside = self._last.sentence(wording)
            said = wording.say("rider_book", "hint-beside", hint=said.rstrip("."), beside=beside)
        self.line.edit.setAccessibleDescription(said)

    def show_doubt(self, doubt: Doubt | None) -> None:
        """Ask beside the line about a reading that counts, or stop asking."""
        self.doubt.show_doubt(doubt)
        self.hint.setVisible(doubt is None and not self.question.isVisibleTo(self))

    def count_now(self) -> None:
        """Let what stands in the line count, or ask about it."""
        self._moment.stop()
        if self.pending and self._typed.standing not in (Standing.PLAIN, Standing.EMPTY):
            self._ask()
            return
        if self.pending:
            self._count(self._typed)
        if self._typed.standing is Standing.PLAIN:
            text = tidy(self._typed.text, self._typed.unit)
            self._counted = self._typed = replace(self._typed, text=text)
            self.line.edit.setText(text)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Enter counts, Escape takes back what does not count yet."""
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self.count_now()
            if not self.pending:
                self.advance.emit()
            elif self.question.isVisible():
                self.question.first_answer().setFocus(Qt.FocusReason.TabFocusReason)
            return
        if event.key() == Qt.Key.Key_Escape and self.pending:
            self.line.edit.setText(self._counted.text)
            self._typed = self._counted
            self._calm()
            self.taken_back.emit()
            return
        super().keyPressEvent(event)

    def _text_edited(self, text: str) -> None:
        self._typed = interpret(text, self.measure, child=self.child, spoken=self.spoken)
        self.line.echo.setText("")
        self.doubt.show_doubt(None)
        self._calm()
        self._moment.stop()
        if self._typed.standing is Standing.PLAIN:
            self._moment.start()
        if self.pending:
            self.edited.emit()

    def _moment_passed(self) -> None:
        if self._typed.standing is Standing.PLAIN and self.pending:
            self._count(self._typed)

    def _count(self, typed: Typed) -> None:
        self._counted = self._typed = typed
        self._calm()
        self.committed.emit(typed)

    def _calm(self) -> None:
        self._asked = None
        self.line.want(False)
        self.question.hide()
        self.hint.setText(self._hint())
        self.hint.setForegroundRole(QPalette.ColorRole.PlaceholderText)
        self.hint.setVisible(self.doubt.shown is None)

    def _ask(self) -> None:
        """Ask for the unit in place, or say what is wanted instead; once for each text."""
        if self._asked == self._typed:
            return
        self._asked = self._typed
        self.line.want(True)
        if self._typed.standing is Standing.REFUSED:
            self.hint.setText(self._words(self._typed.code))
            self.hint.setForegroundRole(QPalette.ColorRole.LinkVisited)
            return
        self.hint.hide()
        asked = self._typed
        self.question.ask(self._words(asked.code), asked.text, asked.choices)

    def _unit_given(self, unit: Unit) -> None:
        typed = with_unit(self._typed, unit)
        self.line.edit.setText(typed.text)
        self._count(typed)
        self.advance.emit()

    def _other_taken(self, typed: Typed) -> None:
        """One act: what stands in the line is the other reading now."""
        self._moment.stop()
        self.line.edit.setText(typed.text)
        self.line.edit.setFocus(Qt.FocusReason.OtherFocusReason)
        self._counted = self._typed = typed
        self._calm()
        self.corrected.emit(typed)

    def _last_taken(self, readings: object) -> None:
        """One act: what was read last time holds again, with its day."""
        self._moment.stop()
        self.line.edit.setFocus(Qt.FocusReason.OtherFocusReason)
        self.taken_again.emit(readings)

    def _kept(self, key: str) -> None:
        self.line.edit.setFocus(Qt.FocusReason.OtherFocusReason)
        self.confirmed.emit(key)

    def _hint(self) -> str:
        if self._taker:
            return self._taker
        if self.definition is asked_definition(self.measure):
            return self._words(f"hint-{self.measure.value}")
        code = f"hint-{self.measure.value}-{self.definition.value}"
        return self._words.wording.say("advice", code)
