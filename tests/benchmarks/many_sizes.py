"""Five thousand invented sizes in eight dimensions, the same every time."""

from __future__ import annotations

import numpy as np

from charts.model_facts import ModelFacts
from charts.schema import Dimension, FileReading
from harmonizer.range_table import RangeTable
from harmonizer.rider import Rider
from tests.harmonizer.by_hand import MAIN, chart, rider, size, span, table

EIGHT = (
    *MAIN,
    Dimension.HEIGHT,
    Dimension.WEIGHT,
    Dimension.NECK,
    Dimension.SHOULDER_BREADTH,
)
_FIRST = {
    Dimension.CHEST: (76, 8, 6),
    Dimension.WAIST: (60, 8, 6),
    Dimension.HIP: (84, 8, 6),
    Dimension.BACK_LENGTH: (38, 3, 1),
    Dimension.HEIGHT: (150, 10, 6),
    Dimension.WEIGHT: (42, 14, 9),
    Dimension.NECK: (30, 4, 2),
    Dimension.SHOULDER_BREADTH: (34, 3, 2),
}
"""Lower end of the smallest size, width of a size, step to the next."""


def many_sizes(sizes: int = 5000, per_chart: int = 8, seed: int = 11) -> RangeTable:
    """Charts of ``per_chart`` sizes each, every one a little different."""
    dice = np.random.default_rng(seed)
    return table(*(_one(dice, per_chart) for _ in range(sizes // per_chart)))


def _one(dice: np.random.Generator, sizes: int) -> tuple[FileReading, ModelFacts]:
    rows = []
    shift = {one: int(dice.integers(-4, 5)) for one in EIGHT}
    for place in range(sizes):
        ranges = []
        for one in EIGHT:
            first, width, step = _FIRST[one]
            low = first + shift[one] + place * step
            ranges.append(span(one, low, low + width))
        rows.append(size(str(place), *ranges))
    return chart(*rows)


def many_riders(count: int, seed: int = 12) -> list[Rider]:
    """Riders of all builds, read by fitters."""
    dice = np.random.default_rng(seed)
    means = (95, 82, 102, 44, 168, 66, 36, 39)
    spreads = (9, 10, 8, 2.5, 8, 11, 3, 2.5)
    bodies = dice.normal(means, spreads, (count, len(means))).round(1)
    names = [one.value for one in EIGHT]
    return [rider(**dict(zip(names, body.tolist(), strict=True))) for body in bodies]
