"""The action "wall-sheet": what draws the sheet is fetched when it is wanted first."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject

from ui.asking import Asker
from ui.main_window import MainWindow

if TYPE_CHECKING:
    from ui.wall_sheet.wall_desk import WallDesk


class WallCommands(QObject):
    """Ties the action to the window; ``book`` is where the sheets are counted."""

    def __init__(self, window: MainWindow, asker: Asker, book: Path | None) -> None:
        super().__init__(window)
        self._window = window
        self._asker = asker
        self._book = book
        self._desk: WallDesk | None = None
        window.actions_.connect({"wall-sheet": self.draw})
        window.workspace.on_change.append(self._changed)
        self._changed(frozenset())

    @property
    def desk(self) -> WallDesk:
        """What draws, shows and saves, made when it is asked for first."""
        if self._desk is None:
            from ui.wall_sheet.wall_desk import WallDesk  # noqa: PLC0415 - start-up need not wait

            self._desk = WallDesk(self._window, self._asker, self._book)
        return self._desk

    def draw(self) -> None:
        """Draw the wall sheet of all that is loaded, and show it."""
        self.desk.draw()

    def _changed(self, parts: frozenset[str]) -> None:
        del parts
        self._window.actions_["wall-sheet"].setEnabled(bool(self._window.workspace.offers))
