"""Sizes take turns on lanes, so that neither bars nor labels run into each other."""

from __future__ import annotations

from itertools import combinations

import pytest
from hypothesis import given
from hypothesis import strategies as some

from ui.wall_sheet.lanes import Stretch, lanes


def bar(left: float, right: float, label: float = 6.0) -> Stretch:
    middle = (left + right) / 2
    return Stretch(left, right, middle - label / 2, middle + label / 2)


def behind(left: float, right: float, label: float) -> Stretch:
    return Stretch(left, right, right + 2.5, right + 2.5 + label)


@pytest.mark.parametrize(
    ("name", "stretches", "expected"),
    [
        ("apart: one lane", [bar(0, 10), bar(15, 25), bar(30, 40)], (0, 0, 0)),
        ("touching: two, by turns", [bar(0, 10), bar(10, 20), bar(20, 30)], (0, 1, 0)),
        (
            "overlapping neighbours",
            [bar(0, 12), bar(8, 22), bar(18, 30), bar(26, 40)],
            (0, 1, 0, 1),
        ),
        ("the next but one touches", [bar(0, 20), bar(10, 30), bar(20, 40)], (0, 1, 0)),
        ("the next but one overlaps", [bar(0, 20), bar(5, 25), bar(10, 30)], (0, 1, 2)),
        ("all the same", [bar(0, 20)] * 4, (0, 1, 2, 3)),
        ("one alone", [bar(0, 20)], (0,)),
        ("labels behind short bars", [behind(0, 5, 10), behind(8, 12, 10)], (0, 1)),
    ],
)
def test_as_few_lanes_as_serve(
    name: str, stretches: list[Stretch], expected: tuple[int, ...]
) -> None:
    assert lanes(stretches) == expected, name


STRETCHES = some.lists(
    some.tuples(some.floats(0, 200), some.floats(0.5, 60), some.floats(3, 30), some.booleans()),
    min_size=1,
    max_size=10,
)


@given(STRETCHES)
def test_nothing_on_one_lane_meets(parts: list[tuple[float, float, float, bool]]) -> None:
    stretches = [
        bar(left, left + wide, min(label, wide)) if inside else behind(left, left + wide, label)
        for left, wide, label, inside in parts
    ]
    on_lanes = lanes(stretches)
    for (one, first), (other, second) in combinations(zip(on_lanes, stretches, strict=True), 2):
        if one == other:
            low, high = sorted((first, second), key=lambda each: each.left)
            assert high.left >= low.right - 0.06
            assert high.left >= low.label_right - 0.06
            assert high.label_left >= low.right - 0.06


@given(STRETCHES)
def test_sizes_go_through_the_lanes_in_their_order(
    parts: list[tuple[float, float, float, bool]],
) -> None:
    on_lanes = lanes([bar(left, left + wide, 1.0) for left, wide, _, _ in parts])
    count = max(on_lanes) + 1
    assert on_lanes == tuple(place % count for place in range(len(parts)))
