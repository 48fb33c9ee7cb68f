"""An inflatable vest over a foam one: what the foam adds to the girths it must serve."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from decimal import Decimal

from harmonizer.layers import layer_allowance
from harmonizer.repeats import Settled
from harmonizer.rider import Measure, Needs, Rider

_GIRTHS = frozenset({Measure.CHEST, Measure.WAIST, Measure.HIP})


@dataclass(frozen=True, slots=True)
class FoamUnder:
    """What foam adds to a girth in cm; ``measured`` where the chest was taken over it."""

    adds_cm: float
    measured: bool


def foam_under(
    known: Sequence[Settled], over_foam_cm: float | None, thickness_mm: float | None
) -> FoamUnder | None:
    """The foam by the chest measured over it, else by its thickness; None where neither is known.

    A tape over the foam goes before a thickness: foam is neither even nor everywhere, so that
    2 pi t (Steiner) is the most an even layer adds. A chest over the foam that is not larger than
    the bare chest adds nothing.
    """
    bare = next((one.value for one in known if one.measure is Measure.CHEST), None)
    over = next((one.value for one in known if one.measure is Measure.CHEST_OVER_FOAM), None)
    over = over_foam_cm if over_foam_cm is not None else over
    if over is not None and bare is not None:
        return FoamUnder(max(0.0, over - bare), measured=True)
    if thickness_mm is not None:
        return FoamUnder(layer_allowance(thickness_mm), measured=False)
    return None


def any_kind(rider: Rider) -> Rider:
    """The rider as asked for a pair: both kinds are wanted, whatever the filter says."""
    return replace(rider, needs=Needs(None, None, rider.needs.in_stock))


def over_foam(rider: Rider, foam: FoamUnder) -> Rider:
    """The rider in the foam, as an inflatable vest meets them: every girth is larger by it."""
    adds = Decimal(str(foam.adds_cm))
    readings = tuple(
        replace(one, value=one.value + adds, text="") if one.measure in _GIRTHS else one
        for one in rider.readings
        if one.measure is not Measure.CHEST_OVER_FOAM
    )
    return replace(any_kind(rider), readings=readings)
