"""From files, folders and pasted text to readings, each with what stands beside it.

What is opened, under which name and in what order, is found by ``charts.source_files``.
"""

from __future__ import annotations

import codecs
import hashlib
from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass, field, replace
from datetime import UTC, date, datetime
from pathlib import Path
from typing import Final

from charts.findings import FindingLog, Level
from charts.importer import folder_of, not_opened, read_bytes
from charts.inner_files import FilePart, parts_of, says_something
from charts.model_facts import FactsFileError, ModelFacts, read_model_facts
from charts.schema import FileReading
from charts.source_files import SourceFile, find
from charts.wording import Wording
from charts.writers.own_files import is_ours_inside

PASTED: Final = "-"
FACTS_FILE: Final = "models.toml"

Progress = Callable[[str, float], None]
"""Told the file at hand and the fraction done (0 to 1); may raise Cancelled."""
Reads = Callable[[bytes, str, str], FileReading]
"""Reads a file's bytes under its name and folder, as ``charts.importer.read_bytes`` does."""


class Cancelled(Exception):  # noqa: N818 - somebody's wish, no error
    """Raised inside a progress callable by whoever wants the work to stop."""


@dataclass(frozen=True, slots=True)
class LoadedFile:
    """One file's reading, and what stands beside it.

    Attributes:
        reading: its charts and findings, under its name.
        path: where it lies; None when it was pasted.
        dated: the day it was last written, today when pasted.
        facts: the models of the ``models.toml`` in its folder.
        data: its bytes, from which it is read again; empty when it could not be opened.
        inner: the way to it inside the file at ``path``, "" for that file itself.
        read_as: the name under which it was read, where it bears another by now.
    """

    reading: FileReading
    path: Path | None
    dated: date
    facts: tuple[ModelFacts, ...] = ()
    data: bytes = field(default=b"", repr=False)
    inner: str = ""
    read_as: str = ""

    @property
    def digest(self) -> str:
        """A short name for the content: two files of one digest hold the same bytes."""
        return digest_of(self.data)

    @property
    def source(self) -> SourceFile | None:
        """The file on the disk under its name here, None where it was pasted."""
        if self.path is None:
            return None
        return SourceFile(self.path, self.reading.file.removesuffix(self.inner).rstrip("/"))

    @property
    def whole_way(self) -> tuple[str, ...]:
        """The parts of the way to it, through the file that it lies in; none when pasted."""
        inner = tuple(part for part in self.inner.split("/") if part)
        return (*self.path.absolute().parts, *inner) if self.path is not None else ()

    @property
    def unusable(self) -> bool:
        """Whether the file gave no chart because it could not be read at all."""
        errors = any(finding.level is Level.ERROR for finding in self.reading.findings)
        return errors and not self.reading.charts

    def renamed(self, name: str) -> LoadedFile:
        """The same file under another name, its facts still beside it."""
        renamed = replace(self.reading, file=name)
        read_as = self.read_as or self.reading.file
        return replace(self, reading=renamed, read_as=read_as).beside(self.facts)

    def beside(self, facts: tuple[ModelFacts, ...] | None) -> LoadedFile:
        """The same file with newer facts of its folder beside it; None leaves those it has."""
        if facts is None:
            return self
        outer = self.reading.file.removesuffix(self.inner).rstrip("/")
        folder = outer.rpartition("/")[0]
        return replace(self, facts=tuple(replace(each, folder=folder) for each in facts))


@dataclass(frozen=True, slots=True)
class Loaded:
    """Everything some sources gave, by name, ready to be taken into a workspace."""

    files: tuple[LoadedFile, ...] = ()


