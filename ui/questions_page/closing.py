"""What closes a file: the whole of it, or one of its several charts, and where to go then."""

from __future__ import annotations

from PySide6.QtCore import QObject, Signal

from harmonizer.shop.season import State, key_of
from ui.file_states import WANTING, name_of
from ui.questions_page.case import Bench, Case, today
from ui.questions_page.chart_choice import chart_of, standing_of
from ui.questions_page.head import Head
from ui.questions_page.question_panel import QuestionPanel
from ui.words import Words


class Closing(QObject):
    """Approves what is chosen over the file.

    Attributes:
        chart: the key of the chart that is approved or kept aside, "" for the whole file.

    Signals:
        turned(): acts bear on another chart of the file now.
        wanted_place(str): the chart at this place is to be seen.
    """

    turned = Signal()
    wanted_place = Signal(str)

    def __init__(self, head: Head, panel: QuestionPanel, words: Words, bench: Bench) -> None:
        super().__init__(head)
        self._head = head
        self._panel = panel
        self._words = words
        self._bench = bench
        self._case: Case | None = None
        self.chart = ""
        head.charts.picked.connect(self.pick)

    def show(self, case: Case) -> None:
        """How the file, or the chosen one of its charts, stands; a chart that is gone is left."""
        self._case = case
        record = self._bench.workspace.record(case.name)
        standing = standing_of(case, self.chart, record, self._words)
        self.chart = standing.chart
        self._head.charts.show_case(case, self.chart, record)
        name = name_of(case.name, self._words)
        self._head.show_case(case, standing, name, self._bench.signature.name)

    def pick(self, chart: str) -> None:
        """What is approved or kept aside is another chart now, or the whole file."""
        self.chart = chart
        if self._case is not None:
            self.show(self._case)
            self.go_to_chart()
        self.turned.emit()

    def go_to_chart(self) -> None:
        """Bring the chosen chart into sight, at its first open question where it has one."""
        state = chart_of(self._case, self.chart) if self._case is not None else None
        if state is None:
            return
        ids = {one.id for one in state.questions}
        rows = self._panel.rows.rows
        at = next((at for at, row in enumerate(rows) if ids & {f.id for f in row.findings}), None)
        if at is None:
            self.wanted_place.emit(state.chart.place)
        else:
            self._panel.choose(at)

    def approve(self) -> bool:
        """Approve the chosen chart, or the whole file; false where there is nothing to approve."""
        case, bench = self._case, self._bench
        if case is None:
            return False
        standing = standing_of(case, self.chart, bench.workspace.record(case.name), self._words)
        if not standing.has_charts or standing.state is State.APPROVED:
            return False
        bench.workspace.approve(case.name, bench.signature.name, today(), standing.chart)
        return True

    def go_to_wanting(self) -> bool:
        """After one chart was approved, go to the next that wants a person; false without one."""
        charts = self._case.state.charts if self._case is not None and self.chart else ()
        wanting = (key_of(one.chart) for one in charts if one.state in WANTING)
        chart = next(wanting, None)
        if chart is not None:
            self.pick(chart)
        return chart is not None
