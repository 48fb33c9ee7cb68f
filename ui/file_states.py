"""How a file stands, in words and as a sign: the same in the list and over the file. No Qt."""

from __future__ import annotations

from collections.abc import Sequence
from pathlib import PurePath
from typing import Final

from charts.day_words import day_words
from charts.model_facts import ModelFacts
from charts.sources import LoadedFile
from harmonizer.shop.season import FileRecord, FileState, Mark, State
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


def name_of(file: str, words: Words) -> str:
    """A file's own name without the folders before it."""
    name = file.rpartition("/")[2]
    return words("file-pasted") if name == "-" else name


def open_count(state: FileState) -> int:
    """How many questions of a file are open."""
    ids = {one.id for chart in state.charts for one in chart.questions}
    return len(ids | {one.id for one in state.questions})


def state_words(state: FileState, record: FileRecord, words: Words) -> str:
    """How a file stands, in words: by whom and when where somebody decided it."""
    say, asked = words.wording.say, open_count(state)
    match state.state:
        case State.QUESTIONS:
            return say("questions", "state-questions", count=asked)
        case State.APPROVED:
            return _marked("state-approved", record.approved, words)
        case State.ASIDE:
            return _marked("state-aside", record.aside, words)
    return say("questions", f"state-{state.state.value}")


def _marked(code: str, marks: Sequence[Mark], words: Words) -> str:
    if not marks:
        return words.wording.say("questions", code)
    mark = marks[-1]
    day = day_words(mark.on, words.wording)
    if mark.habit:
        return words.wording.say("questions", f"{code}-habit", day=day)
    return words.wording.say("questions", f"{code}-by", by=mark.by, day=day)


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
