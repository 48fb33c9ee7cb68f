"""One cell: the state told by the shape of the crossing, as numbers."""

from __future__ import annotations

from itertools import pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st

from ui.drawing.scale import Scale
from ui.drawing.tape import Crossing, End, Side, SizeSpan, TapePicture, picture

CHEST = Scale(centre_cm=93.0, half_span_cm=12.0, left=0.0, right=240.0)  # 10 pixels a cm
SMALL = SizeSpan("S", 84.0, 92.0)
MEDIUM = SizeSpan("M", 90.0, 98.0, best=True)
LARGE = SizeSpan("L", 96.0, 104.0)


def of(span: SizeSpan, crossing: Crossing, layers_cm: float = 0.0) -> TapePicture:
    return picture(CHEST, [span], crossing, layers_cm=layers_cm)


def test_all_sizes_of_the_model_are_drawn_and_the_best_comes_last() -> None:
    bars = picture(CHEST, [SMALL, MEDIUM, LARGE], Crossing.INSIDE).bars
    assert [bar.label for bar in bars] == ["S", "L", "M"]
    assert bars[-1].best
    assert bars[-1].lane == 0


def test_a_bar_lies_between_its_two_figures() -> None:
    (bar,) = of(MEDIUM, Crossing.INSIDE).bars
    assert (bar.left, bar.right) == (pytest.approx(90.0), pytest.approx(170.0))
    assert (bar.left_end, bar.right_end) == (End.FIRM, End.FIRM)


def test_inside_has_neither_cap_nor_gap() -> None:
    drawn = of(MEDIUM, Crossing.INSIDE)
    assert drawn.bars[0].cap is None
    assert drawn.gap is None


def test_the_edge_has_a_cap_on_the_side_with_less_left() -> None:
    low = SizeSpan("L", 92.8, 101.0, best=True)
    high = SizeSpan("S", 85.0, 93.4, best=True)
    assert of(low, Crossing.EDGE).bars[0].cap is Side.LEFT
    assert of(high, Crossing.EDGE).bars[0].cap is Side.RIGHT


def test_a_back_to_check_has_its_cap_at_the_low_end_whatever_is_left_above() -> None:
    back = Scale(43.0, 6.0, 0.0, 240.0)
    span = SizeSpan("M", 41.5, 43.5, best=True)
    assert picture(back, [span], Crossing.EDGE, cap=Side.LEFT).bars[0].cap is Side.LEFT


def test_winter_layers_move_the_cap_to_the_high_side() -> None:
    assert of(MEDIUM, Crossing.EDGE).bars[0].cap is Side.LEFT
    assert of(MEDIUM, Crossing.EDGE, layers_cm=4.5).bars[0].cap is Side.RIGHT


def test_outside_above_leaves_a_gap_from_the_bar_to_the_rider() -> None:
    gap = of(SizeSpan("S", 82.0, 90.0, best=True), Crossing.OUTSIDE).gap
    assert gap is not None
    assert (gap.left, gap.right) == (pytest.approx(90.0), pytest.approx(120.0))
    assert gap.distance_cm == pytest.approx(3.0)


def test_outside_in_winter_only_leaves_a_gap_to_the_winter_end() -> None:
    drawn = of(MEDIUM, Crossing.OUTSIDE, layers_cm=7.5)
    assert drawn.gap is not None
    assert drawn.gap.distance_cm == pytest.approx(2.5)
    assert drawn.gap.right == drawn.winter


def test_loose_leaves_a_gap_from_the_rider_to_the_bar() -> None:
    gap = of(SizeSpan("L", 95.0, 103.0, best=True), Crossing.OUTSIDE).gap
    assert gap is not None
    assert (gap.left, gap.right) == (pytest.approx(120.0), pytest.approx(140.0))


def test_a_size_that_touches_the_rider_has_no_gap() -> None:
    assert of(SizeSpan("S", 85.0, 93.0, best=True), Crossing.EDGE).gap is None


def test_a_vest_too_long_has_a_notched_bar() -> None:
    back = Scale(43.0, 6.0, 0.0, 240.0)
    drawn = picture(back, [SizeSpan("L", 46.0, 49.0, best=True)], Crossing.TOO_LONG)
    assert drawn.bars[0].notched
    assert drawn.gap is not None
    assert drawn.gap.distance_cm == pytest.approx(3.0)


def test_beyond_the_tape_stands_an_arrow_with_the_distance_and_no_bar() -> None:
    drawn = of(SizeSpan("3XL", 120.0, 130.0, best=True), Crossing.OUTSIDE)
    assert drawn.arrow is not None
    assert drawn.arrow.side is Side.RIGHT
    assert drawn.arrow.distance_cm == pytest.approx(27.0)
    assert drawn.bars == ()
    assert drawn.gap is None


def test_below_the_tape_the_arrow_points_left() -> None:
    drawn = of(SizeSpan("age 8", 62.0, 68.0, best=True), Crossing.OUTSIDE)
    assert drawn.arrow is not None
    assert drawn.arrow.side is Side.LEFT
    assert drawn.arrow.distance_cm == pytest.approx(25.0)


def test_a_bar_cut_by_the_end_of_the_tape_has_no_firm_end_there() -> None:
    (bar,) = of(SizeSpan("XL", 92.0, 110.0, best=True), Crossing.INSIDE).bars
    assert bar.right == pytest.approx(240.0)
    assert bar.right_end is End.CUT
    assert bar.left_end is End.FIRM


def test_an_open_end_fades() -> None:
    (bar,) = of(SizeSpan("XL", 92.0, None, best=True), Crossing.INSIDE).bars
    assert bar.right_end is End.FADING
    (bar,) = of(SizeSpan("XS", None, 94.0, best=True), Crossing.INSIDE).bars
    assert bar.left_end is End.FADING


def test_a_size_without_figures_draws_nothing() -> None:
    assert of(SizeSpan("M", None, None, best=True), Crossing.UNCHECKED).bars == ()


def test_the_winter_end_is_there_only_with_layers() -> None:
    assert of(MEDIUM, Crossing.INSIDE).winter is None
    assert of(MEDIUM, Crossing.INSIDE, layers_cm=3.8).winter == pytest.approx(158.0)


def test_overlapping_neighbours_take_turns_on_two_lanes() -> None:
    spans = [SizeSpan(str(n), 84.0 + 3 * n, 88.0 + 3 * n) for n in range(5)]
    bars = picture(CHEST, spans, Crossing.UNCHECKED).bars
    for lane in (1, 2):
        on_lane = sorted((bar for bar in bars if bar.lane == lane), key=lambda bar: bar.left)
        assert all(a.right < b.left for a, b in pairwise(on_lane))


@given(
    low=st.floats(60, 120),
    width=st.floats(1, 20),
    layers=st.floats(0, 8),
)
def test_gap_and_arrow_appear_exactly_where_the_rider_is_outside(
    low: float, width: float, layers: float
) -> None:
    span = SizeSpan("M", low, low + width, best=True)
    drawn = of(span, Crossing.OUTSIDE, layers_cm=layers)
    off = max(low - 93.0, 93.0 + layers - (low + width))
    told = drawn.gap or drawn.arrow
    assert (told is not None) == (off > 1e-4)
    if told is not None:
        assert told.distance_cm == pytest.approx(off)


@given(low=st.floats(60, 120), width=st.floats(0.5, 60))
def test_no_bar_ever_leaves_its_tape(low: float, width: float) -> None:
    for bar in of(SizeSpan("M", low, low + width, best=True), Crossing.INSIDE).bars:
        assert 0.0 - 1e-6 <= bar.left < bar.right <= 240.0 + 1e-6
