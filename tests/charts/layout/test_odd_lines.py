"""A column of tolerances behind the sizes, and two figures for one measure in a cell."""

from __future__ import annotations

import pytest

from charts.importer import read_bytes
from charts.schema import Kind
from tests.charts.read_text import asked_at, questions, ranges, table, values


def test_a_column_of_tolerances_stands_behind_sizes_with_two_rows_of_names() -> None:
    reading = table(
        """
        Height (cm) | 122 | 128 | 134 | Tolerance
        Size | 30 | 32 | 34 |
        Total length (cm) | 45 | 47 | 49 | +/-2
        Chest, finished (cm) | 66 | 70 | 74 | +/-1
        """
    )
    assert values(reading)["30 height"] == 122
    assert {size.label for chart in reading.charts for size in chart.sizes} == {"30", "32", "34"}
    tolerances = {
        value.dimension.value: value.tolerance for value in ranges(reading) if value.tolerance
    }
    assert tolerances == {"other": 2, "chest": 1}
    assert questions(reading) == []


def test_two_figures_on_top_of_each_other_are_a_range_that_is_asked_about() -> None:
    page = (
        "Height (cm),Size,Chest (cm)\n"
        '"158\n164",44,84-88\n"170\n176",46,88-92\n"182\n188",48,92-96\n'
    )
    reading = read_bytes(page.encode(), "sizes.csv")
    assert values(reading)["44 height"] == (158, 164)
    assert len(asked_at(reading, "separator-lost")) == 3
    assert questions(reading) == ["separator-lost"]


def test_one_range_or_another_is_kept_as_printed_and_offered() -> None:
    reading = table(
        "Size | Chest (in)\n44L | 44-46\n46L | 44-46 or 46-48\n48L | 48-50\n50L | 50-52"
    )
    (value,) = [value for value in ranges(reading) if value.kind is Kind.UNREAD]
    assert value.published == "44-46 or 46-48"
    (finding,) = [one for one in reading.findings if one.code == "double-range"]
    assert [one.why for one in finding.candidates] == ["first-range", "second-range", "whole-span"]


@pytest.mark.parametrize("heading", ["Chest (pit to pit)", "Chest, laid flat"])
def test_a_waist_no_larger_than_half_a_chest_is_asked_about(heading: str) -> None:
    reading = table(
        f"Size | {heading} (in) | Waist (in)\n46 | 20.2 | 18.8\n48 | 21.2 | 19.7\n50 | 22.2 | 20.6"
    )
    assert asked_at(reading, "laid-flat") == ["C2", "C3", "C4"]


def test_a_whole_waist_beside_half_a_chest_is_not_asked_about() -> None:
    reading = table(
        "Size | Chest, laid flat (in) | Waist (in)\n46 | 20 | 34\n48 | 21 | 36\n50 | 22 | 38"
    )
    assert questions(reading) == []


def test_a_back_as_long_as_a_shirt_is_the_garments_and_asked_about_once() -> None:
    reading = table(
        """
        Size | Chest (cm) | Back length (cm)
        S | 89-93 | 69
        M | 93-97 | 72
        L | 97-101 | 75
        XL | 101-105 | 78
        """
    )
    assert values(reading)["XL other"] == 78
    assert questions(reading) == ["heading-two-readings"]
    assert len(asked_at(reading, "heading-two-readings")) == 4


def test_a_back_of_the_body_is_not_asked_about() -> None:
    reading = table("Size | Chest (cm) | Back length (cm)\nS | 89-93 | 44\nM | 93-97 | 46")
    assert questions(reading) == []
    assert values(reading)["M back_length"] == 46


def test_a_row_of_units_below_all_sizes_names_no_size() -> None:
    reading = table("Size | Chest | Waist\nS | 84-88 | 68-72\nM | 88-94 | 72-78\ncm | cm | cm")
    assert [size.label for size in reading.charts[0].sizes] == ["S", "M"]
    assert questions(reading) == []
