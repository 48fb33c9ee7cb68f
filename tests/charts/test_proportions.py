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
    "chest and inseam": """
        Size | Chest (cm) | Inseam (cm)
        S | 74 | 89-93
        M | 79 | 94-98
        """,
    "a sleeve as long as a child's hip is wide": """
        Size | Height (cm) | Sleeve (cm)
        110 | 108-112 | 63
        122 | 118-122 | 68
        """,
    "an inside leg as long as a hip is wide": """
        Size | Height (cm) | Inseam (cm)
        S | 160-166 | 92
        M | 168-174 | 97
        """,
    "chest and waist of children": """
        Size | Chest (cm) | Waist (cm)
        104 | 54-55 | 57-58
        134 | 60-61 | 63-65
        """,
}


@pytest.mark.parametrize("text", EXCHANGED.values(), ids=EXCHANGED.keys())
def test_exchanged_measures_are_asked_at_every_value(text: str) -> None:
    reading = table(text)
    assert len(asked_at(reading, "columns-shifted")) == 4


def test_a_waist_below_the_weight_is_asked_about_beside_heights_that_suit() -> None:
    reading = table(
        """
        Size | Height (cm) | Waist (cm) | Weight (kg)
        S | 155-165 | 50-60 | 66-74
        M | 165-175 | 60-72 | 74-82
        L | 175-185 | 72-85 | 82-92
        """
    )
    assert len(asked_at(reading, "columns-shifted")) == 9


def test_shoulders_too_narrow_for_the_chest_are_asked_about() -> None:
    reading = table(
        """
        Size | Chest | Sleeve | Shoulders
        S | 88 cm | 41 cm | 19 cm
        M | 94 cm | 44 cm | 20 cm
        """
    )
    assert {"C2", "C3", "D2", "D3"} <= set(asked_at(reading, "columns-shifted"))


def test_one_size_with_a_slip_does_not_hide_the_others() -> None:
    reading = table(
        """
        Size | Waist (cm) | Chest (cm)
        S | 84-88 | 68-72
        M | 88-92 | 72-76
        L | 76-80 | 92-96
        XL | 96-100 | 80-84
        """
    )
    assert len(asked_at(reading, "columns-shifted")) >= 6


def test_whose_measure_is_unsure_throws_no_doubt_on_the_girth_beside_it() -> None:
    reading = table(
        """
        Size | Waist (in) | Length (inches)
        28 | 28 | 27
        30 | 30 | 27.5
        """
    )
    assert "columns-shifted" not in questions(reading)


def test_what_the_gear_bears_is_no_weight_of_a_body() -> None:
    reading = table(
        """
        Size | Chest (cm) | Max. user weight (kg)
        S | 81-91 | 140
        M | 91-102 | 140
        L | 102-112 | 140
        """
    )
    assert "columns-shifted" not in questions(reading)


def test_sizes_that_one_column_has_lost_do_not_hide_the_others() -> None:
    reading = table(
        """
        Size | Chest (cm) | Height (cm)
        S | 158-164 | 82-88
        M | 164-170 | 88-94
        L | 172-178 | 94-100
        """
    )
    assert {"B2", "B3", "B4", "C2", "C3", "C4"} == set(asked_at(reading, "columns-shifted"))


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
        """
        Size | Chest (cm) | Waist (cm)
        5XL | 136 | 138
        6XL | 142 | 146
        """,
        """
        Size | Chest (cm) | Waist (cm)
        68 | 45 | 46
        74 | 47 | 48
        """,
    ],
)
def test_large_and_small_and_long_bodies_are_in_proportion(text: str) -> None:
    assert "columns-shifted" not in questions(table(text))
