"""The stock list: pasted from the clipboard, said in one line, undone like everything else."""

from __future__ import annotations

from PySide6.QtCore import QObject
from PySide6.QtGui import QGuiApplication

from harmonizer.stock import matched, read_stock
from ui.main_window import MainWindow

_TOPIC = "stock"


class StockCommands(QObject):
    """Ties the action that pastes a stock list to the window."""

    def __init__(self, window: MainWindow) -> None:
        super().__init__(window)
        self._window = window
        window.actions_.connect({"paste-stock": self.paste})

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
        workspace.take_stock(lines)
        if match.unclear:
            first, unclear = match.unclear[0].text, len(match.unclear)
            self._say("some-unclear", count=unclear, sizes=match.count, line=first)
        else:
            self._say("taken", count=match.count)

    def _say(self, code: str, **values: object) -> None:
        self._window.notice.say(self._window.words.wording.say(_TOPIC, code, **values))
