"""The fitting page: readings left, models on the rider's tapes right, reasons below."""

from __future__ import annotations

from dataclasses import replace

from PySide6.QtCore import Signal
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QHBoxLayout, QStackedWidget, QVBoxLayout, QWidget

from charts.schema import Dimension
from harmonizer.range_table import RangeTable
from ui.controls.banner import Banner
from ui.controls.empty_state import EmptyState
from ui.dress import Dress
from ui.fitting_page.came_out import CameOut
from ui.fitting_page.comparison import Compare, Comparison
from ui.fitting_page.draft import Draft
from ui.fitting_page.fit_rows import FittingSheet
from ui.fitting_page.folded_readings import FoldedReadings
from ui.fitting_page.model_groups import ModelGroups
from ui.fitting_page.nothing_yet import offer_sources, say_nothing_yet
from ui.fitting_page.pair_choice import PairChoice
from ui.fitting_page.pairing import Pairing
from ui.fitting_page.reasons_panel import ReasonsPanel
from ui.fitting_page.reasons_split import ReasonsSplit
from ui.fitting_page.riders_on_the_line import RidersOnTheLine
from ui.fitting_page.rows import TAPES, Band, ModelRow
from ui.fitting_page.said import said_of
from ui.fitting_page.table import FittingTable
from ui.theme import Ink
from ui.words import Words


