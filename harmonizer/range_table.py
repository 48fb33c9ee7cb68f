"""All charts compiled to dense arrays, lanes x offers: the only food of the hot path.

A lane is one dimension in one definition. All arrays are float64 in cm, kg or years, NaN where an
offer has nothing to compare, infinite where a range is open.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from typing import Final

import numpy as np
import numpy.typing as npt

from charts.model_facts import Adjuster, VestKind
from charts.schema import Basis, Dimension, Kind, Range
from harmonizer.borders import Reach, reaches
from harmonizer.lanes import (
    FROM_C7,
    GIRTH_DIMENSIONS,
    Absent,
    Assumed,
    ChartSide,
    Lane,
    basis_of,
)
from harmonizer.offer_facts import OfferFacts, compiled_facts
from harmonizer.offers import Offer
from harmonizer.settings import DEFAULTS, Settings

Floats = npt.NDArray[np.float64]
Codes = npt.NDArray[np.uint8]

__all__ = ["Absent", "Assumed", "RangeTable"]


@dataclass(frozen=True, slots=True, eq=False)
class RangeTable:
    """Offers and their ranges; every two-dimensional array is lanes x offers.

    ``low`` and ``high`` are a and b, as published; ``reach_low`` and ``reach_high`` are A and B,
    with borders closed and adjusters used; ``seam_low`` and ``seam_high`` have the borders only,
    ``below`` and ``above`` those of the neighbours. ``take_in`` and ``let_out`` are how far the
    adjusters go, ``adjustable`` whether any goes anywhere. ``alone`` counts the single values
    of an offer that have no neighbour to give them a range, ``finished_back`` is the vest's own
    length from C7; both one per offer.
    """

    offers: tuple[Offer, ...]
    settings: Settings
    lanes: tuple[Lane, ...]
    low: Floats
    high: Floats
    reach_low: Floats
    reach_high: Floats
    seam_low: Floats
    seam_high: Floats
    below: Floats
    above: Floats
    take_in: Floats
    let_out: Floats
    tolerance: Floats
    absent: Codes
    alone: tuple[int, ...]
    assumed: Codes
    finished_back: Floats
    facts: OfferFacts
    adjustable: bool
    ranges: tuple[tuple[Range | None, ...], ...]

    @classmethod
    def compiled(cls, offers: Sequence[Offer], settings: Settings = DEFAULTS) -> RangeTable:
        """The arrays of ``offers`` under ``settings``, in the order of ``offers``."""
        return _Compiler(tuple(offers), settings).table()

    @property
    def girth_lanes(self) -> slice:
        """The lanes of chest, waist and hip, which come first."""
        return slice(0, self.lanes_of(Dimension.BACK_LENGTH)[0])

    @property
    def back_lanes(self) -> slice:
        """The lanes of the back length, which follow the girths."""
        back = self.lanes_of(Dimension.BACK_LENGTH)
        return slice(back[0], back[-1] + 1)

    @property
    def other_lanes(self) -> slice:
        """The lanes of everything that is in no verdict, which come last."""
        return slice(self.back_lanes.stop, len(self.lanes))

    def lanes_of(self, dimension: Dimension) -> tuple[int, ...]:
        """The places of the lanes of one dimension."""
        return tuple(at for at, lane in enumerate(self.lanes) if lane.dimension is dimension)

    @property
    def dimensions(self) -> tuple[Dimension, ...]:
        """Every dimension in the table, the four that count first."""
        return tuple(dict.fromkeys(lane.dimension for lane in self.lanes))


_FIELDS: Final = (
    "low",
    "high",
    "reach_low",
    "reach_high",
    "seam_low",
    "seam_high",
    "below",
    "above",
    "take_in",
    "let_out",
    "tolerance",
)


class _Run:
    """Neighbours in one lane: the offers and what their charts say, side by side."""

    __slots__ = ("basis", "lane", "offers", "ranges")

    def __init__(self, lane: int, basis: Basis) -> None:
        self.lane = lane
        self.basis = basis
        self.offers: list[int] = []
        self.ranges: list[Range] = []

    def add(self, offer: int, item: Range) -> None:
        self.offers.append(offer)
        self.ranges.append(item)


class _Compiler:
    """Fills the arrays, one run of neighbours after the other."""

    def __init__(self, offers: tuple[Offer, ...], settings: Settings) -> None:
        self.offers = offers
        self.settings = settings
        self.read = ChartSide(settings)
        self.lanes = self.read.lanes(offers)
        self.place = {lane: at for at, lane in enumerate(self.lanes)}
        shape = (len(self.lanes), len(offers))
        self.arrays: dict[str, Floats] = {name: np.full(shape, np.nan) for name in _FIELDS}
        self.absent: Codes = np.full(shape, Absent.NOT_LISTED, np.uint8)
        self.assumed: Codes = np.zeros(shape, np.uint8)
        self.finished_back: Floats = np.full(len(offers), np.nan)
        self.ranges: list[list[Range | None]] = [[None] * len(offers) for _ in self.lanes]

    def table(self) -> RangeTable:
        for run in self._runs():
            self._enter(run)
        chest = self._first_known(self.arrays["seam_low"], frozenset({Dimension.CHEST}))
        facts = compiled_facts(self.offers, self._size_keys(), chest)
        return RangeTable(
            offers=self.offers,
            settings=self.settings,
            lanes=self.lanes,
            absent=self.absent,
            alone=tuple((self.absent == Absent.ALONE).sum(axis=0).tolist()),
            assumed=self.assumed,
            finished_back=self.finished_back,
            facts=facts,
            adjustable=any(offer.facts and offer.facts.adjusters for offer in self.offers),
            ranges=tuple(tuple(row) for row in self.ranges),
            **self.arrays,
        )

    def _runs(self) -> list[_Run]:
        """Ranges that are neighbours: one chart, dimension, basis, definition and unit.

        A back length has its neighbours among the length options of its own size.
        """
        with_lengths = {(offer.chart, offer.size) for offer in self.offers if offer.length}
        runs: dict[tuple[object, ...], _Run] = {}
        for at, offer in enumerate(self.offers):
            own_size = offer.size if (offer.chart, offer.size) in with_lengths else None
            for item in offer.ranges:
                if item.dimension is Dimension.OTHER:
                    continue
                lane, basis = self.place[self.read.lane(offer, item)], basis_of(offer, item)
                unit = item.published_unit or item.unit
                size = own_size if item.dimension is Dimension.BACK_LENGTH else None
                key = (offer.chart, offer.band, lane, basis, unit, size)
                runs.setdefault(key, _Run(lane, basis)).add(at, item)
        return list(runs.values())

    def _enter(self, run: _Run) -> None:
        lane = run.lane
        for at, item, reach in zip(run.offers, run.ranges, reaches(run.ranges), strict=True):
            if run.basis in (Basis.FINISHED, Basis.FLAT):
                self._enter_vest(lane, at, item, run.basis)
            elif reach is None:
                why = Absent.UNREAD if item.kind is Kind.UNREAD else Absent.ALONE
                self._enter_absent(lane, at, item, why)
            elif self.absent[lane, at] != Absent.PRESENT:
                self._enter_reach(lane, at, item, reach)

    def _enter_absent(self, lane: int, at: int, item: Range, why: Absent) -> None:
        if self.absent[lane, at] == Absent.NOT_LISTED:
            self.absent[lane, at] = why
            self.ranges[lane][at] = item

    def _enter_vest(self, lane: int, at: int, item: Range, basis: Basis) -> None:
        """A measure of the vest itself: never compared, but a length from C7 serves the saddle."""
        why = Absent.FINISHED if basis is Basis.FINISHED else Absent.FLAT
        self._enter_absent(lane, at, item, why)
        longest = item.value if item.value is not None else item.high
        from_c7 = item.dimension is Dimension.BACK_LENGTH and item.definition in FROM_C7
        if from_c7 and basis is Basis.FINISHED and longest is not None:
            self.finished_back[at] = float(longest)

    def _enter_reach(self, lane: int, at: int, item: Range, reach: Reach) -> None:
        offer = self.offers[at]
        take_in, let_out = _adjuster(offer, item.dimension)
        values = {
            "low": reach.low,
            "high": reach.high,
            "reach_low": reach.reach_low - take_in,
            "reach_high": reach.reach_high + let_out,
            "seam_low": reach.reach_low,
            "seam_high": reach.reach_high,
            "below": reach.below,
            "above": reach.above,
            "take_in": take_in,
            "let_out": let_out,
            "tolerance": self._tolerance(offer, item.dimension, reach),
        }
        for name, value in values.items():
            self.arrays[name][lane, at] = value
        self.absent[lane, at] = Absent.PRESENT
        self.assumed[lane, at] = self._assumed(offer, item, reach)
        self.ranges[lane][at] = item

    def _assumed(self, offer: Offer, item: Range, reach: Reach) -> Assumed:
        marks = Assumed.NOTHING
        if self.read.definition(offer, item)[1]:
            marks |= Assumed.CHART_DEFINITION
        if basis_of(offer, item) is Basis.UNKNOWN:
            marks |= Assumed.BASIS
        if reach.derived:
            marks |= Assumed.DERIVED
        if item.circa:
            marks |= Assumed.CIRCA
        if set(item.findings) & set(offer.open_questions):
            marks |= Assumed.OPEN_QUESTION
        return marks

    def _tolerance(self, offer: Offer, dimension: Dimension, reach: Reach) -> float:
        """How far outside a girth may lie and still be near, at most its share of the range."""
        widest = {
            Dimension.CHEST: self.settings.chest_tolerance,
            Dimension.WAIST: self.settings.waist_tolerance,
            Dimension.HIP: self.settings.hip_tolerance,
        }.get(dimension, 0.0)
        if offer.kind == VestKind.INFLATABLE and dimension is not Dimension.CHEST:
            widest = min(widest, self.settings.inflatable_tolerance)
        return min(widest, (reach.high - reach.low) * self.settings.tolerance_share)

    def _size_keys(self) -> Floats:
        """How large each offer is, to put the smaller first: its chest, else its waist or hip."""
        low, high = self.arrays["low"], self.arrays["high"]
        known = np.where(np.isfinite(low), low, high)
        known[~np.isfinite(known)] = np.nan
        return np.nan_to_num(self._first_known(known, GIRTH_DIMENSIONS), nan=math.inf)

    def _first_known(self, rows: Floats, dimensions: frozenset[Dimension]) -> Floats:
        """One value per offer: that of the first lane of ``dimensions`` which has one."""
        keys = np.full(len(self.offers), np.nan)
        for lane, row in zip(self.lanes, rows, strict=True):
            if lane.dimension in dimensions:
                keys = np.where(np.isnan(keys), row, keys)
        return keys


def _adjuster(offer: Offer, dimension: Dimension) -> tuple[float, float]:
    """Taken in and let out, in cm; a back length is never widened downwards."""
    if offer.facts is None:
        return 0.0, 0.0
    ways = offer.facts.adjusters.get(dimension, Adjuster())
    take_in = 0.0 if dimension is Dimension.BACK_LENGTH else float(ways.take_in)
    return take_in, float(ways.let_out)
