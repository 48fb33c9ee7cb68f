"""One rider laid on the lanes of a table: which reading serves where, and the layers on top."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from enum import StrEnum
from typing import Final

import numpy as np
import numpy.typing as npt

from charts.schema import Dimension
from harmonizer.lanes import Lane
from harmonizer.layers import layer_allowance
from harmonizer.range_table import RangeTable
from harmonizer.repeats import Settled, settled
from harmonizer.rider import Measure, Rider
from harmonizer.settings import Settings

Floats = npt.NDArray[np.float64]

NO_U: Final = 1.0
"""Stands where a dimension has no uncertainty and no probability is made from it."""


@dataclass(frozen=True, slots=True, eq=False)
class Body:
    """The rider on the table's lanes.

    ``light`` and ``warm`` are lanes x offers, the two ends of the rider's band in cm, NaN where
    no reading serves; ``u`` is lanes x 1. ``serving`` names the reading behind each lane.
    ``allowance`` is what the layers add to a girth in cm.
    """

    settled: tuple[Settled, ...]
    serving: tuple[Settled | None, ...]
    light: Floats
    warm: Floats
    u: Floats
    allowance: float
    weight_kg: float | None
    c7_above_seat: float | None


class Worn(StrEnum):
    """Which end of the rider's band a size must serve."""

    ALL_YEAR = "all_year"
    WINTER = "winter"


def body_on(
    rider: Rider, table: RangeTable, settings: Settings, worn: Worn = Worn.ALL_YEAR
) -> Body:
    """``rider`` on the lanes of ``table``."""
    known = settled(rider, settings)
    serving = tuple(_serving(lane, known) for lane in table.lanes)
    reading = np.array([[one.value if one else np.nan] for one in serving])
    light = np.broadcast_to(reading, (len(serving), len(table.offers)))
    foam, allowance = _of(known, Measure.CHEST_OVER_FOAM), allowance_of(rider, known)
    if foam is not None:
        light = _over_foam(light, table, foam)
    warm = light
    if allowance:
        light, warm = _in_layers(light, table, allowance, worn)
    weight, seat = _of(known, Measure.WEIGHT), _of(known, Measure.C7_ABOVE_SEAT)
    return Body(
        settled=known,
        serving=serving,
        light=light,
        warm=warm,
        u=np.array([[one.u if one and one.u else NO_U] for one in serving]),
        allowance=allowance,
        weight_kg=weight.value if weight else None,
        c7_above_seat=seat.value if seat else None,
    )


def allowance_of(rider: Rider, known: Sequence[Settled]) -> float:
    """What the winter layers add to a girth in cm: measured if it was, else 2 pi t.

    A chest over the jacket that is not larger than the chest over the shirt adds nothing.
    """
    over, bare = _of(known, Measure.CHEST_OVER_LAYERS), _of(known, Measure.CHEST)
    if over is not None and bare is not None:
        return max(0.0, over.value - bare.value)
    return layer_allowance(float(rider.winter_mm))


def _of(known: Sequence[Settled], measure: Measure) -> Settled | None:
    return next((one for one in known if one.measure is measure), None)


def _serving(lane: Lane, known: Sequence[Settled]) -> Settled | None:
    """The reading with the lane's definition; a definition is part of the dimension."""
    for one in known:
        if one.measure.dimension is lane.dimension and one.definition is lane.definition:
            return one
    return None


def _over_foam(light: Floats, table: RangeTable, foam: Settled) -> Floats:
    """An inflatable vest goes over the foam: there the chest over the foam is the chest."""
    over = light.copy()
    for at in table.lanes_of(Dimension.CHEST):
        over[at] = np.where(table.facts.inflatable, foam.value, light[at])
    return over


def _in_layers(
    light: Floats, table: RangeTable, allowance: float, worn: Worn
) -> tuple[Floats, Floats]:
    """The two ends of the rider's band; foam is worn under the layers, not over them.

    A chart stated for riders in warm layers is compared with them on both sides, and so is every
    chart when only winter is asked about.
    """
    both_sides = table.facts.stated_warm | (worn is Worn.WINTER)
    girths = table.girth_lanes
    layers = np.where(table.facts.takes_layers, allowance, 0.0)
    warm, shirt = light.copy(), light.copy()
    warm[girths] += layers
    shirt[girths] += np.where(both_sides, layers, 0.0)
    return shirt, warm
