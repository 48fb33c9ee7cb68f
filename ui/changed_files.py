"""Files that change on the disk while they are open: said when the window is come back to."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import QEvent, QObject

from charts.sources import LoadedFile, digest_of
from ui.file_states import name_of
from ui.main_window import MainWindow

Stamp = tuple[int, int] | None
"""When a file was last written, in nanoseconds, and its size; None where it is not there."""


class ChangedFiles(QObject):
    """Looks at the open files whenever the window becomes the active one; changes nothing itself.

    Each change is told once; reading again is up to the person.
    """

    def __init__(self, window: MainWindow) -> None:
        super().__init__(window)
        self._window = window
        self._stamps: dict[Path, Stamp] = {}
        self._contents: dict[Path, tuple[str, ...]] = {}
        window.workspace.on_change.append(self._changed)
        window.frame.installEventFilter(self)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """The window was come back to."""
        if event.type() is QEvent.Type.WindowActivate and watched is self._window.frame:
            self.look()
        return super().eventFilter(watched, event)

    def look(self) -> None:
        """Say which files are not on the disk as they were read."""
        other = [file for file in self._window.workspace.files if self._is_other(file)]
        paths = {file.path: file for file in other if file.path is not None}
        if not paths:
            return
        for path in paths:
            self._stamps[path] = stamp_of(path)
        words = self._window.words
        first = name_of(next(iter(paths.values())).reading.file, words)
        says = words.wording.say("questions", "files-changed", count=len(paths), name=first)
        self._window.notice.say(says)

    def _is_other(self, file: LoadedFile) -> bool:
        if file.path is None or file.path not in self._stamps:
            return False
        now = stamp_of(file.path)
        if now == self._stamps[file.path]:
            return False
        return now is None or bool(file.inner) or digest_of(_bytes(file.path)) != file.digest

    def _changed(self, parts: frozenset[str]) -> None:
        """Remember how the files that came in lie on the disk; what is known already stays."""
        if "charts" not in parts:
            return
        contents: dict[Path, tuple[str, ...]] = {}
        for file in self._window.workspace.files:
            if file.path is not None:
                contents[file.path] = (*contents.get(file.path, ()), file.digest)
        self._stamps = {
            path: self._stamps[path] if self._contents.get(path) == held else stamp_of(path)
            for path, held in contents.items()
        }
        self._contents = contents


def stamp_of(path: Path) -> Stamp:
    """How a file lies on the disk now."""
    try:
        found = path.stat()
    except OSError:
        return None
    return found.st_mtime_ns, found.st_size


def _bytes(path: Path) -> bytes:
    try:
        return path.read_bytes()
    except OSError:
        return b""
