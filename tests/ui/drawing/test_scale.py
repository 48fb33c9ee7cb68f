"""The tape: where a centimetre stands, and which ticks carry figures."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from ui.drawing.scale import CM_PER_INCH, Scale, figure_step

CHEST = Scale(centre_cm=93.0, half_span_cm=12.0, left=100.0, right=268.0)


def test_the_rider_stands_in_the_middle() -> None:
    assert CHEST.x(93.0) == CHEST.centre == 184.0


def test_one_centimetre_is_seven_pixels_on_a_tape_of_168() -> None:
    assert CHEST.pixels_per_cm == 7.0
    assert CHEST.x(94.0) - CHEST.x(93.0) == pytest.approx(7.0)


def test_a_back_of_the_same_width_shows_twice_the_scale() -> None:
    back = Scale(centre_cm=43.0, half_span_cm=6.0, left=100.0, right=268.0)
    assert back.pixels_per_cm == 2 * CHEST.pixels_per_cm


def test_there_is_a_tick_for_each_whole_centimetre_of_the_tape() -> None:
    ticks = CHEST.cm_ticks(figure_width=16.0)
    assert len(ticks) == 25
    assert ticks[0].x == pytest.approx(100.0)
    assert ticks[-1].x == pytest.approx(268.0)


def test_figures_stand_each_five_centimetres_and_inside_the_tape() -> None:
    assert [tick.figure for tick in CHEST.cm_ticks(16.0) if tick.figure is not None] == [
        85,
        90,
        95,
        100,
    ]


def test_inch_ticks_stand_at_exact_inches() -> None:
    ticks = CHEST.inch_ticks(figure_width=14.0)
    marked = [tick for tick in ticks if tick.figure is not None]
    assert [tick.figure for tick in marked] == [34, 36, 38, 40]
    for tick in marked:
        assert tick.figure is not None
        assert tick.x == pytest.approx(CHEST.x(tick.figure * CM_PER_INCH))


@pytest.mark.parametrize(
    ("pixels_per_step", "width", "every"), [(40, 20, 1), (20, 20, 2), (7, 16, 5), (2, 20, 10)]
)
def test_figures_are_thinned_until_they_do_not_touch(
    pixels_per_step: float, width: float, every: int
) -> None:
    assert figure_step(pixels_per_step, width) == every


@given(st.floats(20, 150), st.floats(20, 150))
def test_reading_the_tape_back_gives_the_same_centimetre(centre: float, value: float) -> None:
    scale = Scale(centre, 12.0, 0.0, 168.0)
    assert scale.cm_at(scale.x(value)) == pytest.approx(value)


@given(st.floats(20, 150), st.floats(20, 150))
def test_what_lies_beyond_the_tape_is_painted_at_its_end(centre: float, value: float) -> None:
    scale = Scale(centre, 12.0, 10.0, 178.0)
    assert scale.left <= scale.on_tape(value) <= scale.right
    if abs(value - centre) < 12.0:
        assert scale.on_tape(value) == scale.x(value)
