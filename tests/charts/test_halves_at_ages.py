"""Girths that no child has at the age of its size: halves, down to the letters of grown-ups."""

from __future__ import annotations

import pytest

from charts.schema import Dimension
from tests.charts.read_text import questions, ranges, table

LETTERS = "S | {} | 48 | 46\nM | {} | 51 | 49\nL | {} | 54 | 52"
AGED = {
    "beside small letters": "4XS | (6Y) | 35 | 33\n2XS | (10Y) | 42 | 40\nXS | (12Y) | 45 | 43\n",
    "in a column": "3XS | 6 | 42 | 40\n2XS | 8-9 | 43 | 41\nXS | 10-11 | 44 | 43\n",
    "adults are named": "4XS | 6Y | 35 | 33\n3XS | 8Y | 39 | 37\n2XS | 10Y | 42 | 40\n",
}


@pytest.mark.parametrize("case", AGED)
def test_every_girth_of_the_column_is_asked_about_once(case: str) -> None:
    age = "Adult" if case == "adults are named" else ""
    text = AGED[case] + LETTERS.replace("{}", age)
    reading = table(f"Size | Age | Chest (cm) | Waist (cm)\n{text}")
    girths = [one for one in ranges(reading) if one.dimension is not Dimension.AGE]
    assert len(girths) == 12
    assert all(one.findings for one in girths)
    assert questions(reading).count("laid-flat") == 1
    assert "impossible" not in questions(reading)


@pytest.mark.parametrize("across", [False, True])
def test_ages_and_letters_in_one_row_of_names_are_told_apart(across: bool) -> None:
    rows = [["Size", "12Y", "S", "M", "L", "XL"], ["Chest (cm)", "45", "48", "51", "54", "57"]]
    lines = rows if across else list(zip(*rows, strict=True))
    reading = table("\n".join(" | ".join(one) for one in lines))
    assert questions(reading) == ["laid-flat"]
    assert all(one.findings for one in ranges(reading))


@pytest.mark.parametrize(
    "text",
    [
        "Size | Chest (cm) | Waist (cm)\n6Y | 60 | 53\n10Y | 68 | 59\nS | 88 | 72\nM | 94 | 78",
        "Age | Chest (cm) | Waist (cm)\n4 years | 53 | 50\n8 years | 60 | 54\n12 years | 68 | 60",
        "Age | Chest (cm)\n3 months | 40\n6 months | 42\n12 months | 46\n2 years | 49",
        "Age | Chest (in)\n4 years | 21\n6 years | 23\n8 years | 25",
        "Size | Age | Chest (cm)\nS | 2-3 | 52\nM | 4-5 | 56\nL | 6-7 | 60",
    ],
)
def test_girths_of_children_are_not(text: str) -> None:
    assert questions(table(text)) == []
