"""The pass line of a length against the guard band of JCGM 106:2012, 8.3.

With a guard band of 1.645 u the chance of passing an item that does not conform is at most 5 %,
reached for an item that lies exactly on the acceptance limit. 1.645 is the 95 % point of the
standard normal distribution.
"""

from __future__ import annotations

import numpy as np
import pytest
from scipy import stats

from harmonizer.margins import length_states
from harmonizer.settings import DEFAULTS
from harmonizer.states import CHECK, CLEAR, LIKELY_LONG, TOO_LONG

TAPES = (1.0, 1.4, 2.0, 2.7)
FAR = np.array([100.0])


def state(over: float, u: float) -> int:
    return int(length_states(np.array([over]), FAR, u, DEFAULTS)[0])


def test_the_factor_is_the_95_percent_point() -> None:
    assert DEFAULTS.clear_factor == pytest.approx(stats.norm.ppf(0.95), abs=0.0005)


@pytest.mark.parametrize("u", TAPES)
def test_a_clear_length_is_too_long_in_at_most_one_case_of_twenty(u: float) -> None:
    accepted = np.linspace(0.0, 10.0, 4001)
    clear = [over for over in accepted.tolist() if state(over, u) == CLEAR]
    worst = max(stats.norm.cdf(-over / u) for over in clear)
    assert worst <= 0.05 + 1e-4
    assert worst == pytest.approx(0.05, abs=0.002)


@pytest.mark.parametrize("u", TAPES)
def test_the_acceptance_limit_is_one_guard_band_above_the_lower_end(u: float) -> None:
    limit = 1.645 * u
    assert state(limit, u) == CLEAR
    assert state(limit - 0.01, u) == CHECK


@pytest.mark.parametrize("u", TAPES)
def test_the_stop_line_does_not_move_with_the_tape(u: float) -> None:
    assert state(-0.84, u) == LIKELY_LONG
    assert state(-0.85, u) == TOO_LONG


def test_the_stop_line_is_the_20_percent_line_of_a_fitters_tape() -> None:
    """At -0.84 cm with u 1.0 one back in five is long enough after all."""
    assert stats.norm.cdf(-DEFAULTS.likely_long_limit) == pytest.approx(0.20, abs=0.001)
