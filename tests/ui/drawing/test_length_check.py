"""The plain length check: one hand between the lower edge and the seat, whatever the model."""

from __future__ import annotations

from itertools import pairwise

import pytest

from ui.drawing.length_check import BODY, EDGE_Y, FINGERS, SADDLE, SEAT_Y, VEST, Curve, hand


def test_four_fingers_fill_the_space_between_edge_and_seat() -> None:
    fingers = hand()
    assert len(fingers) == FINGERS
    assert fingers[0].top == pytest.approx(EDGE_Y, abs=0.5)
    assert fingers[-1].top + fingers[-1].height == pytest.approx(SEAT_Y, abs=0.5)


def test_fingers_lie_one_below_the_other_and_never_overlap() -> None:
    fingers = hand()
    for upper, lower in pairwise(fingers):
        assert upper.top + upper.height <= lower.top


def test_the_vest_ends_above_the_seat() -> None:
    ends = [end[1] for _, _, end in VEST.pieces]
    assert max(ends) < SEAT_Y


@pytest.mark.parametrize("curve", [BODY, VEST, SADDLE])
def test_every_curve_stays_in_its_box_and_closes(curve: Curve) -> None:
    points = [curve.start, *(point for piece in curve.pieces for point in piece)]
    assert all(0 <= x <= 100 and 0 <= y <= 100 for x, y in points)
    assert curve.closed
