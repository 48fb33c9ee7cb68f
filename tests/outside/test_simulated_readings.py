"""Probabilities against a million simulated readings: the model's meaning, not its formula."""

from __future__ import annotations

import numpy as np
import pytest

from harmonizer.rider import TakenBy
from tests.harmonizer.by_hand import BACK, CHART_A, CHEST, HIP, WAIST, fitted, rider, rows_chart

READINGS = 1_000_000
FOUR_SIGMA = 4 * np.sqrt(0.25 / READINGS)
A = rows_chart(CHART_A)
BODY = {"chest": "97.5", "waist": 81, "hip": 97, "back_length": 43}
U = {CHEST: 1.5, WAIST: 1.5, HIP: 1.5, BACK: 2.7}


@pytest.fixture(scope="module")
def true_bodies() -> dict:
    """What the body may truly be, given readings taken by a helper."""
    dice = np.random.default_rng(20270211)
    return {one: dice.normal(float(BODY[one.value]), u, READINGS) for one, u in U.items()}


def test_share_in_range(true_bodies: dict) -> None:
    row = fitted(rider(TakenBy.HELPER, **BODY), A, label="M")
    for one, (low, high) in {CHEST: (90, 98), WAIST: (74, 82), HIP: (96, 104)}.items():
        share = ((true_bodies[one] >= low) & (true_bodies[one] <= high)).mean()
        assert row.dimensions[one].probability == pytest.approx(share, abs=FOUR_SIGMA)


def test_share_not_too_long(true_bodies: dict) -> None:
    row = fitted(rider(TakenBy.HELPER, **BODY), A, label="M")
    share = (true_bodies[BACK] >= 42).mean()
    assert row.dimensions[BACK].probability == pytest.approx(share, abs=FOUR_SIGMA)
    assert row.too_long_probability == pytest.approx(1 - share, abs=FOUR_SIGMA)


def test_share_of_bodies_the_size_serves(true_bodies: dict) -> None:
    """No girth worse than near, and not too long, all four together."""
    row = fitted(rider(TakenBy.HELPER, **BODY), A, label="M")
    serves = true_bodies[BACK] >= 42
    reach = {CHEST: (89, 99), WAIST: (70, 86), HIP: (92, 108)}
    for one, (low, high) in reach.items():
        serves &= (true_bodies[one] >= low) & (true_bodies[one] <= high)
    assert row.probability == pytest.approx(serves.mean(), abs=FOUR_SIGMA)
