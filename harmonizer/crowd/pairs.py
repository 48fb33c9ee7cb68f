"""Pairs of a rider and a size in flat arrays: the rules of ``fit``, one value a pair."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
import numpy.typing as npt

from harmonizer import margins, ranking
from harmonizer.certainty import chance_in_range, chance_not_too_long
from harmonizer.crowd.table import BACK, CHEST, CrowdTable
from harmonizer.gates import WeightLimits, any_refused, weight_gates
from harmonizer.settings import Settings
from harmonizer.states import NEAR, NOT_CHECKED, SLACK
from harmonizer.verdicts import checked_count, girth_verdicts, verdicts

Floats = npt.NDArray[np.float64]
Codes = npt.NDArray[np.uint8]
Flags = npt.NDArray[np.bool_]
Places = npt.NDArray[np.int64]


@dataclass(frozen=True, slots=True, eq=False)
class Riders:
    """Some riders: ``readings`` and ``u`` are 4 x riders, the rest one value a rider."""

    readings: Floats
    u: Floats
    allowance: Floats
    weight: Floats
    layered: bool


@dataclass(frozen=True, slots=True, eq=False)
class Pairs:
    """``rider`` and ``size`` are places; pairs of one rider stand together.

    ``lower`` and ``upper`` are the margins, 4 x pairs, NaN where nothing can be compared.
    """

    riders: Riders
    table: CrowdTable
    settings: Settings
    rider: Places
    size: Places
    lower: Floats
    upper: Floats

    @classmethod
    def of(
        cls, riders: Riders, table: CrowdTable, settings: Settings, pairs: tuple[Places, Places]
    ) -> Pairs:
        """``pairs`` of (rider, size) with their margins."""
        rider, size = pairs
        lower, upper = riders.readings.take(rider, axis=1), table.reach_high.take(size, axis=1)
        upper -= lower
        lower -= table.reach_low.take(size, axis=1)
        if riders.layered:
            layers = riders.allowance.take(rider) * table.takes_layers.take(size)
            upper[:BACK] -= layers
            lower[:BACK] += layers * table.stated_warm.take(size)
        return cls(riders, table, settings, rider, size, lower, upper)

    def only(self, pairs: Flags) -> Pairs:
        """Some of the pairs."""
        at = np.flatnonzero(pairs)
        return Pairs(
            self.riders,
            self.table,
            self.settings,
            self.rider.take(at),
            self.size.take(at),
            self.lower.take(at, axis=1),
            self.upper.take(at, axis=1),
        )

    def grades(self) -> Places:
        """What orders before any penalty: verdict, band, how much was checked."""
        states = self._girths()
        u = self.riders.u[BACK].take(self.rider)
        length = margins.length_states(self.lower[BACK], self.upper[BACK], u, self.settings)
        verdict = verdicts(girth_verdicts(*states), length, self._refused())
        other_band = self.table.other_band.take(self.size)
        return ranking.grade_of(verdict, other_band, checked_count(states, length))

    def least_penalties(self) -> Floats:
        """P without the chance of the length: at most ``LENGTH_WEIGHT`` below P."""
        worse = margins.worse_side(self.lower, self.upper)
        return ranking.penalties(worse, self._middle(), np.nan, self.settings)

    def penalties(self) -> Floats:
        """P."""
        worse = margins.worse_side(self.lower, self.upper)
        return ranking.penalties(worse, self._middle(), self._plen(), self.settings)

    def later_keys(self) -> Places:
        """What decides between equal penalties."""
        product = np.nan_to_num(self._plen(), nan=1.0)
        for row in range(BACK):
            tolerance = self.table.tolerance[row].take(self.size)
            lower, upper = self.lower[row] + tolerance, self.upper[row] + tolerance
            chance = chance_in_range(lower, upper, self.riders.u[row].take(self.rider))
            product *= np.where(np.isnan(lower), 1.0, chance)
        return ranking.later_key(product, self.table.small_first.take(self.size))

    def _bands(self, rows: slice) -> tuple[Floats, Floats]:
        """The two ends of the riders' bands in some of the girths."""
        light = self.riders.readings[rows].take(self.rider, axis=1)
        if not self.riders.layered:
            return light, light
        layers = self.riders.allowance.take(self.rider) * self.table.takes_layers.take(self.size)
        return light + layers * self.table.stated_warm.take(self.size), light + layers

    def _ends(self, rows: slice) -> tuple[Floats, Floats]:
        """A and b of some of the girths."""
        return (
            self.table.low[rows].take(self.size, axis=1),
            self.table.high[rows].take(self.size, axis=1),
        )

    def _middle(self) -> Floats:
        chest = slice(CHEST, CHEST + 1)
        (light, warm), (low, high) = self._bands(chest), self._ends(chest)
        return margins.positions((light[0] + warm[0]) / 2, low[0], high[0])

    def _girths(self) -> Codes:
        girths = slice(CHEST, BACK)
        margin = margins.worse_side(self.lower[girths], self.upper[girths])
        tolerance = self.table.tolerance[girths].take(self.size, axis=1)
        state = margins.girth_states(margin, tolerance, self.settings)
        if self.table.open_ended:
            bands, ends = self._bands(girths), self._ends(girths)
            far = margins.far_from_stated_end(bands, ends, self.settings)
            state = margins.edge_at_best(state, far)
        if self.table.has_elastic:
            _, warm = self._bands(girths)
            state[CHEST] = self._near_without_reserve(state[CHEST], warm[CHEST])
        return state

    def _near_without_reserve(self, chest: Codes, girth: Floats) -> Codes:
        left = self.table.largest.take(self.size) - girth
        used_up = left < self.table.least_reserve.take(self.size) - SLACK
        lacking = used_up | (girth < self.table.relaxed.take(self.size) - SLACK)
        capped = np.where(lacking & (chest != NOT_CHECKED), np.maximum(chest, NEAR), chest)
        return capped.astype(np.uint8)

    def _plen(self) -> Floats:
        over = self.lower[BACK]
        plen = chance_not_too_long(over, self.riders.u[BACK].take(self.rider))
        return np.where(np.isnan(over), np.nan, plen)

    def _refused(self) -> Flags:
        refused = self.table.refused.take(self.size)
        if not self.table.has_limits:
            return refused
        limits = WeightLimits(
            self.table.floor.take(self.size),
            self.table.ceiling.take(self.size),
            self.table.inflatable.take(self.size),
        )
        weight = self.riders.weight.take(self.rider)
        found = weight_gates(weight, limits, self.settings)
        return refused | any_refused(found, len(self.size))
