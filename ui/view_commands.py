"""How the screen looks, chosen from the view menu; and the two pages of words under help."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import replace
from functools import partial
from pathlib import Path
from typing import Final

from PySide6.QtCore import QObject, Qt
from PySide6.QtWidgets import QApplication, QDialog, QTextBrowser, QVBoxLayout

from charts.writers.whole_file import NotWrittenError
from harmonizer.cautions import cautions_for
from ui import appearance
from ui.drawing.row_shape import Density
from ui.dress import Dress
from ui.kept_file import not_kept_words
from ui.keys_page import keys_page
from ui.main_window import MainWindow
from ui.preferences import LEAST_POINTS, MOST_POINTS, Preferences, write_preferences
from ui.theme import Scheme, Theme

_STEP: Final = 1.0


class ViewCommands(QObject):
    """Ties the view and help actions to the window, and keeps what was chosen."""

    def __init__(
        self,
        window: MainWindow,
        application: QApplication,
        preferences: Preferences,
        file: Path | None,
    ) -> None:
        super().__init__(window)
        self._window = window
        self._application = application
        self._file = file
        self.preferences = preferences
        self._dialog: QDialog | None = None
        window.actions_.connect(self._slots())
        window.give_reasons(preferences.reasons)
        window.reasons_pulled.connect(self._keep_reasons)
        self._check()
        application.styleHints().colorSchemeChanged.connect(self._desktop_changed)

    def _slots(self) -> dict[str, Callable[[], None]]:
        slots: dict[str, Callable[[], None]] = {
            "larger": self.larger,
            "smaller": self.smaller,
            "scheme-system": partial(self._set_scheme, None),
            "cautions": self.show_cautions,
            "keys": self.show_keys,
        }
        for scheme in (Scheme.LIGHT, Scheme.DARK, Scheme.FORCED):
            slots[f"scheme-{scheme.value}"] = partial(self._set_scheme, scheme)
        for density in Density:
            slots[f"rows-{density.value}"] = partial(self._set_density, density)
        return slots

    def larger(self) -> None:
        """One step more text."""
        points = min(self.preferences.points + _STEP, MOST_POINTS)
        self._choose(replace(self.preferences, points=points))

    def smaller(self) -> None:
        """One step less text."""
        points = max(self.preferences.points - _STEP, LEAST_POINTS)
        self._choose(replace(self.preferences, points=points))

    def show_cautions(self) -> None:
        """Every caution of the sheet, in full."""
        words = self._window.words
        rider = self._window.fitting.readings.draft.rider()
        self._show(words("title-cautions"), cautions_for(rider, words.wording))

    def show_keys(self) -> None:
        """Every key: those of the menus, then those that work at one place only."""
        table = self._window.charts.questions.keys.table_actions
        page = keys_page(self._window.actions_, table, self._window.words)
        self._open(self._window.words.wording.say("keys", "title")).setHtml(page)

    def _show(self, title: str, lines: Sequence[str]) -> None:
        self._open(title).setPlainText("\n\n".join(lines))

    def _open(self, title: str) -> QTextBrowser:
        """A window of words, empty; the one before it goes."""
        if self._dialog is not None:
            self._dialog.close()
        dialog = QDialog(self._window.frame)
        dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        dialog.destroyed.connect(self._closed)
        dialog.setWindowTitle(title)
        text = QTextBrowser(dialog)
        text.setAccessibleName(title)
        column = QVBoxLayout(dialog)
        column.addWidget(text)
        px = self._window.dress.type_.px
        dialog.resize(px(620), px(440))
        self._dialog = dialog
        dialog.open()
        return text

    def _closed(self) -> None:
        self._dialog = None

    def _set_scheme(self, scheme: Scheme | None) -> None:
        self._choose(replace(self.preferences, scheme=scheme))

    def _set_density(self, density: Density) -> None:
        self._choose(replace(self.preferences, density=density))

    def _desktop_changed(self) -> None:
        if self.preferences.scheme is None:
            self._wear()

    def _choose(self, preferences: Preferences) -> None:
        if preferences == self.preferences:
            return
        self.preferences = preferences
        self._wear()
        self._check()
        self._keep()

    def _keep_reasons(self, height: float | None) -> None:
        """A height that was pulled is kept without dressing anything anew."""
        self.preferences = replace(self.preferences, reasons=height)
        self._keep()

    def _keep(self) -> None:
        if self._file is None:
            return
        try:
            write_preferences(self._file, self.preferences)
        except NotWrittenError as fault:
            self._window.notice.say(not_kept_words(fault, self._window.words.wording))

    def _wear(self) -> None:
        chosen = self.preferences
        theme = Theme(chosen.scheme or appearance.scheme_of(self._application))
        type_ = appearance.fonts(chosen.points)
        appearance.apply(self._application, theme, type_)
        self._window.wear(Dress.of(theme, type_, chosen.density))

    def _check(self) -> None:
        scheme = self.preferences.scheme
        actions = self._window.actions_
        actions[f"scheme-{scheme.value if scheme else 'system'}"].setChecked(True)
        actions[f"rows-{self.preferences.density.value}"].setChecked(True)