class FittingPage(RidersOnTheLine):
    """One rider on the line, compared with every model of the shop.

    Attributes:
        table: the models on the rider's tapes.
        split: shares the height among the table and the reasons.

    Signals:
        riders_changed(): the strip of open riders shows something else now.
        wanted_place(str, str): show this place of this file.
        wanted(str): do the action of this key.
    """

    riders_changed = Signal()
    wanted_place = Signal(str, str)
    wanted = Signal(str)

    def __init__(self, words: Words, dress: Dress, parent: QWidget | None = None) -> None:
        super().__init__(words, dress, parent)
        self._words = words
        self._dress = dress
        self._comparison = Comparison(words)
        self.strip = FoldedReadings(dress, words, self)
        self.table = FittingTable(words, dress, self)
        self.banner = Banner(dress.colours[Ink.TRYING], dress.colours[Ink.TEXT], self)
        self.pairing = Pairing(words, dress, self)
        self.came_out = CameOut(words, self.table.row_hold, self.table)
        self.reasons = ReasonsPanel(dress, words, self)
        self.empty = EmptyState(dress.type_.large, self)
        self._build()
        self._connect()
        self.refresh()

    def _build(self) -> None:
        self.strip.hide()
        offer_sources(self.empty, self._words)
        self.stack = QStackedWidget(self)
        whole = QWidget(self.stack)
        column = QVBoxLayout(whole)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        column.addWidget(self.banner)
        column.addWidget(self.pairing.strip)
        self.split = ReasonsSplit(self.table, self.reasons, self._dress, self._words)
        column.addWidget(self.split, 1)
        self.stack.addWidget(self.empty)
        self.stack.addWidget(whole)
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(0)
        row.addWidget(self.readings)
        row.addWidget(self.strip)
        row.addWidget(self.stack, 1)

    def _connect(self) -> None:
        self.readings.typing.connect(self._typing)
        self.readings.changed.connect(self.refresh)
        self.readings.confirmed.connect(self._keep_call)
        self.table.chosen.connect(self._chosen)
        self.table.band_pressed.connect(self._band_pressed)
        self.table.line_moved.connect(self._line_moved)
        self.table.line_nudged.connect(self._nudged)
        self.table.put_back.connect(self.put_back)
        self.table.hold_pressed.connect(self._hold_pressed)
        self.reasons.wanted_place.connect(self._ask_place)
        self.reasons.said.connect(self._reasons_said)
        self.pairing.changed.connect(self._pair_changed)
        self.strip.pressed.connect(self.unfold_readings)
        self.empty.pressed.connect(self.wanted)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Where there is little room the reasons take less of it, and scroll."""
        super().resizeEvent(event)
        self.split.take_room(self.stack.width(), self.height())

    # The shop

    def show_shop(self, table: RangeTable, compare: Compare) -> None:
        """Compare with another set of charts from now on."""
        self.readings.take_settings(table.settings)
        self._comparison.show_shop(table, compare)
        self.pairing.compare = compare
        self.refresh()

    @property
    def groups(self) -> ModelGroups | None:
        """The models of the shop, None while there are none."""
        return self._comparison.groups

    @property
    def is_trying(self) -> bool:
        """Whether what is shown is about a value that nobody measured."""
        return self._comparison.is_trying

    @property
    def sheet(self) -> FittingSheet | None:
        """What is shown, None while nothing is compared."""
        return self._comparison.sheet

    def refresh(self) -> None:
        """Compare the rider on the line and show what came out."""
        draft = self.readings.draft
        self.calls.keep(draft)
        self.strip.show_draft(draft)
        self._comparison.measure(draft)
        self.table.set_dimmed(False)
        self._show()
        self.readings.again.follow(self.sheet.fit if self.sheet is not None else None)
        self.riders_changed.emit()

    def _show(self) -> None:
        """Show what the comparison holds."""
        if self.sheet is None:
            models = len(self.groups.keys) if self.groups else 0
            say_nothing_yet(self.empty, self._words, models, self._comparison.sizes)
        self.table.show_sheet(self.sheet)
        self.banner.say(self._comparison.banner)
        self.pairing.show(self.readings.draft, self.groups)
        self.stack.setCurrentIndex(0 if self.sheet is None else 1)

    # Trying a value

    def try_value(self, dimension: Dimension, value_cm: float) -> None:
        """Show what another figure would give, in the order of what was measured."""
        if self._comparison.try_figure(dimension, value_cm):
            self._show()

    def put_back(self) -> None:
        """Show what was measured again; where nothing is tried, let go of a row that is held."""
        if self._comparison.put_back():
            self._show()
        elif self.held is not None:
            self.hold(None)

    def try_current(self) -> None:
        """Begin to try a value on the tape under the cursor, else on the chest."""
        self.table.setFocus()
        dimension = self.table.current_tape() or TAPES[0]
        self.table.go_to_tape(dimension)
        self._nudged(dimension.value, 1)

    def _line_moved(self, dimension: str, value_cm: float) -> None:
        self.try_value(Dimension(dimension), value_cm)

    def _nudged(self, dimension: str, steps: int) -> None:
        if self._comparison.nudge(Dimension(dimension), steps):
            self._show()

    # Comparing two rows

    @property
    def held(self) -> str | None:
        """The model that others are compared with, None where there is none."""
        return self.table.rows.held

    def hold(self, key: str | None) -> None:
        """Compare every row that is chosen with this model's from now on; None lets go."""
        self.table.hold(key)
        self._chosen(self.table.chosen_row())

    def press_hold(self) -> None:
        """Hold the chosen row, or let it go where it is the one held."""
        row = self.table.chosen_row()
        if row is not None:
            self._hold_pressed(row.key)

    def _hold_pressed(self, key: str) -> None:
        self.hold(None if key == self.held else key)

    # What a person does

    def _keep_call(self) -> None:
        self.calls.keep(self.readings.draft)

    def _typing(self) -> None:
        self.table.set_dimmed(True)

    def press_pair(self) -> None:
        """Take the chosen row for a pair of foam and inflatable."""
        row = self.table.chosen_row()
        if row is not None and self.sheet is not None:
            self.pairing.press(self.sheet, row)

    def press_came_out(self) -> None:
        """Ask which size of the chosen row came out right."""
        row = self.table.chosen_row()
        if row is not None:
            self.came_out.ask(row)

    def _pair_changed(self, choice: PairChoice | None) -> None:
        self.readings.draft = replace(self.readings.draft, pair=choice)
        self.refresh()

    def _chosen(self, row: ModelRow | None) -> None:
        if row is None or self.sheet is None:
            self.reasons.show_reasons(None)
            self.reasons.check.show_row(None)
            return
        said = said_of(self.sheet, row, self.held, self._words)
        self.reasons.show_reasons(said.at_once, said.soon)
        self.reasons.check.show_row(self.sheet.fit_row(row))

    def _reasons_said(self) -> None:
        """Give the reasons their room; while the line is moved nothing else moves."""
        if not self.is_trying:
            self.split.settle()

    def _ask_place(self, file: str, place: str) -> None:
        """The cell of the tape under the cursor, else of the first one the chart gives."""
        row = self.table.chosen_row()
        if row is None or self.sheet is None:
            return
        fits = self.sheet.fit_row(row).dimensions
        current = self.table.current_tape()
        order = (current, *TAPES) if current is not None else TAPES
        cells = (fits[dimension].place for dimension in order)
        self.wanted_place.emit(file, next((cell for cell in cells if cell), place))

    def _band_pressed(self, value: str) -> None:
        self._comparison.turn_band(Band(value))
        self._show()

    def fold_readings(self, folded: bool) -> None:
        """Fold the readings to a strip, or show them whole."""
        self.readings.setVisible(not folded)
        self.strip.setVisible(folded)

    def unfold_readings(self) -> None:
        """Show the readings whole."""
        self.wanted.emit("fold-readings")

    def show_draft(self, draft: Draft) -> None:
        """Put another rider on the line."""
        self._comparison.fold_as_at_first()
        self.split.forget()
        self.table.forget_choice()
        self.table.hold(None)
        self.readings.show_draft(draft)
        self.refresh()
