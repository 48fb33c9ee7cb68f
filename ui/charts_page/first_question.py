"""Which open question of a file comes first, so that a buyer sees where to start. No Qt."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

from charts.choices import in_danger_order
from charts.finding_sentences import sentence_of
from charts.findings import DANGER
from charts.wording import Wording
from harmonizer.shop.season import FileState
from ui.theme import Ink, Look, Mark

DANGER_LOOK: Final = Look(Ink.STOP, Mark.STOP)
"""The sign of a question that can turn a right size into a wrong one, as on the file's own page."""


@dataclass(frozen=True, slots=True)
class FirstQuestion:
    """``text`` is short and says whether it is ``dangerous``; ``sentence`` is all of it."""

    text: str
    sentence: str
    dangerous: bool


def first_question(state: FileState, wording: Wording) -> FirstQuestion | None:
    """The most dangerous open question of a file, else the first; None where none is open."""
    asked = [*(one for chart in state.charts for one in chart.questions), *state.questions]
    if not asked:
        return None
    first = in_danger_order(asked)[0]
    dangerous = first.code in DANGER
    short = wording.say("questions", f"short-{first.code}")
    text = wording.say("questions", "first-danger" if dangerous else "first", short=short)
    return FirstQuestion(text, sentence_of(first, wording), dangerous)
