"""The program with a screen: one window over one workspace, and its pages drawn without one."""

from __future__ import annotations

import sys
from dataclasses import dataclass
from pathlib import Path
from typing import Final

from PySide6.QtCore import QLocale, QStandardPaths, QTimer
from PySide6.QtWidgets import QApplication

from harmonizer.workspace import Workspace
from ui import appearance
from ui.commands import Commands
from ui.dress import Dress
from ui.main_window import MainWindow
from ui.preferences import Preferences, read_preferences
from ui.sheet_commands import SheetCommands
from ui.theme import Theme
from ui.view_commands import ViewCommands
from ui.words import Words

_NAME: Final = "size-chart-harmonizer"
_SHARE_OF_SCREEN: Final = 0.9


@dataclass(frozen=True, slots=True)
class Desk:
    """A window with everything that is tied to it."""

    window: MainWindow
    commands: Commands
    sheet: SheetCommands
    view: ViewCommands


def open_window(demo: bool) -> int:
    """Open the window, on the demo scenario if ``demo``; returns when it is closed."""
    application = QApplication(sys.argv[:1])
    application.setApplicationName(_NAME)
    file = Path(QStandardPaths.writableLocation(QStandardPaths.StandardLocation.AppConfigLocation))
    desk = make_desk(application, read_preferences(file / "screen.json"), file / "screen.json")
    fill_screen(desk.window)
    desk.window.show()
    if demo:
        QTimer.singleShot(0, desk.commands.open_demo)
    return application.exec()


def make_desk(
    application: QApplication, preferences: Preferences, file: Path | None = None
) -> Desk:
    """The window and its commands, dressed but not shown; choices are kept in ``file``."""
    appearance.load_fonts()
    type_ = appearance.fonts(preferences.points)
    theme = Theme(preferences.scheme or appearance.scheme_of(application))
    appearance.apply(application, theme, type_)
    words = Words(preferences.language or spoken())
    window = MainWindow(Workspace(), words, Dress.of(theme, type_, preferences.density))
    commands = Commands(window)
    desk = Desk(
        window,
        commands,
        SheetCommands(window, commands.asker),
        ViewCommands(window, application, preferences, file),
    )
    window.fitting.readings.start()
    return desk


def fill_screen(window: MainWindow) -> None:
    """Most of the screen, in its middle."""
    room = window.screen().availableGeometry()
    size = room.size() * _SHARE_OF_SCREEN
    window.resize(size)
    window.move(room.center() - window.rect().center())


def spoken() -> str:
    """The language of the desktop, English where there are no sentences in it."""
    language = QLocale.system().name().partition("_")[0]
    return language if language == "de" else "en"


def draw_pages(folder: Path) -> list[Path]:
    """Draw every page of the demo scenario into ``folder``, without a screen."""
    from ui.pictures import draw_all  # noqa: PLC0415 - only the pictures need it

    return draw_all(folder)
