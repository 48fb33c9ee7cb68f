"""Files read in the light of what is known: unchanged ones not at all, the others with answers.

Everything here is pure and may run beside the screen.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field, replace
from pathlib import Path

from charts.answers import Answer
from charts.importer import folder_of, read_bytes
from charts.schema import FileReading
from charts.sources import Loaded, LoadedFile, Progress, digest_of, load
from charts.wording import Wording
from harmonizer.season import FileRecord, key_of


@dataclass(frozen=True, slots=True)
class Known:
    """What a workspace knows when files arrive."""

    files: tuple[LoadedFile, ...] = ()
    records: tuple[FileRecord, ...] = ()

    def held(self, name: str, digest: str) -> LoadedFile | None:
        """The file of this content as it was read, under the name it has."""
        same = [file for file in self.files if digest and file.digest == digest]
        return next((file for file in same if file.reading.file == name), None)

    def record(self, name: str, digest: str) -> FileRecord | None:
        """What was said of a file: of its name, else of its content under another name."""
        named = [one for one in self.records if one.name == name]
        same = [one for one in self.records if digest and one.digest == digest]
        return next(iter((*named, *same)), None)


@dataclass(frozen=True, slots=True)
class Arrival(Loaded):
    """What was loaded, with what is said of it; ``unchanged`` were not read again."""

    records: tuple[FileRecord, ...] = ()
    unchanged: frozenset[str] = field(default_factory=frozenset)


def arrive(
    sources: Sequence[Path],
    known: Known,
    progress: Progress | None = None,
    pasted: bytes | None = None,
    wording: Wording | None = None,
) -> Arrival:
    """Read what is behind ``sources``; what was said of a file before is applied to it again."""
    reads = _Reads(known)
    loaded = load(sources, progress, pasted, wording, reads)
    return Arrival(loaded.files, tuple(reads.records), frozenset(reads.unchanged))


def read_again(file: LoadedFile, answers: Sequence[Answer]) -> LoadedFile:
    """The same file read with other answers."""
    name = file.reading.file
    return replace(file, reading=read_bytes(file.data, name, folder_of(name), answers))


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
        held = self._known.held(name, digest)
        if held is not None:
            self.unchanged.add(name)
            self._keep(self._known.record(name, digest), name, digest)
            return held.reading
        record = self._known.record(name, digest)
        reading = read_bytes(data, name, folder, record.answers if record else ())
        self._keep(record, name, digest)
        return reading

    def _keep(self, record: FileRecord | None, name: str, digest: str) -> None:
        """What is said of the file from now on; a changed file is not approved any more."""
        if record is None:
            return
        approved = record.approved if record.digest == digest else ()
        self.records.append(replace(record, name=name, digest=digest, approved=approved))
