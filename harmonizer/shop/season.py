"""The season's state of every file and chart: what a person has said, sent, approved, kept aside.

A ``FileRecord`` holds what is said of one file; with the file's reading it gives the states.
Nothing is stored that can be told from the two.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from datetime import date
from enum import StrEnum

from charts.answers import Answer, Question
from charts.asked_values import within
from charts.findings import DANGER, Finding, Level
from charts.schema import Chart, FileReading


class State(StrEnum):
    """Where a file or a chart stands."""

    READY = "ready"
    QUESTIONS = "questions"
    APPROVED = "approved"
    ASIDE = "aside"
    NOT_READABLE = "not-readable"
    NOT_A_CHART = "not-a-chart"


class Stage(StrEnum):
    """Where a question stands."""

    OPEN = "open"
    SENT = "sent"
    ANSWERED = "answered"
    SETTLED = "settled"


@dataclass(frozen=True, slots=True)
class Mark:
    """A person's mark on a chart by its key, or on the whole file where ``chart`` is "".

    ``habit`` is the version of the supplier's habits by which it was made, 0 for a person's.
    """

    by: str
    on: date
    chart: str = ""
    why: str = ""
    habit: int = 0


@dataclass(frozen=True, slots=True)
class Asked:
    """One question on its way: when it went to the maker, and what came back from whom."""

    question: Question
    sent: date | None = None
    answer: str = ""
    by: str = ""
    on: date | None = None


@dataclass(frozen=True, slots=True)
class FileRecord:
    """Everything said of one file. ``digest`` is the content it was said of."""

    name: str
    digest: str = ""
    supplier: str = ""
    answers: tuple[Answer, ...] = ()
    approved: tuple[Mark, ...] = ()
    aside: tuple[Mark, ...] = ()
    asked: tuple[Asked, ...] = ()

    @property
    def empty(self) -> bool:
        """Whether nothing was said."""
        return not (self.answers or self.approved or self.aside or self.asked)

    def approval(self, chart: str) -> Mark | None:
        """The approval of a chart, given to it or to the whole file."""
        return next((mark for mark in self.approved if mark.chart in ("", chart)), None)

    def kept_aside(self, chart: str) -> Mark | None:
        """The mark that keeps a chart, or the whole file, from being used."""
        return next((mark for mark in self.aside if mark.chart in ("", chart)), None)


@dataclass(frozen=True, slots=True)
class ChartState:
    """One chart of a file with its state and its open questions, dangerous first."""

    chart: Chart
    state: State
    questions: tuple[Finding, ...] = ()


@dataclass(frozen=True, slots=True)
class FileState:
    """One file with its state, its charts, and the open questions that bear on no one chart."""

    file: str
    state: State
    charts: tuple[ChartState, ...] = ()
    questions: tuple[Finding, ...] = ()


def key_of(chart: Chart) -> str:
    """What tells a chart from the others of its file: its place, its band, its model's column."""
    column = chart.model is not None and chart.model.source == "column"
    words = (chart.place, chart.band, chart.model.text if chart.model and column else None)
    return " ".join(word for word in words if word)


def state_of(reading: FileReading, record: FileRecord | None = None) -> FileState:
    """The state of a file and of each of its charts."""
    said = record or FileRecord(reading.file)
    asked = open_questions(reading)
    of_charts = [questions_of(chart, reading, asked) for chart in reading.charts]
    charts = tuple(
        ChartState(chart, _of_chart(chart, questions, said), tuple(questions))
        for chart, questions in zip(reading.charts, of_charts, strict=True)
    )
    claimed = {finding.id for questions in of_charts for finding in questions}
    rest = tuple(finding for finding in asked if finding.id not in claimed)
    return FileState(reading.file, _of_file(reading, said, charts, rest), charts, rest)


def open_questions(reading: FileReading) -> list[Finding]:
    """The questions of a file that nobody has settled, dangerous first."""
    asked = [finding for finding in reading.findings if finding.level is Level.QUESTION]
    return sorted(asked, key=lambda finding: DANGER.get(finding.code, len(DANGER)))


def questions_of(
    chart: Chart, reading: FileReading, asked: Sequence[Finding] | None = None
) -> list[Finding]:
    """The open questions that bear on a chart's values, or stand within its table."""
    questions = open_questions(reading) if asked is None else asked
    listed = {ident for size in chart.sizes for one in size.ranges for ident in one.findings}
    return [one for one in questions if one.id in listed or within(one.place, chart.place)]


def stage_of(finding: Finding, record: FileRecord | None) -> tuple[Stage, Asked | None]:
    """Where a question stands, with its letter and reply if there are any."""
    question = Question.of(finding)
    asked = (
        next((each for each in record.asked if each.question == question), None) if record else None
    )
    if finding.settled is not None:
        return Stage.SETTLED, asked
    if asked is not None and asked.answer:
        return Stage.ANSWERED, asked
    return (Stage.SENT if asked is not None and asked.sent else Stage.OPEN), asked


def used(reading: FileReading, record: FileRecord | None) -> FileReading:
    """The reading without the charts that are kept aside."""
    if record is None or not record.aside:
        return reading
    kept = tuple(chart for chart in reading.charts if record.kept_aside(key_of(chart)) is None)
    return replace(reading, charts=kept)


def kept_aside(reading: FileReading, record: FileRecord | None) -> FileReading:
    """The reading with the charts that are kept aside, and no others."""
    taken = used(reading, record).charts
    return replace(reading, charts=tuple(each for each in reading.charts if each not in taken))


def _of_chart(chart: Chart, questions: Sequence[Finding], record: FileRecord) -> State:
    if record.kept_aside(key_of(chart)) is not None:
        return State.ASIDE
    if record.approval(key_of(chart)) is not None:
        return State.APPROVED
    return State.QUESTIONS if questions else State.READY


def _of_file(
    reading: FileReading,
    record: FileRecord,
    charts: Sequence[ChartState],
    rest: Sequence[Finding],
) -> State:
    """The state of a file is that of its charts, the one that wants most first."""
    if any(mark.chart == "" for mark in record.aside):
        return State.ASIDE
    if not charts:
        return _without_charts(reading, rest)
    states = {each.state for each in charts}
    if State.QUESTIONS in states or (rest and State.APPROVED not in states):
        return State.QUESTIONS
    for state in (State.READY, State.APPROVED):
        if state in states:
            return state
    return State.ASIDE


def _without_charts(reading: FileReading, rest: Sequence[Finding]) -> State:
    if any(finding.level is Level.ERROR for finding in reading.findings):
        return State.NOT_READABLE
    return State.QUESTIONS if rest else State.NOT_A_CHART
