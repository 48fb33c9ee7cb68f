"""Probabilities against scipy.stats.norm, an independent implementation."""

from __future__ import annotations

import numpy as np
import pytest
from scipy import stats

from harmonizer.certainty import (
    chance_in_range,
    chance_not_too_long,
    normal_below,
    normal_below_one,
    word,
)


def test_the_table_agrees_with_scipy_everywhere() -> None:
    z = np.random.default_rng(1).uniform(-12.0, 12.0, 200_000)
    assert np.abs(normal_below(z) - stats.norm.cdf(z)).max() < 1e-10


def test_the_single_value_agrees_with_scipy_to_the_last_digits() -> None:
    for z in np.linspace(-8.0, 8.0, 321).tolist():
        assert normal_below_one(z) == pytest.approx(stats.norm.cdf(z), rel=1e-12, abs=1e-16)


def test_infinite_ends_give_certainty() -> None:
    assert normal_below(np.array([-np.inf, np.inf])).tolist() == pytest.approx([0.0, 1.0])
    open_below = chance_in_range(np.array([np.inf]), np.array([3.0]), 1.5)
    assert open_below[0] == pytest.approx(stats.norm.cdf(2.0), abs=1e-10)


def test_chance_in_range_is_that_of_a_normal_reading() -> None:
    dice = np.random.default_rng(2)
    x, low, width, u = (
        dice.uniform(80, 100, 5000),
        dice.uniform(80, 95, 5000),
        dice.uniform(0, 12, 5000),
        dice.uniform(0.5, 5, 5000),
    )
    ours = chance_in_range(x - low, low + width - x, u)
    truth = stats.norm(x, u)
    assert np.abs(ours - (truth.cdf(low + width) - truth.cdf(low))).max() < 1e-9


def test_a_band_wider_than_its_range_has_no_chance() -> None:
    assert chance_in_range(np.array([-1.0]), np.array([-2.0]), 1.0)[0] == 0.0


def test_chance_not_too_long_is_that_of_a_normal_reading() -> None:
    over = np.linspace(-6.0, 6.0, 101)
    assert np.abs(chance_not_too_long(over, 2.7) - stats.norm.cdf(over / 2.7)).max() < 1e-10


@pytest.mark.parametrize(
    ("probability", "expected"),
    [(0.9, "sure"), (0.8999, "likely"), (0.6, "likely"), (0.5999, "even"), (0.4, "even")],
)
def test_words_of_the_shop(probability: float, expected: str) -> None:
    assert word(probability) == expected
    assert word(0.3999) == "unlikely"
