"""What a shop has said of its files and riders, kept from one day to the next.

Without a folder nothing is kept.
"""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import QObject, QTimer

from charts.writers.whole_file import NotWrittenError
from harmonizer.shop.shop_folder import ShopFolder
from ui.kept_file import not_kept_words
from ui.main_window import MainWindow

FOLDER_NAME = "season"
_KEPT = frozenset({"season", "book", "stock", "fittings"})


class ShopKeeping(QObject):
    """Brings the shop's folder to what is said, once after each act."""

    def __init__(self, window: MainWindow, folder: Path | None) -> None:
        super().__init__(window)
        self._window = window
        self._folder = ShopFolder(folder) if folder is not None else None
        self._wait = QTimer(self)
        self._wait.setSingleShot(True)
        self._wait.setInterval(0)
        self._wait.timeout.connect(self.keep)
        self._open()
        window.workspace.on_change.append(self._changed)

    def keep(self) -> None:
        """Write what is different; what cannot be written is said."""
        if self._folder is None:
            return
        try:
            self._window.workspace.save_shop(self._folder)
        except NotWrittenError as fault:
            self._window.notice.say(not_kept_words(fault, self._window.words.wording))

    def _open(self) -> None:
        if self._folder is None:
            return
        shop = self._window.workspace.open_shop(self._folder)
        self._window.riders.may_keep()
        self._window.fittings.may_keep()
        for refused in shop.refused[:1]:
            self._tell("shop-unusable", refused.say(self._window.words.wording))

    def _changed(self, parts: frozenset[str]) -> None:
        if parts & _KEPT and self._folder is not None:
            self._wait.start()

    def _tell(self, code: str, reason: str) -> None:
        window = self._window
        window.notice.say(window.words.wording.say("questions", code, reason=reason))
