"""How one dimension of one size lies, with everything that is known of it."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Final

import numpy as np

from charts.reason import Reason
from charts.schema import Definition, Dimension
from harmonizer.certainty import normal_below_one
from harmonizer.dimension_reasons import Lie, reason_of
from harmonizer.fit_arrays import FitArrays
from harmonizer.lanes import Assumed
from harmonizer.states import GIRTHS, LENGTHS, GirthState, LengthState

State = GirthState | LengthState

BACK: Final = 3
_ASSUMED: Final = {
    Assumed.CHART_DEFINITION: "chart_definition",
    Assumed.BASIS: "basis",
    Assumed.DERIVED: "derived",
    Assumed.CIRCA: "circa",
    Assumed.OPEN_QUESTION: "open_question",
}


@dataclass(frozen=True, slots=True)
class DimensionFit:
    """How one dimension of one size lies. cm (kg for weight); None where open or not compared.

    ``published_low``/``published_high`` are a and b; ``reach_low``/``reach_high`` are A and B.
    ``layers`` is g, already in the upper margin. ``probability`` is Pin, for a back Plen.
    ``definition`` is that of the chart. ``adjuster_used`` is a share from 0 to 1, None where the
    dimension has no adjuster.
    """

    dimension: Dimension
    definition: Definition
    state: State
    lower_margin: float | None
    upper_margin: float | None
    margin: float | None
    position: float | None
    probability: float | None
    assumed: tuple[str, ...]
    reason: Reason
    published_low: float | None
    published_high: float | None
    reach_low: float | None
    reach_high: float | None
    reading: float | None
    layers: float
    adjuster_used: float | None
    place: str | None
    published: str | None


def known(value: float | np.floating) -> float | None:
    """``value``, or None where it is not finite."""
    return float(value) if math.isfinite(value) else None


def dimension_fit(arrays: FitArrays, row: int, at: int) -> DimensionFit:
    """How the dimension of ``row`` lies in the offer at ``at``."""
    table, body = arrays.table, arrays.body
    dimension = arrays.dimensions[row]
    lane = int(arrays.choice.lane[row, at])
    compared = not math.isnan(arrays.lower[row, at])
    lower, upper = float(arrays.lower[row, at]), float(arrays.upper[row, at])
    item = table.ranges[lane][at]
    serving = body.serving[lane]
    light, warm = float(body.light[lane, at]), float(body.warm[lane, at])
    return DimensionFit(
        dimension=dimension,
        definition=table.lanes[lane].definition,
        state=_state(arrays, row, at),
        lower_margin=known(lower),
        upper_margin=known(upper),
        margin=known(min(lower, upper)) if compared else None,
        position=_position(arrays, lane, at) if compared else None,
        probability=_probability(arrays, row, at),
        assumed=_assumed(arrays, lane, at) if compared else (),
        reason=reason_of(Lie(arrays, row, lane, at)),
        published_low=known(table.low[lane, at]),
        published_high=known(table.high[lane, at]),
        reach_low=known(table.reach_low[lane, at]),
        reach_high=known(table.reach_high[lane, at]),
        reading=known(light) if serving else None,
        layers=warm - light if compared else 0.0,
        adjuster_used=_adjuster_used(arrays, row, at) if compared else None,
        place=item.place if item else None,
        published=item.published if item else None,
    )


def _adjuster_used(arrays: FitArrays, row: int, at: int) -> float | None:
    return known(arrays.adjusters_used[row, at]) if arrays.table.adjustable else None


def _state(arrays: FitArrays, row: int, at: int) -> State:
    code = int(arrays.states[row, at])
    return LENGTHS[code] if row == BACK else GIRTHS[code]


def _position(arrays: FitArrays, lane: int, at: int) -> float | None:
    low, high = arrays.table.low[lane, at], arrays.table.high[lane, at]
    width = high - low
    if not math.isfinite(width) or width <= 0.0:
        return None
    return float((arrays.body.light[lane, at] - low) / width)


def _probability(arrays: FitArrays, row: int, at: int) -> float | None:
    if row >= BACK:
        return known(arrays.plen[at]) if row == BACK else None
    lower, upper = float(arrays.lower[row, at]), float(arrays.upper[row, at])
    if math.isnan(lower):
        return None
    u = float(arrays.body.u[arrays.choice.lane[row, at], 0])
    return max(0.0, normal_below_one(upper / u) - normal_below_one(-lower / u))


def _assumed(arrays: FitArrays, lane: int, at: int) -> tuple[str, ...]:
    """What was taken as given, on the chart's side and on the rider's."""
    marks = Assumed(int(arrays.table.assumed[lane, at]))
    found = [word for mark, word in _ASSUMED.items() if mark in marks]
    serving = arrays.body.serving[lane]
    if serving is not None and serving.assumed:
        found.append("reading_definition")
    return tuple(found)
