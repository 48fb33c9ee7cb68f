"""Margins and states of one rider against many ranges at once.

Arrays are lanes x offers, float64 in cm. A rider is a band from the reading in light clothing to
the reading over warm layers: light clothing must not be loose, warm clothing must not be tight.
"""

from __future__ import annotations

from typing import Final

import numpy as np
import numpy.typing as npt

from harmonizer.settings import Settings
from harmonizer.states import (
    CHECK,
    CLEAR,
    EDGE,
    LIKELY_LONG,
    NEAR,
    NOT_CHECKED,
    NOT_KNOWN,
    SHORT,
    SLACK,
    TOO_LONG,
    TOO_SHORT,
)

Floats = npt.NDArray[np.float64]
Codes = npt.NDArray[np.uint8]
Flags = npt.NDArray[np.bool_]

_BY_LOWER: Final = np.array([CLEAR, CHECK, LIKELY_LONG, TOO_LONG], np.uint8)
_BY_UPPER: Final = np.array([CLEAR, SHORT, TOO_SHORT], np.uint8)


def margins(
    light: Floats, warm: Floats, reach_low: Floats, reach_high: Floats
) -> tuple[Floats, Floats]:
    """Lower and upper margin: below zero is loose or long, and tight or short.

    ``light`` and ``warm`` are the two ends of the rider's band.
    """
    return light - reach_low, reach_high - warm


def worse_side(lower: Floats, upper: Floats) -> Floats:
    """The smaller of the two margins."""
    return np.minimum(lower, upper)


def girth_states(margin: Floats, tolerance: Floats, settings: Settings) -> Codes:
    """Inside, edge, near or miss by the worse margin; not checked where it is NaN."""
    state = (margin < settings.edge_band - SLACK).astype(np.uint8)
    state += margin < -SLACK
    state += margin < -tolerance - SLACK
    state += np.isnan(margin) * np.uint8(NOT_CHECKED)
    return state


def far_from_stated_end(
    band: tuple[Floats, Floats], published: tuple[Floats, Floats], settings: Settings
) -> Flags:
    """Whether a range open on one side is left further behind than its stated end can vouch for.

    ``band`` is the rider's (light, warm), ``published`` the range's (a, b).
    """
    (light, warm), (low, high) = band, published
    limit = settings.open_end_limit + SLACK
    far_below = np.isneginf(low) & (high - warm > limit)
    far_above = np.isposinf(high) & (light - low > limit)
    return far_below | far_above


def edge_at_best(state: Codes, where: Flags) -> Codes:
    """``state`` with nothing better than *edge* at the places ``where``."""
    return np.where(where, np.maximum(state, EDGE), state).astype(np.uint8)


def length_states(lower: Floats, upper: Floats, u: Floats | float, settings: Settings) -> Codes:
    """State of a back length: the worse of its two sides; not known where nothing is compared.

    ``u`` is the standard uncertainty of the reading in cm. It moves the pass line only: a worse
    tape never makes a vest look shorter. Without a lower end the length is *check* at best.
    """
    below = (lower < settings.clear_factor * u - SLACK).astype(np.uint8)
    below += lower < -SLACK
    below += lower < -settings.likely_long_limit - SLACK
    above = (upper < -SLACK).astype(np.uint8)
    above += upper < -settings.short_limit - SLACK
    state = np.maximum(_BY_LOWER.take(below), _BY_UPPER.take(above))
    no_lower_end = np.isposinf(lower)
    state += no_lower_end & (state == CLEAR)
    state += np.isnan(lower) * np.uint8(NOT_KNOWN)
    return state


def other_states(margin: Floats) -> Codes:
    """Weight, age, height and the rest: inside or near only, in no verdict."""
    state = (margin < -SLACK) * np.uint8(NEAR)
    return np.asarray(state + np.isnan(margin) * np.uint8(NOT_CHECKED))


def positions(light: Floats, low: Floats, high: Floats) -> Floats:
    """Where the reading lies in its range: 0 at the lower end, 1 at the upper; NaN where open."""
    width = high - low
    usable = np.isfinite(width) & (width > SLACK)
    return np.where(usable, (light - low) / np.where(usable, width, 1.0), np.nan)
