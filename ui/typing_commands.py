"""The action "type-chart": a chart typed from a picture, saved where a person says, and opened."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from pathlib import Path
from typing import cast

from PySide6.QtCore import QObject

from charts.writers.whole_file import NotWrittenError
from ui.asking import Asker
from ui.main_window import MainWindow
from ui.typed_chart.dialog import TypedChartDialog
from ui.typed_picture.typed_file import TypedChart, open_typed, save_typed

_PICTURES = frozenset({".png", ".jpg", ".jpeg", ".bmp", ".gif", ".webp"})


class TypingCommands(QObject):
    """Opens the grid: empty, or with the typed chart that is chosen in the list.

    Attributes:
        asker: asks for files; tests put another one here.
        dialog: what is being typed, None while nothing is.
    """

    def __init__(
        self, window: MainWindow, asker: Asker, open_paths: Callable[[Sequence[Path]], None]
    ) -> None:
        super().__init__(window)
        self._window = window
        self._open_paths = open_paths
        self._path: Path | None = None
        self.asker = asker
        self.dialog: TypedChartDialog | None = None
        window.actions_.connect({"type-chart": self.open_grid})

    def open_grid(self) -> None:
        """Type a chart; a typed one that is chosen is gone on with."""
        window = self._window
        file = window.workspace.contents.file(window.charts.chosen)
        self._path = file.path if file is not None and window.page == "charts" else None
        chart = open_typed(self._path) if self._path is not None else None
        if chart is None:
            chart, self._path = _new_chart(self._path), None
        self.dialog = TypedChartDialog(chart, window.words, window.dress, window.frame)
        self.dialog.wanted_picture.connect(self._ask_picture)
        self.dialog.wanted_save.connect(self._ask_target)
        self.dialog.destroyed.connect(self._closed)
        self.dialog.open()

    def _closed(self) -> None:
        self.dialog = None

    def _ask_picture(self) -> None:
        say = self._window.words.wording.say
        kinds = say("questions", "typed-picture-kinds")
        self.asker.files(say("questions", "typed-open-title"), kinds, self._picture_chosen)

    def _picture_chosen(self, paths: list[Path]) -> None:
        if paths and self.dialog is not None:
            self.dialog.show_picture(str(paths[0]))

    def _ask_target(self, chart: object) -> None:
        say = self._window.words.wording.say
        name = str(self._path) if self._path is not None else say("questions", "typed-name")

        def write(paths: list[Path]) -> None:
            self._write(cast("TypedChart", chart), paths)

        title, kinds = say("questions", "typed-save-title"), say("questions", "typed-kinds")
        self.asker.target(title, kinds, name, write)

    def _write(self, chart: TypedChart, paths: list[Path]) -> None:
        if not paths:
            return
        window = self._window
        try:
            save_typed(paths[0], chart)
        except NotWrittenError as fault:
            wording = window.words.wording
            said = wording.say("faces", fault.code, path=fault.path.name, reason=fault.reason)
            if self.dialog is not None:
                self.dialog.says.setText(said)
            return
        if self.dialog is not None:
            self.dialog.saved()
        window.show_page("charts")
        self._open_paths([paths[0]])


def _new_chart(chosen: Path | None) -> TypedChart:
    """An empty grid; beside a picture that is chosen in the list, that picture."""
    is_picture = chosen is not None and chosen.suffix.lower() in _PICTURES
    return TypedChart(picture=str(chosen) if is_picture else "")
