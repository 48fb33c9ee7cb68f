"""Summer and winter side by side: the same rider with and without the layers."""

from __future__ import annotations

from dataclasses import dataclass, replace
from decimal import Decimal

import numpy as np

from harmonizer.body import Worn
from harmonizer.fit import fit
from harmonizer.fit_sheet import FitSheet
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
