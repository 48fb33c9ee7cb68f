"""The hand above the saddle: where the lower edge of the vest comes to lie. All in cm."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

import numpy as np
import numpy.typing as npt

from harmonizer.offers import Offer
from harmonizer.rider import Observed, SeenInSaddle
from harmonizer.settings import Settings
from harmonizer.states import CHECK, CLEAR, SHORT, SLACK, TOO_LONG, TOO_SHORT

Floats = npt.NDArray[np.float64]
Codes = npt.NDArray[np.uint8]

LENGTH_SEEN: Final = {
    Observed.RIGHT: CLEAR,
    Observed.CHECK: CHECK,
    Observed.SHORT: SHORT,
    Observed.FAR_TOO_SHORT: TOO_SHORT,
    Observed.STOP: TOO_LONG,
}
"""The length state that an observed clearance stands for."""


@dataclass(frozen=True, slots=True)
class Clearance:
    """The edge above the saddle, in cm and in hands of the shop."""

    cm: float
    hands: float
    band: Observed


def clearance(
    c7_above_seat: float, vest_back: float, settings: Settings, *, chair: bool = False
) -> Clearance:
    """The computed clearance of a vest ``vest_back`` long from C7, in cm.

    ``c7_above_seat`` is read with the rider seated; on a chair there is no rise.
    """
    rise = 0.0 if chair else settings.saddle_rise
    cm = c7_above_seat - vest_back - rise
    hands = cm / settings.hand_width
    return Clearance(cm, hands, band_of(hands, settings))


def band_of(hands: float, settings: Settings) -> Observed:
    """The band of a clearance in hands; the lower end of each is included."""
    if hands < settings.hands_stop:
        return Observed.STOP
    if hands < settings.hands_check:
        return Observed.CHECK
    if hands < settings.hands_right:
        return Observed.RIGHT
    return Observed.SHORT if hands < settings.hands_short else Observed.FAR_TOO_SHORT


def stopped_by_clearance(
    length: Codes, c7_above_seat: float | None, vest_backs: Floats, settings: Settings
) -> Codes:
    """``length`` with *too long* where the computed clearance says stop; only its stop counts.

    ``vest_backs`` are finished lengths from C7, NaN where the maker states none.
    """
    if c7_above_seat is None:
        return length
    cm = c7_above_seat - vest_backs - settings.saddle_rise
    stop = cm < settings.hands_stop * settings.hand_width - SLACK
    return np.where(stop, TOO_LONG, length).astype(np.uint8)


def replaced_by_sight(
    length: Codes, offers: tuple[Offer, ...], seen: tuple[SeenInSaddle, ...]
) -> Codes:
    """``length`` with what a fitter saw, vest on and rider in the saddle, in its place."""
    if not seen:
        return length
    found = length.copy()
    for at, offer in enumerate(offers):
        observed = seen_on(offer, seen)
        if observed is not None:
            found[at] = LENGTH_SEEN[observed]
    return found


def seen_on(offer: Offer, seen: tuple[SeenInSaddle, ...]) -> Observed | None:
    """What was observed of one size; the last observation holds."""
    for one in reversed(seen):
        same_size = (offer.model, offer.size) == (one.model, one.size)
        if same_size and one.length in (None, offer.length):
            return one.observed
    return None
