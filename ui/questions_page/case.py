"""One file on the questions page: its reading, its sheets with their parts, its state. No Qt."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import UTC, date, datetime
from time import perf_counter
from typing import Final

from charts.answers import Answer
from charts.importer import folder_of
from charts.places import sheet_of
from charts.regions import SheetRegions, regions
from charts.schema import Chart, FileReading
from charts.sources import LoadedFile
from harmonizer.shop.arrival import Arrival
from harmonizer.shop.season import FileState
from harmonizer.workspace import Workspace
from ui.operations import Operations
from ui.questions_page.signature import Signature

_KEPT: Final = 24
_SLOW: Final = 0.1
"""A reading that took longer, in seconds, is taken again beside the screen."""
_LARGE: Final = 30_000
"""A file of more bytes is taken for a slow one until it was read once."""


@dataclass(frozen=True, slots=True)
class Bench:
    """What the pages of charts work with."""

    workspace: Workspace
    operations: Operations
    signature: Signature


@dataclass(frozen=True, slots=True)
class Case:
    """One file as it stands now."""

    file: LoadedFile
    state: FileState
    sheets: tuple[SheetRegions, ...]

    @property
    def name(self) -> str:
        """The file's name in the workspace."""
        return self.reading.file

    @property
    def reading(self) -> FileReading:
        """What was read of it."""
        return self.file.reading

    def charts_of(self, sheet: SheetRegions) -> tuple[Chart, ...]:
        """The charts that stand on one sheet."""
        if len(self.sheets) == 1:
            return self.reading.charts
        name = sheet.sheet.name
        return tuple(each for each in self.reading.charts if sheet_of(each.place) == name)


class SheetShelf:
    """The sheets of files as their answers have them, kept for a step back and forth."""

    def __init__(self) -> None:
        self._kept: dict[tuple[str, str, tuple[Answer, ...]], tuple[SheetRegions, ...]] = {}
        self._seconds: dict[str, float] = {}

    def holds(self, file: LoadedFile, answers: Sequence[Answer]) -> bool:
        """Whether the sheets of a file are at hand."""
        return (file.reading.file, file.digest, tuple(answers)) in self._kept

    def sheets(self, file: LoadedFile, answers: Sequence[Answer]) -> tuple[SheetRegions, ...]:
        """The sheets of a file; read again where they are not at hand. Safe on any thread."""
        name = file.reading.file
        key = (name, file.digest, tuple(answers))
        if key not in self._kept:
            began = perf_counter()
            found = regions(file.data, name, folder_of(name), answers)
            self._seconds[name] = perf_counter() - began
            while len(self._kept) >= _KEPT:
                self._kept.pop(next(iter(self._kept)))
            self._kept[key] = found
        return self._kept[key]

    def is_slow(self, file: LoadedFile) -> bool:
        """Whether reading a file would hold the screen up."""
        took = self._seconds.get(file.reading.file)
        return len(file.data) > _LARGE if took is None else took > _SLOW


def case_of(workspace: Workspace, name: str, shelf: SheetShelf) -> Case | None:
    """The file of this name as it stands now; None where there is none."""
    file = workspace.contents.file(name)
    if file is None:
        return None
    sheets = shelf.sheets(file, workspace.record(name).answers)
    return Case(file, workspace.state(name), sheets)


def read_with(
    workspace: Workspace, name: str, answers: Sequence[Answer], shelf: SheetShelf
) -> Arrival:
    """The file read with more answers, its sheets at hand; touches nothing, safe on any thread."""
    return _at_hand(workspace.answered({name: answers}), shelf)


def read_without(
    workspace: Workspace, name: str, answers: Sequence[Answer], shelf: SheetShelf
) -> Arrival:
    """The file read without some of its answers, in the same way."""
    return _at_hand(workspace.withdrawn(name, answers), shelf)


def _at_hand(arrival: Arrival, shelf: SheetShelf) -> Arrival:
    for file, record in zip(arrival.files, arrival.records, strict=True):
        shelf.sheets(file, record.answers)
    return arrival


def today() -> date:
    """The day of this screen."""
    return datetime.now(UTC).astimezone().date()
