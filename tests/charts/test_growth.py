"""Measures that do not grow together from size to size are asked about at every value."""

from __future__ import annotations

import pytest

from tests.charts.read_text import asked_at, questions, table

_EXCHANGED = {
    "toddlers' heights and pounds": """
        Size | Weight (lbs) | Height (in)
        3 | 36-38 | 31-34
        4 | 39-41 | 34-38
        5 | 42-44 | 38-44
        6 | 45-47 | 44-49
        """,
    "a chest and a weight in another unit": """
        Size | Chest (cm) | Weight (kg)
        S | 80-95 | 42-44
        M | 95-110 | 44-46
        L | 110-125 | 46-48
        XL | 125-140 | 48-50
        """,
    "a waist and an inside leg": """
        Size | Waist (cm) | Inside leg (cm)
        S | 78 | 76-80
        M | 80 | 81-85
        L | 82 | 86-90
        XL | 84 | 91-95
        """,
    "a width laid flat and a sleeve": """
        Size | Chest width laid flat (cm) | Sleeve (cm)
        S | 66 | 55
        M | 67 | 59
        L | 68 | 63
        XL | 69 | 67
        """,
}


@pytest.mark.parametrize("text", _EXCHANGED.values(), ids=_EXCHANGED.keys())
def test_what_grows_as_no_body_does_is_asked_about(text: str) -> None:
    assert len(asked_at(table(text), "columns-shifted")) == 8


@pytest.mark.parametrize(
    "text",
    [
        """
        Size | Height (cm) | Weight (kg) | Chest (cm)
        98 | 92-98 | 13-15 | 54-56
        122 | 116-122 | 20-24 | 60-63
        152 | 146-152 | 36-43 | 73-77
        """,
        """
        Size | Waist (cm) | Inside leg (cm)
        152 | 64 | 69
        164 | 68 | 75
        176 | 73 | 81
        182 | 75 | 84
        """,
        """
        Length | Waist (cm) | Inside leg (cm)
        Short | 80 | 76
        Regular | 80 | 81
        Long | 80 | 91
        """,
        """
        Size | Waist (in) | Weight (lbs)
        S | 20-34 | 80-120
        M | 34-44 | 120-175
        L | 44-58 | 175-210
        XL | 58-68 | 210-250
        """,
    ],
    ids=["children", "juniors", "lengths of one size", "stout people"],
)
def test_what_grows_as_bodies_do_is_not(text: str) -> None:
    assert "columns-shifted" not in questions(table(text))
