"""What ``models.toml`` says of every offer, as arrays in the order of the offers."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Sequence
from dataclasses import dataclass
from decimal import Decimal
from itertools import pairwise
from typing import Final

import numpy as np
import numpy.typing as npt

from charts.model_facts import ModelFacts, Rule, VestKind, WornOver
from harmonizer.experience import Experience
from harmonizer.offers import Offer

Floats = npt.NDArray[np.float64]
Flags = npt.NDArray[np.bool_]
Places = npt.NDArray[np.int64]

_UNSAID: Final = ModelFacts(model="")


@dataclass(frozen=True, slots=True, eq=False)
class OfferFacts:
    """One value per offer; masses in kg, lengths in cm, NaN where nothing is said.

    ``takes_layers`` is false for foam, over which warm layers go; ``stated_warm`` where the chart
    is for a rider in warm layers; ``band`` is the place of the offer's band in ``bands``;
    ``larger`` that of the next size up by chest, -1 where there is none. ``small_first`` ranks
    offers by size, then by source. ``stock`` is what a stock list says of each offer, None where
    it says nothing; empty where there is no list. ``experience`` is the shop's own with the
    offer's model, None where it is not sure enough to be told; empty where there is none at all.
    """

    inflatable: Flags
    takes_layers: Flags
    stated_warm: Flags
    bands: tuple[str | None, ...]
    band: Places
    kinds: tuple[str | None, ...]
    levels: tuple[str | None, ...]
    weight_floor: Floats
    weight_ceiling: Floats
    withdrawn: Flags
    recalled: Flags
    out_of_stock: Flags
    relaxed: Floats
    elastic_part: Floats
    extension: Floats
    least_reserve: Floats
    larger: Places
    prefers_larger: Flags
    prefers_smaller: Flags
    small_first: Places
    stock: tuple[str | None, ...] = ()
    experience: tuple[Experience | None, ...] = ()


def compiled_facts(offers: Sequence[Offer], size_keys: Floats, chest_low: Floats) -> OfferFacts:
    """The arrays of ``offers``; ``size_keys`` and ``chest_low`` are cm, one per offer."""
    facts = [offer.facts or _UNSAID for offer in offers]
    elastic = [entry.elastic for entry in facts]
    bands = tuple(dict.fromkeys(offer.band for offer in offers))
    small_first = np.empty(len(offers), np.int64)
    small_first[np.lexsort((np.arange(len(offers)), size_keys))] = np.arange(len(offers))
    return OfferFacts(
        inflatable=_flags([entry.kind is VestKind.INFLATABLE for entry in facts]),
        takes_layers=_flags([entry.kind is not VestKind.FOAM for entry in facts]),
        stated_warm=_flags([entry.worn_over is WornOver.WARM_LAYERS for entry in facts]),
        bands=bands,
        band=np.array([bands.index(offer.band) for offer in offers], np.int64),
        kinds=tuple(offer.kind for offer in offers),
        levels=tuple(entry.level for entry in facts),
        weight_floor=_floats([entry.weight_floor for entry in facts]),
        weight_ceiling=_floats([entry.weight_ceiling for entry in facts]),
        withdrawn=_flags([entry.superseded for entry in facts]),
        recalled=_flags([entry.recalled for entry in facts]),
        out_of_stock=_flags(
            [offer.size in entry.out_of_stock for offer, entry in zip(offers, facts, strict=True)]
        ),
        relaxed=_floats([entry.relaxed if entry else None for entry in elastic]),
        elastic_part=_floats([entry.part if entry else None for entry in elastic]),
        extension=_floats([entry.extension if entry else None for entry in elastic]),
        least_reserve=_floats([entry.reserve if entry else None for entry in elastic]),
        larger=_next_larger(offers, chest_low),
        prefers_larger=_flags([entry.between_sizes is Rule.LARGER for entry in facts]),
        prefers_smaller=_flags([entry.between_sizes is Rule.SMALLER for entry in facts]),
        small_first=small_first,
    )


def _flags(values: Sequence[bool]) -> Flags:
    return np.array(values, dtype=np.bool_)


def _floats(values: Sequence[Decimal | None]) -> Floats:
    return np.array([np.nan if value is None else float(value) for value in values])


def _next_larger(offers: Sequence[Offer], chest_low: Floats) -> Places:
    """The offer of the next larger chest in the same chart, band and length option."""
    larger = np.full(len(offers), -1, np.int64)
    groups: dict[tuple[int, str | None, str | None], list[int]] = defaultdict(list)
    for at, offer in enumerate(offers):
        if not np.isnan(chest_low[at]):
            groups[offer.chart, offer.band, offer.length].append(at)
    for places in groups.values():
        places.sort(key=lambda at: (chest_low[at], at))
        for at, following in pairwise(places):
            if chest_low[following] > chest_low[at]:
                larger[at] = following
    return larger
