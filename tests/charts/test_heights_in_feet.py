"""Heights in feet and inches print no unit for the figures beside them."""

from __future__ import annotations

from tests.charts.read_text import asked_at, questions, ranges, table

HALVES_OR_INCHES = """
Size | Chest | Height
S | 43-45 | 5'3" - 5'5"
M | 45-47 | 5'5" - 5'7"
L | 47-49 | 5'7" - 5'9"
"""


def test_figures_beside_heights_in_feet_are_asked_for_their_unit() -> None:
    reading = table(HALVES_OR_INCHES)
    assert asked_at(reading, "unit-missing") == ["B2", "B3", "B4"]


def test_feet_without_inch_marks_are_such_heights_too() -> None:
    reading = table("Size | Chest | Height (ft)\nS | 41 | 5'3\nM | 43 | 5'5\nL | 45 | 5'7")
    assert asked_at(reading, "unit-missing") == ["B2", "B3", "B4"]


def test_inches_printed_for_another_girth_hold_beside_them() -> None:
    reading = table(HALVES_OR_INCHES.replace("Size | Chest", "Size | Chest (in)"))
    assert questions(reading) == []
    reading = table("Size | Chest | Waist | Height\nS | 37 | 30 in | 5'3\"\nM | 39 | 32 in | 5'5\"")
    assert {one.unit_from for one in ranges(reading)} == {"cell", "sibling"}
    assert questions(reading) == []


def test_heights_in_inches_hold_for_the_girths_beside_them() -> None:
    reading = table("Size | Chest | Height (in)\nS | 37-39 | 63-65\nM | 39-41 | 65-67")
    assert questions(reading) == []
