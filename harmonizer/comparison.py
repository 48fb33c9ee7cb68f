"""One rider compared with one table: margins and states by dimension, before any verdict."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

import numpy as np
import numpy.typing as npt

from harmonizer import margins
from harmonizer.body import Body
from harmonizer.lane_choice import LaneChoice, choose_lanes
from harmonizer.range_table import RangeTable
from harmonizer.settings import Settings

Floats = npt.NDArray[np.float64]
Codes = npt.NDArray[np.uint8]

CHEST: Final = 0
WAIST: Final = 1
HIP: Final = 2
BACK: Final = 3


@dataclass(frozen=True, slots=True, eq=False)
class Comparison:
    """Margins and states, dimensions x offers: chest, waist, hip, back length, then the rest.

    ``margin`` is the worse of the two, NaN where nothing was compared.
    """

    table: RangeTable
    body: Body
    settings: Settings
    choice: LaneChoice
    states: Codes
    lower: Floats
    upper: Floats
    margin: Floats

    def u(self, row: int) -> Floats:
        """The standard uncertainty of one dimension's reading, per offer or for all, in cm."""
        if self.choice.same:
            return np.asarray(self.body.u[row])
        return np.asarray(self.body.u[self.choice.lane[row], 0])

    def chest(self, per_lane: Floats) -> Floats:
        """One value per offer: that of the lane which serves for the chest."""
        return self.choice.one(CHEST, per_lane)


def compared(table: RangeTable, body: Body, settings: Settings) -> Comparison:
    """``body`` against every range of ``table``."""
    lower, upper = margins.margins(body.light, body.warm, table.reach_low, table.reach_high)
    margin = margins.worse_side(lower, upper)
    states = np.empty(margin.shape, np.uint8)
    girth, back, other = table.girth_lanes, table.back_lanes, table.other_lanes
    states[girth] = margins.edge_at_best(
        margins.girth_states(margin[girth], table.tolerance[girth], settings),
        margins.far_from_stated_end(
            (body.light[girth], body.warm[girth]), (table.low[girth], table.high[girth]), settings
        ),
    )
    states[back] = margins.length_states(lower[back], upper[back], body.u[back], settings)
    states[other] = margins.other_states(margin[other])
    choice = choose_lanes(table, states, margin)
    return Comparison(
        table=table,
        body=body,
        settings=settings,
        choice=choice,
        states=choice.codes(states),
        lower=choice.floats(lower),
        upper=choice.floats(upper),
        margin=choice.floats(margin),
    )
