"""Measures out of proportion in every size: two headings were exchanged, or columns slipped."""

from __future__ import annotations

import pytest

from tests.charts.read_text import asked_at, questions, table

EXCHANGED = {
    "height and weight": """
        Size | Weight (kg) | Height (cm)
        S | 155-165 | 60-70
        M | 165-175 | 70-80
        """,
    "height and weight beside a chest": """
        Size | Chest (cm) | Weight (kg)
        S | 84-90 | 158-166
        M | 90-96 | 166-174
        """,
    "hip and inseam": """
        Size | Hip (cm) | Inseam (cm)
        S | 74-76 | 92-96
        M | 76-78 | 96-100
        """,
}


@pytest.mark.parametrize("text", EXCHANGED.values(), ids=EXCHANGED.keys())
def test_exchanged_measures_are_asked_at_every_value(text: str) -> None:
    reading = table(text)
    assert len(asked_at(reading, "columns-shifted")) == 4


def test_sizes_that_one_column_has_lost_do_not_hide_the_others() -> None:
    reading = table(
        """
        Size | Chest (cm) | Height (cm)
        S | 158-164 | 82-88
        M | 164-170 | 88-94
        L | 172-178 | 94-100
        """
    )
    assert "impossible" in questions(reading)
    assert {"B2", "B3", "C2", "C3", "C4"} <= set(asked_at(reading, "columns-shifted"))


@pytest.mark.parametrize(
    "text",
    [
        """
        Size | Chest (cm) | Height (cm) | Weight (kg)
        Baby | 44-48 | 60-70 | 5-9
        XXXL | 132-140 | 180-190 | 125-144
        """,
        """
        Size | Hip (cm) | Inseam (cm)
        28/36 | 88-91 | 91
        30/36 | 93-96 | 92
        """,
        """
        Size | Chest (cm) | Weight (kg)
        M | 57 | 75-85
        L | 59 | 85-95
        """,
    ],
)
def test_large_and_small_and_long_bodies_are_in_proportion(text: str) -> None:
    assert "columns-shifted" not in questions(table(text))
