"""Asks which size of a row came out right: in the row's menu, or by its key."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial

from PySide6.QtCore import QObject, Qt, Signal
from PySide6.QtGui import QAction
from PySide6.QtWidgets import QMenu, QTableView

from harmonizer.outcomes import Choice
from ui.fitting_page.row_hold import RowHold
from ui.fitting_page.rows import ModelRow
from ui.words import Words

_TOPIC = "fittings"


class CameOut(QObject):
    """The sizes of one model as a menu, the one that was advised first to hand.

    Attributes:
        choices: what can have come out right of the model of a key, or a sentence that says why
            nothing can be kept; None while nobody keeps anything.

    Signals:
        picked(str, str): of the model of this key this size came out right.
        refused(str): why nothing can be kept.
    """

    picked = Signal(str, str)
    refused = Signal(str)

    def __init__(self, words: Words, hold: RowHold, table: QTableView) -> None:
        super().__init__(table)
        self._words = words
        self._hold = hold
        self._table = table
        self.choices: Callable[[str], Choice | str] | None = None
        hold.adds = self._add_to

    def ask(self, row: ModelRow) -> None:
        """Open the sizes of this row at its place, or say why nothing can be kept."""
        if self.choices is None:
            return
        choice = self.choices(row.key)
        if isinstance(choice, str):
            self.refused.emit(choice)
            return
        menu = QMenu(self._table)
        menu.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        heading = self._words.wording.say(_TOPIC, "asks", model=row.model)
        menu.setAccessibleName(heading)
        menu.addAction(_plain(heading)).setEnabled(False)
        menu.addSeparator()
        advised = self._fill(menu, row.key, choice)
        self._hold.open_here(menu)
        if advised is not None:
            menu.setActiveAction(advised)

    def _add_to(self, menu: QMenu, row: ModelRow) -> None:
        """The sizes as a part of the row's menu; where nothing can be kept, why."""
        if self.choices is None:
            return
        choice = self.choices(row.key)
        if isinstance(choice, str):
            menu.addAction(_plain(choice)).setEnabled(False)
            return
        self._fill(menu.addMenu(self._words("action-came-out")), row.key, choice)

    def _fill(self, menu: QMenu, key: str, choice: Choice) -> QAction | None:
        """One entry a size; returns that of the size that was advised."""
        advised = None
        first, say = choice.predicted, self._words.wording.say
        for offer in choice.offers:
            known = choice.difference(offer.size) is not None
            is_first = first is not None and offer.size == first.size
            text = say(_TOPIC, "advised", size=offer.size) if is_first else offer.size
            if not known:
                text = say(_TOPIC, "not-known", size=offer.size)
            action = menu.addAction(_plain(text))
            action.setEnabled(known)
            action.triggered.connect(partial(self._picked, key, offer.size))
            advised = action if is_first else advised
        return advised

    def _picked(self, key: str, size: str, _checked: bool = False) -> None:
        self.picked.emit(key, size)


def _plain(text: str) -> str:
    """A menu's text in which no sign marks a key."""
    return text.replace("&", "&&")
