"""What is done on the questions page: every act becomes answers, taken by the workspace."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from functools import partial
from typing import cast

from PySide6.QtCore import QObject, Signal

from charts.answers import Act, Answer, Question
from charts.regions import SheetRegions
from charts.sheet import Addressing
from charts.sources import Progress
from harmonizer.shop.arrival import Arrival
from ui.file_states import maker_of
from ui.questions_page.case import Bench, Case, SheetShelf, read_with, read_without, today
from ui.questions_page.column_words import ColumnWord, column_words
from ui.questions_page.panes import SheetPane
from ui.questions_page.question_panel import QuestionPanel
from ui.questions_page.question_rows import answers_to
from ui.questions_page.table_acts import TableAct, act_at, reads
from ui.words import Words


class Acting(QObject):
    """Answers for the cell and the question that are chosen.

    Attributes:
        case: the file that is open, None while none is.

    Signals:
        told(str): something to say in one sentence.
    """

    told = Signal(str)

    def __init__(
        self, source: SheetPane, panel: QuestionPanel, words: Words, bench: Bench, shelf: SheetShelf
    ) -> None:
        super().__init__(panel)
        self._source = source
        self._panel = panel
        self._words = words
        self._bench = bench
        self._shelf = shelf
        self.case: Case | None = None

    def prepare(self, name: str, then: Callable[[], None]) -> bool:
        """Read a slow file beside the screen and go on with ``then``; false where nothing waits."""
        workspace, shelf = self._bench.workspace, self._shelf
        file, answers = workspace.contents.file(name), workspace.record(name).answers
        if file is None or shelf.holds(file, answers) or not shelf.is_slow(file):
            return False

        def beside(progress: Progress) -> object:
            progress(name, 0.2)
            return shelf.sheets(file, answers)

        def opened(result: object) -> None:
            del result
            then()

        says = self._words.wording.say("questions", "job-again")
        if not self._bench.operations.run(says, beside, opened):
            self.told.emit(self._words("job-busy"))
        return True

    def take_act(self, number: int) -> None:
        """Take one act of the chosen question for it and its equals."""
        row, case = self._panel.current, self.case
        if row is None or case is None or number >= len(row.acts):
            return
        by = self._bench.signature.name
        self._answer(answers_to(row, row.acts[number].choice, case.reading, by, today()))

    def take_back(self) -> None:
        """Take the answers of the chosen row back, whenever they were given."""
        row, case = self._panel.current, self.case
        if row is not None and case is not None and row.given:
            workspace, shelf = self._bench.workspace, self._shelf
            self._read(partial(read_without, workspace, case.name, row.given, shelf))

    def type_cell(self, text: str) -> None:
        """The chosen cell reads so."""
        at, one = self._here()
        act = reads(one, at, text) if one is not None and at is not None else None
        if act is None:
            self.told.emit(self._words.wording.say("questions", "nothing-to-correct"))
            return
        row = self._panel.current
        framed = self._source.view.framed
        current = self._source.view.currentIndex()
        about = (current.row(), current.column()) in framed and row is not None and row.is_open
        self._say(act, row.questions[0] if row is not None and about else None)

    def take_table_act(self, key: str) -> None:
        """Do one act of the table's menu at the cell the keyboard is on."""
        at, one = self._here()
        act = act_at(TableAct(key), one, at) if one is not None and at is not None else None
        if act is None:
            self.told.emit(self._words.wording.say("questions", "not-here"))
            return
        self._say(act, None)

    def _column_words(self) -> tuple[ColumnWord, ...]:
        at, one = self._here()
        if at is None or one is None or self.case is None:
            return ()
        lines = one.sheet.addressing is Addressing.LINE
        printed = one.sheet.text(*at).strip() if lines else ""
        place = one.sheet.place(*at)
        return column_words(self.case.reading.charts, place, self._words.wording, printed)

    def column_texts(self) -> list[str]:
        """What may be said of the column of the chosen cell."""
        return [word.text for word in self._column_words()]

    def take_column_word(self, number: int) -> None:
        """Say of the whole column what was chosen for it."""
        offered = self._column_words()
        if 0 <= number < len(offered):
            self._say(offered[number].act, None)

    def note_reply(self, text: str) -> None:
        """Keep what the maker answered with the chosen question and its equals."""
        row, case = self._panel.current, self.case
        if row is None or case is None:
            return
        by = maker_of(case.file)
        for question in row.questions:
            self._bench.workspace.replied(case.name, question, text, by, today())

    def _here(self) -> tuple[tuple[int, int] | None, SheetRegions | None]:
        """The chosen cell of the sheet, and the sheet."""
        case, view = self.case, self._source.view
        index, shape = view.currentIndex(), view.cells.shape
        if case is None or shape is None or not index.isValid():
            return None, None
        return shape.there(index.row(), index.column()), case.sheets[self._source.number]

    def _say(self, act: Act, about: Question | None) -> None:
        self._answer((Answer(act, self._bench.signature.name, today(), about),))

    def _answer(self, answers: Sequence[Answer]) -> None:
        """Take one act."""
        if self.case is not None and answers:
            workspace, shelf = self._bench.workspace, self._shelf
            self._read(partial(read_with, workspace, self.case.name, answers, shelf))

    def _read(self, work: Callable[[], Arrival]) -> None:
        """Read the file again: at once, or beside the screen where reading takes long."""
        case, bench = self.case, self._bench
        if case is None:
            return
        if not self._shelf.is_slow(case.file):
            bench.workspace.take(work())
            return

        def beside(progress: Progress) -> object:
            progress(case.name, 0.2)
            return work()

        says = self._words.wording.say("questions", "job-again")
        if not bench.operations.run(says, beside, self._taken):
            self.told.emit(self._words("job-busy"))

    def _taken(self, result: object) -> None:
        self._bench.workspace.take(cast("Arrival", result))
