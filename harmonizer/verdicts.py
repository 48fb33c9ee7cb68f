"""The verdict of a size from its girths and its length, for all sizes at once."""

from __future__ import annotations

from typing import Final

import numpy as np
import numpy.typing as npt

from harmonizer.states import (
    GIRTHS,
    LENGTHS,
    NEAR,
    NOT_CHECKED,
    VERDICTS,
    GirthState,
    LengthState,
    Verdict,
)

Codes = npt.NDArray[np.uint8]
Flags = npt.NDArray[np.bool_]


def girth_verdicts(chest: Codes, waist: Codes, hip: Codes) -> Codes:
    """The worst of the girths that were checked.

    Chest not checked is *near* at best; chest and waist both not checked is nothing to go by.
    """
    worst = np.zeros_like(chest)
    for state in (chest, waist, hip):
        worst = np.maximum(worst, np.where(state == NOT_CHECKED, 0, state))
    worst = np.where(chest == NOT_CHECKED, np.maximum(worst, NEAR), worst)
    nothing = (chest == NOT_CHECKED) & (waist == NOT_CHECKED)
    return np.where(nothing, NOT_CHECKED, worst).astype(np.uint8)


def verdict_of(girths: GirthState, length: LengthState) -> Verdict:
    """The verdict of one size that no gate refuses."""
    if length is LengthState.TOO_LONG:
        return Verdict.TOO_LONG
    hopeless = girths in (GirthState.MISS, GirthState.NOT_CHECKED)
    if hopeless or length is LengthState.TOO_SHORT:
        return Verdict.NO
    if length is LengthState.LIKELY_LONG:
        return Verdict.LIKELY_LONG
    if girths is GirthState.NEAR or length is LengthState.SHORT:
        return Verdict.NEAR
    if length is LengthState.NOT_KNOWN:
        return Verdict.LENGTH_UNKNOWN
    if length is LengthState.CHECK:
        return Verdict.CHECK_LENGTH
    return Verdict.FITS if girths is GirthState.INSIDE else Verdict.EDGE


_NOT_OFFERED: Final = VERDICTS.index(Verdict.NOT_OFFERED)
VERDICT_TABLE: Final[Codes] = np.array(
    [[VERDICTS.index(verdict_of(girth, length)) for length in LENGTHS] for girth in GIRTHS],
    np.uint8,
)
"""The verdict's code by the codes of girths and length."""


def verdicts(girths: Codes, lengths: Codes, refused: Flags) -> Codes:
    """The verdict of every size; ``refused`` where a gate failed."""
    found = VERDICT_TABLE[girths, lengths]
    found[refused] = _NOT_OFFERED
    return found


def checked_count(girths: Codes, length: Codes) -> Codes:
    """How many of the four were checked, per size; ``girths`` is 3 x offers."""
    known = length != LENGTHS.index(LengthState.NOT_KNOWN)
    return np.asarray((girths != NOT_CHECKED).sum(axis=0) + known, np.uint8)
