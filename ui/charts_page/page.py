"""The charts page: every file with its state, and one of them opened with its questions."""

from __future__ import annotations

from collections.abc import Sequence
from functools import partial

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QPalette
from PySide6.QtWidgets import QHBoxLayout, QLabel, QStackedWidget, QVBoxLayout, QWidget

from ui.charts_page.file_rows import file_rows
from ui.charts_page.file_table import FileTable
from ui.controls.empty_state import EmptyState
from ui.dress import Dress
from ui.file_states import WANTING
from ui.questions_page.case import Bench
from ui.questions_page.page import QuestionsPage
from ui.words import Words


class ChartsPage(QWidget):
    """The files, and the questions of the one that is open.

    Signals:
        wanted(str): do the action of this key.
        told(str): something to say in one sentence.
        turned(): another file or chart is open or chosen, or none.
    """

    wanted = Signal(str)
    told = Signal(str)
    turned = Signal()

    def __init__(
        self, words: Words, dress: Dress, bench: Bench, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self._words = words
        self._dress = dress
        self._bench = bench
        self._questions: QuestionsPage | None = None
        self._said: tuple[str, ...] = ()
        self._asked_place = ("", "")
        self.table = FileTable(words, dress, self)
        self.files = self.table.files
        self.summary = QLabel(self)
        self.empty = EmptyState(dress.type_.large, self)
        self.stack = QStackedWidget(self)
        self._build()
        self.show_files()

    def _build(self) -> None:
        self.empty.offer(
            [
                ("open-files", self._words("empty-open")),
                ("open-folder", self._words("empty-folder")),
                ("demo", self._words("empty-demo")),
            ]
        )
        self.empty.say(self._words("empty-title"), self._words("empty-body"))
        self.empty.pressed.connect(self.wanted)
        self.table.opened.connect(self.open_file)
        self.table.selectionModel().currentRowChanged.connect(self._row_chosen)
        px = self._dress.type_.px
        self.summary.setWordWrap(True)
        # A label smaller than its margins loses them when its style is set.
        self.summary.setMinimumHeight(px(33))
        self.summary.setContentsMargins(px(14), px(8), px(14), px(8))
        self.summary.setForegroundRole(QPalette.ColorRole.WindowText)
        files = QWidget(self.stack)
        column = QVBoxLayout(files)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        column.addWidget(self.summary)
        column.addWidget(self.table, 1)
        self._list = files
        self.stack.addWidget(self.empty)
        self.stack.addWidget(files)
        outer = QHBoxLayout(self)
        outer.setContentsMargins(0, 0, 0, 0)
        outer.addWidget(self.stack)

    @property
    def questions(self) -> QuestionsPage:
        """The page of one file, made when it is wanted first."""
        if self._questions is None:
            page = QuestionsPage(self._words, self._dress, self._bench, self.stack)
            page.wanted.connect(self._page_wants)
            page.told.connect(self.told)
            page.closing.turned.connect(self.turned)
            self.stack.addWidget(page)
            self._questions = page
        return self._questions

    @property
    def opened(self) -> str:
        """The name of the file that is open, "" where none is."""
        page = self._questions
        shown = page is not None and self.stack.currentWidget() is page
        return page.case.name if page is not None and shown and page.case is not None else ""

    @property
    def chosen(self) -> str:
        """The file that is open, else the one chosen in the list."""
        row = self.files.row(self.table.currentIndex().row())
        return self.opened or (row.file if row is not None else "")

    @property
    def chosen_chart(self) -> str:
        """The key of the chosen one of several charts of that file; "" for the whole file."""
        if self.opened:
            return self.questions.closing.chart
        row = self.files.row(self.table.currentIndex().row())
        return row.chart if row is not None else ""

    # What is shown

    def show_files(self) -> None:
        """Show the files as they stand, keeping the chosen one chosen where it is still there."""
        before = self.files.row(self.table.currentIndex().row())
        rows = file_rows(self._bench.workspace, self._words)
        self.files.show_rows(rows)
        self.table.choose(max(self.files.find(before.file, before.chart) if before else 0, 0))
        if self.opened and self.questions.refresh():
            self.turned.emit()
        else:
            self._show_list()

    def show_summary(self, sentences: Sequence[str]) -> None:
        """What the last drop gave, over the files."""
        self._said = tuple(sentences)
        self.summary.setText(" ".join(self._said))
        self.summary.setVisible(bool(self._said))

    def open_file(self, name: str, chart: str = "") -> None:
        """Show the questions of the file of this name; a slow one when it has been read.

        ``chart`` is the key of the chart that is approved or kept aside there.
        """
        if self.questions.acting.prepare(name, partial(self.open_file, name, chart)):
            return
        if self.questions.open_file(name, chart):
            self.table.choose(max(self.files.find(name, self.questions.closing.chart), 0))
            self.stack.setCurrentWidget(self.questions)
            self.questions.panel.list.setFocus(Qt.FocusReason.OtherFocusReason)
            self.turned.emit()
            file, place = self._asked_place
            self._asked_place = ("", "")
            if file == name:
                self.questions.show_place(place)

    def show_place(self, file: str, place: str) -> None:
        """Show one cell of one file."""
        self._asked_place = (file, place)
        self.open_file(file)

    def back(self) -> None:
        """Leave the open file."""
        self._show_list()
        self.table.setFocus(Qt.FocusReason.OtherFocusReason)

    def _show_list(self) -> None:
        self.stack.setCurrentWidget(self._list if self.files.rowCount() else self.empty)
        self.summary.setVisible(bool(self._said))
        self.turned.emit()

    def _row_chosen(self) -> None:
        if not self.opened:
            self.turned.emit()

    def _page_wants(self, key: str) -> None:
        if key == "back":
            self.back()
        else:
            self.wanted.emit(key)

    # What is done

    def approve(self) -> None:
        """Approve what is open, and go to what wants a person next: a chart, else a file."""
        name = self.opened
        if (
            not name
            or not self.questions.closing.approve()
            or self.questions.closing.go_to_wanting()
        ):
            return
        self.back()
        wanting = (
            at
            for at in range(self.files.rowCount())
            if (row := self.files.row(at)) is not None and row.state in WANTING and not row.chart
        )
        self.table.choose(next(wanting, max(self.files.find(name), 0)))
