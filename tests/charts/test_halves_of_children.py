"""Girths of children's clothes far too small for the cm they are headed with: halves, no inches."""

from __future__ import annotations

import pytest

from tests.charts.read_text import asked_at, questions, table, values


@pytest.mark.parametrize(
    ("sizes", "chest"),
    [
        (("Age", "4 years", "6 years", "8 years"), "Chest (cm)"),
        (("Alter", "4 Jahre", "6 Jahre", "8 Jahre"), "Brust (cm)"),
        (("Рост, см", "116", "128", "140"), "Обхват груди, см"),
    ],
)
def test_they_stay_in_their_unit_and_are_asked_about_as_halves(
    sizes: tuple[str, ...], chest: str
) -> None:
    figures = (chest, "34", "36", "38")
    down = table("\n".join(" | ".join(row) for row in zip(sizes, figures, strict=True)))
    across = table(f"{' | '.join(sizes)}\n{' | '.join(figures)}")
    for reading in (down, across):
        chests = [one for name, one in values(reading).items() if name.endswith("chest")]
        assert chests == [34, 36, 38]
        assert "laid-flat" in questions(reading)
        assert "units-swapped" not in questions(reading)
    assert set(asked_at(down, "laid-flat")) == {"B2", "B3", "B4"}


def test_a_grown_ups_chest_of_as_much_is_still_taken_for_inches_and_asked_about() -> None:
    reading = table("Size | Chest (cm) | Height (cm)\nS | 36 | 165\nM | 38 | 170\nL | 40 | 175")
    assert values(reading)["M chest"] == 96.52
    assert "units-swapped" in questions(reading)
