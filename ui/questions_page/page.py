"""The questions page: one file as it came, as it was understood, and what a person must say."""

from __future__ import annotations

from functools import partial
from typing import Final

from PySide6.QtCore import Qt, QTimer, Signal
from PySide6.QtGui import QResizeEvent, QShowEvent
from PySide6.QtWidgets import QHBoxLayout, QSplitter, QVBoxLayout, QWidget

from charts.corrections import Correction
from charts.day_words import day_words
from charts.places import cells_at
from charts.writers.whole_file import NotWrittenError
from ui.dress import Dress
from ui.kept_file import not_kept_words
from ui.questions_page.acting import Acting
from ui.questions_page.case import Bench, Case, SheetShelf, case_of
from ui.questions_page.chart_choice import chart_states
from ui.questions_page.closing import Closing
from ui.questions_page.head import Head
from ui.questions_page.page_keys import PageKeys
from ui.questions_page.panes import SheetPane, UnderstoodPane
from ui.questions_page.picture_pane import PicturePane
from ui.questions_page.question_panel import QuestionPanel
from ui.questions_page.question_rows import QuestionRow, question_rows
from ui.questions_page.source_shape import cells_asked
from ui.questions_page.understood import understood
from ui.typed_picture.typed_file import open_typed
from ui.words import Words

_PANEL: Final = 392
_SHARE_BESIDE: Final = 0.58
_BESIDE: Final = 1500
"""From this width, in pixels at a line of 16, the two tables stand side by side."""


