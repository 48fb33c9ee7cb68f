"""The hand above the saddle."""

from __future__ import annotations

import pytest

from charts.schema import Basis
from harmonizer.clearance import band_of, clearance
from harmonizer.rider import Observed, SeenInSaddle
from harmonizer.settings import DEFAULTS
from harmonizer.states import LengthState, Verdict
from tests.harmonizer.by_hand import (
    BACK,
    CHEST,
    HIP,
    WAIST,
    chart,
    fitted,
    rider,
    single,
    size,
    span,
)


@pytest.mark.parametrize(
    ("vest", "cm", "hands", "band"),
    [
        (38, 19.4, 2.16, Observed.FAR_TOO_SHORT),
        (46, 11.4, 1.27, Observed.RIGHT),
        (48.4, 9.0, 1.00, Observed.RIGHT),
        (55, 2.4, 0.27, Observed.STOP),
    ],
)
def test_worked_clearances(vest: float, cm: float, hands: float, band: Observed) -> None:
    """Section 13 [cp, pop]: S 62.4, r 5.0, h 9.0."""
    found = clearance(62.4, vest, DEFAULTS)
    assert found.cm == pytest.approx(cm)
    assert found.hands == pytest.approx(hands, abs=0.005)
    assert found.band is band


@pytest.mark.parametrize(
    ("hands", "band"),
    [
        (0.3499, Observed.STOP),
        (0.35, Observed.CHECK),
        (0.7, Observed.RIGHT),
        (1.4, Observed.SHORT),
        (1.8, Observed.FAR_TOO_SHORT),
    ],
)
def test_the_lower_end_of_each_band_is_included(hands: float, band: Observed) -> None:
    assert band_of(hands, DEFAULTS) is band


def test_a_chair_has_no_rise() -> None:
    assert clearance(62.4, 50.0, DEFAULTS, chair=True).cm == pytest.approx(12.4)


GIRTHS = (span(CHEST, 90, 98), span(WAIST, 74, 82), span(HIP, 96, 104))
BODY = {"chest": 94, "waist": 78, "hip": 100, "back_length": 45}


def with_own_length(cm: float):
    own = single(BACK, cm, basis=Basis.FINISHED)
    return chart(size("M", *GIRTHS, span(BACK, 42, 47), own))


def test_a_computed_stop_counts_against_a_clear_length() -> None:
    stopped = fitted(rider(**BODY, c7_above_seat="62.4"), with_own_length(55), label="M")
    assert stopped.length_verdict is LengthState.TOO_LONG
    assert stopped.verdict is Verdict.TOO_LONG
    assert stopped.dimensions[BACK].reason.code == "back-stopped-in-saddle"


@pytest.mark.parametrize("cm", [38, 46, 52])
def test_only_the_stop_of_a_computed_clearance_counts(cm: float) -> None:
    row = fitted(rider(**BODY, c7_above_seat="62.4"), with_own_length(cm), label="M")
    assert row.length_verdict is LengthState.CLEAR
    assert row.clearance is not None


def test_a_body_range_alone_gives_no_clearance() -> None:
    made = chart(size("M", *GIRTHS, span(BACK, 42, 47)))
    assert fitted(rider(**BODY, c7_above_seat="62.4"), made, label="M").clearance is None


@pytest.mark.parametrize(
    ("observed", "state"),
    [
        (Observed.RIGHT, LengthState.CLEAR),
        (Observed.CHECK, LengthState.CHECK),
        (Observed.SHORT, LengthState.SHORT),
        (Observed.FAR_TOO_SHORT, LengthState.TOO_SHORT),
        (Observed.STOP, LengthState.TOO_LONG),
    ],
)
def test_what_was_seen_in_the_saddle_replaces_the_computed_state(
    observed: Observed, state: LengthState
) -> None:
    who = rider(
        **BODY | {"back_length": 41},
        c7_above_seat="62.4",
        seen=(SeenInSaddle("chart 0", "M", observed),),
    )
    row = fitted(who, with_own_length(55), label="M")
    assert row.length_verdict is state
    assert row.dimensions[BACK].reason.code == f"back-seen-{observed.value}"
