"""The rulers of a block as numbers."""

from __future__ import annotations

from itertools import pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as some

from harmonizer.wall_runs import Span
from ui.wall_sheet.axis import Axis, axis_for, extent

AXIS = Axis(70.0, 110.0, 100.0, 340.0)


def width(figure: str) -> float:
    return len(figure) * 5.0


def test_a_centimetre_is_as_long_everywhere() -> None:
    assert AXIS.points_per_cm == 6.0
    assert (AXIS.x(70), AXIS.x(90), AXIS.x(110)) == (100.0, 220.0, 340.0)


def test_every_centimetre_has_a_tick_and_every_fifth_a_figure() -> None:
    ticks = AXIS.cm_ticks(width)
    assert [tick.x for tick in ticks] == [AXIS.x(cm) for cm in range(70, 111)]
    assert [tick.figure for tick in ticks if tick.figure] == [75, 80, 85, 90, 95, 100, 105]


def test_inches_stand_at_their_2_54_cm() -> None:
    """The inch is 2.54 cm by definition (international yard and pound agreement, 1959)."""
    ticks = AXIS.inch_ticks(width)
    assert [round(tick.x, 6) for tick in ticks] == [
        round(AXIS.x(inch * 2.54), 6) for inch in range(28, 44)
    ]
    assert {tick.figure for tick in ticks} - {None} == {28, 30, 32, 34, 36, 38, 40, 42}


@given(
    some.floats(20, 150),
    some.floats(4, 120),
    some.floats(80, 400),
)
def test_figures_never_touch_and_never_leave_the_gap_beside_the_ruler(
    low: float, span: float, wide: float
) -> None:
    axis = Axis(low, low + span, 100.0, 100.0 + wide)
    for ticks in (axis.cm_ticks(width), axis.inch_ticks(width)):
        boxes = [
            (tick.x - width(str(tick.figure)) / 2, tick.x + width(str(tick.figure)) / 2)
            for tick in ticks
            if tick.figure is not None
        ]
        for before, after in pairwise(boxes):
            assert after[0] - before[1] > 2.0
        assert all(left >= 97.0 and right <= 100.0 + wide for left, right in boxes)


def test_the_extent_holds_every_printed_end_and_no_open_one() -> None:
    spans = [Span("S", None, 80.0), Span("M", 80.0, 86.0), Span("L", 92.0, None)]
    assert extent(spans) == (80.0, 92.0)
    assert extent([]) is None


@given(some.floats(20, 150), some.floats(0, 100), some.floats(0, 60), some.floats(0, 60))
def test_the_axis_shows_the_extent_inside_its_air(
    low: float, span: float, before: float, after: float
) -> None:
    axis = axis_for((low, low + span), (100.0, 350.0), (before, after))
    assert axis is not None
    assert axis.x(low) >= 100.0 + before - 1e-6
    assert axis.x(low + span) <= 350.0 - after + 1e-6
    assert axis.x(axis.low_cm) == pytest.approx(100.0)
    assert axis.x(axis.high_cm) == pytest.approx(350.0)


def test_one_narrow_size_does_not_fill_the_whole_tape() -> None:
    axis = axis_for((90.0, 92.0), (0.0, 240.0), (0.0, 0.0))
    assert axis is not None
    assert axis.x(92.0) - axis.x(90.0) < 50.0


def test_there_is_no_axis_where_nothing_is_drawn() -> None:
    assert axis_for(None, (0.0, 100.0), (5.0, 5.0)) is None
