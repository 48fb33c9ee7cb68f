"""Where the sizes of one chart meet: rounding of the print closed, true gaps kept.

All in cm, kg or years. A gap of one printed step between two neighbours is only rounding: both
reach the midpoint. A wider gap stays. A single value reaches half the step to its neighbours.
A back length is never widened downwards. The rules are common practice of the trade, no source.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from itertools import pairwise
from typing import Final

from charts.schema import Dimension, Kind, PrintedBothWays, Range
from harmonizer.states import SLACK

EXCLUDED: Final = 0.001
"""An end that the chart excludes lies this far inside its figure."""


@dataclass(slots=True)
class Reach:
    """One range as it is compared; it changes only while its run is being closed.

    ``low`` and ``high`` are the published ends (for a single value the derived ones), infinite
    where open. ``reach_low`` and ``reach_high`` have the borders closed. ``below`` is the reach of
    the neighbour below, ``above`` that of the neighbour above, infinite where there is none.
    """

    low: float
    high: float
    reach_low: float
    reach_high: float
    below: float = -math.inf
    above: float = math.inf
    derived: bool = False


def reaches(ranges: Sequence[Range]) -> list[Reach | None]:
    """The reach of each of ``ranges``, which are neighbours: one dimension of one run of sizes.

    None where nothing can be compared: unread, or a single value alone in its run.
    """
    singles = sorted({float(item.value) for item in ranges if item.value is not None})
    own = [_unclosed(item, singles) for item in ranges]
    run: dict[tuple[float, float], Reach] = {}
    printed: dict[tuple[float, float], Range] = {}
    for item, at in zip(ranges, own, strict=True):
        if at is not None and (at.low, at.high) not in run:
            run[at.low, at.high] = at
            printed[at.low, at.high] = item
    ascending = sorted(run)
    for lower, upper in pairwise(ascending):
        _meet(run[lower], run[upper], printed[lower], printed[upper])
    for lower, upper in pairwise(ascending):
        run[lower].above = run[upper].reach_low
        run[upper].below = run[lower].reach_high
    return [run[at.low, at.high] if at else None for at in own]


def _unclosed(item: Range, singles: Sequence[float]) -> Reach | None:
    if item.kind is Kind.UNREAD:
        return None
    if item.kind is Kind.SINGLE:
        return _single(item, singles)
    low = -math.inf if item.low is None else float(item.low)
    high = math.inf if item.high is None else float(item.high)
    if item.dimension is Dimension.AGE and item.high is not None:
        high += _whole_year(item)
    return Reach(
        low,
        high,
        low if item.low_included else low + EXCLUDED,
        high if item.high_included else high - EXCLUDED,
    )


def _whole_year(item: Range) -> float:
    """Somebody is eight until the ninth birthday: 8 to 9 years reaches to 10."""
    step = float(item.high_step or 1)
    return step if item.high_included else 0.0


def _single(item: Range, singles: Sequence[float]) -> Reach | None:
    if item.value is None or len(singles) < 2:
        return None
    value = float(item.value)
    place = singles.index(value)
    steps = [far - near for near, far in pairwise(singles)]
    down = steps[place - 1] if place else steps[0]
    up = steps[place] if place < len(steps) else steps[-1]
    low = value if item.dimension is Dimension.BACK_LENGTH else value - down / 2
    high = value + up / 2
    return Reach(low, high, low, high, derived=True)


def _meet(lower: Reach, upper: Reach, below: Range, above: Range) -> None:
    """Close the gap between two neighbours where it is only rounding."""
    if not _rounding(lower, upper, below, above):
        return
    middle = (lower.high + upper.low) / 2
    lower.reach_high = middle
    if below.dimension is not Dimension.BACK_LENGTH:
        upper.reach_low = middle


def _rounding(lower: Reach, upper: Reach, below: Range, above: Range) -> bool:
    gap = upper.low - lower.high
    if gap <= SLACK or not math.isfinite(gap) or lower.derived or upper.derived:
        return False
    step = max(float(below.high_step or 0), float(above.low_step or 0))
    return gap <= step + SLACK or _rounding_as_also_printed(
        below.also_published, above.also_published
    )


def _rounding_as_also_printed(below: PrintedBothWays | None, above: PrintedBothWays | None) -> bool:
    """Whether the gap is one step in the second unit of a chart that prints both."""
    if below is None or above is None or below.unit is not above.unit:
        return False
    if below.high is None or above.low is None:
        return False
    gap = float(above.low - below.high)
    step = max(float(below.high_step or 0), float(above.low_step or 0))
    return gap <= step + SLACK
