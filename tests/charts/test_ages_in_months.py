"""Ages counted in months become years; where nothing says which they are, it is asked."""

from __future__ import annotations

import pytest

from tests.charts.read_text import asked_at, questions, table, values

HEADINGS = ["Age (months)", "Alter (Monate)", "Âge (mois)", "Edad (meses)", "Leeftijd (maanden)"]


@pytest.mark.parametrize("heading", HEADINGS)
def test_months_in_a_heading_become_years(heading: str) -> None:
    reading = table(f"Size | {heading} | Chest (cm)\n62 | 3 | 43\n74 | 6-9 | 47\n86 | 18 | 51")
    found = values(reading)
    assert (found["62 age"], found["74 age"], found["86 age"]) == (0.25, (0.5, 0.75), 1.5)
    assert questions(reading) == []


def test_a_cell_with_its_own_years_is_not_divided() -> None:
    text = "Size | Age (months) | Chest (cm)\n74 | 9 | 47\n86 | 18 | 51\n98 | 3 years | 54"
    assert values(table(text))["98 age"] == 3.0


def test_ages_too_high_for_the_heights_are_asked_and_read_as_months() -> None:
    text = "Size | Age | Height (cm)\n62 | 3 | 57-62\n74 | 9 | 69-74\n86 | 18 | 81-86"
    reading = table(text)
    assert len(asked_at(reading, "units-swapped")) == 3
    assert values(reading)["86 age"] == 1.5


def test_ages_in_years_are_not_asked() -> None:
    text = "Size | Age | Height (cm)\n92 | 2 | 92\n104 | 4 | 104\n128 | 8 | 128\n164 | 14 | 164"
    reading = table(text)
    assert questions(reading) == []
    assert values(reading)["128 age"] == 8.0


def test_a_heading_of_months_and_years_is_asked() -> None:
    text = "Size | Age (months/years) | Chest (cm)\n74 | 9 | 47\n86 | 18 | 51\n98 | 36 | 54"
    assert len(asked_at(table(text), "units-swapped")) == 3


def test_a_chest_larger_than_a_babys_tells_years_whatever_length_is_beside_it() -> None:
    rows = "16 | 77 | 55 | 4-5\n18 | 81 | 57 | 5-6\n20 | 85 | 59 | 6-7"
    reading = table(f"Size | Chest (cm) | Length (cm) | Age\n{rows}")
    assert "units-swapped" not in questions(reading)
    assert values(reading)["16 age"] == (4, 5)
