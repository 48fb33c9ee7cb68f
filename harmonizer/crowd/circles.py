"""How far out sizes are looked at for a crowd, and when looking further out is of no use."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Final

import numpy as np
import numpy.typing as npt

from harmonizer import ranking
from harmonizer.crowd.pairs import Riders
from harmonizer.crowd.table import BACK, CHEST, HIP, WAIST, CrowdTable
from harmonizer.lanes import MAIN
from harmonizer.settings import Settings
from harmonizer.states import SLACK, VERDICTS, Verdict

LOOK: Final = 2 * SLACK
"""What a circle reaches further than its figures say, in cm."""

Floats = npt.NDArray[np.float64]
Places = npt.NDArray[np.int64]


@dataclass(frozen=True, slots=True)
class Circle:
    """How far outside its range each of the four may lie, in cm.

    ``near`` adds to a girth what the size itself still calls near. ``settles`` is the key below
    which nothing outside the circle can come.
    """

    girths: tuple[float, float, float]
    near: bool
    long_by: float
    short_by: float
    settles: int


def circles(settings: Settings) -> tuple[Circle, ...]:
    """From lying inside every range to any distance.

    Outside the first *near* is the best there is, outside the second *no*. Outside the others the
    penalty is at least the square of their number, because one dimension alone gives as much.
    """
    nowhere = (0.0, 0.0, 0.0)
    long_by, short_by = settings.likely_long_limit, settings.short_limit
    return (
        Circle(nowhere, near=False, long_by=0.0, short_by=0.0, settles=_key(Verdict.NEAR)),
        Circle(nowhere, near=True, long_by=long_by, short_by=short_by, settles=_key(Verdict.NO)),
        *(_missed(number, settings) for number in (2.0, 3.5, 6.0, 10.0, math.inf)),
    )


def _missed(number: float, settings: Settings) -> Circle:
    """The circle outside which a penalty is at least the square of ``number``."""
    limits = settings.chest_tolerance, settings.waist_tolerance, settings.hip_tolerance
    chest, waist, hip, back = (
        number * limit / math.sqrt(weight)
        for limit, weight in zip((*limits, settings.short_limit), ranking.WEIGHTS, strict=True)
    )
    long_by = max(back, settings.likely_long_limit)
    short_by = max(back, settings.short_limit)
    settles = _key(Verdict.NO, number**2)
    return Circle((chest, waist, hip), True, long_by, short_by, settles)


def _key(verdict: Verdict, penalty: float = 0.0) -> int:
    """The best key with this verdict and at least this penalty."""
    code = np.array([VERDICTS.index(verdict)], np.uint8)
    grade = ranking.grade_of(code, False, np.array([len(MAIN)], np.uint8))
    return int(ranking.first_key(grade, ranking.penalty_steps(np.array([penalty])))[0])


def within(circle: Circle, riders: Riders, sizes: CrowdTable) -> tuple[Places, Places]:
    """The pairs (rider, size) of which nothing lies outside ``circle``, rider by rider.

    What was not read or is not listed leaves nobody out. The riders should be close in chest:
    sizes that none of them could wear are left out at once. Half the precision is enough to look,
    because a circle reaches out by a slack that is wider than what is lost.
    """
    reaches = [_reach(circle, row, riders, sizes) for row in (CHEST, WAIST, HIP, BACK)]
    columns = _could_serve(riders.readings[CHEST], *reaches[CHEST])
    outside = np.zeros((riders.readings.shape[1], len(columns)), np.bool_)
    for reading, (low, high) in zip(riders.readings.astype(np.float32), reaches, strict=True):
        outside |= reading[:, None] < low[columns].astype(np.float32)
        outside |= reading[:, None] > high[columns].astype(np.float32)
    rider, column = np.divmod(np.flatnonzero(~outside), max(1, len(columns)))
    return rider, columns[column]


def _could_serve(chest: Floats, low: Floats, high: Floats) -> Places:
    if np.isnan(chest).any():
        return np.arange(len(low))
    return np.flatnonzero(~((low > chest.max()) | (high < chest.min())))


def _reach(circle: Circle, row: int, riders: Riders, sizes: CrowdTable) -> tuple[Floats, Floats]:
    """Between which readings every size stays within ``circle``, whatever is worn."""
    if row == BACK:
        low = sizes.reach_low[BACK] - circle.long_by - LOOK
        return low, sizes.reach_high[BACK] + circle.short_by + LOOK
    more = circle.girths[row] + LOOK + (sizes.tolerance[row] if circle.near else 0.0)
    thinnest = np.where(sizes.takes_layers, riders.allowance.min(), 0.0)
    thickest = np.where(sizes.takes_layers & sizes.stated_warm, riders.allowance.max(), 0.0)
    low = sizes.reach_low[row] - more - thickest
    return low, sizes.reach_high[row] + more - thinnest
