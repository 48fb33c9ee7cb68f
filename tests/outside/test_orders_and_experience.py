"""Size curve, pieces and own experience: examples worked by hand, and scipy."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy import stats

from harmonizer.experience import experience
from harmonizer.ordering import demand_covered, pieces_for, size_curve


def test_size_curve() -> None:
    """[cp] 20 pieces x 8/22/30/24/11/5 % -> 2/4/6/5/2/1."""
    assert size_curve([8, 22, 30, 24, 11, 5], 20) == [2, 4, 6, 5, 2, 1]


@given(
    shares=st.lists(st.integers(0, 50), min_size=1, max_size=8).filter(any),
    pieces=st.integers(1, 60),
)
def test_every_piece_is_spread_and_none_is_off_by_one(shares: list[int], pieces: int) -> None:
    found = size_curve(shares, pieces)
    assert sum(found) == pieces
    for share, count in zip(shares, found, strict=True):
        assert abs(count - share / sum(shares) * pieces) < 1.0


def test_a_core_size_gets_at_least_one() -> None:
    assert size_curve([1, 60, 39], 5, core=(True, True, True)) == [1, 3, 1]


def test_how_many() -> None:
    """[P26, single-period order model] Cu 120, Co 40, mean 3.2."""
    assert demand_covered(3, 3.2) == pytest.approx(0.603, abs=0.0005)
    assert demand_covered(4, 3.2) == pytest.approx(0.781, abs=0.0005)
    assert pieces_for(3.2, 120, 40) == 4


@given(expected=st.floats(0.1, 30), pieces=st.integers(0, 40))
def test_demand_is_poisson(expected: float, pieces: int) -> None:
    """Against scipy.stats.poisson."""
    assert demand_covered(pieces, expected) == pytest.approx(stats.poisson.cdf(pieces, expected))


def test_three_outcomes_are_too_few_to_speak_of() -> None:
    """By hand: n 3, mean +2.67 -> +1.14, 80 % -0.31 to +2.60: silent."""
    found = experience([2.0, 3.0, 3.01])
    assert found.offset == pytest.approx(1.14, abs=0.01)
    assert (found.low, found.high) == pytest.approx((-0.31, 2.60), abs=0.01)
    assert not found.shown


def test_twelve_outcomes_speak() -> None:
    """By hand: n 12, mean +2.0 -> +1.50, 0.54 to 2.46: runs small, about 1.5 cm, 12 fittings."""
    found = experience([2.0] * 12)
    assert found.offset == pytest.approx(1.50)
    assert (found.low, found.high) == pytest.approx((0.54, 2.46), abs=0.005)
    assert found.shown
    assert found.count == 12


def test_the_posterior_is_that_of_a_normal_prior() -> None:
    """By integrating prior times likelihood on a grid."""
    outcomes = [1.0, 2.5, 0.0, 3.0, 1.5, 2.0]
    grid = np.linspace(-12.0, 12.0, 48_001)
    density = stats.norm.pdf(grid, 0, 1.5)
    for one in outcomes:
        density = density * stats.norm.pdf(one, grid, 3.0)
    density /= density.sum()
    mean = float((grid * density).sum())
    sd = float(np.sqrt(((grid - mean) ** 2 * density).sum()))
    found = experience(outcomes)
    assert (found.offset, found.sd) == pytest.approx((mean, sd), abs=1e-6)


def test_right_first_time_counts_too() -> None:
    assert experience([2.0] * 6 + [0.0] * 6).offset < experience([2.0] * 6).offset


def test_four_outcomes_stay_silent_however_clear() -> None:
    assert not experience([9.0] * 4).shown
    assert experience([9.0] * 5).shown
