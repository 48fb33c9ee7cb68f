"""The files as rows: what each gave, and what is the matter with it. No Qt."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Final

from charts.finding_sentences import sentence_of
from charts.findings import DANGER, Finding, Level
from charts.schema import FileReading
from ui.theme import Ink, Look, Mark
from ui.words import Words

PROBLEM: Final = Look(Ink.STOP, Mark.CROSS)
QUESTION: Final = Look(Ink.NEAR, Mark.HALF)
CLEAR: Final = Look(Ink.GOOD, Mark.FULL)
NOTE: Final = Look(Ink.UNKNOWN, Mark.RING)
LOOKS: Final = {Level.ERROR: PROBLEM, Level.QUESTION: QUESTION, Level.NOTE: NOTE}
_LEVELS: Final = (Level.ERROR, Level.QUESTION, Level.NOTE)


@dataclass(frozen=True, slots=True)
class FileRow:
    """One file. ``folder`` is where it lay, ``says`` what it gave or why it gave nothing."""

    reading: FileReading
    name: str
    folder: str
    says: str
    look: Look
    questions: int

    @property
    def sentence(self) -> str:
        """What a screen reader says of the row."""
        return f"{self.name}. {self.says}"


def file_rows(readings: Sequence[FileReading], words: Words) -> tuple[FileRow, ...]:
    """One row a file: those with problems first, then those with questions, then the rest."""
    rows = [_row(reading, words) for reading in readings]
    looks = (PROBLEM, QUESTION, CLEAR)
    return tuple(sorted(rows, key=lambda row: looks.index(row.look)))


def _row(reading: FileReading, words: Words) -> FileRow:
    folder, _, name = reading.file.rpartition("/")
    questions = sum(one.level is Level.QUESTION for one in reading.findings)
    problem = next((one for one in reading.findings if one.level is Level.ERROR), None)
    if problem is not None:
        look, says = PROBLEM, sentence_of(problem, words.wording)
    elif questions:
        look, says = QUESTION, words("file-questions", what=_gave(reading, words), count=questions)
    else:
        look, says = CLEAR, _gave(reading, words)
    return FileRow(
        reading=reading,
        name=name if name != "-" else words("file-pasted"),
        folder=folder,
        says=says,
        look=look,
        questions=questions,
    )


def _gave(reading: FileReading, words: Words) -> str:
    sizes = sum(len(chart.sizes) for chart in reading.charts)
    return words("file-gave", count=len(reading.charts), sizes=sizes)


def weighed(findings: Sequence[Finding]) -> list[Finding]:
    """Findings in the order in which they are shown: errors, dangerous questions, the rest."""
    return sorted(
        findings,
        key=lambda one: (_LEVELS.index(one.level), DANGER.get(one.code, len(DANGER))),
    )
