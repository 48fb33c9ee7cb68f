"""What was read, for people: every chart as understood, then what is open, dangerous first."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from itertools import groupby
from typing import Final

from charts.finding_sentences import reason_of, sentence_of
from charts.findings import DANGER, Finding, Level
from charts.schema import Chart, FileReading
from charts.wording import Wording
from ui.chart_table import chart_rows, names_of
from ui.terminal_text import aligned, wrapped

_LEVELS: Final = (Level.ERROR, Level.QUESTION, Level.NOTE)


def read_report(readings: Sequence[FileReading], wording: Wording, width: int) -> list[str]:
    """The lines of the report."""
    lines = [line for reading in readings for line in (*_file(reading, wording, width), "")]
    return [*lines, _summary(readings, wording)]


def _file(reading: FileReading, wording: Wording, width: int) -> Iterator[str]:
    yield reading.file
    asked = frozenset(each.id for each in reading.findings if each.level is Level.QUESTION)
    for chart in reading.charts:
        yield f"  {_title(chart, wording)}"
        yield from aligned(chart_rows(chart, asked, wording), indent=4)
    if not reading.charts and not reading.findings:
        yield f"  {wording.say('faces', 'nothing-found')}"
    ordered = sorted(reading.findings, key=_weight)
    for _, alike in groupby(ordered, key=_weight):
        yield from _findings(alike, wording, width)


def _title(chart: Chart, wording: Wording) -> str:
    sizes = wording.say("faces", "sizes", count=len(chart.sizes))
    names = " · ".join([*names_of(chart, wording), sizes])
    return wording.say("faces", "chart", place=chart.place, names=names)


def _weight(finding: Finding) -> tuple[int, int, str]:
    """Errors, then questions with the dangerous ones first, then notes; alike ones together."""
    danger = DANGER.get(finding.code, len(DANGER))
    return (_LEVELS.index(finding.level), danger, finding.code)


def _findings(alike: Iterable[Finding], wording: Wording, width: int) -> Iterator[str]:
    """Findings of one code, each with its readings, and once what can be done about them.

    Notes only tell: the first in full, of the others the places.
    """
    first, *others = alike
    yield from _finding(first, wording, width)
    if first.level is Level.NOTE and others:
        places = ", ".join(finding.place for finding in others)
        yield from wrapped(wording.say("faces", "also-at", places=places), 6, width)
    else:
        for finding in others:
            yield from _finding(finding, wording, width)
    if wording.has("faces", f"do-{first.code}"):
        yield from wrapped(wording.say("faces", f"do-{first.code}"), 4, width)


def _finding(finding: Finding, wording: Wording, width: int) -> Iterator[str]:
    level = wording.say("faces", f"level-{finding.level.value}")
    said = wording.say("faces", "finding", level=level, text=sentence_of(finding, wording))
    yield from wrapped(said, 2, width)
    for candidate in finding.candidates:
        why = reason_of(candidate, wording)
        reading = "candidate-why" if why else "candidate"
        said = wording.say("faces", reading, text=candidate.text, why=why)
        yield from wrapped(said, 6, width)


def _summary(readings: Sequence[FileReading], wording: Wording) -> str:
    levels = [finding.level for reading in readings for finding in reading.findings]
    charts = [chart for reading in readings for chart in reading.charts]
    return wording.say(
        "faces",
        "read-summary",
        files=len(readings),
        charts=len(charts),
        sizes=sum(len(chart.sizes) for chart in charts),
        questions=levels.count(Level.QUESTION),
        errors=levels.count(Level.ERROR),
    )
