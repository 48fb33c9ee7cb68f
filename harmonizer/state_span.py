"""The span of readings that share a state with the present one, for one range."""

from __future__ import annotations

import math
from dataclasses import dataclass
from itertools import pairwise
from typing import Final

import numpy as np
import numpy.typing as npt

from harmonizer import margins
from harmonizer.settings import Settings
from harmonizer.states import SLACK

Floats = npt.NDArray[np.float64]
Codes = npt.NDArray[np.uint8]

BACK: Final = 3


@dataclass(frozen=True, slots=True)
class Lie:
    """One reading in one range: what its state depends on, in cm.

    ``band`` is what the rider's two ends add to ``x``; ``low`` and ``high`` are as published.
    """

    x: float
    u: float
    u_fitter: float
    low: float
    high: float
    band: tuple[float, float]
    reach: tuple[float, float]
    tolerance: float


def span_of_state(lie: Lie, row: int, settings: Settings) -> tuple[float, float]:
    """The readings around the present one that have its state, with a fitter's tape."""
    edges = [-math.inf, *sorted(set(_turns(lie, row, settings))), math.inf]
    middles = np.array([_middle(low, high) for low, high in pairwise(edges)])
    states = _states(lie, row, middles, settings).tolist()
    here = next(at for at in range(len(middles)) if lie.x <= edges[at + 1] + SLACK)
    present = int(_states(lie, row, np.array([lie.x]), settings)[0])
    if states[here] != present and here + 1 < len(states):
        here += 1
    first = last = here
    while first > 0 and states[first - 1] == states[here]:
        first -= 1
    while last + 1 < len(states) and states[last + 1] == states[here]:
        last += 1
    return edges[first], edges[last + 1]


def _middle(low: float, high: float) -> float:
    if math.isinf(low) and math.isinf(high):
        return 0.0
    if math.isinf(low):
        return high - 1.0
    return low + 1.0 if math.isinf(high) else (low + high) / 2


def _turns(lie: Lie, row: int, settings: Settings) -> list[float]:
    """The readings at which the state may change."""
    low, high = lie.reach[0] - lie.band[0], lie.reach[1] - lie.band[1]
    if row == BACK:
        clear = settings.clear_factor * lie.u_fitter
        turns = [low - settings.likely_long_limit, low, low + clear]
        turns += [high, high + settings.short_limit]
    else:
        inwards = (-lie.tolerance, 0.0, settings.edge_band)
        turns = [end for step in inwards for end in (low + step, high - step)]
        turns += [lie.high - lie.band[1] - settings.open_end_limit]
        turns += [lie.low - lie.band[0] + settings.open_end_limit]
    return [turn for turn in turns if math.isfinite(turn)]


def _states(lie: Lie, row: int, readings: Floats, settings: Settings) -> Codes:
    light, warm = readings + lie.band[0], readings + lie.band[1]
    low, high = np.array(lie.reach[0]), np.array(lie.reach[1])
    lower, upper = margins.margins(light, warm, low, high)
    if row == BACK:
        return margins.length_states(lower, upper, lie.u_fitter, settings)
    worse = margins.worse_side(lower, upper)
    state = margins.girth_states(worse, np.array(lie.tolerance), settings)
    ends = np.array(lie.low), np.array(lie.high)
    return margins.edge_at_best(state, margins.far_from_stated_end((light, warm), ends, settings))
