"""Which unit a typed figure is in, asked in place: one button a unit."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Signal
from PySide6.QtGui import QFont
from PySide6.QtWidgets import QHBoxLayout, QLabel, QWidget

from charts.quantities import Unit
from ui.controls.buttons import FlatButton
from ui.controls.strokes import px
from ui.words import Words


class UnitQuestion(QWidget):
    """Hidden until a unit has to be asked for.

    Signals:
        answered(object): the figure is in this Unit.
    """

    answered = Signal(object)

    def __init__(self, words: Words, small: QFont, parent: QWidget) -> None:
        super().__init__(parent)
        self._words = words
        self._small = small
        self._row = QHBoxLayout(self)
        self._row.setContentsMargins(0, 0, 0, 0)
        self._row.setSpacing(px(self, 6))
        self.hide()

    def ask(self, asks: str, text: str, choices: Sequence[Unit]) -> None:
        """Ask about ``text``, the likeliest unit first."""
        self._clear()
        question = QLabel(asks, self)
        question.setFont(self._small)
        self._row.addWidget(question)
        for place, unit in enumerate(choices):
            self._row.addWidget(self._answer(text, unit, place == 0))
        self._row.addStretch(1)
        self.show()

    def first_answer(self) -> QWidget:
        """The button of the likeliest unit."""
        return self.findChildren(FlatButton)[0]

    def _answer(self, text: str, unit: Unit, first: bool) -> FlatButton:
        button = FlatButton(unit.value, self, urgent=first)
        button.setFont(self._small)
        button.setAccessibleName(self._words("answer-unit", text=text, unit=unit.value))
        button.setProperty("unit", unit.value)
        button.clicked.connect(self._pressed)
        return button

    def _pressed(self) -> None:
        self.answered.emit(Unit(str(self.sender().property("unit"))))

    def _clear(self) -> None:
        while (item := self._row.takeAt(0)) is not None:
            widget = item.widget()
            if widget is not None:
                widget.hide()
                widget.setParent(None)
                widget.deleteLater()
