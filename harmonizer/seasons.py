"""Summer and winter side by side: the same rider with and without the layers."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from decimal import Decimal

import numpy as np

from harmonizer.body import Worn
from harmonizer.fit import fit
from harmonizer.fit_row import FitRow
from harmonizer.fit_sheet import FitSheet
from harmonizer.no_fit import STANDING
from harmonizer.range_table import RangeTable
from harmonizer.rider import Measure, Rider
from harmonizer.settings import DEFAULTS, Settings


@dataclass(frozen=True, slots=True)
class Seasons:
    """One rider's sheets over a light shirt, over the winter layers, and for both together."""

    summer: FitSheet
    winter: FitSheet
    all_year: FitSheet

    @property
    def differing(self) -> tuple[int, ...]:
        """The places of the offers whose verdict in summer is not that of winter."""
        differs = self.summer.verdicts != self.winter.verdicts
        return tuple(int(at) for at in np.flatnonzero(differs))


def in_summer(rider: Rider) -> Rider:
    """The rider over a light shirt only."""
    readings = tuple(one for one in rider.readings if one.measure is not Measure.CHEST_OVER_LAYERS)
    return replace(rider, winter_mm=Decimal(0), readings=readings)


def both_seasons(rider: Rider, table: RangeTable, settings: Settings = DEFAULTS) -> Seasons:
    """The rider's three sheets; they are the same where no layers are given."""
    return Seasons(
        summer=fit(in_summer(rider), table, settings),
        winter=fit(rider, table, settings, worn=Worn.WINTER),
        all_year=fit(rider, table, settings),
    )


@dataclass(frozen=True, slots=True)
class SideBySide:
    """One size in both seasons."""

    at: int
    summer: FitRow
    winter: FitRow

    @property
    def serves(self) -> tuple[bool, bool]:
        """Whether it can be tried in summer, and in winter."""
        return self.summer.verdict in STANDING, self.winter.verdict in STANDING


def side_by_side(seasons: Seasons, models: Sequence[Sequence[int]]) -> tuple[SideBySide, ...]:
    """The sizes of ``models`` (offers of each) that serve, those that serve both seasons first.

    A model with a size for both seasons is told by that one; else by its best in summer and its
    best in winter; where none serves, by the best there is over both.
    """
    found = [one for offers in models for one in _of_model(seasons, offers)]
    return tuple(sorted(found, key=lambda one: -sum(one.serves)))


def _of_model(seasons: Seasons, offers: Sequence[int]) -> Iterator[SideBySide]:
    sides = [SideBySide(at, seasons.summer.row_of(at), seasons.winter.row_of(at)) for at in offers]
    whole = [one for one in sides if all(one.serves)]
    if whole:
        yield min(whole, key=lambda one: _worth(seasons.all_year, one.at))
        return
    sheets = (seasons.summer, seasons.winter)
    alone = [
        min(serving, key=lambda one: _worth(sheet, one.at))
        for place, sheet in enumerate(sheets)
        if (serving := [one for one in sides if one.serves[place]])
    ]
    yield from alone or [min(sides, key=lambda one: _worth(seasons.all_year, one.at))]


def _worth(sheet: FitSheet, at: int) -> tuple[int, float]:
    return int(sheet.verdicts[at]), float(sheet.penalty[at])
