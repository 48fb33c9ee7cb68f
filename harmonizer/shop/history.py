"""What a workspace holds at one moment, and the steps from one moment to the next and back.

Everything held is one frozen value, so a step back is the value before.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from datetime import date
from enum import StrEnum
from typing import Final

from charts.habits.kept import Habits
from charts.sources import LoadedFile
from harmonizer.outcomes import Outcome
from harmonizer.settings import DEFAULTS, Settings
from harmonizer.shop.rider_book import RiderRecord
from harmonizer.shop.season import FileRecord
from harmonizer.stock import StockLine


class Part(StrEnum):
    """What a change may touch."""

    CHARTS = "charts"
    SEASON = "season"
    SETTINGS = "settings"
    STOCK = "stock"
    BOOK = "book"
    FITTINGS = "fittings"


Listener = Callable[[frozenset[str]], None]


@dataclass(frozen=True, slots=True)
class Contents:
    """Everything a workspace holds at one moment.

    ``files`` are by name, names are unique; ``records`` are what was said of files, by name, of
    those that are not open among them; ``habits`` are the suppliers', by their names; ``stock`` is
    the stock list, empty where there is none, and ``stock_on`` its day; ``book`` is what is kept
    of riders for next time; ``fittings`` are the sizes that came out right, oldest first.
    """

    files: tuple[LoadedFile, ...] = ()
    settings: Settings = DEFAULTS
    records: tuple[FileRecord, ...] = ()
    habits: tuple[Habits, ...] = ()
    stock: tuple[StockLine, ...] = ()
    stock_on: date | None = None
    book: tuple[RiderRecord, ...] = ()
    fittings: tuple[Outcome, ...] = ()

    def file(self, name: str) -> LoadedFile | None:
        """The file of this name."""
        return next((file for file in self.files if file.reading.file == name), None)

    def record(self, name: str) -> FileRecord | None:
        """What was said of the file of this name."""
        return next((record for record in self.records if record.name == name), None)


_PARTS: Final[dict[str, Part]] = {
    "files": Part.CHARTS,
    "records": Part.SEASON,
    "habits": Part.SEASON,
    "settings": Part.SETTINGS,
    "stock": Part.STOCK,
    "stock_on": Part.STOCK,
    "book": Part.BOOK,
    "fittings": Part.FITTINGS,
}


class History:
    """One moment after another; every change undoable and announced.

    Attributes:
        on_change: told, after each change, which parts of the workspace are different now.
    """

    def __init__(self) -> None:
        self.on_change: list[Listener] = []
        self._now = Contents()
        self._before: list[Contents] = []
        self._after: list[Contents] = []

    @property
    def contents(self) -> Contents:
        """Everything held now."""
        return self._now

    @property
    def can_undo(self) -> bool:
        """Whether there is a step to take back."""
        return bool(self._before)

    @property
    def can_redo(self) -> bool:
        """Whether a step was taken back and nothing was changed since."""
        return bool(self._after)

    def undo(self) -> None:
        """Take the last change back; nothing happens where there is none."""
        if self._before:
            self._after.append(self._now)
            self._become(self._before.pop())

    def redo(self) -> None:
        """Make the change again that was taken back last."""
        if self._after:
            self._before.append(self._now)
            self._become(self._after.pop())

    def _change(self, contents: Contents) -> None:
        if contents == self._now:
            return
        self._before.append(self._now)
        self._after.clear()
        self._become(contents)

    def _become(self, contents: Contents) -> None:
        before, self._now = self._now, contents
        changed = {
            part
            for name, part in _PARTS.items()
            if getattr(before, name) != getattr(contents, name)
        }
        self._forget(frozenset(changed))
        for listener in tuple(self.on_change):
            listener(frozenset(part.value for part in changed))

    def _forget(self, changed: frozenset[Part]) -> None:
        """Drop what was computed from the parts that are different now."""
