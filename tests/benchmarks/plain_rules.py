"""Margins, verdicts and certainty in plain Python, one size after the other.

It is the slow reference: written from the rules, not from the arrays, and used to check that the
fast way says the same, and how much faster it is. Figures in cm and kg; None where not given.
"""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field

from charts.schema import Dimension
from harmonizer.range_table import Absent, RangeTable
from harmonizer.settings import DEFAULTS, Settings

GIRTHS = (Dimension.CHEST, Dimension.WAIST, Dimension.HIP)
BACK = Dimension.BACK_LENGTH
SLACK = 0.0001
GIRTH_ORDER = ("inside", "edge", "near", "miss")
LENGTH_ORDER = ("clear", "check", "not_known", "short", "likely_long", "too_short", "too_long")
VERDICT_ORDER = (
    "fits",
    "edge",
    "check_length",
    "length_unknown",
    "near",
    "likely_long",
    "no",
    "too_long",
    "not_offered",
)
WEIGHTS = {Dimension.CHEST: 2.0, Dimension.WAIST: 1.0, Dimension.HIP: 1.0, BACK: 3.0}


@dataclass(frozen=True)
class PlainRange:
    """a and b, A and B, and how far outside is still near."""

    a: float
    b: float
    reach_a: float
    reach_b: float
    tolerance: float


@dataclass(frozen=True)
class PlainSize:
    """One size as the rules see it. ``smallness`` is its place among all sizes by size."""

    ranges: Mapping[Dimension, PlainRange]
    inflatable: bool
    takes_layers: bool
    stated_warm: bool
    weight_floor: float | None
    weight_ceiling: float | None
    smallness: int


@dataclass(frozen=True)
class PlainRider:
    """Readings and their uncertainties by dimension; ``layers`` is g."""

    readings: Mapping[Dimension, float]
    u: Mapping[Dimension, float]
    layers: float = 0.0


@dataclass
class Judged:
    """What the rules say of one size."""

    states: dict[Dimension, str] = field(default_factory=dict)
    margins: dict[Dimension, tuple[float, float]] = field(default_factory=dict)
    girths: str = "not_checked"
    length: str = "not_known"
    verdict: str = "no"
    checked: int = 0
    penalty: float = 0.0
    probability: float | None = None


def plain_sizes(table: RangeTable) -> list[PlainSize]:
    """The compiled table as plain values, one lane a dimension."""
    facts = table.facts
    return [
        PlainSize(
            ranges={
                lane.dimension: PlainRange(
                    float(table.low[row, at]),
                    float(table.high[row, at]),
                    float(table.reach_low[row, at]),
                    float(table.reach_high[row, at]),
                    float(table.tolerance[row, at]),
                )
                for row, lane in enumerate(table.lanes)
                if table.absent[row, at] == Absent.PRESENT
            },
            inflatable=bool(facts.inflatable[at]),
            takes_layers=bool(facts.takes_layers[at]),
            stated_warm=bool(facts.stated_warm[at]),
            weight_floor=_given(facts.weight_floor[at]),
            weight_ceiling=_given(facts.weight_ceiling[at]),
            smallness=int(facts.small_first[at]),
        )
        for at in range(len(table.offers))
    ]


def _given(value: float) -> float | None:
    return None if math.isnan(value) else float(value)


def judge_all(
    rider: PlainRider, sizes: Sequence[PlainSize], settings: Settings = DEFAULTS
) -> list[Judged]:
    """Every size, in the order given."""
    return [judge(rider, size, settings) for size in sizes]


def ranked(judged: Sequence[Judged], sizes: Sequence[PlainSize]) -> list[int]:
    """The places of the sizes, best first."""
    return sorted(
        range(len(judged)),
        key=lambda at: (
            VERDICT_ORDER.index(judged[at].verdict),
            -judged[at].checked,
            round(judged[at].penalty / 1e-6),
            -round((judged[at].probability or 0.0) / 1e-6),
            sizes[at].smallness,
        ),
    )


def judge(rider: PlainRider, size: PlainSize, settings: Settings) -> Judged:
    found = Judged()
    for dimension, reach in size.ranges.items():
        x = rider.readings.get(dimension)
        if x is None:
            continue
        layers = rider.layers if dimension in GIRTHS and size.takes_layers else 0.0
        light = x + (layers if size.stated_warm else 0.0)
        warm = x + layers
        margins = light - reach.reach_a, reach.reach_b - warm
        found.margins[dimension] = margins
        if dimension in GIRTHS:
            found.states[dimension] = girth_state(light, warm, reach, margins, settings)
        elif dimension is BACK:
            found.states[dimension] = length_state(*margins, rider.u[BACK], settings)
        else:
            found.states[dimension] = "inside" if min(margins) >= -SLACK else "near"
        if dimension is Dimension.CHEST:
            found.penalty += middle_penalty((light + warm) / 2, reach)
    found.girths = girths_together(found.states)
    found.length = found.states.get(BACK, "not_known")
    found.checked = sum(one in found.states for one in (*GIRTHS, BACK))
    found.verdict = verdict(found.girths, found.length, refused(rider, size, settings))
    found.penalty += penalty(found, rider, settings)
    found.probability = probability(found, rider, size)
    return found