class QuestionsPage(QWidget):
    """Shows one file; every act goes through the workspace and can be taken back there.

    Signals:
        wanted(str): do the action of this key; "back" leads to the files.
        told(str): something to say in one sentence.
    """

    wanted = Signal(str)
    told = Signal(str)

    def __init__(
        self, words: Words, dress: Dress, bench: Bench, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self._words = words
        self._dress = dress
        self._bench = bench
        self._shelf = SheetShelf()
        self.head = Head(words, dress, self)
        self.source = SheetPane(words, dress, self._correction_words, self)
        self.picture = PicturePane(words, dress, self)
        self.understood = UnderstoodPane(words, dress, self)
        self.panel = QuestionPanel(words, dress, self)
        self.acting = Acting(self.source, self.panel, words, bench, self._shelf)
        self.closing = Closing(self.head, self.panel, words, bench)
        self._lay()
        self.keys = PageKeys(self, words, self.source.table_button)
        self._connect()

    def _lay(self) -> None:
        px = self._dress.type_.px
        self._tables = QSplitter(Qt.Orientation.Vertical, self)
        self._sources = QSplitter(Qt.Orientation.Horizontal, self._tables)
        self._sources.addWidget(self.picture)
        self._sources.addWidget(self.source)
        self._sources.setHandleWidth(px(5))
        self._sources.setSizes([px(340), px(640)])
        self._tables.addWidget(self._sources)
        self._tables.addWidget(self.understood)
        self._tables.setChildrenCollapsible(False)
        self._tables.setHandleWidth(px(5))
        self.panel.setFixedWidth(px(_PANEL))
        row = QHBoxLayout()
        row.setSpacing(0)
        row.addWidget(self._tables, 1)
        row.addWidget(self.panel)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        column.addWidget(self.head)
        column.addLayout(row, 1)

    def _connect(self) -> None:
        self.head.wanted.connect(self.wanted)
        self.head.signed.connect(self._sign)
        self.panel.chosen.connect(self._frame)
        self.panel.act_taken.connect(self.acting.take_act)
        self.panel.took_back.connect(self.acting.take_back)
        self.panel.typed.connect(self.acting.type_cell)
        self.panel.replied.connect(self.acting.note_reply)
        self.acting.told.connect(self.told)
        self.closing.wanted_place.connect(self._show_chart)
        self.source.view.went.connect(self._cell_chosen)
        self.source.view.marked.connect(self.picture.show_cells)
        self.picture.picked.connect(self._picked_on_picture)
        self.source.sheet_picked.connect(self._show_sheet)
        self.understood.view.went.connect(self.show_place)
        self.keys.table_act.connect(self.acting.take_table_act)
        self.keys.back.connect(self._leave)
        self.keys.type_cell.connect(self.panel.start_typing)
        self.keys.opening.connect(self._offer_column_words)
        self.keys.column_word.connect(self.acting.take_column_word)
        self.source.view.menu_wanted.connect(self.keys.popup)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Side by side where there is room, else one above the other."""
        super().resizeEvent(event)
        wide = self.width() >= self._dress.type_.px(_BESIDE)
        way = Qt.Orientation.Horizontal if wide else Qt.Orientation.Vertical
        if self._tables.orientation() is not way:
            self._tables.setOrientation(way)
            room = self._tables.width() if wide else self._tables.height()
            share = _SHARE_BESIDE if wide else 0.5
            self._tables.setSizes([round(room * share), round(room * (1 - share))])

    def _offer_column_words(self) -> None:
        self.keys.offer(self.acting.column_texts())

    def _leave(self) -> None:
        """Leave the line first, then the file."""
        if self.panel.line.edit.hasFocus():
            current = self.source.view.currentIndex()
            self._cell_chosen(current.row(), current.column())
            self.panel.list.setFocus(Qt.FocusReason.OtherFocusReason)
        else:
            self.wanted.emit("back")

    @property
    def case(self) -> Case | None:
        """The file that is open."""
        return self.acting.case

    # What is shown

    def showEvent(self, event: QShowEvent) -> None:
        """Frame again once there is room: what was framed before had none."""
        super().showEvent(event)
        QTimer.singleShot(0, self, self._settle)

    def _settle(self) -> None:
        self.source.view.go_home()
        self.source.view.show_framed()

    def _sign(self, name: str) -> None:
        try:
            self._bench.signature.sign(name)
        except NotWrittenError as fault:
            self.told.emit(not_kept_words(fault, self._words.wording))

    def open_file(self, name: str, chart: str = "") -> bool:
        """Show the file of this name, or one of its charts; false where there is none."""
        case = case_of(self._bench.workspace, name, self._shelf)
        if case is None:
            return False
        self.acting.case, self.closing.chart = None, chart
        self._show(case)
        self.closing.go_to_chart()
        self.panel.list.setFocus(Qt.FocusReason.OtherFocusReason)
        return True

    def refresh(self) -> bool:
        """Show the file as it stands now; false where it is gone."""
        if self.case is None:
            return False
        case = case_of(self._bench.workspace, self.case.name, self._shelf)
        if case is None:
            self.acting.case = None
            return False
        self._show(case)
        return True

    def _show(self, case: Case) -> None:
        again = self.case is not None
        self.acting.case = case
        workspace = self._bench.workspace
        stage = partial(workspace.stage, case.name)
        self.closing.show(case)
        self.picture.show_chart(open_typed(case.file.path) if case.file.path else None)
        self.source.show_sheets(case.sheets, self._open_places(case), again=again)
        given = workspace.record(case.name).answers
        self.panel.show_rows(question_rows(case.reading, stage, self._words.wording, given))
        self._show_sheet(self.source.number)
        self._frame(self.panel.current)

    def _show_chart(self, place: str) -> None:
        self.show_place(place, corner=True)
        self.understood.view.go_to(place)

    def _open_places(self, case: Case) -> frozenset[str]:
        """The names of the sheets on which a question stands."""
        asked = [one for one in case.reading.findings if one.level.value == "question"]
        return frozenset(
            one.sheet.name
            for one in case.sheets
            for finding in asked
            if cells_asked(finding, one.sheet, case.reading)
        )

    def _show_sheet(self, number: int) -> None:
        case = self.case
        if case is None or not 0 <= number < len(case.sheets):
            self.source.show_sheet(None, ())
            self.panel.show_cell("", "")
            self.understood.view.show_rows(())
            return
        one = case.sheets[number]
        asked = [each for each in case.reading.findings if each.level.value == "question"]
        cells = [at for each in asked for at in cells_asked(each, one.sheet, case.reading)]
        self.source.show_sheet(one, cells)
        open_ = frozenset(each.id for each in asked)
        states = chart_states(case, self._bench.workspace.record(case.name), self._words)
        shown = understood(case.charts_of(one), open_, self._words.wording, states)
        self.understood.view.show_rows(shown)

    def _frame(self, row: QuestionRow | None) -> None:
        """Bring what a question is about into sight."""
        case = self.case
        if case is None or row is None:
            self.source.view.frame_cells(())
            return
        if not row.findings and row.place:
            self.show_place(row.place)
            return
        for number in self._sheets_from_here(case):
            one = case.sheets[number]
            cells = [
                at for each in row.findings for at in cells_asked(each, one.sheet, case.reading)
            ]
            if cells:
                self._go_to_sheet(number)
                self.source.view.frame_cells(cells)
                return
        self.source.view.frame_cells(())

    def _sheets_from_here(self, case: Case) -> list[int]:
        here = self.source.number
        return sorted(range(len(case.sheets)), key=lambda number: number != here)

    def _go_to_sheet(self, number: int) -> None:
        if number != self.source.number:
            self.source.pick(number)
            self._show_sheet(number)

    def show_place(self, place: str, *, corner: bool = False) -> None:
        """Frame the cells at one place of the source, or only the first of them."""
        for number, one in enumerate(self.case.sheets if self.case else ()):
            cells = cells_at(one.sheet, place)
            if cells:
                self._go_to_sheet(number)
                self.source.view.frame_cells(cells[:1] if corner else cells)
                return

    def _picked_on_picture(self, at: tuple[int, int]) -> None:
        """Frame the cell that was pressed on the picture."""
        self.source.view.frame_cells([at])
        self.source.view.setFocus(Qt.FocusReason.MouseFocusReason)

    def _cell_chosen(self, row: int, column: int) -> None:
        model = self.source.view.cells
        cell = model.cell(row, column)
        self.panel.show_cell(model.place(row, column) if cell else "", cell.text if cell else "")

    def _correction_words(self, correction: Correction) -> str:
        wording = self._words.wording
        day = day_words(correction.on, wording) if correction.on else ""
        return wording.say(
            "questions", "corrected", printed=correction.printed, text=correction.text,
            by=correction.by, day=day,
        )  # fmt: skip
