"""The table of models: a view whose columns follow the room there is, and whose bands fold."""

from __future__ import annotations

from typing import Final

from PySide6.QtCore import QModelIndex, QPoint, QSignalBlocker, Qt, Signal
from PySide6.QtGui import QKeyEvent, QMouseEvent, QResizeEvent
from PySide6.QtWidgets import QWidget

from charts.schema import Dimension
from ui.drawing.scale import Scale
from ui.dress import Dress
from ui.fitting_page.cell_painter import BAND_HEIGHT, CellPainter
from ui.fitting_page.columns import TAPE_COLUMNS, Column, beside, plan
from ui.fitting_page.head import TapeHeadView
from ui.fitting_page.line_grip import LineGrip
from ui.fitting_page.manners import behave
from ui.fitting_page.painted_rows import PaintedRows
from ui.fitting_page.row_hold import RowHold
from ui.fitting_page.row_words import RowWords
from ui.fitting_page.rows import Band, BandRow, ModelRow, Sheet, TapeHead
from ui.words import Words

_MARK: Final = 26.0


class FittingTable(PaintedRows):
    """One row a model, one tape a dimension.

    Signals:
        chosen(object): the ModelRow the reasons speak of, or None.
        band_pressed(str): the heading of a band was pressed, by mouse or by key.
        line_moved(str, float): the rider's line of this dimension was dragged to this cm.
        line_nudged(str, int): the line is to go this many steps, by key.
        put_back(): Escape was pressed.
        hold_pressed(str): the row of this model is to be held for comparing, or let go.
    """

    chosen = Signal(object)
    band_pressed = Signal(str)
    line_moved = Signal(str, float)
    line_nudged = Signal(str, int)
    put_back = Signal()
    hold_pressed = Signal(str)

    def __init__(self, words: Words, dress: Dress, parent: QWidget | None = None) -> None:
        super().__init__(words, dress, parent)
        self._dress = dress
        self._first_tape = 0
        self._chosen_key: str | None = None
        self._laying = False
        self._band_rows: list[int] = []
        self._verdict_width = 0.0
        self._head = TapeHeadView(self.rows, dress, self)
        self.setModel(self.rows)
        self.setHorizontalHeader(self._head)
        behave(self)
        self.setAccessibleName(words("table-name"))
        self.selectionModel().currentChanged.connect(self._current_changed)
        self._head.wanted_tape.connect(self._keep_in_sight)
        self._grip = LineGrip(self.viewport(), self._lines)
        self._grip.moved.connect(self.line_moved)
        self.row_hold = RowHold(self, self.rows)
        self.row_hold.pressed.connect(self.hold_pressed)
        self.set_dress(dress)

    def set_dress(self, dress: Dress) -> None:
        """Change colours, font or density."""
        self._dress = dress
        self._head.wear(dress)
        words = RowWords(self.rows.words).all_verdicts()
        longest = max(dress.small_strong.width(word) for word in words)
        self._verdict_width = longest + _MARK * dress.unit
        self._painter.wear(CellPainter(dress))
        self._lay_rows()
        self._lay_columns()
        self._head.updateGeometry()
        self.updateGeometries()
        self.viewport().update()

    def show_sheet(self, sheet: Sheet | None) -> None:
        """Show ``sheet``, keeping the chosen model chosen where it is still there."""
        column = max(self.currentIndex().column(), 0)
        row = self.rows.row(self.currentIndex().row())
        band = row.band if isinstance(row, BandRow) else None
        before = self.rows.sheet
        with QSignalBlocker(self.selectionModel()):
            alike = self.rows.show_sheet(sheet)
        if alike and before is not None and sheet is not None:
            self.paint_changes(before, sheet)
            self._head.paint_changes(before, sheet)
        else:
            self._lay_rows()
            self._lay_columns()
        self._choose_again(column, band)

    @property
    def chosen_key(self) -> str | None:
        """Which model is chosen, whatever row it stands in."""
        return self._chosen_key

    def forget_choice(self) -> None:
        """Choose the first model from now on, until a person chooses another."""
        self._chosen_key = None

    def choose(self, key: str | None) -> None:
        """Choose the row of a model, where it is shown."""
        sheet = self.rows.sheet
        at = sheet.find(key) if sheet and key else None
        if at is not None:
            self.setCurrentIndex(self.rows.index(at, 0))

    def hold(self, key: str | None) -> None:
        """Mark the row of this model as the one that others are compared with, or none."""
        if self.rows.held != key:
            self.rows.held = key
            self.viewport().update()

    def set_dimmed(self, dimmed: bool) -> None:
        """Fade the rows while a reading is being typed; they keep their place."""
        if self.rows.dimmed != dimmed:
            self.rows.dimmed = dimmed
            self.viewport().update()

    def chosen_row(self) -> ModelRow | None:
        """The row the reasons speak of."""
        row = self.rows.row(self.currentIndex().row())
        return row if isinstance(row, ModelRow) else None

    def tapes(self) -> list[tuple[TapeHead, float, float]]:
        """The tapes shown as (head, left, width in pixels)."""
        return self._painter.tapes(self._shown_columns())

    def _lay_rows(self) -> None:
        """Span the headings of bands over all columns; only they differ in height."""
        self.clearSpans()
        upright = self.verticalHeader()
        usual = int(self._dress.shape.height)
        upright.setDefaultSectionSize(usual)
        for number in self._band_rows:
            if number < upright.count():
                upright.resizeSection(number, usual)
        sheet = self.rows.sheet
        self._band_rows = list(sheet.band_rows) if sheet is not None else []
        for number in self._band_rows:
            self.setSpan(number, 0, 1, len(Column))
            upright.resizeSection(number, self._dress.type_.px(BAND_HEIGHT))

    def _lay_columns(self) -> None:
        sheet = self.rows.sheet
        laid = plan(
            float(self.viewport().width()),
            self._dress.unit,
            notes=sheet is not None and sheet.has_notes,
            first_tape=self._first_tape,
            verdict=self._verdict_width / self._dress.unit,
        )
        for column in Column:
            width = laid.widths.get(column)
            self.setColumnHidden(column, width is None)
            if width is not None and self.columnWidth(column) != width:
                self.setColumnWidth(column, width)

    def _choose_again(self, column: int, band: Band | None) -> None:
        """The same model again, or the same heading; else the first model."""
        sheet = self.rows.sheet
        at = sheet.find(self._chosen_key) if sheet and self._chosen_key else None
        if at is None and sheet is not None:
            at = sheet.first_model
        heading = self.rows.heading_of(band)
        to = at if heading is None else heading
        wanted = QModelIndex() if to is None else self.rows.index(to, column)
        if wanted != self.currentIndex():
            self._laying = True
            self.setCurrentIndex(wanted)
            self._laying = False
        self._tell(-1 if at is None else at)

    def _current_changed(self, current: QModelIndex, before: QModelIndex) -> None:
        row = self.rows.row(current.row())
        if not self._laying and current.row() != before.row() and isinstance(row, ModelRow):
            self._chosen_key = row.key
            self._tell(current.row())
        self._keep_in_sight(current.column())

    def _tell(self, number: int) -> None:
        row = self.rows.row(number)
        self.chosen.emit(row if isinstance(row, ModelRow) else None)

    def _keep_in_sight(self, column: int) -> None:
        """Bring a tape that is not shown for want of room into sight."""
        if column not in set(Column) or Column(column) not in TAPE_COLUMNS:
            return
        place = list(TAPE_COLUMNS).index(Column(column))
        shown = sum(not self.isColumnHidden(tape) for tape in TAPE_COLUMNS)
        first = min(self._first_tape, place)
        first = max(first, place - shown + 1)
        if first != self._first_tape:
            self._first_tape = first
            self._lay_columns()

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Share the new width among the columns."""
        super().resizeEvent(event)
        self._lay_columns()

    def _lines(self) -> dict[Dimension, tuple[Scale, float]]:
        """The tapes shown, each with its scale and where the rider's line stands."""
        return self._painter.lines(self._shown_columns())

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Fold a band by Enter or Space, walk the tapes and move the line by arrows."""
        key = Qt.Key(event.key())
        if key == Qt.Key.Key_Escape:
            self.put_back.emit()
            return
        shifted = bool(event.modifiers() & Qt.KeyboardModifier.ShiftModifier)
        if key in (Qt.Key.Key_Left, Qt.Key.Key_Right) and shifted and self._nudge(key):
            return
        if key in (Qt.Key.Key_Return, Qt.Key.Key_Enter, Qt.Key.Key_Space) and self._press():
            return
        if key in (Qt.Key.Key_Left, Qt.Key.Key_Right) and self._step(key):
            return
        super().keyPressEvent(event)

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        """A press on a band's heading folds or unfolds it."""
        super().mouseReleaseEvent(event)
        if event.button() is Qt.MouseButton.LeftButton:
            self._press_at(event.position().toPoint())

    def _nudge(self, key: Qt.Key) -> bool:
        """Ask for the line of the tape under the cursor to go one step."""
        dimension = self.current_tape()
        if dimension is None:
            return False
        self.line_nudged.emit(dimension.value, 1 if key is Qt.Key.Key_Right else -1)
        return True

    def go_to_tape(self, dimension: Dimension) -> None:
        """Put the cursor on this tape of the chosen row."""
        column = next(one for one, tape in TAPE_COLUMNS.items() if tape is dimension)
        self.setCurrentIndex(self.rows.index(max(self.currentIndex().row(), 0), column))

    def current_tape(self) -> Dimension | None:
        """The dimension of the cell that has the keyboard, None beside the tapes."""
        column = self.currentIndex().column()
        return TAPE_COLUMNS.get(Column(column)) if column in set(Column) else None

    def _press(self) -> bool:
        row = self.rows.row(self.currentIndex().row())
        if not isinstance(row, BandRow):
            return False
        self.band_pressed.emit(row.band.value)
        return True

    def _press_at(self, at: QPoint) -> None:
        row = self.rows.row(self.indexAt(at).row())
        if isinstance(row, BandRow):
            self.band_pressed.emit(row.band.value)

    def _step(self, key: Qt.Key) -> bool:
        """One column left or right, also onto a tape that is not shown yet."""
        index = self.currentIndex()
        if not index.isValid() or isinstance(self.rows.row(index.row()), BandRow):
            return False
        sheet = self.rows.sheet
        step = 1 if key is Qt.Key.Key_Right else -1
        to = beside(Column(index.column()), step, notes=sheet is not None and sheet.has_notes)
        if to is None:
            return False
        self._keep_in_sight(to)
        self.setCurrentIndex(self.rows.index(index.row(), to))
        return True
