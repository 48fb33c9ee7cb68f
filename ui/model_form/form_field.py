"""One field of the form: its name, what is typed or chosen, and what is wrong with it."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QColor, QPalette, QWheelEvent
from PySide6.QtWidgets import QComboBox, QLabel, QVBoxLayout, QWidget

from harmonizer.facts_form import Entry, FormField, name_of, problem, say
from ui.controls.check_line import CheckLine
from ui.controls.field import FramedLine
from ui.dress import Dress
from ui.theme import Ink
from ui.words import Words

_HINTED = frozenset({Entry.MASS, Entry.LENGTH, Entry.PART, Entry.WORDS})
_YES = "yes"


class QuietChoice(QComboBox):
    """A choice that a turning wheel does not change by accident."""

    def wheelEvent(self, event: QWheelEvent) -> None:
        """Leave the wheel to the page."""
        event.ignore()


class FieldEditor(QWidget):
    """A field with its name above and its fault below.

    Signals:
        changed(str): the field of this key holds another text.
    """

    changed = Signal(str)

    def __init__(
        self, field: FormField, words: Words, dress: Dress, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self.field = field
        self._words = words
        self._name = name_of(field.key, words.wording)
        self._label = QLabel(self._name, self)
        self._label.setFont(dress.type_.small)
        self._label.setForegroundRole(QPalette.ColorRole.PlaceholderText)
        self.fault = QLabel(self)
        self.fault.setFont(dress.type_.small)
        self.fault.setWordWrap(True)
        palette = QPalette(self.fault.palette())
        colour = QColor(dress.theme.colour(Ink.STOP))
        palette.setColor(QPalette.ColorRole.WindowText, colour)
        self.fault.setPalette(palette)
        self.fault.hide()
        self.line = FramedLine(self)
        self.choice = QuietChoice(self)
        self.flag = CheckLine(self._name, self)
        self._lay(dress)

    def _lay(self, dress: Dress) -> None:
        px = dress.type_.px
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(px(2))
        for control in (self.line, self.choice):
            control.setMinimumHeight(self.line.sizeHint().height())
        self._label.setVisible(self.field.entry is not Entry.FLAG)
        for widget in (self._label, self._build(), self.fault):
            column.addWidget(widget)
        column.addStretch(1)

    def _build(self) -> QWidget:
        """The one control of this kind of field; the others stay away."""
        kinds = {Entry.CHOICE: self.choice, Entry.FLAG: self.flag}
        control = kinds.get(self.field.entry, self.line)
        for other in (self.line, self.choice, self.flag):
            other.setVisible(other is control)
        if control is self.choice:
            self.choice.addItem(self._say("form-not-said"), "")
            for value in self.field.choices:
                self.choice.addItem(self._choice_words(value), value)
            self.choice.setAccessibleName(self._name)
            self.choice.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
            self.choice.currentIndexChanged.connect(self._changed)
        elif control is self.flag:
            self.flag.toggled.connect(self._changed)
        else:
            self._label.setBuddy(self.line.edit)
            self.line.edit.setAccessibleName(self._name)
            self.line.edit.textEdited.connect(self._changed)
            if self.field.entry in _HINTED:
                hint = self._say(f"form-hint-{self.field.entry.value}")
                self.line.edit.setPlaceholderText(hint)
        return control

    @property
    def text(self) -> str:
        """What the field holds, as the file has it."""
        if self.field.entry is Entry.CHOICE:
            return str(self.choice.currentData() or "")
        if self.field.entry is Entry.FLAG:
            return _YES if self.flag.isChecked() else ""
        return self.line.edit.text()

    def show_text(self, text: str) -> None:
        """Put a text into the field without telling anybody."""
        self.blockSignals(True)
        if self.field.entry is Entry.CHOICE:
            self.choice.setCurrentIndex(max(self.choice.findData(text), 0))
        elif self.field.entry is Entry.FLAG:
            self.flag.setChecked(text == _YES)
        else:
            self.line.edit.setText(text)
        self.blockSignals(False)
        self.show_fault("")

    def show_fault(self, sentence: str) -> None:
        """Say what is wrong; "" where nothing is."""
        self.fault.setText(sentence)
        self.fault.setVisible(bool(sentence))
        self.line.want(bool(sentence))

    def _changed(self) -> None:
        reason = problem(self.field.key, self.text)
        wording = self._words.wording
        self.show_fault(say(self.field.key, reason, wording) if reason is not None else "")
        self.changed.emit(self.field.key)

    def _say(self, code: str) -> str:
        return self._words.wording.say("questions", code)

    def _choice_words(self, value: str) -> str:
        group = self.field.key.partition(".")[0]
        code = f"form-{group}-{value.replace(' ', '-')}"
        if group == "definitions":
            code = f"definition-{value}"
        return self._say(code)
