"""How a file stands, in words and as a sign: the same in the list and over the file. No Qt."""

from __future__ import annotations

from collections.abc import Sequence
from pathlib import PurePath
from typing import Final

from charts.day_words import day_words
from charts.finding_sentences import sentence_of
from charts.findings import Level
from charts.model_facts import ModelFacts
from charts.schema import Chart, FileReading
from charts.sources import LoadedFile
from charts.wording import Wording
from harmonizer.shop.season import ChartState, FileRecord, FileState, Mark, State, key_of
from ui.theme import Ink, Look
from ui.theme import Mark as Sign
from ui.words import Words

LOOK_OF: Final = {
    State.NOT_READABLE: Look(Ink.STOP, Sign.CROSS),
    State.QUESTIONS: Look(Ink.NEAR, Sign.HALF),
    State.READY: Look(Ink.CHECK, Sign.UP),
    State.APPROVED: Look(Ink.GOOD, Sign.FULL),
    State.ASIDE: Look(Ink.UNKNOWN, Sign.GATE),
    State.NOT_A_CHART: Look(Ink.UNKNOWN, Sign.RING),
}
"""How each state looks, the one that wants most first."""
WANTING: Final = frozenset({State.QUESTIONS, State.READY})
"""What still wants a person."""


def name_of(file: str, words: Words) -> str:
    """A file's own name without the folders before it."""
    name = file.rpartition("/")[2]
    return words("file-pasted") if name == "-" else name


def open_count(state: FileState) -> int:
    """How many questions of a file are open."""
    ids = {one.id for chart in state.charts for one in chart.questions}
    return len(ids | {one.id for one in state.questions})


def state_words(state: FileState, record: FileRecord, words: Words) -> str:
    """How a file stands, in words: by whom and when where somebody decided it.

    Of several charts it says how many are closed where some are and others not.
    """
    say, asked = words.wording.say, open_count(state)
    approved, aside = (
        sum(one.state is closed for one in state.charts) for closed in (State.APPROVED, State.ASIDE)
    )
    closed = {"closed": approved + aside, "charts": len(state.charts)}
    some = "-some" if approved + aside else ""
    match state.state:
        case State.QUESTIONS:
            return say("questions", f"state-questions{some}", count=asked, **closed)
        case State.APPROVED if aside:
            return say("questions", "state-approved-aside", approved=approved, aside=aside)
        case State.APPROVED:
            return _marked("state-approved", record.approved[-1:], words)
        case State.ASIDE:
            return _marked("state-aside", record.aside[-1:], words)
        case State.READY if some:
            return say("questions", "state-ready-some", **closed)
    return say("questions", f"state-{state.state.value}")


def chart_words(state: ChartState, record: FileRecord, words: Words) -> str:
    """How one chart of a file stands, in words."""
    key = key_of(state.chart)
    match state.state:
        case State.QUESTIONS:
            return words.wording.say("questions", "state-questions", count=len(state.questions))
        case State.APPROVED:
            return _marked("state-approved", [record.approval(key)], words)
        case State.ASIDE:
            return _marked("state-aside", [record.kept_aside(key)], words)
    return words.wording.say("questions", f"state-{state.state.value}")


def chart_name(chart: Chart, words: Words) -> str:
    """What tells a chart from the others of its file: model and band, else its title or place."""
    names = [chart.model.text] if chart.model is not None and chart.model.source != "file" else []
    if chart.band:
        names.append(words.wording.say("combined", f"band-{chart.band}"))
    return words.wording.say("questions", "between-names").join(names) or chart.title or chart.place


def _marked(code: str, marks: Sequence[Mark | None], words: Words) -> str:
    mark = next((one for one in marks if one is not None), None)
    if mark is None:
        return words.wording.say("questions", code)
    day = day_words(mark.on, words.wording)
    if mark.habit:
        return words.wording.say("questions", f"{code}-habit", day=day)
    return words.wording.say("questions", f"{code}-by", by=mark.by, day=day)


def fault_words(reading: FileReading, wording: Wording) -> str:
    """Why a file could not be read, in one sentence; "" where it could."""
    fault = next((one for one in reading.findings if one.level is Level.ERROR), None)
    return sentence_of(fault, wording) if fault is not None else ""


def maker_of(file: LoadedFile) -> str:
    """Whose a file is: as the shop writes it, else as the chart says, else the folder."""
    facts = [each.supplier for each in facts_of(file) if each.supplier]
    said = [chart.supplier.text for chart in file.reading.charts if chart.supplier is not None]
    folder = file.reading.file.rpartition("/")[0].partition("/")[0]
    return next(iter((*facts, *said)), folder)


def facts_of(file: LoadedFile) -> list[ModelFacts]:
    """What stands beside a file about the models of its charts."""
    name = PurePath(file.reading.file).name
    return [each for each in file.facts if each.file == name]
