"""The one door for every face: load, take, undo, redo, compare, combine; it says what changed.

Everything it holds is one frozen value, so a step back is the value before. Loading is pure and
may run beside the screen; taking what was loaded happens on the caller's thread.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import replace
from datetime import UTC, date, datetime
from pathlib import Path

from charts.in_house import InHouseChart
from charts.model_facts import ModelFacts
from charts.schema import FileReading
from charts.source_files import SourceFile
from charts.sources import FACTS_FILE, LoadedFile, Progress
from charts.wording import Wording
from charts.writers.own_files import is_ours
from charts.writers.registry import WRITERS, Writers, check_ending, write_chart
from charts.writers.whole_file import NotWrittenError
from harmonizer.combined import combined
from harmonizer.fit import fit
from harmonizer.fit_sheet import FitSheet
from harmonizer.offers import Offer, offers
from harmonizer.outcomes import with_experience
from harmonizer.range_table import RangeTable
from harmonizer.rider import Rider
from harmonizer.settings import Settings
from harmonizer.shop.arrival import Arrival, Known, arrive
from harmonizer.shop.fitting_work import FittingWork
from harmonizer.shop.history import Contents, Listener, Part
from harmonizer.shop.rider_work import RiderWork
from harmonizer.shop.season import kept_aside, used
from harmonizer.shop.season_work import SeasonWork
from harmonizer.stock import StockLine, stocked

__all__ = ["Contents", "Listener", "Part", "Workspace"]


class Workspace(SeasonWork, RiderWork, FittingWork):
    """Charts, settings, stock, riders and fittings, every change of them undoable and announced."""

    def __init__(self) -> None:
        super().__init__()
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

    def used(self) -> tuple[FileReading, ...]:
        """The readings without the charts that are kept aside: what is compared and printed."""
        records = {record.name: record for record in self._now.records}
        return tuple(used(reading, records.get(reading.file)) for reading in self.charts())

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
    def settings(self) -> Settings:
        """The shop's own figures."""
        return self._now.settings

    @property
    def offers(self) -> tuple[Offer, ...]:
        """Every model, size and length of the charts."""
        if self._offers is None:
            self._offers = offers(self.used(), self.facts)
        return self._offers

    @property
    def table(self) -> RangeTable:
        """The offers compiled for comparison; made once for each state of charts and settings."""
        if self._table is None:
            compiled = RangeTable.compiled(self.offers, self.settings)
            listed = stocked(compiled, self._now.stock)
            self._table = with_experience(listed, self._now.fittings)
        return self._table

    # What changes it

    @staticmethod
    def load(
        sources: Sequence[Path],
        progress: Progress | None = None,
        pasted: bytes | None = None,
        wording: Wording | None = None,
        known: Known | None = None,
    ) -> Arrival:
        """Read files and folders; touches no workspace and may run on any thread.

        ``progress`` is told the file at hand and the fraction done, and may raise Cancelled.
        ``known`` (``workspace.known()``) spares unchanged files and applies what was said before.
        """
        return arrive(sources, known or Known(), progress, pasted, wording)

    @staticmethod
    def load_again(
        sources: Iterable[SourceFile],
        progress: Progress | None = None,
        wording: Wording | None = None,
        known: Known | None = None,
    ) -> Arrival:
        """Read files from the disk under the names they have or had; the rest is as for ``load``.

        Notes about models are no files of their own: they are read with the files beside them.
        """
        again = tuple(one for one in dict.fromkeys(sources) if one.path.name != FACTS_FILE)
        return arrive((), known or Known(), progress, None, wording, again=again)

    def leave_out(self, file: str) -> None:
        """Take the file of this name away."""
        kept = tuple(each for each in self._now.files if each.reading.file != file)
        if len(kept) != len(self._now.files):
            self._change(replace(self._now, files=kept))

    @property
    def stock(self) -> tuple[StockLine, ...]:
        """The lines of the stock list; empty where there is none."""
        return self._now.stock

    @property
    def stock_on(self) -> date | None:
        """The day of the stock list."""
        return self._now.stock_on

    def take_stock(self, lines: Sequence[StockLine], on: date | None = None) -> None:
        """Put a stock list of a day in the place of the one there is; an empty one takes it away.

        Without a day it is of today.
        """
        day = on or datetime.now(UTC).astimezone().date()
        self._change(replace(self._now, stock=tuple(lines), stock_on=day if lines else None))

    def set_settings(self, settings: Settings) -> None:
        """Compare by other figures from now on."""
        self._change(replace(self._now, settings=settings))

    def open_settings(self, settings: Settings) -> None:
        """Take the figures that were kept, ahead of everything else; no step to undo."""
        self._become(replace(self._now, settings=settings))

    # What it answers

    def fit(self, rider: Rider) -> FitSheet:
        """``rider`` against every size."""
        return fit(rider, self.table, self.settings)

    def in_house_chart(self, made_on: date | None = None) -> InHouseChart:
        """The combined chart as rows, dated today unless another day is given."""
        dates = {file.reading.file: file.dated for file in self._now.files}
        today = datetime.now(UTC).astimezone().date()
        aside = offers(self._aside(), self.facts)
        return combined(self.used(), self.offers, dates, made_on or today, aside)

    def combine(
        self, out: Path, wording: Wording | None = None, writers: Writers = WRITERS
    ) -> InHouseChart:
        """Write the combined chart to ``out``, whose ending decides the kind, and return it.

        ``writers`` are the kinds a face can make, by ending. Raises NotWrittenError when it cannot
        be written, or when ``out`` is a supplier's file.
        """
        check_ending(out, writers)
        target = out.resolve()
        sources = {file.path.resolve() for file in self._now.files if file.path is not None}
        if target in sources and not is_ours(target):
            raise NotWrittenError("target-is-source", out)
        chart = self.in_house_chart()
        write_chart(chart, out, wording or Wording(), writers)
        return chart

    # Inside

    def _aside(self) -> tuple[FileReading, ...]:
        records = {record.name: record for record in self._now.records}
        return tuple(kept_aside(reading, records.get(reading.file)) for reading in self.charts())

    def _forget(self, changed: frozenset[Part]) -> None:
        if changed & {Part.CHARTS, Part.SEASON}:
            self._offers = None
        if changed & {Part.CHARTS, Part.SEASON, Part.SETTINGS, Part.STOCK, Part.FITTINGS}:
            self._table = None
