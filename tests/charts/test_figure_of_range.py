"""A girth as a range and as one figure of that range: the range is kept, and nothing is asked."""

from __future__ import annotations

import pytest

from charts.schema import Dimension, Kind
from tests.charts.read_text import questions, ranges, table

SIZES = "Size | S | M | L"
RANGES = "Chest from-to (cm) | 84-88 | 90-94 | 96-100"


@pytest.mark.parametrize("figures", ["84 | 90 | 96", "86 | 92 | 98", "88 | 94 | 100"])
@pytest.mark.parametrize("turned", [False, True])
def test_a_figure_that_is_the_same_part_of_each_range_gives_way_to_it(
    figures: str, turned: bool
) -> None:
    rows = [f"Chest (cm) | {figures}", RANGES]
    reading = table("\n".join([SIZES, *(rows[::-1] if turned else rows)]))
    assert questions(reading) == []
    chests = [one for one in ranges(reading) if one.dimension is Dimension.CHEST]
    found = [(one.kind, str(one.low), str(one.high)) for one in chests]
    assert found == [
        (Kind.RANGE, "84", "88"),
        (Kind.RANGE, "90", "94"),
        (Kind.RANGE, "96", "100"),
    ]


@pytest.mark.parametrize("figures", ["84 | 92 | 100", "98 | 104 | 110", "84 | 90 | 97"])
def test_figures_that_are_no_one_part_of_the_ranges_are_asked_about(figures: str) -> None:
    reading = table(f"{SIZES}\nChest (cm) | {figures}\n{RANGES}")
    assert "column-unused" in questions(reading)


def test_each_further_row_for_one_girth_is_named_when_it_is_not_used() -> None:
    rows = ["Chest (cm) | 84 | 90 | 96", "Chest (cm) from-to | 70-72 | 75-77 | 80-82"]
    reading = table("\n".join([SIZES, *rows, "Bust (cm) from-to | 60-62 | 66-68 | 72-74"]))
    unused = [one for one in reading.findings if one.code == "column-unused"]
    assert [one.values["heading"] for one in unused] == [
        "Chest (cm) from-to",
        "Bust (cm) from-to",
    ]
