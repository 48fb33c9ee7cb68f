"""One rider against every size: verdicts, probabilities and the order, all sizes at once."""

from __future__ import annotations

import numpy as np
import numpy.typing as npt

from harmonizer import margins, ranking
from harmonizer.bands import is_other_band
from harmonizer.body import Worn, body_on
from harmonizer.certainty import chance_in_range, chance_not_too_long
from harmonizer.clearance import replaced_by_sight, stopped_by_clearance
from harmonizer.comparison import BACK, CHEST, HIP, WAIST, Comparison, compared
from harmonizer.fit_sheet import FitSheet
from harmonizer.gates import gates
from harmonizer.layers import largest_girth, stretch_used
from harmonizer.range_table import RangeTable
from harmonizer.rider import Rider
from harmonizer.settings import DEFAULTS, Settings
from harmonizer.states import NEAR, NOT_CHECKED, SLACK
from harmonizer.verdicts import checked_count, girth_verdicts, verdicts

Floats = npt.NDArray[np.float64]
Codes = npt.NDArray[np.uint8]
Flags = npt.NDArray[np.bool_]


def fit(
    rider: Rider,
    table: RangeTable,
    settings: Settings = DEFAULTS,
    *,
    worn: Worn = Worn.ALL_YEAR,
) -> FitSheet:
    """Every size of ``table`` for ``rider``, best first.

    A table compiled under other settings is compiled again under ``settings``. By default a size
    must serve the rider in light clothing and over the winter layers.
    """
    if table.settings != settings:
        table = RangeTable.compiled(table.offers, settings)
    lies = compared(table, body_on(rider, table, settings, worn), settings)
    reserve, stretch = elastic_reserve(lies)
    states = lies.states.copy()
    states[CHEST] = near_without_reserve(states[CHEST], lies, reserve, stretch)
    states[BACK] = _length_in_the_saddle(states[BACK], lies, rider)
    gate = gates(table.facts, lies.body.weight_kg, rider.needs, settings)
    girths, plen = girth_verdicts(*states[:BACK]), not_too_long(lies)
    up, between = between_sizes(lies)
    grades = ranking.Grades(
        verdicts=verdicts(girths, states[BACK], gate.refused),
        other_band=_other_bands(rider, table),
        checked=checked_count(states[:BACK], states[BACK]),
        penalty=ranking.penalties(lies.margin, _middle(lies), plen, settings),
        probability=size_probability(lies, plen),
        between_up=up,
    )
    order = ranking.order_of(grades, table.facts)
    return FitSheet(
        rider, lies, states, girths, grades, plen, between, reserve, stretch, gate, order
    )


def _length_in_the_saddle(length: Codes, lies: Comparison, rider: Rider) -> Codes:
    """The length states with a computed stop, and with what was seen, which replaces all else."""
    seat = lies.body.c7_above_seat
    stopped = stopped_by_clearance(length, seat, lies.table.finished_back, lies.settings)
    return replaced_by_sight(stopped, lies.table.offers, rider.seen)


def _other_bands(rider: Rider, table: RangeTable) -> Flags:
    facts = table.facts
    other = np.array([is_other_band(band, rider.figure) for band in facts.bands], np.bool_)
    return np.asarray(other[facts.band])


def _middle(lies: Comparison) -> Floats:
    """Where the middle of the rider's band lies in the chest range; NaN where that is open."""
    middle = (lies.chest(lies.body.light) + lies.chest(lies.body.warm)) / 2
    return margins.positions(middle, lies.chest(lies.table.low), lies.chest(lies.table.high))


def not_too_long(lies: Comparison) -> Floats:
    """Plen of every size; NaN where the length is not known."""
    plen = chance_not_too_long(lies.lower[BACK], lies.u(BACK))
    plen[np.isnan(lies.lower[BACK])] = np.nan
    return plen


def size_probability(lies: Comparison, plen: Floats) -> Floats:
    """The chance that no checked girth is worse than near, times Plen; NaN if none is checked."""
    product = np.where(np.isnan(plen), 1.0, plen)
    checked = ~np.isnan(plen)
    for girth in (CHEST, WAIST, HIP):
        tolerance = lies.choice.one(girth, lies.table.tolerance)
        lower, upper = lies.lower[girth] + tolerance, lies.upper[girth] + tolerance
        known = ~np.isnan(lower)
        product *= np.where(known, chance_in_range(lower, upper, lies.u(girth)), 1.0)
        checked |= known
    return np.where(checked, product, np.nan)


def between_sizes(lies: Comparison) -> tuple[Flags, Flags]:
    """Where the chest lies between a size and the next larger one, and between any two.

    In two neighbours, on their border, or in the gap between them. A mark, not a state.
    """
    at = lies.chest(lies.body.light)
    low, high = lies.chest(lies.table.seam_low), lies.chest(lies.table.seam_high)
    below, above = lies.chest(lies.table.below), lies.chest(lies.table.above)
    within = (at >= low - SLACK) & (at <= high + SLACK)
    up = (within & (at >= above - SLACK)) | ((at > high) & (at < above) & np.isfinite(above))
    down = (within & (at <= below + SLACK)) | ((at < low) & (at > below) & np.isfinite(below))
    return up, up | down


def elastic_reserve(lies: Comparison) -> tuple[Floats, Floats]:
    """What the elastic has left over the layers, and the share of it in use; NaN if not stated."""
    facts = lies.table.facts
    girth = lies.chest(lies.body.warm)
    left = largest_girth(facts.relaxed, facts.elastic_part, facts.extension) - girth
    return left, stretch_used(girth, facts.relaxed, facts.elastic_part, facts.extension)


def near_without_reserve(chest: Codes, lies: Comparison, reserve: Floats, stretch: Floats) -> Codes:
    """The chest *near* at best where too little elastic is left, or none of it is in use."""
    stated = lies.table.facts.least_reserve
    least = np.where(np.isnan(stated), lies.settings.reserve, stated)
    lacking = (reserve < least - SLACK) | (stretch < -SLACK)
    capped = np.where(lacking & (chest != NOT_CHECKED), np.maximum(chest, NEAR), chest)
    return capped.astype(np.uint8)
