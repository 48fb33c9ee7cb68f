"""Interval logic against pandas.IntervalIndex, an independent implementation."""

from __future__ import annotations

import numpy as np
import pandas as pd
from hypothesis import given
from hypothesis import strategies as st

from harmonizer.fit import fit
from harmonizer.states import MISS, NEAR
from tests.harmonizer.by_hand import CHEST, chart, rider, size, span, table

overlapping = st.lists(st.tuples(st.integers(70, 110), st.integers(0, 12)), min_size=1, max_size=12)


@given(ranges=overlapping, half_cm=st.integers(130, 250))
def test_in_a_range_means_in_its_closed_interval(
    ranges: list[tuple[int, int]], half_cm: int
) -> None:
    """Every size is a chart of its own, so no border moves."""
    x = half_cm / 2
    intervals = pd.IntervalIndex.from_arrays(
        [float(low) for low, _ in ranges],
        [float(low + width) for low, width in ranges],
        closed="both",
    )
    charts = [chart(size("M", span(CHEST, low, low + width))) for low, width in ranges]
    sheet = fit(rider(chest=x), table(*charts))
    assert (sheet.states[0] < NEAR).tolist() == intervals.contains(x).tolist()


@given(
    steps=st.lists(st.tuples(st.integers(3, 8), st.integers(0, 3)), min_size=2, max_size=8),
    eighth_cm=st.integers(8 * 76, 8 * 140),
)
def test_a_run_with_rounding_gaps_covers_what_the_closed_intervals_cover(
    steps: list[tuple[int, int]], eighth_cm: int
) -> None:
    """Gaps of 1 are rounding and close to the middle; wider ones stay open."""
    x, low, lows, highs = eighth_cm / 8, 80, [], []
    for width, gap in steps:
        lows.append(low)
        highs.append(low + width)
        low += width + gap
    made = chart(*(size(str(a), span(CHEST, a, b)) for a, b in zip(lows, highs, strict=True)))
    left, right = np.array(lows, float), np.array(highs, float)
    rounding = left[1:] - right[:-1] == 1.0
    middle = (left[1:] + right[:-1]) / 2
    left[1:], right[:-1] = (
        np.where(rounding, middle, left[1:]),
        np.where(rounding, middle, right[:-1]),
    )
    intervals = pd.IntervalIndex.from_arrays(left, right, closed="both")
    sheet = fit(rider(chest=x), table(made))
    assert (sheet.states[0] < NEAR).tolist() == intervals.contains(x).tolist()
    assert (sheet.states[0] < MISS).any() >= intervals.contains(x).any()
