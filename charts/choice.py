"""One act that may answer a question, and the words in which it is offered."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from decimal import Decimal
from types import MappingProxyType

from charts.answers import Act
from charts.day_words import day_words
from charts.finding_sentences import reason_of
from charts.findings import Candidate, Finding
from charts.quantities import Unit
from charts.wording import Wording


@dataclass(frozen=True, slots=True)
class Choice:
    """One act that answers a question: its acts, and the code and values of its words.

    ``candidate`` is the reading it takes, None where it takes none.
    """

    code: str
    acts: tuple[Act, ...]
    values: Mapping[str, str] = field(default_factory=dict)
    candidate: Candidate | None = None


def choice(code: str, *acts: Act, candidate: Candidate | None = None, **values: str) -> Choice:
    """A choice from its parts."""
    return Choice(code, acts, MappingProxyType(values), candidate)


def words(chosen: Choice, wording: Wording) -> str:
    """The choice as a person reads it, with what its figures are where the print hides them."""
    values = dict(chosen.values)
    code = chosen.code
    if chosen.candidate is not None:
        values["why"] = reason_of(chosen.candidate, wording)
        figure = figure_words(chosen.candidate, wording)
        if figure and not _shown(chosen.candidate):
            values["figure"] = figure
            code = f"{code}-as"
    if "dimension" in values:
        values["dimension"] = wording.say("combined", f"dimension-{values['dimension']}")
    return wording.say("season", f"choice-{code}", **values)


def settled_words(finding: Finding, wording: Wording) -> str:
    """How a question was settled, by whom and when; "" when it is not."""
    how = finding.settled
    if how is None:
        return ""
    if not how.by:
        return wording.say("season", "settled-nobody")
    day = day_words(how.on, wording) if how.on else wording.say("season", "day-not-known")
    return wording.say(
        "season", f"settled-{how.what}", by=how.by, day=day, text=_taken_words(finding, wording)
    )


def _taken_words(finding: Finding, wording: Wording) -> str:
    """What an answer says: the figures of a reading that was taken, else its own words."""
    how = finding.settled
    if how is None:
        return ""
    for candidate in finding.candidates:
        if how.why and (candidate.text, candidate.why) == (how.text, how.why):
            return figure_words(candidate, wording) or how.text
    return how.text


def figure_words(candidate: Candidate, wording: Wording) -> str:
    """A reading's figures in cm, kg or years; "" when it has none."""
    ends = {
        name: wording.number(end, "0.1")
        for name, end in (
            ("low", candidate.low),
            ("high", candidate.high),
            ("value", candidate.value),
        )
        if end is not None
    }
    if not ends or candidate.unit is None:
        return ""
    unit = candidate.unit
    if unit == Unit.YEARS:
        unit = wording.say("combined", "years")
    return wording.say("season", f"figure-{'-'.join(ends)}", unit=unit, **ends)


def _shown(candidate: Candidate) -> bool:
    """Whether the text of a reading shows its figures and its unit already."""
    ends = (candidate.low, candidate.high, candidate.value)
    figures = [_plain(end) for end in ends if end is not None]
    text = candidate.text.replace(",", ".")
    return candidate.unit in text.split() and all(figure in text for figure in figures)


def _plain(end: Decimal) -> str:
    return f"{end.normalize():f}"
