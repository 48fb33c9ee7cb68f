"""The strip of open riders: one chip each, the one on the line pressed, the rest in a list."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QAction, QFont, QResizeEvent
from PySide6.QtWidgets import QHBoxLayout, QMenu, QSizePolicy, QWidget

from ui.controls.buttons import FlatButton
from ui.controls.strokes import px
from ui.words import Words

_MOST: Final = 110
_LEAST: Final = 52
_GAP: Final = 6


class RidersStrip(QWidget):
    """Chips for the open riders and a button for a new one.

    Names are shown by their first word: the screen may be seen by the next client.

    Signals:
        picked(int): put the rider at this place on the line.
        wanted_new(): a nameless rider, please.
    """

    picked = Signal(int)
    wanted_new = Signal()

    def __init__(self, words: Words, small: QFont, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._words = words
        self.setFont(small)
        self._names: list[str] = []
        self._current = 0
        self._chips: list[FlatButton] = []
        self._menu = QMenu(self)
        self._menu.triggered.connect(self._chosen)
        self._row = QHBoxLayout(self)
        self._row.setContentsMargins(0, 0, 0, 0)
        self._row.setSpacing(px(self, _GAP))
        self._more = FlatButton("", self)
        self._more.clicked.connect(self._open_list)
        self._new = FlatButton(words("chip-new"), self)
        self._new.setToolTip(words("tip-new-rider"))
        self._new.clicked.connect(self.wanted_new)
        for button in (self._more, self._new):
            button.setFont(small)
            self._row.addWidget(button)
        self._row.addStretch(1)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self.setMinimumWidth(px(self, 150))

    def show_riders(self, names: Sequence[str], current: int) -> None:
        """Show these names with the one at ``current`` pressed."""
        self._names = [self._short(name) for name in names]
        self._current = current
        self._lay()

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Show as many chips as there is room for."""
        super().resizeEvent(event)
        self._lay()

    def _short(self, name: str) -> str:
        return name.split(maxsplit=1)[0] if name.split() else self._words("rider-nameless")

    def _lay(self) -> None:
        while len(self._chips) < len(self._names):
            self._add_chip()
        for place, chip in enumerate(self._chips):
            if place < len(self._names):
                chip.setText(self._names[place])
                chip.setChecked(place == self._current)
                chip.setFixedWidth(min(chip.sizeHint().width(), px(self, _MOST)))
        shown = self._shown()
        for place, chip in enumerate(self._chips):
            chip.setVisible(place in shown)
        left_out = len(self._names) - len(shown)
        self._more.setVisible(left_out > 0)
        self._name_more(left_out)
        self._new.setVisible(self._fold(left_out))

    def _name_more(self, left_out: int) -> None:
        self._more.setText(self._words("chip-more", count=left_out))
        self._more.setFixedWidth(self._more.sizeHint().width())

    def _fold(self, left_out: int) -> bool:
        """Narrow the current chip where there is no room; whether a new rider keeps its button.

        Where even a narrow chip has no room beside it, the button goes: its key and its menu stay.
        """
        if not self._names:
            return True
        chip = self._chips[min(self._current, len(self._names) - 1)]
        more = self._more.width() + px(self, _GAP) if left_out else 0
        new = self._new.sizeHint().width() + px(self, _GAP)
        room = self.width() - more
        stays = room - new >= min(chip.width(), px(self, _LEAST))
        chip.setFixedWidth(max(min(chip.width(), room - new * stays), px(self, _LEAST) // 2))
        return stays

    def _shown(self) -> range:
        """A run of places with the current one among them that fits the strip."""
        new = self._new.sizeHint().width()
        everyone = range(len(self._names))
        if sum(map(self._wide, everyone)) + new <= self.width():
            return everyone
        self._name_more(len(self._names) - 1)
        room = self.width() - new - self._more.width() - px(self, _GAP)
        first = last = min(self._current, len(self._names) - 1)
        used = self._wide(first)
        while True:
            if first > 0 and used + self._wide(first - 1) <= room:
                first -= 1
                used += self._wide(first)
            elif last + 1 < len(self._names) and used + self._wide(last + 1) <= room:
                last += 1
                used += self._wide(last)
            else:
                return range(first, last + 1)

    def _wide(self, place: int) -> int:
        return self._chips[place].width() + px(self, _GAP)

    def _add_chip(self) -> None:
        chip = FlatButton("", self)
        chip.setCheckable(True)
        chip.setFont(self.font())
        chip.setFocusPolicy(Qt.FocusPolicy.TabFocus)
        chip.setProperty("place", len(self._chips))
        chip.clicked.connect(self._clicked)
        self._row.insertWidget(len(self._chips), chip)
        self._chips.append(chip)

    def _clicked(self) -> None:
        self.picked.emit(int(self.sender().property("place")))

    def _open_list(self) -> None:
        self._menu.clear()
        for place, name in enumerate(self._names):
            action = QAction(name, self._menu)
            action.setData(place)
            action.setCheckable(True)
            action.setChecked(place == self._current)
            self._menu.addAction(action)
        self._menu.popup(self._more.mapToGlobal(self._more.rect().bottomLeft()))

    def _chosen(self, action: QAction) -> None:
        self.picked.emit(int(action.data()))
