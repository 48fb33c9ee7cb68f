"""``Adults`` is no band, but beside ``Kids`` it parts the rows as bands do."""

from __future__ import annotations

import pytest

from tests.charts.read_text import questions, table, values

DUE = {
    "kids S weight": (15, 30),
    "kids M weight": (30, 40),
    "S weight": (40, 60),
    "M weight": (60, 80),
}


@pytest.mark.parametrize(
    "text",
    [
        (
            " | Size | Weight (kg)\nKids | S | 15-30\nKids | M | 30-40\n"
            "Adults | S | 40-60\nAdults | M | 60-80"
        ),
        (
            "Gruppe | Größe | Gewicht (kg)\nKinder | S | 15-30\n | M | 30-40\n"
            "Erwachsene | S | 40-60\n | M | 60-80"
        ),
        (
            " | Kids | Kids | Adults | Adults\nSize | S | M | S | M\n"
            "Weight (kg) | 15-30 | 30-40 | 40-60 | 60-80"
        ),
    ],
)
def test_sizes_of_children_and_of_adults_are_two_charts(text: str) -> None:
    reading = table(text)
    assert values(reading) == DUE
    assert questions(reading) == []


def test_a_title_for_children_does_not_hold_for_the_adults_below_it() -> None:
    reading = table(
        "Kids' vests\n | Size | Weight (kg)\nKids | S | 15-30\n | M | 30-40\n"
        "Adults | S | 40-60\n | M | 60-80"
    )
    assert [chart.band for chart in reading.charts] == ["kids", None]


def test_people_that_each_stand_once_are_the_sizes() -> None:
    reading = table(
        "Size | EU | Weight (kg)\nInfant | 1 | 5-15\nChild | 2 | 15-40\nAdult | 3 | 40-80"
    )
    assert [size.label for size in reading.charts[0].sizes] == ["Infant", "Child", "Adult"]
