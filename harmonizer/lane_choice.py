"""From lanes to dimensions: of two columns of one dimension the one that can be checked serves.

Where both can be checked the worse holds.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
import numpy.typing as npt

from charts.schema import Dimension
from harmonizer.lanes import Absent
from harmonizer.range_table import RangeTable

Floats = npt.NDArray[np.float64]
Codes = npt.NDArray[np.uint8]
Places = npt.NDArray[np.int64]


@dataclass(frozen=True, slots=True, eq=False)
class LaneChoice:
    """Which lane speaks for each dimension of each offer: ``lane`` is dimensions x offers.

    ``same`` where every dimension has one lane only, so that lanes already are dimensions.
    """

    dimensions: tuple[Dimension, ...]
    lane: Places
    same: bool

    def floats(self, per_lane: Floats) -> Floats:
        """``per_lane`` (lanes x offers) as dimensions x offers."""
        if self.same:
            return per_lane
        return np.take_along_axis(per_lane, self.lane, axis=0)

    def one(self, row: int, per_lane: Floats) -> Floats:
        """The values of one dimension, one per offer."""
        if self.same:
            return np.asarray(per_lane[row])
        return np.asarray(np.take_along_axis(per_lane, self.lane[row : row + 1], axis=0)[0])

    def codes(self, per_lane: Codes) -> Codes:
        """The same for codes."""
        if self.same:
            return per_lane
        return np.take_along_axis(per_lane, self.lane, axis=0)


def choose_lanes(table: RangeTable, states: Codes, margin: Floats) -> LaneChoice:
    """The lane that serves in each dimension of each offer.

    ``states`` and ``margin`` are lanes x offers; a margin is NaN where nothing was compared.
    """
    dimensions = table.dimensions
    lane = np.empty((len(dimensions), len(table.offers)), np.int64)
    for at, dimension in enumerate(dimensions):
        first, *others = table.lanes_of(dimension)
        lane[at] = first
        for other in others:
            lane[at] = np.where(
                _serves_better(table, states, margin, lane[at], other), other, lane[at]
            )
    return LaneChoice(dimensions, lane, same=len(dimensions) == len(table.lanes))


def _serves_better(
    table: RangeTable, states: Codes, margin: Floats, chosen: Places, other: int
) -> npt.NDArray[np.bool_]:
    columns = np.arange(len(chosen))
    own_margin, own_state = margin[chosen, columns], states[chosen, columns]
    compared, own_compared = ~np.isnan(margin[other]), ~np.isnan(own_margin)
    worse = (states[other] > own_state) | (
        (states[other] == own_state) & (margin[other] < own_margin)
    )
    # Where nothing is compared on either side, the column that is there explains why.
    not_listed = Absent.NOT_LISTED
    explains = (table.absent[chosen, columns] == not_listed) & (table.absent[other] != not_listed)
    return np.asarray((compared & (~own_compared | worse)) | (~compared & ~own_compared & explains))
