"""Files read in the light of what is known: unchanged ones not at all, the others with answers.

Everything here is pure and may run beside the screen.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field, replace
from datetime import date
from pathlib import Path

from charts.answers import Answer
from charts.habits.applied import departures, habit_answers, text_answers
from charts.habits.kept import Habits, supplier_of
from charts.importer import folder_of, read_bytes
from charts.schema import FileReading
from charts.source_files import SourceFile
from charts.sources import Loaded, LoadedFile, Progress, digest_of, load
from charts.wording import Wording
from harmonizer.shop.season import FileRecord, Mark, key_of, open_questions


@dataclass(frozen=True, slots=True)
class Known:
    """What a workspace knows when files arrive. ``on`` is the day."""

    files: tuple[LoadedFile, ...] = ()
    records: tuple[FileRecord, ...] = ()
    habits: tuple[Habits, ...] = ()
    on: date | None = None

    def held(self, name: str, digest: str) -> LoadedFile | None:
        """The file of this content as it was read, under the name it has."""
        same = [file for file in self.files if digest and file.digest == digest]
        return next((file for file in same if file.reading.file == name), None)

    def record(self, name: str, digest: str) -> FileRecord | None:
        """What was said of a file: of its name, else of its content under another name."""
        named = [one for one in self.records if one.name == name]
        same = [one for one in self.records if digest and one.digest == digest]
        return next(iter((*named, *same)), None)

    def habits_of(self, reading: FileReading) -> Habits | None:
        """The habits of whoever a file is from."""
        supplier = supplier_of(reading)
        return next((one for one in self.habits if supplier and one.supplier == supplier), None)


@dataclass(frozen=True, slots=True)
class Arrival(Loaded):
    """What was loaded, with what is said of it; ``unchanged`` were not read again.

    ``again`` says that the files are those at hand, read anew: each takes the place of its name.
    """

    records: tuple[FileRecord, ...] = ()
    unchanged: frozenset[str] = field(default_factory=frozenset)
    again: bool = False


def arrive(
    sources: Sequence[Path],
    known: Known,
    progress: Progress | None = None,
    pasted: bytes | None = None,
    wording: Wording | None = None,
    *,
    again: Sequence[SourceFile] = (),
) -> Arrival:
    """Read what is behind ``sources``; what was said of a file before is applied to it again.

    ``again`` are files that are read under the names they have.
    """
    reads = _Reads(known)
    loaded = load(sources, progress, pasted, wording, reads, again=again)
    return Arrival(loaded.files, tuple(reads.records), frozenset(reads.unchanged))


def read_again(file: LoadedFile, answers: Sequence[Answer]) -> LoadedFile:
    """The same file read with other answers; how it departs from its supplier's habits stays."""
    name = file.read_as or file.reading.file
    reading = read_bytes(file.data, name, folder_of(name), answers)
    notes = [one for one in file.reading.findings if one.code == "habit-departure"]
    taken = max((int(one.id[1:]) for one in reading.findings), default=0)
    kept = tuple(replace(one, id=f"f{number}") for number, one in enumerate(notes, taken + 1))
    findings = (*reading.findings, *kept)
    return replace(file, reading=replace(reading, file=file.reading.file, findings=findings))


def still_valid(record: FileRecord, before: FileReading, now: FileReading) -> FileRecord:
    """The record without the approvals of charts that are no longer what was approved."""
    was = {key_of(chart): chart.sizes for chart in before.charts}
    same = {key_of(chart) for chart in now.charts if was.get(key_of(chart)) == chart.sizes}
    whole = len(same) == len(now.charts) == len(before.charts)
    kept = tuple(
        mark for mark in record.approved if mark.chart in same or (mark.chart == "" and whole)
    )
    return replace(record, approved=kept)


class _Reads:
    """Reads a file when it arrives, or knows its reading."""

    def __init__(self, known: Known) -> None:
        self._known = known
        self.records: list[FileRecord] = []
        self.unchanged: set[str] = set()

    def __call__(self, data: bytes, name: str, folder: str) -> FileReading:
        digest = digest_of(data)
        record = self._known.record(name, digest)
        held = self._known.held(name, digest)
        if held is not None:
            self.unchanged.add(name)
            if record is not None:
                self.records.append(replace(record, name=name, digest=digest))
            return held.reading
        said = replace(record or FileRecord(name), name=name, digest=digest)
        reading, said = read_first(data, folder, said, self._known)
        if record is not None and record.digest != digest and record.approved:
            said = replace(said, approved=())  # a person saw the other edition: let her see this
        self.records.append(said)
        return reading


def read_first(
    data: bytes, folder: str, said: FileRecord, known: Known
) -> tuple[FileReading, FileRecord]:
    """A file read with a person's answers and its supplier's habits; and what is said of it now.

    A file in which the habits leave nothing open, and which looks as the last one did, is approved
    by them.
    """
    given = tuple(answer for answer in said.answers if not answer.habit)
    habits = known.habits_of(FileReading(said.name))
    given = (*(text_answers(said.name, habits) if habits else ()), *given)
    reading = read_bytes(data, said.name, folder, given)
    said = replace(said, supplier=supplier_of(reading))
    habits = known.habits_of(reading)
    if habits is None:
        return reading, replace(said, answers=given)
    more = habit_answers(reading, habits)
    if more:
        given = (*more, *given)
        reading = read_bytes(data, said.name, folder, given)
    notes = departures(reading, habits)
    reading = replace(reading, findings=(*reading.findings, *notes))
    said = replace(said, answers=given)
    if not notes and not said.approved and not said.aside and _as_before(reading, habits):
        mark = Mark(habits.by, known.on or habits.on or date.min, habit=habits.version)
        said = replace(said, approved=(mark,))
    return reading, said


def _as_before(reading: FileReading, habits: Habits) -> bool:
    """Whether a file looks as the approved ones did and nothing of it is open."""
    looked = habits.look(reading.file) is not None
    return looked and bool(reading.charts) and not open_questions(reading)