def girth_state(
    light: float,
    warm: float,
    reach: PlainRange,
    margins: tuple[float, float],
    settings: Settings,
) -> str:
    margin = min(margins)
    if margin < -reach.tolerance - SLACK:
        return "miss"
    if margin < -SLACK:
        return "near"
    if margin < settings.edge_band - SLACK:
        return "edge"
    far_under = reach.a == -math.inf and reach.b - warm > settings.open_end_limit + SLACK
    far_over = reach.b == math.inf and light - reach.a > settings.open_end_limit + SLACK
    return "edge" if far_under or far_over else "inside"


def length_state(lower: float, upper: float, u: float, settings: Settings) -> str:
    if lower < -settings.likely_long_limit - SLACK:
        below = "too_long"
    elif lower < -SLACK:
        below = "likely_long"
    elif lower < settings.clear_factor * u - SLACK or lower == math.inf:
        below = "check"
    else:
        below = "clear"
    if upper < -settings.short_limit - SLACK:
        above = "too_short"
    elif upper < -SLACK:
        above = "short"
    else:
        above = "clear"
    return max(below, above, key=LENGTH_ORDER.index)


def girths_together(states: Mapping[Dimension, str]) -> str:
    if Dimension.CHEST not in states and Dimension.WAIST not in states:
        return "not_checked"
    checked = [states[one] for one in GIRTHS if one in states]
    if Dimension.CHEST not in states:
        checked.append("near")
    return max(checked, key=GIRTH_ORDER.index)


def verdict(girths: str, length: str, not_offered: bool) -> str:
    if not_offered:
        return "not_offered"
    if length == "too_long":
        return "too_long"
    if girths in ("miss", "not_checked") or length == "too_short":
        return "no"
    if length == "likely_long":
        return "likely_long"
    if girths == "near" or length == "short":
        return "near"
    words = {"not_known": "length_unknown", "check": "check_length"}
    return words.get(length, "fits" if girths == "inside" else "edge")


def refused(rider: PlainRider, size: PlainSize, settings: Settings) -> bool:
    weight = rider.readings.get(Dimension.WEIGHT)
    floor, ceiling = size.weight_floor, size.weight_ceiling
    if weight is None:
        return floor is not None and size.inflatable
    under = floor is not None and weight < floor - SLACK
    enough = settings.weigh_first_band + SLACK
    weigh_first = floor is not None and size.inflatable and weight <= floor + enough
    return under or weigh_first or (ceiling is not None and weight > ceiling + SLACK)


def middle_penalty(middle: float, reach: PlainRange) -> float:
    width = reach.b - reach.a
    if math.isinf(width) or width <= SLACK:
        return 0.0
    return 0.1 * ((middle - reach.a) / width - 0.5) ** 2


def penalty(found: Judged, rider: PlainRider, settings: Settings) -> float:
    tolerances = {
        Dimension.CHEST: settings.chest_tolerance,
        Dimension.WAIST: settings.waist_tolerance,
        Dimension.HIP: settings.hip_tolerance,
        BACK: settings.short_limit,
    }
    total = 0.0
    for dimension, weight in WEIGHTS.items():
        if dimension in found.margins:
            out = max(0.0, -min(found.margins[dimension]))
            total += weight * (out / tolerances[dimension]) ** 2
    if BACK in found.margins:
        total += 0.3 * (1.0 - below(found.margins[BACK][0] / rider.u[BACK])) ** 2
    return total


def probability(found: Judged, rider: PlainRider, size: PlainSize) -> float | None:
    chances = []
    for dimension in GIRTHS:
        if dimension in found.margins:
            lower, upper = found.margins[dimension]
            tolerance, u = size.ranges[dimension].tolerance, rider.u[dimension]
            high, low = below((upper + tolerance) / u), below(-(lower + tolerance) / u)
            chances.append(max(0.0, high - low))
    if BACK in found.margins:
        chances.append(below(found.margins[BACK][0] / rider.u[BACK]))
    return math.prod(chances) if chances else None


def below(z: float) -> float:
    return 0.5 * math.erfc(-z / math.sqrt(2.0))
