"""The clearance to scale: every height between neck bone and seat is in one measure."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from ui.drawing.clearance_shape import clearance_shape
from ui.drawing.length_check import NECK_BONE, SEAT_Y

SEAT, RISE, HAND = 62.4, 5.0, 9.0


def test_the_worked_example_leaves_one_hand_and_a_quarter() -> None:
    """By hand: 62.4 cm of rider less 46 of vest and 5 of saddle leaves 11.4 cm, 1.27 hands of 9."""
    shape = clearance_shape(SEAT, 46.0, RISE, HAND)
    gap = (shape.saddle_y - shape.edge_y) / shape.per_cm
    assert gap == pytest.approx(11.4)
    hand = sum(finger.height for finger in shape.fingers) / shape.per_cm
    assert gap / hand == pytest.approx(1.27, abs=0.005)


def test_seat_and_neck_bone_lie_where_the_figure_has_them() -> None:
    shape = clearance_shape(SEAT, 46.0, 0.0, HAND)
    assert shape.saddle_y == SEAT_Y
    assert NECK_BONE[1] + SEAT * shape.per_cm == pytest.approx(SEAT_Y)


@given(st.floats(45, 85), st.floats(30, 60), st.floats(0, 12), st.floats(6, 14))
def test_the_hand_stands_on_the_saddle_and_nothing_leaves_the_box(
    seat: float, back: float, rise: float, hand: float
) -> None:
    shape = clearance_shape(seat, back, rise, hand)
    lowest = max(finger.top + finger.height for finger in shape.fingers)
    assert lowest == pytest.approx(shape.saddle_y)
    assert min(finger.top for finger in shape.fingers) >= 0
    assert shape.edge_y <= 95.0


def test_a_longer_vest_is_drawn_longer_and_its_shoulders_stay() -> None:
    short, long = (clearance_shape(SEAT, back, RISE, HAND) for back in (40.0, 50.0))
    assert short.edge_y < long.edge_y
    assert short.vest.start == long.vest.start
    bottom = max(end[1] for _, _, end in long.vest.pieces)
    assert bottom >= long.edge_y - 0.5
