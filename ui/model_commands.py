"""The action "model-facts": the form about a file's models, and its file beside the charts."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial
from pathlib import Path
from typing import cast

from PySide6.QtCore import QObject

from charts.model_facts import FactsFileError
from charts.writers.whole_file import NotWrittenError
from harmonizer.facts_form import Form
from ui.asking import Asker
from ui.main_window import MainWindow
from ui.model_form.dialog import ModelForm
from ui.model_form.facts_file import folder_forms, save_forms


class ModelCommands(QObject):
    """Opens the form, asks where its file goes, and reads that folder again.

    Attributes:
        asker: asks for files; tests put another one here.
        form: the open form, None while there is none.
    """

    def __init__(
        self, window: MainWindow, asker: Asker, read_again: Callable[[Path], None]
    ) -> None:
        super().__init__(window)
        self._window = window
        self._read_again = read_again
        self.asker = asker
        self.form: ModelForm | None = None
        window.actions_.connect({"model-facts": self.open_form})
        window.charts_turned.connect(self._show_what_may)
        self._show_what_may()

    def open_form(self) -> None:
        """The form about the models of the file that is open, or chosen in the list."""
        window = self._window
        file = window.workspace.contents.file(window.charts.chosen)
        if file is None:
            return
        try:
            held = folder_forms(file)
        except FactsFileError as fault:
            reason = fault.say(window.words.wording)
            self._tell("form-not-usable", line=fault.line, reason=reason)
            return
        except (OSError, UnicodeDecodeError):
            self._tell("form-not-opened")
            return
        self.form = ModelForm(held, window.words, window.dress, window.frame)
        self.form.wanted_save.connect(partial(self._ask_target, held.target))
        self.form.destroyed.connect(self._closed)
        self.form.open()

    def _closed(self) -> None:
        self.form = None

    def _ask_target(self, target: Path, forms: object) -> None:
        say = self._window.words.wording.say
        self.asker.target(
            say("questions", "form-title-save"),
            say("questions", "form-kinds"),
            str(target),
            partial(self._write, cast("list[Form]", forms)),
        )

    def _write(self, forms: list[Form], paths: list[Path]) -> None:
        if not paths:
            return
        try:
            save_forms(paths[0], forms)
        except NotWrittenError as fault:
            wording = self._window.words.wording
            said = wording.say("faces", fault.code, path=fault.path.name, reason=fault.reason)
            self._window.notice.say(said)
            return
        if self.form is not None:
            self.form.accept()
        self._tell("form-saved", path=paths[0].name)
        self._read_again(paths[0].parent)  # what is open there, with what stands beside it now

    def _tell(self, code: str, **values: object) -> None:
        window = self._window
        window.notice.say(window.words.wording.say("questions", code, **values))

    def _show_what_may(self) -> None:
        window = self._window
        here = window.page == "charts" and bool(window.charts.chosen)
        window.actions_["model-facts"].setEnabled(here)