def load(
    sources: Sequence[Path],
    progress: Progress | None = None,
    pasted: bytes | None = None,
    wording: Wording | None = None,
    reads: Reads = read_bytes,
    *,
    again: Sequence[SourceFile] = (),
) -> Loaded:
    """Read everything behind ``sources``, and ``pasted`` under the name "-".

    ``again`` are files that are read under the names they have.

    A file that cannot be used becomes a reading with its error, in the language of ``wording``
    where the error quotes a person's notes. ``reads`` may know a file's reading already. Nothing
    but Cancelled is raised.
    """
    found, closed = find(sources)
    found = (*found, *again)
    facts = _Facts(wording or Wording())
    files = [] if pasted is None else list(_pasted(pasted, reads))
    for number, file in enumerate(found):
        if progress is not None:
            progress(file.name, number / len(found))
        for part in _opened(file, facts.beside(file), reads):
            files.append(part)
            if progress is not None and part.inner:
                progress(part.reading.file, number / len(found))
    files += facts.faulty
    files += [LoadedFile(_problem(name, "folder-closed"), None, _today()) for name in closed]
    if progress is not None:
        progress("", 1.0)
    return Loaded(tuple(sorted(files, key=lambda file: file.reading.file)))


class _Facts:
    """The ``models.toml`` of each folder, opened once; one that cannot be used is a problem."""

    def __init__(self, wording: Wording) -> None:
        self._wording = wording
        self._by_folder: dict[Path, tuple[ModelFacts, ...]] = {}
        self.faulty: list[LoadedFile] = []

    def beside(self, file: SourceFile) -> tuple[ModelFacts, ...]:
        """What stands beside ``file``, under its name's folder."""
        folder = file.path.parent
        if folder not in self._by_folder:
            name = f"{file.folder}/{FACTS_FILE}".removeprefix("/")
            self._by_folder[folder] = self._read(folder / FACTS_FILE, name)
        return tuple(replace(each, folder=file.folder) for each in self._by_folder[folder])

    def _read(self, path: Path, name: str) -> tuple[ModelFacts, ...]:
        try:
            return read_model_facts(path.read_text(encoding="utf-8-sig"), name)
        except FileNotFoundError:
            return ()
        except FactsFileError as fault:
            reading = _problem(name, "facts-file", str(fault.line), fault.say(self._wording))
            self.faulty.append(LoadedFile(reading, path, _today()))
        except (OSError, UnicodeDecodeError):
            self.faulty.append(LoadedFile(_problem(name, "unreadable"), path, _today()))
        return ()


def _opened(file: SourceFile, beside: tuple[ModelFacts, ...], reads: Reads) -> Iterator[LoadedFile]:
    """One file, or each of those inside it, every one with its own bytes."""
    if not _is_there(file.path):
        yield LoadedFile(_missing(file), file.path, _today(), beside)
        return
    try:
        data = file.path.read_bytes()
    except OSError:
        yield LoadedFile(not_opened(file.name), file.path, _dated(file.path), beside)
        return
    for part, reading in _parts_read(data, file.name, reads):
        yield LoadedFile(reading, file.path, _dated(file.path), beside, part.data, part.inner)


def _parts_read(data: bytes, name: str, reads: Reads) -> Iterator[tuple[FilePart, FileReading]]:
    for part in parts_of(data, name):
        if part.inner and is_ours_inside(part.name, part.data):
            continue
        reading = part.problem or reads(part.data, part.name, folder_of(part.name))
        if not part.outer or says_something(reading):
            yield part, reading


def _pasted(data: bytes, reads: Reads) -> Iterator[LoadedFile]:
    """What was piped in: a text, or a whole file."""
    text = data.removeprefix(codecs.BOM_UTF8)
    for part, reading in _parts_read(text, PASTED, reads):
        yield LoadedFile(reading, None, _today(), data=part.data, inner=part.inner)


def digest_of(data: bytes) -> str:
    """A short name for some content; "" for none."""
    return hashlib.sha256(data).hexdigest()[:16] if data else ""


def _is_there(path: Path) -> bool:
    try:
        return path.exists()
    except OSError:
        return False


def _missing(file: SourceFile) -> FileReading:
    return _problem(file.name, "not-there")


def _problem(name: str, code: str, line: str = "", reason: str = "") -> FileReading:
    log = FindingLog()
    log.add(code, name, name=name, line=line, reason=reason)
    return FileReading(name, (), log.findings)


def _dated(path: Path) -> date:
    try:
        seconds = path.stat().st_mtime
    except OSError:
        return _today()
    return datetime.fromtimestamp(seconds, UTC).astimezone().date()


def _today() -> date:
    return datetime.now(UTC).astimezone().date()
