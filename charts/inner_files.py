"""The files inside a file: archives and mail hold some, a few levels deep.

An inner file is named by the way to it (``archive.zip/inner.csv``) and read like any other.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from typing import Final

from charts.findings import FindingLog, Level
from charts.patience import Patience
from charts.readers.registry import inner_files
from charts.readers.source import InnerFile
from charts.schema import FileReading

DEEPEST: Final = 2
"""How many files may lie one in the other around a chart's file."""
_LONGEST_S: Final = 20.0
"""Seconds of work for everything inside one file."""


@dataclass(frozen=True, slots=True)
class FilePart:
    """One file to read: the file itself, or one inside it.

    ``inner`` is the way inside the outer file, "" for that file itself; ``problem`` is what is
    said of a part whose bytes could not be taken out. An ``outer`` part holds others.
    """

    name: str
    data: bytes = b""
    inner: str = ""
    problem: FileReading | None = None
    outer: bool = False


def parts_of(data: bytes, name: str) -> Iterator[FilePart]:
    """The files inside ``data``, then the file itself; for most files the file itself alone.

    Whoever reads them keeps the reading of an outer part only where it ``says_something``.
    """
    yield from _parts(FilePart(name, data), name, 0, Patience(_LONGEST_S))


def says_something(reading: FileReading) -> bool:
    """Whether an outer file has charts or problems of its own; a covering letter has none."""
    own = [one for one in reading.findings if one.level is not Level.NOTE]
    return bool(reading.charts) or any(one.code != "no-table" for one in own)


def _parts(part: FilePart, name: str, depth: int, patience: Patience) -> Iterator[FilePart]:
    log = FindingLog()
    held = False
    for one in inner_files(part.data, part.name, log):
        held = True
        way = f"{part.inner}/{one.name}".removeprefix("/")
        inner = FilePart(f"{name}/{way}", one.data, way, _problem(one, f"{name}/{way}", depth))
        if patience.is_over:
            log.add("too-large", part.name, name=part.name, what=patience.allowed, case="long")
            break
        if inner.problem is not None:
            yield inner
        else:
            yield from _parts(inner, name, depth + 1, patience)
    if log.findings:
        yield FilePart(part.name, b"", part.inner, FileReading(part.name, (), log.findings))
    else:
        yield FilePart(part.name, part.data, part.inner, outer=held)


def _problem(inner: InnerFile, name: str, depth: int) -> FileReading | None:
    """Why an inner file is not opened; None when it is."""
    log = FindingLog()
    if inner.problem is not None:
        why = inner.problem
        log.add(why.code, name, name=name, what=why.what, case=why.case)
    elif depth >= DEEPEST:
        log.add("unreadable", name, name=name, what=str(DEEPEST), case="deep")
    return FileReading(name, (), log.findings) if log.findings else None
