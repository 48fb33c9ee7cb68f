"""What is open in a file, as rows: dangerous ones first, equal ones as one; then what is settled.

No Qt. A row leads to its cells and carries the acts that may answer it.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Sequence
from dataclasses import dataclass
from datetime import date
from enum import StrEnum

from charts.answers import Answer, Meaning, Question
from charts.choices import (
    Choice,
    alike,
    answers,
    choices,
    in_danger_order,
    same_choice,
    settled_words,
    words,
)
from charts.day_words import day_words
from charts.finding_sentences import sentence_of
from charts.findings import DANGER, Finding, Level
from charts.schema import FileReading
from charts.wording import Wording
from harmonizer.shop.season import Asked, Stage
from ui.questions_page.given_words import act_words, place_of, said_words

StageOf = Callable[[Finding], tuple[Stage, Asked | None]]


class Weight(StrEnum):
    """What kind of row it is, in the order in which rows stand."""

    ERROR = "error"
    DANGER = "danger"
    QUESTION = "question"
    SETTLED = "settled"
    GIVEN = "given"
    NOTE = "note"


@dataclass(frozen=True, slots=True)
class Act:
    """One thing that can be done about a row, in words."""

    choice: Choice
    text: str


@dataclass(frozen=True, slots=True)
class QuestionRow:
    """One row. ``findings`` are the equal ones it stands for; ``more`` says how it stands.

    ``sent`` says that it went to the maker; ``given`` are the answers that can be taken back with
    it; ``place`` is where the source is looked at if it stands for no finding.
    """

    weight: Weight
    findings: tuple[Finding, ...]
    sentence: str
    more: str = ""
    acts: tuple[Act, ...] = ()
    sent: bool = False
    given: tuple[Answer, ...] = ()
    place: str = ""

    @property
    def first(self) -> Finding:
        """The finding that is shown for all of them."""
        return self.findings[0]

    @property
    def is_open(self) -> bool:
        """Whether a person still has to answer it."""
        return self.weight in (Weight.DANGER, Weight.QUESTION)

    @property
    def questions(self) -> tuple[Question, ...]:
        """What is asked, as letters and answers name it."""
        return tuple(Question.of(one) for one in self.findings)


def question_rows(
    reading: FileReading, stage: StageOf, wording: Wording, given: Sequence[Answer] = ()
) -> list[QuestionRow]:
    """Every row of a file.

    ``given`` are all its answers; one that stands with no closed question has a row of its own.
    """
    errors = [one for one in reading.findings if one.level is Level.ERROR]
    asked = in_danger_order([one for one in reading.findings if one.level is Level.QUESTION])
    settled = [one for one in reading.findings if one.settled is not None]
    notes = [one for one in reading.findings if one.level is Level.NOTE and one.settled is None]
    closed = [_settled(one, given, wording) for one in settled]
    shown = {answer for row in closed for answer in row.given}
    return [
        *(QuestionRow(Weight.ERROR, (one,), sentence_of(one, wording)) for one in errors),
        *(_asked(group, reading, stage, wording) for group in _groups(asked, reading)),
        *closed,
        *(_given(one, wording) for one in reversed(given) if one not in shown),
        *(QuestionRow(Weight.NOTE, (one,), sentence_of(one, wording)) for one in notes),
    ]


def _settled(finding: Finding, given: Sequence[Answer], wording: Wording) -> QuestionRow:
    """A question that is closed, with what was answered to it."""
    asked = Question.of(finding)
    own = tuple(answer for answer in given if answer.about == asked)
    more = settled_words(finding, wording)
    if own and isinstance(own[-1].act, Meaning):
        said, what = said_words(own[-1], wording), act_words(own[-1].act, wording)
        more = wording.say("questions", "given-settled", said=said, what=what)
    return QuestionRow(Weight.SETTLED, (finding,), sentence_of(finding, wording), more, given=own)


def _given(answer: Answer, wording: Wording) -> QuestionRow:
    """An answer that no closed question shows: what was said, by whom and when."""
    return QuestionRow(
        Weight.GIVEN,
        (),
        act_words(answer.act, wording),
        said_words(answer, wording),
        given=(answer,),
        place=place_of(answer.act),
    )


def answers_to(
    row: QuestionRow, choice: Choice, reading: FileReading, by: str, on: date
) -> tuple[Answer, ...]:
    """One choice as the answers to all the equal questions of a row, taken as one act."""
    given: list[Answer] = []
    for finding in row.findings:
        chosen = choice if finding is row.first else same_choice(choice, finding, reading)
        if chosen is not None:
            given.extend(answers(chosen, finding, by, on))
    return tuple(given)


def _groups(asked: Sequence[Finding], reading: FileReading) -> Iterator[tuple[Finding, ...]]:
    seen: set[str] = set()
    for finding in asked:
        if finding.id not in seen:
            group = (finding, *(one for one in alike(finding, reading) if one.id != finding.id))
            seen |= {one.id for one in group}
            yield group


def _asked(
    group: tuple[Finding, ...], reading: FileReading, stage: StageOf, wording: Wording
) -> QuestionRow:
    first = group[0]
    weight = Weight.DANGER if first.code in DANGER else Weight.QUESTION
    acts = tuple(_acts(choices(first, reading), wording))
    where, asked = stage(first)
    said = [_places(group, wording), _on_its_way(where, asked, wording)]
    more = " ".join(each for each in said if each)
    sent = asked is not None and where is not Stage.SETTLED
    return QuestionRow(weight, group, sentence_of(first, wording), more, acts, sent)


def _acts(offered: Iterable[Choice], wording: Wording) -> Iterator[Act]:
    """The choices with their words; two that come to the same figures are one."""
    seen: set[object] = set()
    for one in offered:
        read = one.candidate
        comes_to = (
            one.code
            if read is None or one.code != "take" or read.unit is None
            else (read.low, read.high, read.value, read.unit)
        )
        if read is None or comes_to not in seen:
            yield Act(one, words(one, wording))
        if read is not None:
            seen.add(comes_to)


def _places(group: Sequence[Finding], wording: Wording) -> str:
    if len(group) < 2:
        return ""
    places = ", ".join(one.place for one in group[1:])
    return wording.say("questions", "equal-ones", count=len(group) - 1, places=places)


def _on_its_way(stage: Stage, asked: Asked | None, wording: Wording) -> str:
    """Where a question stands that went to the maker."""
    if asked is None or stage is Stage.SETTLED:
        return ""
    if stage is Stage.ANSWERED:
        return wording.say("questions", "stage-answered", text=asked.answer, by=asked.by)
    day = day_words(asked.sent, wording) if asked.sent else ""
    return wording.say("questions", "stage-sent", day=day) if day else ""
