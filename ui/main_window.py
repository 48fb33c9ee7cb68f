"""What stands in the frame: menus, the strip over the pages, the pages, the cautions below."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import QObject, Signal
from PySide6.QtGui import QPalette
from PySide6.QtWidgets import QLabel, QStackedWidget, QVBoxLayout, QWidget

from charts.findings import Level
from charts.model_facts import VestKind
from harmonizer.workspace import Workspace
from ui.actions import Actions
from ui.charts_page.page import ChartsPage
from ui.controls.notices import NoticeStrip, ProgressStrip
from ui.dress import Dress
from ui.fitting_keeping import FittingKeeping
from ui.fitting_page.page import FittingPage
from ui.frame import Frame
from ui.operations import Operations
from ui.questions_page.case import Bench, today
from ui.questions_page.signature import Signature
from ui.rider_keeping import RiderKeeping
from ui.settings_page.page import SettingsPage
from ui.stock_words import stock_words
from ui.top_strip import ANY, TopStrip
from ui.words import Words

PAGES = ("fitting", "charts", "settings")


class MainWindow(QObject):
    """Composes the pages over one workspace; what is done to it stands in ``ui.commands``.

    Attributes:
        frame: the top-level window.
        workspace: the charts and riders.
        operations: long work beside the screen.
        signature: who answers at this screen.

    Signals:
        wanted(str): do the action of this key.
        charts_turned(): what the actions of the charts page bear on may be another file now.
        reasons_pulled(object): the reasons are to be so high, None for as high as they need.
    """

    wanted = Signal(str)
    charts_turned = Signal()
    reasons_pulled = Signal(object)

    def __init__(self, frame: Frame, workspace: Workspace, words: Words, dress: Dress) -> None:
        super().__init__(frame)
        self.frame = frame
        self.workspace = workspace
        self.words = words
        self.dress = dress
        self.operations = Operations(self)
        self.signature = Signature()
        self.actions_ = Actions(frame, words)
        self._settings_path: Path | None = None
        self._page_before = PAGES[0]
        self._reasons_height: float | None = None
        frame.setWindowTitle(words("window-title"))
        frame.closing.connect(self.operations.close)
        self.riders = RiderKeeping(workspace, words.wording, self._tell, self)
        self.fittings = FittingKeeping(workspace, words.wording, self._tell, self)
        self._build()
        self.operations.started.connect(self._job_started)
        self.operations.progressed.connect(self._job_progressed)
        self.operations.finished.connect(self._job_finished)
        workspace.on_change.append(self._workspace_changed)
        self._workspace_changed(frozenset({"charts"}))

    def wear(self, dress: Dress) -> None:
        """Change colours, text size or the height of rows; everything shown stays."""
        calls, page, chosen = self.fitting.calls, self.page, self.fitting.table.chosen_key
        opened, held = self.charts.opened, self.fitting.held
        folded = self.actions_["fold-readings"].isChecked()
        self.dress = dress
        self._build()
        self._workspace_changed(frozenset({"charts"}))
        self.fitting.take_calls(calls)
        self.fitting.table.choose(chosen)
        self.fitting.hold(held)
        self.fitting.fold_readings(folded)
        self.fitting.split.take_own(self._reasons_height)
        self.show_page(page)
        if opened:
            self.charts.open_file(opened)

    def _build(self) -> None:
        """Everything between the menus and the lower edge, in the present dress."""
        words, dress = self.words, self.dress
        self.frame.setFont(dress.type_.plain)
        self._shown: object = None
        self._levels: tuple[str, ...] = ()
        whole = QWidget(self.frame)
        self.top = TopStrip(words, dress.type_, whole)
        self.progress = ProgressStrip(words("stop"), whole)
        self.notice = NoticeStrip(words("close"), whole)
        self.stack = QStackedWidget(whole)
        self.fitting = FittingPage(words, dress, self.stack)
        self.charts = ChartsPage(
            words, dress, Bench(self.workspace, self.operations, self.signature), self.stack
        )
        self.stack.addWidget(self.fitting)
        self.stack.addWidget(self.charts)
        self.settings = SettingsPage(words, dress, self.stack)
        self.settings.show_place(self._settings_path)
        self.stack.addWidget(self.settings)
        column = QVBoxLayout(whole)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        for widget in (self.top, self.progress, self.notice):
            column.addWidget(widget)
        column.addWidget(self.stack, 1)
        column.addWidget(self._cautions(whole))
        self._connect()
        self.frame.setCentralWidget(whole)

    def _cautions(self, parent: QWidget) -> QLabel:
        px = self.dress.type_.px
        label = QLabel(self.words("cautions-line"), parent)
        label.setFont(self.dress.type_.small)
        label.setForegroundRole(QPalette.ColorRole.PlaceholderText)
        label.setContentsMargins(px(14), px(4), px(14), px(5))
        label.setWordWrap(True)
        return label

    def _connect(self) -> None:
        self.top.page_picked.connect(self.show_page)
        self.top.riders.picked.connect(self.fitting.go_rider)
        self.top.riders.wanted_new.connect(self.fitting.new_rider)
        self.top.kind_picked.connect(self._kind_picked)
        self.top.level_picked.connect(self.fitting.ask_level)
        self.top.stock_picked.connect(self.fitting.ask_stock)
        self.fitting.riders_changed.connect(self._show_riders)
        self.fitting.wanted_place.connect(self.show_place)
        self.fitting.wanted.connect(self.wanted)
        self.riders.attach(self.fitting.readings)
        self.fittings.attach(self.fitting)
        self.fitting.split.pulled.connect(self._reasons_pulled)
        self.fitting.pairing.refused.connect(self.notice.say)
        self.charts.wanted.connect(self.wanted)
        self.charts.told.connect(self.notice.say)
        self.charts.turned.connect(self.charts_turned)
        self.settings.changed.connect(self.workspace.set_settings)
        self.settings.left.connect(self._leave_settings)
        self.notice.pressed.connect(self.wanted)
        self.progress.cancelled.connect(self.operations.cancel)

    def give_reasons(self, height: float | None) -> None:
        """The reasons are so high, as a person pulled them; None for as high as they need."""
        self._reasons_height = height
        self.fitting.split.take_own(height)

    def _reasons_pulled(self, height: float | None) -> None:
        self._reasons_height = height
        self.reasons_pulled.emit(height)

    def _tell(self, said: str) -> None:
        self.notice.say(said)

    # What the workspace holds now

    def _workspace_changed(self, parts: frozenset[str]) -> None:
        workspace = self.workspace
        self.settings.show_settings(workspace.settings)
        if parts & {"charts", "season", "settings", "stock", "fittings"}:
            self._levels = tuple(sorted({fact.level for fact in workspace.facts if fact.level}))
            self.fitting.show_shop(workspace.table, workspace.fit)
        if parts & {"charts", "season"}:
            self.charts.show_files()
        self.actions_["undo"].setEnabled(workspace.can_undo)
        self.actions_["redo"].setEnabled(workspace.can_redo)
        self.actions_["export-combined"].setEnabled(bool(workspace.offers))
        self._show_page_names()
        self._show_riders()

    @property
    def page(self) -> str:
        """The page in front."""
        return PAGES[self.stack.currentIndex()]

    def show_page(self, page: str) -> None:
        """Bring a page to the front."""
        if page != self.page:
            self._page_before = self.page
        self.stack.setCurrentIndex(PAGES.index(page))
        self.actions_[f"page-{page}"].setChecked(True)
        self._show_page_names()
        self.charts_turned.emit()

    def keep_settings_in(self, path: Path) -> None:
        """Say on the page of settings where they are kept."""
        self._settings_path = path
        self.settings.show_place(path)

    def _leave_settings(self) -> None:
        before = self._page_before
        self.show_page(before if before != "settings" else PAGES[0])

    def show_place(self, file: str, place: str) -> None:
        """Show one cell of a supplier's file."""
        self.show_page("charts")
        self.charts.show_place(file, place)

    def _show_page_names(self) -> None:
        findings = [one for file in self.workspace.charts() for one in file.findings]
        self.top.show_page(self.page, sum(one.level is not Level.NOTE for one in findings))

    def _show_riders(self) -> None:
        calls = self.fitting.calls
        names = tuple(draft.given.name for draft in calls.drafts)
        needs = calls.current.given.needs
        has_stock = bool(self.workspace.stock)
        stock = stock_words(self.workspace.stock_on, today(), self.words.wording)
        shown = (names, calls.at, needs, self._levels, has_stock, stock)
        if shown == self._shown:
            return  # a reading was typed: the strip says the same as before
        self._shown = shown
        self.top.riders.show_riders(names, calls.at)
        kind = needs.kind.value if needs.kind else ANY
        self.top.show_needs(kind, needs.level or "", self._levels)
        self.top.show_stock(has_stock, needs.in_stock, stock)

    def _kind_picked(self, key: str) -> None:
        self.fitting.ask_kind(None if key == ANY else VestKind(key))

    # Long work

    def _job_started(self, says: str) -> None:
        self.notice.hide()
        self.progress.show_progress(says, 0.0)

    def _job_progressed(self, at_hand: str, fraction: float) -> None:
        self.progress.show_progress(at_hand, fraction)

    def _job_finished(self) -> None:
        self.progress.hide()
