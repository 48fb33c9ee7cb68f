"""The program with a screen: a frame at once, furnished after its first paint.

Only what the bare frame needs is imported here; the pages come with ``ui.desk``.
"""

from __future__ import annotations

import sys
from dataclasses import replace
from pathlib import Path

from PySide6.QtCore import QStandardPaths, Qt
from PySide6.QtWidgets import QApplication

from ui.frame import Frame
from ui.theme import Scheme, Theme

_NAME = "size-chart-harmonizer"
_SHARE_OF_SCREEN = 0.9


class Opening:
    """The frame on its way to a furnished window."""

    def __init__(self, application: QApplication, demo: bool, language: str | None = None) -> None:
        self._application = application
        self._demo = demo
        self._language = language
        self._furnished = False
        self.desk: object = None
        dark = application.styleHints().colorScheme() is Qt.ColorScheme.Dark
        self.frame = Frame(Theme(Scheme.DARK if dark else Scheme.LIGHT))
        self.frame.floor.painted.connect(self.furnish, Qt.ConnectionType.QueuedConnection)
        fill_screen(self.frame)

    def furnish(self) -> None:
        """Put the pages into the frame; a second call does nothing."""
        if self._furnished:
            return
        self._furnished = True
        from ui.desk import make_desk  # noqa: PLC0415 - the frame is painted before this costs
        from ui.faults import FaultTeller  # noqa: PLC0415 - the same
        from ui.preferences import read_preferences  # noqa: PLC0415 - the same

        kind = QStandardPaths.StandardLocation.AppConfigLocation
        file = Path(QStandardPaths.writableLocation(kind)) / "screen.json"
        chosen = read_preferences(file)
        if self._language is not None:
            chosen = replace(chosen, language=self._language)
        desk = make_desk(self._application, self.frame, chosen, file)
        self.desk = desk
        FaultTeller(desk.window).install()
        if self._demo:
            desk.commands.open_demo()


def open_window(demo: bool, language: str | None = None) -> int:
    """Open the window, on the demo scenario if ``demo``; returns when it is closed.

    ``language`` goes before what was chosen last; None follows that, or the desktop.
    """
    application = QApplication(sys.argv[:1])
    application.setApplicationName(_NAME)
    opening = Opening(application, demo, language)
    opening.frame.show()
    return application.exec()


def fill_screen(frame: Frame) -> None:
    """Most of the screen, in its middle."""
    room = frame.screen().availableGeometry()
    frame.resize(room.size() * _SHARE_OF_SCREEN)
    frame.move(room.center() - frame.rect().center())


def draw_pages(folder: Path) -> list[Path]:
    """Draw every page of the demo scenario into ``folder``, without a screen."""
    from ui.pictures import draw_all  # noqa: PLC0415 - only the pictures need it

    return draw_all(folder)
