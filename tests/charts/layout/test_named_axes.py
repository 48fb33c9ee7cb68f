"""Grids whose title names both axes: the one the corner names is not named a second time."""

from __future__ import annotations

from tests.charts.read_text import questions, table, values

GRID = """
INCH-POUND | | |
Parka - size by chest and height | | |
Chest | 63-67 | 67-71 | 71-75
32-35 | 1S | 1R | 1L
35-38 | 2S | 2R | 2L
38-41 | 3S | 3R | 3L
"""


def test_a_title_that_names_both_axes_does_not_name_the_nameless_one_after_the_other() -> None:
    found = values(table(GRID + "Height across. Read down for chest. | | |"))
    assert found["1S chest"] == (81.28, 88.9)
    assert found["1S height"] == (160.02, 170.18)
    assert found["3L height"] == (180.34, 190.5)


def test_without_a_word_for_the_second_axis_a_usual_height_is_asked_about() -> None:
    reading = table(GRID)
    assert values(reading)["2R height"] == (170.18, 180.34)
    assert "heading-two-readings" in questions(reading)
