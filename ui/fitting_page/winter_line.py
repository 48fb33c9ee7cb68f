"""The line for the winter layers: a thickness typed, and what it adds to a girth."""

from __future__ import annotations

from decimal import Decimal
from typing import Final

from PySide6.QtCore import Signal
from PySide6.QtGui import QFont
from PySide6.QtWidgets import QWidget

from charts.notation import Reading as CellState
from charts.notation import read_cell
from charts.quantities import Unit, converted
from harmonizer.layers import layer_allowance
from ui.controls.field import FramedLine
from ui.words import Words

_MOST_LAYERS_MM: Final = 40


class WinterLine(FramedLine):
    """Counts when it is left; what is no thickness is refused beside it.

    Signals:
        given(object): a thickness in mm, a Decimal.
    """

    given = Signal(object)

    def __init__(self, words: Words, small: QFont, parent: QWidget) -> None:
        super().__init__(parent)
        self._words = words
        self.echo.setFont(small)
        self.edit.setAccessibleName(words("caption-winter"))
        self.edit.setPlaceholderText(words("winter-none"))
        self.edit.editingFinished.connect(self._edited)

    def show_value(self, thick_mm: Decimal) -> None:
        """Put a thickness in the line; tells nobody."""
        self.edit.setText(f"{thick_mm.normalize():f}" if thick_mm else "")

    def say_what_it_adds(self, thick_mm: Decimal) -> None:
        """Say at the line's end what the layers add to a girth."""
        if not thick_mm:
            self.echo.setText(self._words("winter-unit"))
            return
        adds = self._words.wording.margin(layer_allowance(float(thick_mm)))
        self.echo.setText(self._words("winter-adds", adds=adds))

    def _edited(self) -> None:
        thick = _millimetres(self.edit.text())
        if thick is None:
            self.want(True)
            self.echo.setText(self._words("winter-refused"))
            return
        self.want(False)
        self.given.emit(thick)


def _millimetres(text: str) -> Decimal | None:
    """A thickness in mm from 0 to what can be worn; empty is none; None if it is no thickness."""
    if not text.strip():
        return Decimal(0)
    reading = read_cell(text.strip())
    quantity = reading.quantity
    if reading.reading is not CellState.READ or quantity is None or quantity.value is None:
        return None
    unit = quantity.unit or Unit.MM
    if unit not in (Unit.MM, Unit.CM, Unit.IN):
        return None
    thick = converted(quantity.value.value, unit, Unit.MM)
    return thick if thick <= _MOST_LAYERS_MM else None
