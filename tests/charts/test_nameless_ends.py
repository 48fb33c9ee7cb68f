"""Headings that do not say what is measured: two ends of a height, a finished measurement."""

from __future__ import annotations

import pytest

from charts.dimensions import Role, read_heading
from charts.schema import Basis
from tests.charts.read_text import asked_at, questions, ranges, table, values

ENDS = """
Size | From FT / CM | To FT / CM
00 | 4' / 122 | 4'4" / 132
0 | 4'4" / 132 | 4'6" / 137
1 | 4'6" / 137 | 4'9" / 144.8
"""
CHESTS = """
Size | From (cm) | To (cm)
S | 84 | 88
M | 88 | 92
"""


def test_two_nameless_ends_of_heights_are_asked_about_once() -> None:
    reading = table(ENDS)
    assert questions(reading) == ["heading-two-readings"]
    assert values(reading)["0 height"] == (132, 137)
    assert asked_at(reading, "heading-two-readings") == ["B2:C2", "B3:C3", "B4:C4"]


def test_nameless_ends_that_no_height_has_stay_unknown() -> None:
    reading = table(CHESTS)
    assert "S height" not in values(reading)
    assert "heading-unknown" in questions(reading)


def test_a_finished_measurement_that_does_not_say_where_is_kept_and_asked_about() -> None:
    text = "Size | To fit chest (cm) | Finished measurement (cm)\nS | 81-86 | 108\nM | 91-96 | 118"
    reading = table(text)
    assert questions(reading) == ["heading-unknown"]
    assert [one.basis for one in ranges(reading)] == [Basis.BODY, Basis.FINISHED] * 2


def test_the_length_of_yarn_is_no_measure() -> None:
    assert read_heading("metres of yarn required").role is Role.OTHER
    text = "Size | Chest (cm) | Metres of yarn required\nS | 81-86 | 427\nM | 91-96 | 461"
    assert list(values(table(text))) == ["S chest", "M chest"]


def test_countries_over_numbers_are_systems_of_sizes() -> None:
    for word in ("欧洲", "美国", "韩国", "한국", "США", "Germany", "EE.UU."):
        assert read_heading(word).role is Role.LABEL


def test_a_place_to_measure_to_makes_no_open_end_of_an_unknown_measure() -> None:
    reading = table("Size | Chest (cm) | Nape to floor (cm)\nS | 84-88 | 140\nM | 88-92 | 142")
    assert values(reading)["S other"] == 140
    assert questions(reading) == ["heading-unknown"]


def test_both_ends_of_an_unknown_measure_stay_a_range() -> None:
    reading = table("Size | Zorbo from | Zorbo to | Chest (cm)\nS | 20 | 24 | 84\nM | 24 | 28 | 88")
    assert values(reading)["S other"] == (20, 24)


def test_nameless_lengths_beside_weights_are_heights_and_asked_about() -> None:
    reading = table(
        "S | 159-167 cm | 51-59 kg\nM | 167-174 cm | 59-68 kg\nL | 174-182 cm | 68-80 kg"
    )
    assert values(reading)["M height"] == (167, 174)
    assert asked_at(reading, "heading-two-readings") == ["B1", "B2", "B3"]


def test_beside_a_height_of_its_own_a_nameless_length_is_none() -> None:
    rows = ("S | 159-167 | 160 cm | 51-59", "M | 167-174 | 168 cm | 59-68")
    reading = table("\n".join(("Size | Height (cm) | | Weight (kg)", *rows)))
    assert "heading-unknown" in questions(reading)
    assert values(reading)["M height"] == (167, 174)


@pytest.mark.parametrize("heading", ["Zolmar", ""])
def test_an_end_without_another_is_asked_about_with_the_unknown_column_beside_it(
    heading: str,
) -> None:
    rows = "S | 45 | 55 | 84-88\nM | 55 | 65 | 88-92"
    text = f"Size | {heading} | Max. weight (kg) | Chest (cm)\n{rows}"
    assert {"C2", "C3"} <= set(asked_at(table(text), "heading-unknown"))


def test_an_end_that_is_no_range_with_the_unknown_column_is_not() -> None:
    text = "Size | Zolmar | Max. weight (kg)\nS | 5 | 55\nM | 6 | 65"
    assert asked_at(table(text), "heading-unknown") == ["B2", "B3"]


def test_two_ends_of_one_measure_are_not() -> None:
    text = "Size | Zolmar | Max. chest (cm) | Min. chest (cm)\nS | 80 | 88 | 84\nM | 84 | 92 | 88"
    assert asked_at(table(text), "heading-unknown") == ["B2", "B3"]
