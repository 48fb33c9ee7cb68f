"""Ties the shop's figures to the window: the action, the file they are kept in, what failed."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import QObject

from charts.writers.whole_file import NotWrittenError
from harmonizer.settings_file import SettingsFile
from ui.main_window import MainWindow


class SettingsDesk(QObject):
    """Reads the figures once and writes them whenever they change, by a person or by undo."""

    def __init__(self, window: MainWindow, path: Path | None) -> None:
        super().__init__(window)
        self._window = window
        self._file: SettingsFile | None = None
        window.actions_.connect({"page-settings": self.show})
        if path is not None:
            self.keep_in(path)
        window.workspace.on_change.append(self._changed)

    def keep_in(self, path: Path) -> None:
        """Take the figures of another file, and keep changes there from now on."""
        window = self._window
        file = SettingsFile(path)
        opened = file.read(window.words.wording)
        window.keep_settings_in(path)
        self._file = None
        window.workspace.open_settings(opened.settings)
        self._file = file
        if opened.refused:
            window.notice.say(opened.refused)

    def show(self) -> None:
        """Bring the page to the front, the keyboard on its first figure."""
        self._window.show_page("settings")
        self._window.settings.start()

    def _changed(self, parts: frozenset[str]) -> None:
        if "settings" not in parts or self._file is None:
            return
        wording = self._window.words.wording
        try:
            self._file.write(self._window.workspace.settings, wording)
        except NotWrittenError as fault:
            said = wording.say("faces", fault.code, path=fault.path.name, reason=fault.reason)
            self._window.notice.say(said)
