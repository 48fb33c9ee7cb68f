"""Girths that no body has alike are asked about where they are the same in every size."""

from __future__ import annotations

import pytest

from charts.findings import Level
from tests.charts.read_text import questions, table


@pytest.mark.parametrize(
    "text",
    [
        "Size | Chest (cm) | Waist (cm)\nS | 84 | 84\nM | 90 | 90\nL | 96 | 96",
        "Größe | S | M | L\nTaille cm | 88-92 | 92-96 | 96-99\nHüfte cm | 88-92 | 92-96 | 96-99",
        "Size | Chest (in) | Waist (in)\nS | 33 | 33\nM | 36 1/2 | 36 1/2\nL | 39 | 39",
    ],
)
def test_equal_girths_are_asked_about_once_at_all_their_values(text: str) -> None:
    reading = table(text)
    assert questions(reading) == ["columns-shifted"]
    (finding,) = [one for one in reading.findings if one.level is Level.QUESTION]
    assert finding.values["case"] == "equal"
    ranges = [one for chart in reading.charts for size in chart.sizes for one in size.ranges]
    assert all(finding.id in one.findings for one in ranges)


@pytest.mark.parametrize(
    "text",
    [
        "Size | Chest (cm) | Waist (cm)\nS | 84 | 84\nM | 90 | 90\nL | 96 | 95",
        "Size | Chest (cm) | Hip (cm)\nS | 84 | 84\nM | 90 | 90\nL | 96 | 96",
        "Age | Chest (cm) | Waist (cm)\n1 | 48 | 48\n2 | 50 | 50\n3 | 52 | 52",
        "Size | Chest flat (cm) | Waist flat (cm)\nS | 44 | 44\nM | 48 | 48\nL | 52 | 52",
    ],
)
def test_girths_that_a_body_or_a_straight_vest_may_have_are_not(text: str) -> None:
    assert "equal" not in {one.values.get("case") for one in table(text).findings}


def test_three_equal_girths_are_one_question() -> None:
    rows = "S | 84 | 84 | 84\nM | 90 | 90 | 90\nL | 96 | 96 | 96"
    assert questions(table(f"Size | Chest (cm) | Waist (cm) | Hip (cm)\n{rows}")) == [
        "columns-shifted"
    ]
