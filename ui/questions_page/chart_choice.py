"""Which chart of a file is approved or kept aside: the whole file, or one of its several charts."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QSignalBlocker, Qt, Signal
from PySide6.QtGui import QWheelEvent
from PySide6.QtWidgets import QComboBox, QWidget

from harmonizer.shop.season import ChartState, FileRecord, State, key_of
from ui.dress import Dress
from ui.file_states import chart_name, chart_words, open_count, state_words
from ui.questions_page.case import Case
from ui.words import Words

_LEAST_LETTERS = 24


@dataclass(frozen=True, slots=True)
class Standing:
    """How the whole file, or the chart whose key is ``chart``, stands; ``says`` in words.

    ``asked`` counts its open questions, ``has_charts`` says that there is something to approve.
    """

    state: State
    says: str
    asked: int
    chart: str = ""
    has_charts: bool = True

    @property
    def closed(self) -> bool:
        """Whether somebody has decided it."""
        return self.state in (State.APPROVED, State.ASIDE)


def standing_of(case: Case, chart: str, record: FileRecord, words: Words) -> Standing:
    """How a chart of the file stands, or the file where it has none of this key."""
    state = chart_of(case, chart)
    if state is None:
        says = state_words(case.state, record, words)
        whole = case.state
        return Standing(whole.state, says, open_count(whole), "", bool(case.reading.charts))
    return Standing(state.state, chart_words(state, record, words), len(state.questions), chart)


def chart_of(case: Case, chart: str) -> ChartState | None:
    """The chart of this key where the file has several; else None."""
    several = case.state.charts if len(case.state.charts) > 1 else ()
    return next((one for one in several if chart and key_of(one.chart) == chart), None)


def chart_states(case: Case, record: FileRecord, words: Words) -> dict[str, str]:
    """How each of several charts stands in words, by its key; a ready one needs no word."""
    several = case.state.charts if len(case.state.charts) > 1 else ()
    told = (one for one in several if one.state is not State.READY)
    return {key_of(one.chart): chart_words(one, record, words) for one in told}


class ChartChoice(QComboBox):
    """Hidden where a file has one chart; a turning wheel changes nothing.

    Signals:
        picked(str): the chart of this key, or "" for the whole file.
    """

    picked = Signal(str)

    def __init__(self, words: Words, dress: Dress, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._words = words
        self.setFont(dress.type_.small)
        self.setMinimumContentsLength(_LEAST_LETTERS)
        self.setMinimumHeight(dress.type_.px(24))
        self._air = dress.type_.px(30)
        self.setSizeAdjustPolicy(self.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        name = words.wording.say("questions", "which-chart")
        self.setAccessibleName(name)
        self.setToolTip(name)
        self.currentIndexChanged.connect(self._picked)
        self.hide()

    def wheelEvent(self, event: QWheelEvent) -> None:
        """Leave the wheel to the page."""
        event.ignore()

    def show_case(self, case: Case, chart: str, record: FileRecord) -> None:
        """Offer the charts of a file, the one of this key chosen."""
        say, several = self._words.wording.say, case.state.charts
        with QSignalBlocker(self):
            self.clear()
            self.addItem(say("questions", "whole-file", charts=len(several)), "")
            for one in several:
                name = chart_name(one.chart, self._words)
                state = chart_words(one, record, self._words)
                text = say("questions", "one-chart", name=name, place=one.chart.place, state=state)
                self.addItem(text, key_of(one.chart))
            self.setCurrentIndex(max(self.findData(chart), 0))
        self.view().setMinimumWidth(self.view().sizeHintForColumn(0) + self._air)
        self.setVisible(len(several) > 1)

    def step(self, by: int) -> None:
        """Go to the next chart or the one before; after the last comes the whole file."""
        if self.count() > 2:
            self.setCurrentIndex((self.currentIndex() + by) % self.count())

    def _picked(self) -> None:
        self.picked.emit(str(self.currentData() or ""))
