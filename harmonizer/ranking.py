"""The order of sizes: verdict, own band, how much was checked, then a penalty that only orders."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Final

import numpy as np
import numpy.typing as npt

from harmonizer.offer_facts import OfferFacts
from harmonizer.settings import Settings
from harmonizer.states import VERDICTS

Floats = npt.NDArray[np.float64]
Codes = npt.NDArray[np.uint8]
Flags = npt.NDArray[np.bool_]
Places = npt.NDArray[np.int64]

WEIGHTS: Final = (2.0, 1.0, 1.0, 3.0)
"""Chest, waist, hip, back length."""
MIDDLE_WEIGHT: Final = 0.1
LENGTH_WEIGHT: Final = 0.3
TIE: Final = 1e-6
"""Penalties and probabilities this close are equal."""

_LARGEST_STEP: Final = float((1 << 44) - 1)


def penalties(
    margin: Floats | Sequence[Floats], middle: Floats, plen: Floats | float, settings: Settings
) -> Floats:
    """P of every size; smaller is better.

    ``margin`` has one row a dimension (chest, waist, hip, back length first), NaN where not
    checked; ``middle`` is where the rider's chest lies in its range, NaN where that is open;
    ``plen`` is NaN where the length is not known.
    """
    tolerances = (
        settings.chest_tolerance,
        settings.waist_tolerance,
        settings.hip_tolerance,
        settings.short_limit,
    )
    total = middle_penalty(middle)
    total += LENGTH_WEIGHT * (1.0 - np.where(np.isnan(plen), 1.0, plen)) ** 2
    for row, weight, tolerance in zip(margin, WEIGHTS, tolerances, strict=False):
        total += weight * _beyond(row, tolerance)
    return total


def middle_penalty(middle: Floats) -> Floats:
    """The part of P for not lying in the middle of the chest range; 0 where that is open."""
    return np.asarray(MIDDLE_WEIGHT * np.where(np.isnan(middle), 0.0, middle - 0.5) ** 2)


def _beyond(margin: Floats, tolerance: float) -> Floats:
    """How far outside, in tolerances, squared; 0 inside and where nothing was checked."""
    out = np.where(margin < 0.0, -margin, 0.0)
    return (out / max(tolerance, TIE)) ** 2


@dataclass(frozen=True, slots=True, eq=False)
class Grades:
    """What orders the sizes, one value per offer.

    ``between_up`` where the chest lies between a size and the next larger one: there, and within
    one verdict, the maker's own rule says which of the two comes first.
    """

    verdicts: Codes
    other_band: Flags
    checked: Codes
    penalty: Floats
    probability: Floats
    between_up: Flags


def order_of(grades: Grades, facts: OfferFacts) -> Places:
    """The places of all offers, best first."""
    grade = grade_of(grades.verdicts, grades.other_band, grades.checked)
    steps = penalty_steps(grades.penalty)
    second = np.zeros(len(grade), np.int64)
    _apply_makers_rule(steps, second, grade, grades.between_up, facts)
    later = (second << 61) | later_key(grades.probability, facts.small_first)
    return np.lexsort((later, first_key(grade, steps))).astype(np.int64)


def grade_of(verdicts: Codes, other_band: Flags | bool, checked: Codes) -> Places:
    """What orders before any penalty: verdict, own band first, more dimensions checked first."""
    return np.asarray((verdicts.astype(np.int64) * 2 + other_band) * 8 + (7 - checked))


def penalty_steps(penalty: Floats) -> Places:
    """The penalty in whole ties."""
    return np.minimum(penalty / TIE, _LARGEST_STEP).round().astype(np.int64)


def first_key(grade: Places, steps: Places | int) -> Places:
    """Grade and penalty packed into one whole number, because sorting by few keys is fast."""
    return (grade << 44) | steps


def verdict_of_key(key: Places) -> Codes:
    """The verdict packed into a first key."""
    return np.asarray(np.minimum(key >> 48, len(VERDICTS) - 1), np.uint8)


def later_key(probability: Floats, small_first: Places | int) -> Places:
    """What decides a tie: the higher size probability, then the smaller size."""
    chance = np.nan_to_num(probability / TIE).round().astype(np.int64)
    return np.asarray((((1 << 20) - chance) << 40) | small_first)


def _apply_makers_rule(
    steps: Places, second: Places, grade: Places, between_up: Flags, facts: OfferFacts
) -> None:
    """Put two sizes of one grade side by side at the better's place, the maker's choice first."""
    ruled = between_up & (facts.prefers_larger | facts.prefers_smaller) & (facts.larger >= 0)
    small = np.flatnonzero(ruled)
    large = facts.larger[small]
    same = grade[small] == grade[large]
    small, large = small[same], large[same]
    better = np.minimum(steps[small], steps[large])
    steps[small] = better
    steps[large] = np.minimum(steps[large], better)
    prefers_larger = facts.prefers_larger[small]
    second[np.where(prefers_larger, small, large)] = 1
