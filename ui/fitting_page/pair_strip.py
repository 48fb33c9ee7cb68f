"""The pair above the table: its statement, what is known of the foam, and a button to part it."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from PySide6.QtCore import Signal
from PySide6.QtGui import QPalette
from PySide6.QtWidgets import QFrame, QGridLayout, QLabel, QVBoxLayout, QWidget

from charts.model_facts import THICKEST_FOAM_CM
from charts.notation import Reading, read_cell
from charts.quantities import Unit, converted
from harmonizer.rider import Measure
from ui.appearance import Type
from ui.controls.buttons import FlatButton
from ui.controls.field import FramedLine
from ui.controls.strokes import px
from ui.fitting_page.pair import NotedFoam
from ui.fitting_page.pair_choice import PairChoice
from ui.fitting_page.typed import Standing, interpret
from ui.words import Words

_THICKEST_MM: Final = float(THICKEST_FOAM_CM * 10)


class PairStrip(QFrame):
    """Hidden while there is no pair.

    Signals:
        over_foam(object): the chest over the foam in cm, or None.
        thickness(object): the foam's thickness in mm, or None.
        parted(): the pair is wanted no more.
    """

    over_foam = Signal(object)
    thickness = Signal(object)
    parted = Signal()

    def __init__(self, words: Words, type_: Type, parent: QWidget) -> None:
        super().__init__(parent)
        self._words = words
        self._thick_echo = "thickness"
        self.setAutoFillBackground(True)
        self.setBackgroundRole(QPalette.ColorRole.Button)
        self.title = QLabel(self._say("title"), self)
        self.title.setFont(type_.strong)
        self.says = QLabel(self)
        self.says.setFont(type_.small)
        self.says.setWordWrap(True)
        self.over = self._line("over-foam", type_)
        self.over.edit.editingFinished.connect(self._over_edited)
        self.thick = self._line("thickness", type_)
        self.thick.edit.editingFinished.connect(self._thick_edited)
        self.part = FlatButton(self._say("part"), self)
        self.part.setFont(type_.small)
        self.part.clicked.connect(self.parted)
        self._lay(type_)
        self.hide()

    def _line(self, code: str, type_: Type) -> FramedLine:
        line = FramedLine(self)
        line.echo.setFont(type_.small)
        line.echo.setText(self._say(f"{code}-echo"))
        line.edit.setPlaceholderText(self._say("unknown"))
        line.edit.setAccessibleName(self._say(f"{code}-name"))
        line.edit.setToolTip(self._say(f"{code}-name"))
        line.setFixedWidth(type_.px(168))
        return line

    def _lay(self, type_: Type) -> None:
        left = QVBoxLayout()
        left.setSpacing(px(self, 3))
        left.addWidget(self.title)
        left.addWidget(self.says)
        left.addStretch(1)
        grid = QGridLayout(self)
        grid.setContentsMargins(type_.px(10), type_.px(6), type_.px(12), type_.px(6))
        grid.setHorizontalSpacing(type_.px(16))
        grid.setVerticalSpacing(type_.px(4))
        grid.addLayout(left, 0, 0, 3, 1)
        grid.addWidget(self.over, 0, 1)
        grid.addWidget(self.thick, 1, 1)
        grid.addWidget(self.part, 2, 1)
        grid.setColumnStretch(0, 1)

    def show_pair(
        self, choice: PairChoice | None, lines: Sequence[str], noted: NotedFoam | None = None
    ) -> None:
        """Show a pair, or nothing. ``noted`` stands for a thickness that nobody types."""
        self.setVisible(choice is not None and bool(lines))
        if choice is None:
            self.over.edit.clear()
            self.thick.edit.clear()
            return
        self.says.setText("\n".join(lines))
        self.setAccessibleDescription(self.says.text())
        self.over.setEnabled(bool(choice.inflatable))
        self.thick.setEnabled(bool(choice.inflatable))
        self._show_noted(noted)
        if not self.over.edit.hasFocus():
            self.over.edit.setText(self._figure(choice.over_foam_cm, "cm"))
        if not self.thick.edit.hasFocus():
            self.thick.edit.setText(self._figure(choice.thickness_mm, "mm"))

    def _show_noted(self, noted: NotedFoam | None) -> None:
        """The noted thickness in the empty line, where it counts until another is typed."""
        figure = self._words.margin(noted.thickness_mm) if noted is not None else ""
        say = self._words.wording.say
        known = say("pair", "thickness-noted", thickness=figure) if figure else self._say("unknown")
        self.thick.edit.setPlaceholderText(known)
        self._thick_echo = "thickness-noted" if figure else "thickness"
        if not self.thick.wanting:
            self.thick.echo.setText(self._say(f"{self._thick_echo}-echo"))

    def _figure(self, value: float | None, unit: str) -> str:
        return "" if value is None else f"{self._words.margin(value)} {unit}"

    def _over_edited(self) -> None:
        typed = interpret(self.over.edit.text(), Measure.CHEST_OVER_FOAM)
        empty = typed.standing is Standing.EMPTY
        self._take(self.over, "over-foam", typed.standing is Standing.PLAIN or empty)
        if empty:
            self.over_foam.emit(None)
        elif typed.standing is Standing.PLAIN and typed.value is not None:
            self.over_foam.emit(float(typed.value))

    def _thick_edited(self) -> None:
        text = self.thick.edit.text().strip()
        value = thickness_in_mm(text)
        self._take(self.thick, self._thick_echo, value is not None or not text)
        if value is not None or not text:
            self.thickness.emit(value)

    def _take(self, line: FramedLine, code: str, good: bool) -> None:
        line.want(not good)
        line.echo.setText(self._say(f"{code}-echo" if good else "refused"))

    def _say(self, code: str) -> str:
        return self._words.wording.say("pair", code)


def thickness_in_mm(text: str) -> float | None:
    """A foam's thickness from some text; mm where no unit stands; None if it is none."""
    reading = read_cell(text)
    quantity = reading.quantity
    if reading.reading is not Reading.READ or quantity is None or quantity.value is None:
        return None
    unit = quantity.unit or Unit.MM
    if unit not in (Unit.MM, Unit.CM, Unit.IN):
        return None
    value = float(converted(quantity.value.value, unit, Unit.MM))
    return value if 0 < value <= _THICKEST_MM else None
