"""Type a chart: the picture left, the grid right, what the grammar says of it below."""

from __future__ import annotations

from functools import partial
from typing import Final

from PySide6.QtCore import QModelIndex, Qt, QTimer, Signal
from PySide6.QtWidgets import (
    QAbstractItemView,
    QDialog,
    QHBoxLayout,
    QLabel,
    QListView,
    QSplitter,
    QTableView,
    QVBoxLayout,
    QWidget,
)

from charts.importer import read_bytes
from charts.places import rectangle_of
from harmonizer.shop.season import FileRecord, stage_of
from ui.controls.buttons import FlatButton
from ui.dress import Dress
from ui.questions_page.question_model import QuestionDelegate, QuestionModel
from ui.questions_page.question_rows import question_rows
from ui.typed_chart.grid_model import GridModel
from ui.typed_picture.picture_view import PictureView
from ui.typed_picture.typed_file import ENDING, Spot, TypedChart
from ui.words import Words

_CHECK_AFTER: Final = 250
"""How long typing has to rest before it is checked, in milliseconds."""


class TypedChartDialog(QDialog):
    """A chart as it is typed.

    Signals:
        wanted_picture(): another picture is to be chosen.
        wanted_save(object): this TypedChart is to be saved.
    """

    wanted_picture = Signal()
    wanted_save = Signal(object)

    def __init__(self, chart: TypedChart, words: Words, dress: Dress, parent: QWidget) -> None:
        super().__init__(parent)
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self._words, self._dress = words, dress
        self._spots: dict[tuple[int, int], Spot] = dict(chart.spots)
        self._saved, self._warned = chart.text(), False
        self.grid = GridModel(self)
        self.table = QTableView(self)
        self.picture = PictureView(dress, self)
        self.found = QuestionModel(words, self)
        self.findings = QListView(self)
        self.says = QLabel(self)
        self._wait = QTimer(self)
        self._build()
        self.grid.show_texts(chart.texts)
        if chart.picture:
            self.show_picture(chart.picture, chart.turned)
        self.table.setCurrentIndex(self.grid.index(0, 0))
        self.check()

    def _say(self, code: str, **values: object) -> str:
        return self._words.wording.say("questions", code, **values)

    def _build(self) -> None:
        px = self._dress.type_.px
        self.setWindowTitle(self._say("typed-title"))
        self.table.setModel(self.grid)
        self.table.setAccessibleName(self._say("typed-grid"))
        self.table.setEditTriggers(QAbstractItemView.EditTrigger.AllEditTriggers)
        self.table.horizontalHeader().setDefaultSectionSize(px(92))
        self.table.verticalHeader().setDefaultSectionSize(px(26))
        self.table.selectionModel().currentChanged.connect(self._show_spots)
        self.picture.setAccessibleName(self._say("typed-picture"))
        self.picture.dropped.connect(self.show_picture)
        self.picture.marked.connect(self._mark)
        self.findings.setModel(self.found)
        self.findings.setItemDelegate(QuestionDelegate(self.found, self._dress, self.findings))
        self.findings.setAccessibleName(self._say("list-name"))
        self.findings.setResizeMode(QListView.ResizeMode.Adjust)
        self.findings.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.findings.clicked.connect(self._go_to)
        self.findings.activated.connect(self._go_to)
        self._wait.setSingleShot(True)
        self._wait.setInterval(_CHECK_AFTER)
        self._wait.timeout.connect(self.check)
        self.grid.dataChanged.connect(self._typed)
        self._lay()

    def _lay(self) -> None:
        px = self._dress.type_.px
        right = QSplitter(Qt.Orientation.Vertical, self)
        right.addWidget(self.table)
        right.addWidget(self.findings)
        both = QSplitter(Qt.Orientation.Horizontal, self)
        both.addWidget(self.picture)
        both.addWidget(right)
        both.setSizes([px(520), px(620)])
        right.setSizes([px(360), px(190)])
        self.says.setWordWrap(True)
        foot = QHBoxLayout()
        foot.setSpacing(px(8))
        foot.addWidget(self.says, 1)
        close = FlatButton(self._say("form-close"), self)
        close.clicked.connect(self.reject)
        save = FlatButton(self._say("form-save"), self, urgent=True)
        save.clicked.connect(self._save)
        foot.addWidget(close)
        foot.addWidget(save)
        column = QVBoxLayout(self)
        column.setContentsMargins(px(14), px(12), px(14), px(12))
        column.setSpacing(px(9))
        column.addLayout(self._tools())
        column.addWidget(both, 1)
        column.addLayout(foot)
        self.resize(px(1180), px(640))

    def _tools(self) -> QHBoxLayout:
        """What can be done to the picture, and how a place is marked on it."""
        row = QHBoxLayout()
        row.setSpacing(self._dress.type_.px(8))
        picture = self.picture
        for code, slot in (
            ("typed-open", self.wanted_picture.emit),
            ("typed-turn", picture.turn),
            ("typed-larger", picture.enlarge),
            ("typed-smaller", picture.shrink),
            ("typed-fit", picture.fit),
        ):
            button = FlatButton(self._say(code), self)
            button.setAutoRepeat(code in ("typed-larger", "typed-smaller"))
            button.clicked.connect(partial(_without_state, slot))
            row.addWidget(button)
        hint = QLabel(self._say("typed-hint"), self)
        hint.setFont(self._dress.type_.small)
        hint.setWordWrap(True)
        row.addWidget(hint, 1)
        return row

    # The picture

    def show_picture(self, path: str, turned: int = 0) -> None:
        """Show a picture; says so where it cannot be shown."""
        if not self.picture.show_picture(path, turned):
            self.says.setText(self._say("typed-no-picture"))
            return
        self._show_spots()

    def _mark(self, spot: Spot) -> None:
        """The rectangle is the place of the cell at hand; the keyboard goes back to it."""
        index = self.table.currentIndex()
        if index.isValid():
            self._spots[index.row(), index.column()] = spot
            self._show_spots()
        self.table.setFocus(Qt.FocusReason.OtherFocusReason)

    def _show_spots(self) -> None:
        index = self.table.currentIndex()
        self.picture.show_spots(self._spots, [(index.row(), index.column())])

    # The grid

    @property
    def chart(self) -> TypedChart:
        """What has been typed by now."""
        spots = {at: spot for at, spot in self._spots.items() if at in self.grid.texts}
        return TypedChart(dict(self.grid.texts), spots, self.picture.path, self.picture.turned)

    def _typed(self) -> None:
        self._warned = False
        self._wait.start()

    def check(self) -> None:
        """Read the grid as a file would be read, and say what is open in it."""
        text = self.chart.text()
        if not text.strip():
            self.found.show_rows(())
            self.says.setText(self._say("typed-empty"))
            return
        name = f"typed{ENDING}"
        reading = read_bytes(text.encode(), name)
        record = FileRecord(name)
        rows = question_rows(
            reading, lambda finding: stage_of(finding, record), self._words.wording
        )
        self.found.show_rows(rows)
        sizes = sum(len(chart.sizes) for chart in reading.charts)
        asked = sum(row.is_open for row in rows)
        self.says.setText(self._say("typed-read", sizes=sizes, asked=asked))

    def _go_to(self, index: QModelIndex) -> None:
        """Go to the cell that a finding is about."""
        row = self.found.row(index.row())
        area = rectangle_of(row.first.place) if row is not None else None
        if area is not None:
            self.table.setCurrentIndex(self.grid.index(area.top, area.left))
            self.table.setFocus(Qt.FocusReason.OtherFocusReason)

    # Closing

    def _save(self) -> None:
        self.wanted_save.emit(self.chart)

    def saved(self) -> None:
        """It was saved: nothing is lost when this closes."""
        self._saved = self.chart.text()
        self.accept()

    def reject(self) -> None:
        """Close; what was typed and not saved is thrown away only when asked twice."""
        if self.chart.text() != self._saved and not self._warned:
            self._warned = True
            self.says.setText(self._say("typed-unsaved"))
            return
        super().reject()


def _without_state(slot: object, checked: bool = False) -> None:
    """Call ``slot`` without the state of the button that was pressed."""
    del checked
    if callable(slot):
        slot()
