"""What the actions of the menu "chart" do: approve, keep aside, write to the maker."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial
from pathlib import Path

from PySide6.QtCore import QObject
from PySide6.QtGui import QGuiApplication

from charts.answers import Question
from charts.sources import LoadedFile
from charts.wording import LANGUAGES, Wording
from charts.writers.letter import Letter, letter_text
from charts.writers.letter_page import letter_page
from charts.writers.whole_file import NotWrittenError, write_whole
from harmonizer.shop.letters import letter_about
from harmonizer.shop.season import FileState, State, key_of
from ui.asking import Asker
from ui.file_states import name_of, open_count
from ui.main_window import MainWindow
from ui.questions_page.case import today

_TEXT_ENDING = ".txt"


class ChartCommands(QObject):
    """Ties the actions to the file that is open, or chosen in the list.

    Attributes:
        asker: asks for files; tests put another one here.
    """

    def __init__(self, window: MainWindow, asker: Asker) -> None:
        super().__init__(window)
        self._window = window
        self.asker = asker
        slots: dict[str, Callable[[], None]] = {
            "approve": self.approve,
            "keep-aside": self.keep_aside,
            "reopen": self.reopen,
            "leave-out": self.leave_out,
            "next-chart": partial(self._step, 1),
            "chart-before": partial(self._step, -1),
        }
        for language in LANGUAGES:
            slots[f"letter-{language}"] = partial(self.copy_letter, language)
            slots[f"letter-page-{language}"] = partial(self.ask_letter, language)
        window.actions_.connect(slots)
        window.charts_turned.connect(self._show_what_may)
        self._show_what_may()

    @property
    def _file(self) -> LoadedFile | None:
        return self._window.workspace.contents.file(self._window.charts.chosen)

    def approve(self) -> None:
        """Approve the open file, or the chosen one of its charts."""
        self._window.charts.approve()

    def keep_aside(self) -> None:
        """Keep the file, or one of its charts, from being compared and printed."""
        file, window = self._file, self._window
        if file is not None:
            name, chart = file.reading.file, window.charts.chosen_chart
            window.workspace.keep_aside(name, window.signature.name, today(), chart)

    def reopen(self) -> None:
        """Take approval or keeping aside back from the file, or from one of its charts."""
        file, window = self._file, self._window
        if file is not None:
            window.workspace.reopen(file.reading.file, window.charts.chosen_chart)

    def leave_out(self) -> None:
        """Take the file off the list; what was said of it stays for when it comes again."""
        file, window = self._file, self._window
        if file is not None:
            name = file.reading.file
            window.workspace.leave_out(name)
            self._say("left-out", file=name_of(name, window.words))

    def _step(self, by: int) -> None:
        self._window.charts.questions.head.charts.step(by)

    # Letters

    def copy_letter(self, language: str) -> None:
        """Put the letter on the clipboard, and note that its questions were sent today."""
        letter, file = self._letter(), self._file
        if letter is None or file is None:
            return
        QGuiApplication.clipboard().setText(letter_text(letter, Wording(language)))
        self._mark_sent(file, letter)
        self._say("letter-copied", file=name_of(file.reading.file, self._window.words))

    def ask_letter(self, language: str) -> None:
        """Ask where the letter goes, and write it there."""
        letter, file = self._letter(), self._file
        if letter is None or file is None:
            return
        say = self._window.words.wording.say
        stem = Path(letter.file).stem
        self.asker.target(
            say("questions", "title-letter"),
            say("questions", "letter-kinds"),
            say("questions", "letter-name", file=stem),
            partial(self._write, letter, file, language),
        )

    def _letter(self) -> Letter | None:
        """The letter about what is open; says so where nothing is."""
        file, window = self._file, self._window
        if file is None:
            self._say("no-file")
            return None
        answers = window.workspace.record(file.reading.file).answers
        letter = letter_about(file, answers, today(), signed=window.signature.name)
        if not letter.points:
            self._say("letter-none")
            return None
        return letter

    def _write(self, letter: Letter, file: LoadedFile, language: str, paths: list[Path]) -> None:
        if not paths:
            return
        wording, path = Wording(language), paths[0]
        plain = path.suffix.lower() == _TEXT_ENDING
        data = letter_text(letter, wording).encode() if plain else letter_page(letter, wording)
        try:
            write_whole(path, data)
        except NotWrittenError as fault:
            said = {"path": fault.path.name, "reason": fault.reason}
            window = self._window
            window.notice.say(window.words.wording.say("faces", fault.code, **said))
            return
        self._mark_sent(file, letter)
        self._say("letter-written", path=path.name)

    def _mark_sent(self, file: LoadedFile, letter: Letter) -> None:
        questions = [Question.of(point.finding) for point in letter.points]
        self._window.workspace.sent(file.reading.file, questions, today())

    def _say(self, code: str, **values: object) -> None:
        window = self._window
        window.notice.say(window.words.wording.say("questions", code, **values))

    # What may be done now

    def _show_what_may(self) -> None:
        window, file = self._window, self._file
        here = window.page == "charts" and file is not None
        state = window.workspace.state(file.reading.file) if file is not None else None
        asked = open_count(state) if state is not None else 0
        closed = state is not None and self._closed(state)
        opened = bool(window.charts.opened)
        actions = window.actions_
        several = state is not None and len(state.charts) > 1
        actions["approve"].setEnabled(
            here and opened and not closed and state is not None and bool(state.charts)
        )
        actions["keep-aside"].setEnabled(here and not closed)
        actions["reopen"].setEnabled(here and closed)
        actions["leave-out"].setEnabled(here)
        for key in ("next-chart", "chart-before"):
            actions[key].setEnabled(here and opened and several)
        for language in LANGUAGES:
            actions[f"letter-{language}"].setEnabled(here and asked > 0)
            actions[f"letter-page-{language}"].setEnabled(here and asked > 0)

    def _closed(self, state: FileState) -> bool:
        """Whether what the acts bear on, the file or one of its charts, is decided."""
        chart = self._window.charts.chosen_chart
        states = [one.state for one in state.charts if chart and key_of(one.chart) == chart]
        return next(iter(states), state.state) in (State.APPROVED, State.ASIDE)
