"""What refuses a size whatever its ranges say: weight limits, level, kind, recall, edition, stock.

A gate that cannot be decided is named and refuses nothing, with one exception: an inflatable vest
with a weight floor is not offered until the rider has been weighed, or when the weight lies
close to the floor.
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum

import numpy as np
import numpy.typing as npt

from harmonizer.offer_facts import OfferFacts
from harmonizer.rider import Needs
from harmonizer.settings import Settings
from harmonizer.states import SLACK

Flags = npt.NDArray[np.bool_]
Floats = npt.NDArray[np.float64]


class Gate(StrEnum):
    """A gate that refused a size, or that could not be decided."""

    UNDER_WEIGHT_FLOOR = "under_weight_floor"
    WEIGH_FIRST = "weigh_first"
    OVER_WEIGHT_CEILING = "over_weight_ceiling"
    LEVEL_DIFFERS = "level_differs"
    KIND_DIFFERS = "kind_differs"
    RECALLED = "recalled"
    SUPERSEDED = "superseded"
    OUT_OF_STOCK = "out_of_stock"
    WEIGHT_NOT_KNOWN = "weight_not_known"
    LEVEL_NOT_KNOWN = "level_not_known"
    KIND_NOT_KNOWN = "kind_not_known"
    STOCK_NOT_KNOWN = "stock_not_known"


UNDECIDED = frozenset(
    {Gate.WEIGHT_NOT_KNOWN, Gate.LEVEL_NOT_KNOWN, Gate.KIND_NOT_KNOWN, Gate.STOCK_NOT_KNOWN}
)


@dataclass(frozen=True, slots=True, eq=False)
class Gates:
    """Every gate with the sizes it bears on; ``refused`` where at least one failed."""

    found: dict[Gate, Flags]
    refused: Flags

    def at(self, offer: int) -> tuple[Gate, ...]:
        """The gates that bear on one size, failed ones first."""
        return tuple(gate for gate, flags in self.found.items() if flags[offer])


def gates(facts: OfferFacts, weight_kg: float | None, needs: Needs, settings: Settings) -> Gates:
    """Every gate of every size for one rider; ``weight_kg`` None where nobody weighed."""
    limits = WeightLimits(facts.weight_floor, facts.weight_ceiling, facts.inflatable)
    weight = np.array(np.nan if weight_kg is None else weight_kg)
    found = weight_gates(weight, limits, settings) | standing_gates(facts, needs)
    ordered = {gate: found[gate] for gate in Gate if gate in found and found[gate].any()}
    return Gates(ordered, any_refused(ordered, len(facts.kinds)))


def any_refused(found: dict[Gate, Flags], count: int) -> Flags:
    """Where at least one gate failed; one that could not be decided refuses nothing."""
    refused = np.zeros(count, np.bool_)
    for gate, flags in found.items():
        if gate not in UNDECIDED:
            refused |= flags
    return refused


@dataclass(frozen=True, slots=True, eq=False)
class WeightLimits:
    """The weight limits of many sizes or of one, in kg, NaN where there is none."""

    floor: Floats | float
    ceiling: Floats | float
    inflatable: Flags | bool


def weight_gates(weight: Floats, limits: WeightLimits, settings: Settings) -> dict[Gate, Flags]:
    """The gates that ask for the weight: one rider and many sizes, or many riders and one size.

    ``weight`` in kg is NaN where nobody weighed.
    """
    known = ~np.isnan(weight)
    under = weight < limits.floor - SLACK
    close = weight <= limits.floor + settings.weigh_first_band + SLACK
    has_floor, has_ceiling = ~np.isnan(limits.floor), ~np.isnan(limits.ceiling)
    weigh_first = limits.inflatable & has_floor & (~known | (close & ~under))
    return {
        Gate.UNDER_WEIGHT_FLOOR: under,
        Gate.WEIGH_FIRST: weigh_first,
        Gate.OVER_WEIGHT_CEILING: weight > limits.ceiling + SLACK,
        Gate.WEIGHT_NOT_KNOWN: ~known & (has_floor | has_ceiling) & ~weigh_first,
    }


def standing_gates(facts: OfferFacts, needs: Needs) -> dict[Gate, Flags]:
    """The gates that need no reading of the rider."""
    found = {
        **_asked(facts.levels, needs.level, Gate.LEVEL_DIFFERS, Gate.LEVEL_NOT_KNOWN),
        **_asked(facts.kinds, needs.kind, Gate.KIND_DIFFERS, Gate.KIND_NOT_KNOWN),
        Gate.RECALLED: facts.recalled,
        Gate.SUPERSEDED: facts.withdrawn,
    }
    if needs.in_stock:
        found[Gate.OUT_OF_STOCK] = facts.out_of_stock
        if facts.stock:
            unsaid = np.array([one is None for one in facts.stock], np.bool_)
            found[Gate.STOCK_NOT_KNOWN] = unsaid & ~facts.out_of_stock
    return found


def _asked(
    offered: tuple[str | None, ...], asked: str | None, differs: Gate, unknown: Gate
) -> dict[Gate, Flags]:
    if asked is None:
        return {}
    wanted = _plain(asked)
    return {
        differs: np.array([one is not None and _plain(one) != wanted for one in offered], np.bool_),
        unknown: np.array([one is None for one in offered], np.bool_),
    }


def _plain(word: str) -> str:
    """A level or kind without the word "level": "Level 3" asks for what "3" says."""
    return word.casefold().replace("level", "").strip()
