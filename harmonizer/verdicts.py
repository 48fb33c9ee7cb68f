"""The verdict of a size from its girths and its length, for all sizes at once."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import product
from typing import Final

import numpy as np
import numpy.typing as npt

from harmonizer.states import (
    GIRTHS,
    LENGTHS,
    NOT_CHECKED,
    NOT_KNOWN,
    VERDICTS,
    GirthState,
    LengthState,
    Verdict,
)

Codes = npt.NDArray[np.uint8]
Flags = npt.NDArray[np.bool_]


def girths_together(chest: GirthState, waist: GirthState, hip: GirthState) -> GirthState:
    """The worst of the girths that were checked.

    Chest not checked is *near* at best; chest and waist both not checked is nothing to go by.
    """
    unchecked = GirthState.NOT_CHECKED
    if chest is unchecked and waist is unchecked:
        return unchecked
    checked = [state for state in (chest, waist, hip) if state is not unchecked]
    if chest is unchecked:
        checked.append(GirthState.NEAR)
    return max(checked, key=GIRTHS.index)


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
_STATES: Final = np.uint8(len(GIRTHS))
_GIRTHS_TOGETHER: Final[Codes] = np.array(
    [GIRTHS.index(girths_together(*states)) for states in product(GIRTHS, repeat=3)], np.uint8
)
_TOGETHER: Final[Codes] = np.array(
    [VERDICTS.index(verdict_of(*states)) for states in product(GIRTHS, LENGTHS)], np.uint8
)


def girth_verdicts(chest: Codes, waist: Codes, hip: Codes) -> Codes:
    """The codes of ``girths_together`` for all sizes at once."""
    return np.asarray(_GIRTHS_TOGETHER.take((chest * _STATES + waist) * _STATES + hip))


def verdicts(girths: Codes, lengths: Codes, refused: Flags | bool) -> Codes:
    """The verdict of every size; ``refused`` where a gate failed."""
    found = _TOGETHER.take(girths * np.uint8(len(LENGTHS)) + lengths)
    return np.asarray(np.where(refused, np.uint8(_NOT_OFFERED), found))


def checked_count(girths: Sequence[Codes] | Codes, length: Codes) -> Codes:
    """How many of the four were checked, per size; ``girths`` are chest, waist and hip."""
    count = np.asarray(length != NOT_KNOWN, np.uint8)
    for state in girths:
        count += state != NOT_CHECKED
    return count
