"""A furnished window: the frame with its pages, and the commands that are tied to it."""

from __future__ import annotations

import gc
from dataclasses import dataclass
from pathlib import Path

from PySide6.QtCore import QLocale
from PySide6.QtWidgets import QApplication

from charts.wording import LANGUAGES
from harmonizer.settings_file import FILE_NAME as SETTINGS_NAME
from harmonizer.workspace import Workspace
from ui import appearance
from ui.changed_files import ChangedFiles
from ui.chart_commands import ChartCommands
from ui.commands import Commands
from ui.dress import Dress
from ui.frame import Frame
from ui.last_files import FILE_NAME as LAST_NAME
from ui.last_files import LastFiles
from ui.main_window import MainWindow
from ui.model_commands import ModelCommands
from ui.preferences import Preferences
from ui.qt_language import speak
from ui.questions_page.signature import FILE_NAME
from ui.settings_desk import SettingsDesk
from ui.sheet_commands import SheetCommands
from ui.shop_keeping import FOLDER_NAME, ShopKeeping
from ui.stock_commands import StockCommands
from ui.theme import Theme
from ui.typing_commands import TypingCommands
from ui.view_commands import ViewCommands
from ui.wall_sheet.editions_file import BOOK_NAME
from ui.wall_sheet.wall_commands import WallCommands
from ui.words import Words


@dataclass(frozen=True, slots=True)
class Desk:
    """A window with everything that is tied to it."""

    frame: Frame
    window: MainWindow
    commands: Commands
    sheet: SheetCommands
    view: ViewCommands
    wall: WallCommands
    chart: ChartCommands
    models: ModelCommands
    typing: TypingCommands
    shop: ShopKeeping
    settings: SettingsDesk
    last: LastFiles
    stock: StockCommands
    changed: ChangedFiles


def make_desk(
    application: QApplication, frame: Frame, preferences: Preferences, file: Path | None = None
) -> Desk:
    """Furnish ``frame``; what is chosen for the screen later is kept in ``file``."""
    appearance.load_fonts()
    type_ = appearance.fonts(preferences.points)
    theme = Theme(preferences.scheme or appearance.scheme_of(application))
    appearance.apply(application, theme, type_)
    frame.setWindowIcon(appearance.window_icon())
    words = Words(preferences.language or spoken())
    speak(application, words.wording.language)
    window = MainWindow(frame, Workspace(), words, Dress.of(theme, type_, preferences.density))
    if file is not None:
        window.signature.keep_in(file.with_name(FILE_NAME))
    commands = Commands(window)
    desk = Desk(
        frame,
        window,
        commands,
        SheetCommands(window, commands.asker),
        ViewCommands(window, application, preferences, file),
        WallCommands(window, commands.asker, file.with_name(BOOK_NAME) if file else None),
        ChartCommands(window, commands.asker),
        ModelCommands(window, commands.asker, commands.read_again),
        TypingCommands(window, commands.asker, commands.open_paths),
        ShopKeeping(window, file.with_name(FOLDER_NAME) if file else None),
        SettingsDesk(window, file.with_name(FOLDER_NAME) / SETTINGS_NAME if file else None),
        LastFiles(window, file.with_name(LAST_NAME) if file else None, commands.open_files),
        StockCommands(window),
        ChangedFiles(window),
    )
    window.fitting.readings.start()
    settle_memory()
    return desk


def settle_memory() -> None:
    """Leave what is there for good out of every later collection.

    A full collection over all that starting made costs more than a display frame; what it could
    free is nothing, as modules and widgets stay until the end.
    """
    gc.collect()
    gc.freeze()


def spoken() -> str:
    """The language of the desktop, English where there are no sentences in it."""
    language = QLocale.system().name().partition("_")[0]
    return language if language in LANGUAGES else LANGUAGES[0]
