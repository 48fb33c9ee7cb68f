"""The best size for each of very many riders, by the same rules as ``fit``.

Riders are sorted by chest and compared in widening circles: first with the sizes they lie inside
of, and only those for whom nothing was found there with the next. Every circle is worked off in
blocks that fit the cache. Time grows with riders x sizes, memory with the riders alone.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field
from typing import Final

import numpy as np
import numpy.typing as npt

from charts.schema import Definition, Dimension
from harmonizer import ranking
from harmonizer.crowd.circles import circles, within
from harmonizer.crowd.pairs import Pairs, Riders
from harmonizer.crowd.table import CHEST, crowd_table
from harmonizer.lanes import MAIN
from harmonizer.range_table import RangeTable
from harmonizer.rider import BodyFigure
from harmonizer.settings import DEFAULTS, Settings

Floats = npt.NDArray[np.float64]
Codes = npt.NDArray[np.uint8]
Flags = npt.NDArray[np.bool_]
Places = npt.NDArray[np.int64]

BLOCK: Final = 1 << 21
"""Riders x sizes that are looked at together."""

CHUNK: Final = 1 << 14
"""Pairs that are judged together."""


@dataclass(frozen=True, slots=True, eq=False)
class Crowd:
    """Many riders as arrays, one column a rider; lengths in cm, mass in kg, NaN where not read.

    ``readings`` is 4 x riders: chest, waist, hip, back length; ``u`` holds their standard
    uncertainties, 4 x 1 or 4 x riders; ``allowance`` is what the layers add to a girth, 1 or
    riders. A definition that is not named is the shop's.
    """

    readings: Floats
    u: Floats
    allowance: Floats = field(default_factory=lambda: np.zeros(1))
    weight: Floats = field(default_factory=lambda: np.full(1, np.nan))
    figure: BodyFigure | None = None
    definitions: Mapping[Dimension, Definition] = field(default_factory=dict)

    def __len__(self) -> int:
        return int(self.readings.shape[1])

    def some(self, riders: Places) -> Riders:
        """Some of the riders, side by side in memory."""
        count = len(self)
        allowance = np.broadcast_to(self.allowance, count)[riders]
        return Riders(
            readings=self.readings[:, riders],
            u=np.broadcast_to(self.u, (len(MAIN), count))[:, riders],
            allowance=allowance,
            weight=np.broadcast_to(self.weight, count)[riders],
            layered=bool(allowance.any()),
        )


@dataclass(frozen=True, slots=True, eq=False)
class BestSizes:
    """The best verdict of every rider and the place of its offer, -1 where there are no offers."""

    verdicts: Codes
    offers: Places


def best_sizes(crowd: Crowd, table: RangeTable, settings: Settings = DEFAULTS) -> BestSizes:
    """The first row of ``fit`` for every rider of ``crowd``, but for the maker's own rule.

    Where a maker says which of two sizes to take between sizes, ``fit`` follows it and this does
    not: both sizes have the same verdict.
    """
    if table.settings != settings:
        table = RangeTable.compiled(table.offers, settings)
    sizes = crowd_table(table, crowd.definitions, crowd.figure)
    first = np.full(len(crowd), np.iinfo(np.int64).max)
    offer = np.full(len(crowd), -1, np.int64)
    waiting = np.argsort(crowd.readings[CHEST], kind="stable")
    for circle in circles(settings) if len(sizes) else ():
        for block in _blocks(waiting, len(sizes)):
            riders = crowd.some(block)
            rider, column = within(circle, riders, sizes)
            for chunk in _chunks(rider):
                pairs = Pairs.of(riders, sizes, settings, (rider[chunk], column[chunk]))
                winner, key, size = _best(pairs)
                first[block[winner]], offer[block[winner]] = key, size
        waiting = waiting[first[waiting] >= circle.settles]
    return BestSizes(ranking.verdict_of_key(first), offer)


def _blocks(riders: Places, sizes: int) -> Iterator[Places]:
    rows = max(1, BLOCK // sizes)
    for start in range(0, len(riders), rows):
        yield riders[start : start + rows]


def _chunks(rider: Places) -> Iterator[slice]:
    """Slices of pairs that fit the cache; the pairs of one rider stay together."""
    start = 0
    while start < len(rider):
        end = len(rider)
        if end - start > CHUNK:
            last = rider[start + CHUNK]
            end = int(np.searchsorted(rider, last, side="left"))
            if end <= start:
                end = int(np.searchsorted(rider, last, side="right"))
        yield slice(start, end)
        start = end


def _best(pairs: Pairs) -> tuple[Places, Places, Places]:
    """The riders who have any pair, the key of their best, and its size.

    Every step keeps only the pairs that can still be the best of their rider.
    """
    grades = pairs.grades()
    best = _is_best(pairs.rider, grades)
    pairs, grades = pairs.only(best), grades[best]
    least = ranking.penalty_steps(pairs.least_penalties())
    best = _is_best(pairs.rider, least, within=int(ranking.LENGTH_WEIGHT / ranking.TIE))
    pairs, grades = pairs.only(best), grades[best]
    keys = ranking.first_key(grades, ranking.penalty_steps(pairs.penalties()))
    best = _is_best(pairs.rider, keys)
    pairs, keys = pairs.only(best), keys[best]
    best = _is_best(pairs.rider, pairs.later_keys())
    return pairs.rider[best], keys[best], pairs.size[best]


def _is_best(rider: Places, key: Places, within: int = 0) -> Flags:
    """Where ``key`` is ``within`` the smallest of its rider, whose pairs stand together."""
    if not len(rider):
        return np.zeros(0, np.bool_)
    starts = np.flatnonzero(np.diff(rider, prepend=-1))
    least = np.minimum.reduceat(key, starts)
    return np.asarray(key <= np.repeat(least + within, np.diff(starts, append=len(rider))))
