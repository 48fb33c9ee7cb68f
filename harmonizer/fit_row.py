"""One size of one model for one rider, read from the arrays when it is asked for."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from functools import lru_cache
from types import MappingProxyType

from charts.schema import Dimension
from harmonizer.clearance import Clearance, clearance, seen_on
from harmonizer.dimension_fit import BACK, DimensionFit, dimension_fit, known
from harmonizer.experience import Experience
from harmonizer.fit_arrays import FitArrays
from harmonizer.gates import Gate
from harmonizer.lanes import Absent
from harmonizer.offers import Offer
from harmonizer.rider import Observed
from harmonizer.states import GIRTHS, LENGTHS, VERDICTS, GirthState, LengthState, Verdict


@dataclass(frozen=True, slots=True, eq=False)
class FitRow:
    """One size of one model for one rider."""

    arrays: FitArrays
    at: int

    @property
    def offer(self) -> Offer:
        """The model, size and length."""
        return self.arrays.table.offers[self.at]

    @property
    def verdict(self) -> Verdict:
        """Girths and length in one word for machines."""
        return VERDICTS[int(self.arrays.verdicts[self.at])]

    @property
    def girth_verdict(self) -> GirthState:
        """The worst of the girths that were checked."""
        return GIRTHS[int(self.arrays.girths[self.at])]

    @property
    def length_verdict(self) -> LengthState:
        """The state of the back length."""
        return LENGTHS[int(self.arrays.states[BACK, self.at])]

    @property
    def checked(self) -> int:
        """How many of chest, waist, hip and back length were checked."""
        return int(self.arrays.checked[self.at])

    @property
    def penalty(self) -> float:
        """P, which only orders and is never shown."""
        return float(self.arrays.penalty[self.at])

    @property
    def probability(self) -> float | None:
        """The size probability, over as many dimensions as were checked."""
        return known(self.arrays.probability[self.at])

    @property
    def too_long_probability(self) -> float | None:
        """The chance that the vest is too long; None where the length is not known."""
        plen = known(self.arrays.plen[self.at])
        return None if plen is None else 1.0 - plen

    @property
    def between_sizes(self) -> bool:
        """Whether the chest lies between two sizes of this chart."""
        return bool(self.arrays.between[self.at])

    @property
    def other_band(self) -> bool:
        """Whether the chart is for another band than the rider's."""
        return bool(self.arrays.other_band[self.at])

    @property
    def open_questions(self) -> int:
        """How many unanswered questions bear on this size."""
        return len(self.offer.open_questions) + self.arrays.table.alone[self.at]

    @property
    def clearance(self) -> Clearance | None:
        """The computed edge above the saddle; None where the vest's own length is not known."""
        seat = self.arrays.body.c7_above_seat
        own = known(self.arrays.table.finished_back[self.at])
        if seat is None or own is None:
            return None
        return clearance(seat, own, self.arrays.settings)

    @property
    def seen(self) -> Observed | None:
        """What was observed of this size in the saddle."""
        return seen_on(self.offer, self.arrays.rider.seen)

    @property
    def reserve(self) -> float | None:
        """What the elastic has left over the layers in cm; None where it is not stated."""
        return known(self.arrays.reserve[self.at])

    @property
    def experience(self) -> Experience | None:
        """How the model came out in this shop; None where that is not sure enough to be told."""
        found = self.arrays.table.facts.experience
        return found[self.at] if found else None

    @property
    def stretch_used(self) -> float | None:
        """The share of the elastic in use; None where it is not stated."""
        return known(self.arrays.stretch[self.at])

    @property
    def gates(self) -> tuple[Gate, ...]:
        """Gates that failed or could not be decided."""
        return self.arrays.gates.at(self.at)

    @property
    def dimensions(self) -> Mapping[Dimension, DimensionFit]:
        """The four that count and whatever else this size lists, by dimension."""
        return _dimensions(self.arrays, self.at)


@lru_cache(maxsize=4)
def _dimensions(arrays: FitArrays, at: int) -> Mapping[Dimension, DimensionFit]:
    """Made once for the few rows that are being spoken of: each sentence asks for them."""
    return MappingProxyType(
        {
            dimension: dimension_fit(arrays, place, at)
            for place, dimension in enumerate(arrays.dimensions)
            if place <= BACK or _lists(arrays, place, at)
        }
    )


def _lists(arrays: FitArrays, place: int, at: int) -> bool:
    lane = arrays.choice.lane[place, at]
    return bool(arrays.table.absent[lane, at] != Absent.NOT_LISTED)
