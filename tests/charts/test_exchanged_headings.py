"""Two headings that have changed places, told from figures that are nobody's under their own."""

from __future__ import annotations

import pytest

from tests.charts.read_text import asked_at, questions, table

EXCHANGED = {
    "a child's height and chest": """
        Size | Chest (cm) | Height (cm)
        104 | 98-104 | 54-56
        116 | 110-116 | 58-60
        128 | 122-128 | 62-65
        """,
    "a height in feet and a chest": """
        Size | Height | Chest
        S | 36.5-38.5" | 5'7"-5'10"
        M | 39.5-41.5" | 5'10"-6'1"
        """,
    "a word for height that can be a length": """
        Koko | Lahkeen sisäsauma | Pituus
        46 | 164-170 cm | 77 cm
        48 | 170-176 cm | 79 cm
        """,
    "a back and a height without a unit": """
        Size | Back length (cm) | Rider height
        S | 5'2" - 5'6" | 39 - 42
        M | 5'6" - 5'10" | 42 - 45
        """,
    "weights like heights": """
        Size | Height (cm) | Weight (kg)
        S | 50-62 | 162-170
        M | 62-78 | 170-176
        """,
    "children's heights and weights": """
        Size | Weight (kg) | Height (cm)
        2-3 years | 87-99 | 12-15
        4-5 years | 99-111 | 15-18
        6-7 years | 111-123 | 18-23
        """,
    "cells with a unit that measures something else": """
        Size | Weight | Sleeve
        S | 22 | 57-67 kg
        M | 23 | 67-77 kg
        """,
    "sleeves and shoulders": """
        Size | Sleeve (cm) | Shoulder (cm)
        S | 44 | 85
        M | 46 | 87
        """,
}


@pytest.mark.parametrize("text", EXCHANGED.values(), ids=EXCHANGED.keys())
def test_both_headings_are_asked_about_at_every_value(text: str) -> None:
    reading = table(text)
    values = 2 * (len(text.strip().splitlines()) - 1)
    assert len(asked_at(reading, "columns-shifted")) == values
    said = [one for one in reading.findings if one.code == "columns-shifted"]
    assert [one.values["case"] for one in said] == ["exchanged"]


def test_every_column_that_may_have_changed_places_is_asked_about() -> None:
    reading = table(
        """
        Size | Waist (cm) | Inseam (cm) | Hip (cm)
        S | 70-75 | 98-103 | 78
        M | 76-81 | 104-109 | 80
        L | 82-87 | 110-115 | 82
        XL | 88-93 | 116-121 | 84
        """
    )
    assert len(asked_at(reading, "columns-shifted")) == 12


@pytest.mark.parametrize(
    "text",
    [
        """
        Size | Height (cm) | Chest (cm)
        S | 64-67 | 86-91
        M | 67-70 | 91-97
        """,
        """
        Size | Chest (in) | Waist (in)
        S | 86-91 | 70-75
        M | 91-97 | 75-81
        """,
        """
        Size | Waist (cm) | Back length (cm)
        S | 38 | 68
        M | 40 | 70
        """,
    ],
    ids=["heights in inches", "girths in cm", "half a waist"],
)
def test_another_unit_and_a_half_are_no_exchange(text: str) -> None:
    reading = table(text)
    assert "columns-shifted" not in questions(reading)
    assert questions(reading)
