"""Rows for women and for men told by letters, F and M, or by the names of their models."""

from __future__ import annotations

import pytest

from tests.charts.read_text import table
from tests.charts.test_band_names import bands


def rows(first: str, second: str, heading: str = "Gender") -> str:
    small = f"{first} | S | 84-88\n{first} | M | 88-92\n"
    return f"{heading} | Size | Chest (cm)\n{small}{second} | S | 94-98\n{second} | M | 98-102"


@pytest.mark.parametrize(
    ("heading", "first", "second"),
    [
        ("Gender", "F", "M"),
        ("M/F", "F", "M"),
        ("", "F", "M"),
        ("Geschlecht", "W", "M"),
        ("Geschlecht", "D", "H"),
        ("Sexo", "M", "H"),
        ("Sexe", "F", "H"),
        ("Gender", "L", "G"),
    ],
)
def test_letters_that_stand_together_are_women_and_men(
    heading: str, first: str, second: str
) -> None:
    found = table(rows(first, second, heading))
    assert bands(found) == ["women", "men"]
    assert all(chart.model is None or len(chart.model.text) > 1 for chart in found.charts)


def test_letters_hold_where_no_size_repeats_and_down_over_blanks() -> None:
    text = (
        "Gender | Size | Chest (cm)\nF | 34 | 84-88\n | 36 | 88-92\nM | 46 | 94-98\n | 48 | 98-102"
    )
    assert bands(table(text)) == ["women", "men"]


def test_a_letter_beside_both_is_unisex() -> None:
    assert bands(table(f"{rows('F', 'M')}\nU | M | 92-98")) == ["women", "men", "unisex"]


@pytest.mark.parametrize(("first", "second"), [("D", "H"), ("B", "G"), ("A", "M")])
def test_other_letters_under_no_word_for_it_are_any_code(first: str, second: str) -> None:
    assert set(bands(table(rows(first, second, "Code")))) == {None}


def test_models_named_for_women_and_for_men_are_theirs() -> None:
    text = rows("Zorbo Women", "Zorbo Men", "Model")
    assert bands(table(text, "womens.csv")) == ["women", "men"]
    assert bands(table(rows("Lady Zorbo", "Zorbo", "Model"))) == [None, None]
