"""The program with a screen: one window over one workspace, and its pages drawn without one."""

from __future__ import annotations

import sys
from pathlib import Path

from PySide6.QtCore import QLocale
from PySide6.QtWidgets import QApplication

from harmonizer.workspace import Workspace
from ui import appearance
from ui.commands import Commands
from ui.dress import Dress
from ui.main_window import MainWindow
from ui.theme import Scheme, Theme
from ui.words import Words


def open_window(demo: bool) -> int:
    """Open the window, on the demo scenario if ``demo``; returns when it is closed."""
    application = QApplication(sys.argv[:1])
    window, commands = make_window(application, spoken())
    window.show()
    if demo:
        commands.open_demo()
    return application.exec()


def make_window(
    application: QApplication,
    language: str,
    scheme: Scheme | None = None,
    points: float = appearance.BASE_POINTS,
) -> tuple[MainWindow, Commands]:
    """The window and its commands, dressed but not shown."""
    appearance.load_fonts()
    type_ = appearance.fonts(points)
    theme = Theme(scheme or appearance.scheme_of(application))
    appearance.apply(application, theme, type_)
    window = MainWindow(Workspace(), Words(language), Dress.of(theme, type_))
    commands = Commands(window)
    window.resize(type_.px(1366), type_.px(768))
    window.fitting.readings.start()
    return window, commands


def spoken() -> str:
    """The language of the desktop, English where there are no sentences in it."""
    language = QLocale.system().name().partition("_")[0]
    return language if language == "de" else "en"


def draw_pages(folder: Path) -> list[Path]:
    """Draw every page of the demo scenario into ``folder``, without a screen."""
    from ui.pictures import draw_all  # noqa: PLC0415 - only the pictures need it

    return draw_all(folder)
