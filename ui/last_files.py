"""Which charts were open, kept from day to day: offered at the start, opened when wanted."""

from __future__ import annotations

import json
from collections.abc import Callable, Sequence
from pathlib import Path
from typing import Final

from PySide6.QtCore import QObject, QTimer

from charts.source_files import SourceFile
from charts.writers.whole_file import NotWrittenError
from ui.kept_file import keep, not_kept_words
from ui.main_window import MainWindow

FORMAT: Final = 1
FILE_NAME: Final = "open.json"


class LastFiles(QObject):
    """Keeps where the open files lie, and under which names. Nothing is opened unasked."""

    def __init__(
        self,
        window: MainWindow,
        file: Path | None,
        open_files: Callable[[Sequence[SourceFile]], None],
    ) -> None:
        super().__init__(window)
        self._window = window
        self._file = file
        self._open_files = open_files
        self._offered = ""
        self.last = read_last(file) if file is not None else ()
        self._wait = QTimer(self)
        self._wait.setSingleShot(True)
        self._wait.setInterval(0)
        self._wait.timeout.connect(self.keep)
        window.actions_.connect({"open-last": self.open})
        window.actions_["open-last"].setEnabled(bool(self.last))
        window.workspace.on_change.append(self._changed)
        self._offer()

    def open(self) -> None:
        """Open what was open when the program was closed, under the same names."""
        self._window.notice.hide()
        self._open_files(self.last)

    def keep(self) -> None:
        """Write where the open files lie; what cannot be written is said."""
        if self._file is None:
            return
        found = dict.fromkeys(file.source for file in self._window.workspace.files)
        files = [[str(one.path.absolute()), one.name] for one in found if one is not None]
        try:
            keep(self._file, {"format": FORMAT, "files": files})
        except NotWrittenError as fault:
            self._window.notice.say(not_kept_words(fault, self._window.words.wording))

    def _offer(self) -> None:
        window = self._window
        if self.last and window.notice.isHidden():
            says = window.words.wording.say("questions", "last-files", count=len(self.last))
            self._offered = says
            window.notice.say(says, window.words("open-them"), "open-last")

    def _changed(self, parts: frozenset[str]) -> None:
        if "charts" not in parts or self._file is None:
            return
        self._wait.start()
        if self._window.notice.says.text() == self._offered:
            self._window.notice.hide()  # something is open: the offer is past


def read_last(file: Path) -> tuple[SourceFile, ...]:
    """The files that were open; none where that is not known or cannot be understood."""
    try:
        saved = json.loads(file.read_text(encoding="utf-8"))
    except (OSError, ValueError):
        return ()
    if not isinstance(saved, dict) or saved.get("format") != FORMAT:
        return ()
    entries = saved.get("files")
    return tuple(
        SourceFile(Path(entry[0]), entry[1])
        for entry in (entries if isinstance(entries, list) else ())
        if isinstance(entry, list) and len(entry) == 2 and all(isinstance(x, str) for x in entry)
    )
