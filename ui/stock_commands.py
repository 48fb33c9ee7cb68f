"""The stock list: pasted from the clipboard, said in one line, undone like everything else."""

from __future__ import annotations

from PySide6.QtCore import QObject
from PySide6.QtGui import QGuiApplication

from harmonizer.shop.stock_toml import is_stale
from harmonizer.stock import matched, read_stock
from ui.main_window import MainWindow
from ui.questions_page.case import today
from ui.stock_words import old_words

_TOPIC = "stock"


class StockCommands(QObject):
    """Ties the actions of the stock list to the window, and says once how old it is."""

    def __init__(self, window: MainWindow) -> None:
        super().__init__(window)
        self._window = window
        slots = {"paste-stock": self.paste, "drop-stock": self.drop}
        window.actions_.connect(slots)
        window.workspace.on_change.append(self._changed)
        self._told = False
        self._changed(frozenset({"stock"}))
        self._say_if_old()

    def paste(self) -> None:
        """Take the clipboard as the stock list, and say what was not understood."""
        workspace = self._window.workspace
        lines = read_stock(QGuiApplication.clipboard().text())
        if not lines:
            self._say("nothing")
            return
        if not workspace.offers:
            self._say("no-charts")
            return
        match = matched(lines, workspace.offers)
        if not match.count:
            self._say("none-understood", line=lines[0].text)
            return
        workspace.take_stock(lines, today())
        if match.unclear:
            first, unclear = match.unclear[0].text, len(match.unclear)
            self._say("some-unclear", count=unclear, sizes=match.count, line=first)
        else:
            self._say("taken", count=match.count)

    def drop(self) -> None:
        """Take the list away; undo brings it back."""
        self._window.workspace.take_stock(())
        self._say("dropped")

    def _changed(self, parts: frozenset[str]) -> None:
        if "charts" in parts:
            self._say_if_old()
        if "stock" in parts:
            self._window.actions_["drop-stock"].setEnabled(bool(self._window.workspace.stock))

    def _say_if_old(self) -> None:
        workspace, wording = self._window.workspace, self._window.words.wording
        on = workspace.stock_on
        busy = not self._window.notice.isHidden()  # something that cannot be used goes before
        stale = on is not None and is_stale(workspace.stock, on, today())
        if on is not None and stale and not busy and not self._told:
            self._told = True
            self._window.notice.say(old_words(on, today(), wording))

    def _say(self, code: str, **values: object) -> None:
        self._window.notice.say(self._window.words.wording.say(_TOPIC, code, **values))
