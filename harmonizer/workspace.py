"""The one door for every face: load, take, undo, redo, compare, combine; it says what changed.

Everything it holds is one frozen value, so a step back is the value before. Loading is pure and
may run beside the screen; taking what was loaded happens on the caller's thread.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace
from datetime import UTC, date, datetime
from enum import StrEnum
from pathlib import Path

from charts.in_house import InHouseChart
from charts.model_facts import ModelFacts
from charts.schema import FileReading
from charts.sources import Loaded, LoadedFile, Progress, load
from charts.wording import Wording
from charts.writers.own_files import is_ours
from charts.writers.registry import check_ending, write_chart
from charts.writers.whole_file import NotWrittenError
from harmonizer.combined import combined
from harmonizer.fit import fit
from harmonizer.fit_sheet import FitSheet
from harmonizer.offers import Offer, offers
from harmonizer.range_table import RangeTable
from harmonizer.rider import Rider
from harmonizer.settings import DEFAULTS, Settings


class Part(StrEnum):
    """What a change may touch."""

    CHARTS = "charts"
    RIDER = "rider"
    SETTINGS = "settings"


Listener = Callable[[frozenset[str]], None]


@dataclass(frozen=True, slots=True)
class Contents:
    """Everything a workspace holds at one moment. ``files`` are by name, names are unique."""

    files: tuple[LoadedFile, ...] = ()
    riders: tuple[Rider, ...] = ()
    settings: Settings = DEFAULTS


class Workspace:
    """Charts, riders and settings, every change of them undoable and announced.

    Attributes:
        on_change: told, after each change, which parts of the workspace are different now.
    """

    def __init__(self) -> None:
        self.on_change: list[Listener] = []
        self._now = Contents()
        self._before: list[Contents] = []
        self._after: list[Contents] = []
        self._offers: tuple[Offer, ...] | None = None
        self._table: RangeTable | None = None

    # What it holds

    @property
    def files(self) -> tuple[LoadedFile, ...]:
        """Every file taken, by name, those that could not be read among them."""
        return self._now.files

    def charts(self) -> tuple[FileReading, ...]:
        """The readings of the files, in the same order."""
        return tuple(file.reading for file in self._now.files)

    @property
    def facts(self) -> tuple[ModelFacts, ...]:
        """What stands beside the files about their models, each once."""
        known = {
            (each.folder, each.file, each.chart, each.model): each
            for file in self._now.files
            for each in file.facts
        }
        return tuple(known.values())

    @property
    def riders(self) -> tuple[Rider, ...]:
        """The riders at hand, in the order they came."""
        return self._now.riders

    @property
    def settings(self) -> Settings:
        """The shop's own figures."""
        return self._now.settings

    @property
    def offers(self) -> tuple[Offer, ...]:
        """Every model, size and length of the charts."""
        if self._offers is None:
            self._offers = offers(self.charts(), self.facts)
        return self._offers

    @property
    def table(self) -> RangeTable:
        """The offers compiled for comparison; made once for each state of charts and settings."""
        if self._table is None:
            self._table = RangeTable.compiled(self.offers, self.settings)
        return self._table

    # What changes it

    @staticmethod
    def load(
        sources: Sequence[Path],
        progress: Progress | None = None,
        pasted: bytes | None = None,
        wording: Wording | None = None,
    ) -> Loaded:
        """Read files and folders; touches no workspace and may run on any thread.

        ``progress`` is told the file at hand and the fraction done, and may raise Cancelled.
        """
        return load(sources, progress, pasted, wording)

    def take(self, loaded: Loaded) -> None:
        """Take what was loaded; a file that is already here is replaced by its new reading."""
        if loaded.files:
            self._change(replace(self._now, files=_merged(self._now.files, loaded.files)))

    def leave_out(self, file: str) -> None:
        """Take the file of this name away."""
        kept = tuple(each for each in self._now.files if each.reading.file != file)
        if len(kept) != len(self._now.files):
            self._change(replace(self._now, files=kept))

    def take_riders(self, riders: Sequence[Rider]) -> None:
        """Put ``riders`` in the place of those at hand."""
        self._change(replace(self._now, riders=tuple(riders)))

    def set_settings(self, settings: Settings) -> None:
        """Compare by other figures from now on."""
        self._change(replace(self._now, settings=settings))

    @property
    def can_undo(self) -> bool:
        """Whether there is a step to take back."""
        return bool(self._before)

    @property
    def can_redo(self) -> bool:
        """Whether a step was taken back and nothing was changed since."""
        return bool(self._after)

    def undo(self) -> None:
        """Take the last change back; nothing happens where there is none."""
        if self._before:
            self._after.append(self._now)
            self._become(self._before.pop())

    def redo(self) -> None:
        """Make the change again that was taken back last."""
        if self._after:
            self._before.append(self._now)
            self._become(self._after.pop())

    # What it answers

    def fit(self, rider: Rider) -> FitSheet:
        """``rider`` against every size."""
        return fit(rider, self.table, self.settings)

    def in_house_chart(self, made_on: date | None = None) -> InHouseChart:
        """The combined chart as rows, dated today unless another day is given."""
        dates = {file.reading.file: file.dated for file in self._now.files}
        today = datetime.now(UTC).astimezone().date()
        return combined(self.charts(), self.offers, dates, made_on or today)

    def combine(self, out: Path, wording: Wording | None = None) -> InHouseChart:
        """Write the combined chart to ``out``, whose ending decides the kind, and return it.

        Raises NotWrittenError when it cannot be written, or when ``out`` is a supplier's file.
        """
        check_ending(out)
        target = out.resolve()
        sources = {file.path.resolve() for file in self._now.files if file.path is not None}
        if target in sources and not is_ours(target):
            raise NotWrittenError("target-is-source", out)
        chart = self.in_house_chart()
        write_chart(chart, out, wording or Wording())
        return chart

    # Inside

    def _change(self, contents: Contents) -> None:
        if contents == self._now:
            return
        self._before.append(self._now)
        self._after.clear()
        self._become(contents)

    def _become(self, contents: Contents) -> None:
        before, self._now = self._now, contents
        changed = {
            part
            for part, differs in (
                (Part.CHARTS, before.files != contents.files),
                (Part.RIDER, before.riders != contents.riders),
                (Part.SETTINGS, before.settings != contents.settings),
            )
            if differs
        }
        if Part.CHARTS in changed:
            self._offers = None
        if changed & {Part.CHARTS, Part.SETTINGS}:
            self._table = None
        for listener in tuple(self.on_change):
            listener(frozenset(part.value for part in changed))


def _merged(
    present: Sequence[LoadedFile], arriving: Sequence[LoadedFile]
) -> tuple[LoadedFile, ...]:
    """The files of both; a path stands once, its newer reading; a name stands once."""
    paths = {file.path.resolve(): file for file in arriving if file.path is not None}
    beside = {path.parent: file.facts for path, file in paths.items()}
    kept = [
        file if file.path is None else file.beside(beside.get(file.path.resolve().parent))
        for file in present
        if file.path is None or file.path.resolve() not in paths
    ]
    names = {file.reading.file for file in kept}
    for file in arriving:
        name = _free_name(file, names)
        names.add(name)
        kept.append(file if name == file.reading.file else file.renamed(name))
    return tuple(sorted(kept, key=lambda file: file.reading.file))


def _free_name(file: LoadedFile, taken: set[str]) -> str:
    """The file's name, with as many folders before it as tell it from those that are taken."""
    name = file.reading.file
    parts = file.path.absolute().parts if file.path is not None else ()
    depth = name.count("/") + 1
    while name in taken and depth < len(parts):
        depth += 1
        name = "/".join(parts[-depth:])
    number = 2
    while name in taken:
        name = f"{file.reading.file} {number}"
        number += 1
    return name
