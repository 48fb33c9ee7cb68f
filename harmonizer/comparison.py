"""One rider compared with one table: margins and states by dimension, before any verdict."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property
from typing import Final

import numpy as np
import numpy.typing as npt

from charts.schema import Dimension
from harmonizer import margins
from harmonizer.body import Body
from harmonizer.lane_choice import LaneChoice, choose_lanes
from harmonizer.range_table import GIRTH_DIMENSIONS, RangeTable
from harmonizer.settings import Settings

Floats = npt.NDArray[np.float64]
Codes = npt.NDArray[np.uint8]

CHEST: Final = 0
WAIST: Final = 1
HIP: Final = 2
BACK: Final = 3


@dataclass(frozen=True, eq=False)
class Comparison:
    """Margins and states, dimensions x offers: chest, waist, hip, back length, then the rest."""

    table: RangeTable
    body: Body
    settings: Settings
    choice: LaneChoice
    states: Codes
    lower: Floats
    upper: Floats

    @cached_property
    def margin(self) -> Floats:
        """The worse of the two margins, NaN where nothing was compared."""
        return margins.worse_side(self.lower, self.upper)

    @cached_property
    def u(self) -> Floats:
        """The standard uncertainty of the four readings that count, 4 x offers, in cm."""
        return np.asarray(self.body.u[self.choice.lane[: BACK + 1], 0])

    def chest(self, per_lane: Floats) -> Floats:
        """One value per offer: that of the lane which serves for the chest."""
        lane = self.choice.lane[CHEST]
        return np.asarray(per_lane[lane, np.arange(len(lane))])


def compared(table: RangeTable, body: Body, settings: Settings) -> Comparison:
    """``body`` against every range of ``table``."""
    lower, upper = margins.margins(body.light, body.warm, table.reach_low, table.reach_high)
    states = _lane_states(table, body, settings, lower, upper)
    choice = choose_lanes(table, states, margins.worse_side(lower, upper))
    return Comparison(
        table=table,
        body=body,
        settings=settings,
        choice=choice,
        states=choice.codes(states),
        lower=choice.floats(lower),
        upper=choice.floats(upper),
    )


def _lane_states(
    table: RangeTable, body: Body, settings: Settings, lower: Floats, upper: Floats
) -> Codes:
    """The state of every lane, each kind of dimension by its own rule."""
    margin = margins.worse_side(lower, upper)
    states = margins.other_states(margin)
    girth = [at for at, lane in enumerate(table.lanes) if lane.dimension in GIRTH_DIMENSIONS]
    back = list(table.lanes_of(Dimension.BACK_LENGTH))
    states[girth] = margins.edge_at_best(
        margins.girth_states(margin[girth], table.tolerance[girth], settings),
        margins.far_from_stated_end(
            (body.light[girth], body.warm[girth]), (table.low[girth], table.high[girth]), settings
        ),
    )
    states[back] = margins.length_states(lower[back], upper[back], body.u[back], settings)
    return states
