"""One figure from several readings of the same measure, and what one tape is worth."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from statistics import fmean, median
from typing import Final

from charts.reason import Reason
from charts.schema import Definition
from harmonizer.rider import Measure, Reading, Rider, TakenBy
from harmonizer.settings import Settings
from harmonizer.states import SLACK

Z_95: Final = 1.959963984540054
"""Half the width of a 95 % interval in standard deviations."""


@dataclass(frozen=True, slots=True)
class Settled:
    """What the readings of one measure in one definition come to, in cm or kg.

    ``u`` is the standard uncertainty in cm, None where the model needs none. ``third_needed``
    where two readings lie too far apart.
    """

    measure: Measure
    definition: Definition
    assumed: bool
    value: float
    u: float | None
    taken_by: TakenBy
    readings: tuple[Reading, ...]
    third_needed: bool = False


def settled(rider: Rider, settings: Settings) -> tuple[Settled, ...]:
    """Every measure of ``rider`` that can be used, one for each definition.

    The best tape holds: a fitter's reading replaces a helper's. A back length that the rider
    took alone is not accepted and is left out.
    """
    groups: dict[tuple[Measure, Definition], list[Reading]] = {}
    for reading in rider.all_readings:
        if usable(rider, reading):
            definition = _definition(reading, settings)
            groups.setdefault((reading.measure, definition), []).append(reading)
    return tuple(
        _settle(rider, measure, definition, readings, settings)
        for (measure, definition), readings in groups.items()
    )


def usable(rider: Rider, reading: Reading) -> bool:
    """Whether a reading can be used at all: nobody can take a back length alone."""
    alone = rider.taker(reading) is TakenBy.SELF
    return not (alone and reading.measure is Measure.BACK_LENGTH)


def uncertainty(rider: Rider, reading: Reading, settings: Settings) -> float | None:
    """The standard uncertainty of one reading in cm, by who took it; None for other measures."""
    taker = rider.taker(reading)
    if reading.measure is Measure.BACK_LENGTH:
        return {
            TakenBy.FITTER: settings.u_back_fitter,
            TakenBy.FITTER_ONCE: settings.u_back_fitter_once,
            TakenBy.HELPER: settings.u_back_helper_felt
            if reading.c7_felt
            else settings.u_back_helper,
        }.get(taker)
    if reading.measure not in _GIRTHS:
        return None
    waist = reading.measure is Measure.WAIST
    return {
        TakenBy.FITTER: settings.u_girth_fitter,
        TakenBy.FITTER_ONCE: settings.u_girth_fitter_once,
        TakenBy.HELPER: settings.u_girth_helper,
        TakenBy.SELF: settings.u_waist_self if waist else settings.u_girth_self,
    }[taker]


_GIRTHS: Final = frozenset(
    {
        Measure.CHEST,
        Measure.WAIST,
        Measure.HIP,
        Measure.CHEST_OVER_LAYERS,
        Measure.CHEST_OVER_FOAM,
    }
)


def _definition(reading: Reading, settings: Settings) -> Definition:
    if reading.definition is not Definition.UNKNOWN or reading.measure.dimension is None:
        return reading.definition
    return settings.default_definition(reading.measure.dimension)


def _settle(
    rider: Rider,
    measure: Measure,
    definition: Definition,
    readings: Sequence[Reading],
    settings: Settings,
) -> Settled:
    spreads = [uncertainty(rider, reading, settings) for reading in readings]
    best = min((u for u in spreads if u is not None), default=None)
    used = tuple(one for one, u in zip(readings, spreads, strict=True) if u == best)
    values = [float(reading.value) for reading in used]
    back = measure is Measure.BACK_LENGTH
    limit = settings.repeat_limit_back if back else settings.repeat_limit_girth
    value, third = combined(values, limit)
    silent = all(reading.definition is Definition.UNKNOWN for reading in used)
    return Settled(
        measure=measure,
        definition=definition,
        assumed=silent and definition is not Definition.UNKNOWN,
        value=value,
        u=best,
        taken_by=rider.taker(used[0]),
        readings=used,
        third_needed=third,
    )


def combined(values: Sequence[float], limit_cm: float) -> tuple[float, bool]:
    """One figure from repeated ones, and whether a third reading is needed.

    Two within ``limit_cm``: their mean. Further apart: a third is asked for, and the median holds.
    """
    if len(values) > 2:
        return median(values), False
    return fmean(values), max(values) - min(values) > limit_cm + SLACK


def technical_error(pairs: Sequence[tuple[float, float]]) -> float:
    """TEM of a house: the root of the summed squared differences over twice their count.

    Source: Br J Nutr 1999;82:165.
    """
    return math.sqrt(sum((one - other) ** 2 for one, other in pairs) / (2 * len(pairs)))


def tape(one: Settled) -> Reason | None:
    """Whose tape it was and how sure it is: half the width of a 95 % interval, in cm."""
    if one.u is None:
        return None
    return Reason(f"tape-{one.taken_by.value}", {"half": Z_95 * one.u})
