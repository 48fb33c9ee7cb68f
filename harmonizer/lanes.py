"""Lanes: one dimension in one definition, and what the charts' side leaves unsaid."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from enum import IntEnum, IntFlag
from typing import Final

from charts.schema import Basis, Definition, Dimension, Range
from harmonizer.offers import Offer
from harmonizer.settings import Settings

MAIN: Final = (Dimension.CHEST, Dimension.WAIST, Dimension.HIP, Dimension.BACK_LENGTH)
GIRTH_DIMENSIONS: Final = frozenset({Dimension.CHEST, Dimension.WAIST, Dimension.HIP})
FROM_C7: Final = frozenset(
    {Definition.UNKNOWN, Definition.BACK_C7_SI, Definition.BACK_C7_WAIST, Definition.BACK_C7_SEAT}
)


class Absent(IntEnum):
    """Why an offer has nothing to compare in a lane."""

    PRESENT = 0
    NOT_LISTED = 1
    UNREAD = 2
    ALONE = 3
    FINISHED = 4
    FLAT = 5


class Assumed(IntFlag):
    """What was taken as given although nobody said so."""

    NOTHING = 0
    CHART_DEFINITION = 1
    BASIS = 2
    DERIVED = 4
    CIRCA = 8
    OPEN_QUESTION = 16


@dataclass(frozen=True, slots=True)
class Lane:
    """One dimension in one definition."""

    dimension: Dimension
    definition: Definition


_ORDER: Final = (*MAIN, *(one for one in Dimension if one not in MAIN))


class ChartSide:
    """How the charts' ranges are read under the shop's settings."""

    def __init__(self, settings: Settings) -> None:
        self._defaults = {one: settings.default_definition(one) for one in Dimension}

    def lanes(self, offers: Sequence[Offer]) -> tuple[Lane, ...]:
        """Every lane that is needed, the four that count first and never missing."""
        found = {
            self.lane(offer, item)
            for offer in offers
            for item in offer.ranges
            if item.dimension is not Dimension.OTHER
        }
        defaults = [Lane(one, self._defaults[one]) for one in MAIN]
        rest = sorted(found - set(defaults), key=lambda lane: lane.definition)
        lanes = [*defaults, *rest]
        return tuple(sorted(lanes, key=lambda lane: _ORDER.index(lane.dimension)))

    def lane(self, offer: Offer, item: Range) -> Lane:
        """The lane of one range."""
        return Lane(item.dimension, self.definition(offer, item)[0])

    def definition(self, offer: Offer, item: Range) -> tuple[Definition, bool]:
        """The definition that holds, and whether it is only the shop's assumption."""
        if item.definition is not Definition.UNKNOWN:
            return item.definition, False
        if offer.facts is not None and item.dimension in offer.facts.definitions:
            return offer.facts.definitions[item.dimension], False
        default = self._defaults[item.dimension]
        return default, default is not Definition.UNKNOWN


def basis_of(offer: Offer, item: Range) -> Basis:
    """Whose measure a range is: as the chart says, else as the maker's instructions do."""
    if item.basis is Basis.UNKNOWN and offer.facts is not None and offer.facts.basis:
        return offer.facts.basis
    return item.basis
