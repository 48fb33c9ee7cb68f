"""Which questions the answers closed: told from the readings with and without them.

A question that stood before and does not stand now is listed as settled, with who and when.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import replace
from types import MappingProxyType

from charts.answering import Answering
from charts.answers import (
    Act,
    Answer,
    AsPrinted,
    Corrected,
    Edge,
    LeftOut,
    Meaning,
    Question,
    Taken,
    TextForm,
    Turned,
)
from charts.asked_values import printed_around
from charts.findings import Finding, Level
from charts.schema import Chart, FileReading, Range, Size

Value = tuple[str, str]
"""A value by its place and its dimension."""


def with_settled(before: FileReading, now: FileReading, answering: Answering) -> FileReading:
    """``now`` with the questions of ``before`` that no longer stand, and notes at idle answers."""
    now = _asked_again(now, answering)
    standing = {Question.of(finding) for finding in now.findings}
    gone = [
        finding
        for finding in before.findings
        if finding.level is Level.QUESTION and Question.of(finding) not in standing
    ]
    fresh = _numbers(now.findings)
    settled = {finding.id: _settled(finding, fresh(), answering) for finding in gone}
    idle = [_note(answer, fresh(), now.file) for answer in answering.unused]
    charts = _listing(now.charts, _asked(before, {old: new.id for old, new in settled.items()}))
    return replace(
        now,
        charts=charts,
        findings=(*now.findings, *settled.values(), *idle),
        corrections=tuple(answering.corrections),
    )


def _asked_again(now: FileReading, answering: Answering) -> FileReading:
    """The reading with a question open again where other figures stand than were confirmed."""
    findings = tuple(_perhaps_open(finding, now, answering) for finding in now.findings)
    return replace(now, findings=findings)


def _perhaps_open(finding: Finding, now: FileReading, answering: Answering) -> Finding:
    if finding.settled is None:
        return finding
    for answer, act in answering.of(AsPrinted):
        same = (act.place, act.code) == (finding.place, finding.code)
        if same and act.printed and act.printed != printed_around(finding, now):
            answering.unuse(answer)
            return replace(finding, settled=None)
    return finding


def _numbers(findings: Sequence[Finding]) -> Callable[[], str]:
    """Ids that no finding of the file bears yet."""
    taken = max((int(finding.id[1:]) for finding in findings), default=0)

    def fresh() -> str:
        nonlocal taken
        taken += 1
        return f"f{taken}"

    return fresh


def _settled(finding: Finding, ident: str, answering: Answering) -> Finding:
    answer = _answer_to(Question.of(finding), answering)
    return replace(finding, id=ident, settled=answer.settled() if answer else None)


def _answer_to(question: Question, answering: Answering) -> Answer | None:
    """The answer that was given to the question, else the latest that had an effect."""
    for answer in reversed(answering.used):
        if answer.about == question:
            return answer
    return answering.used[-1] if answering.used else None


def _note(answer: Answer, ident: str, file: str) -> Finding:
    """What is said of an answer that found nothing to speak of."""
    place, text = _place(answer.act)
    values = {"by": answer.by, "text": text, "case": answer.settled().what}
    return Finding(ident, "answer-not-applied", place or file, MappingProxyType(values))


def _place(act: Act) -> tuple[str, str]:
    """Where an act looks, and what it expects to find printed there."""
    match act:
        case Corrected(cells):
            return cells[0].place, cells[0].printed
        case Meaning():
            return act.place, ", ".join(act.headings)
        case AsPrinted() | LeftOut() | Taken():
            return act.place, act.text
        case Edge() | Turned():
            return act.place, ""
        case TextForm():
            return "", " ".join(each for each in (act.encoding, act.separator) if each)


def _asked(before: FileReading, renamed: Mapping[str, str]) -> dict[Value, tuple[str, ...]]:
    """The settled questions that bore on each value before."""
    found: dict[Value, tuple[str, ...]] = {}
    for chart in before.charts:
        for size in chart.sizes:
            for one in size.ranges:
                ids = tuple(renamed[each] for each in one.findings if each in renamed)
                if ids:
                    found[one.place, one.dimension] = ids
    return found


def _listing(charts: Sequence[Chart], asked: Mapping[Value, tuple[str, ...]]) -> tuple[Chart, ...]:
    return tuple(
        replace(chart, sizes=tuple(_of_size(size, asked) for size in chart.sizes))
        for chart in charts
    )


def _of_size(size: Size, asked: Mapping[Value, tuple[str, ...]]) -> Size:
    def listed(one: Range) -> Range:
        ids = asked.get((one.place, one.dimension), ())
        return replace(one, findings=(*one.findings, *ids)) if ids else one

    return replace(size, ranges=tuple(listed(one) for one in size.ranges))
