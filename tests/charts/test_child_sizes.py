"""What a child's size tells of its age, and how short its back can be."""

from __future__ import annotations

import pytest

from tests.charts.read_text import questions, table, values


@pytest.mark.parametrize(
    ("sizes", "first"),
    [
        (("104", "116", "128"), (24, 26)),
        (("98/104", "110/116", "122/128"), (23, 25)),
        (("Junior XS", "Junior S", "Junior M"), (24, 26)),
        (("92 cm", "104 cm", "116 cm"), (21, 23)),
    ],
)
def test_a_small_childs_back_is_kept(sizes: tuple[str, ...], first: tuple[int, int]) -> None:
    rows = zip(sizes, (f"{first[0]}-{first[1]}", "27-29", "30-32"), strict=True)
    lines = [f"{size}|54-58|{back}" for size, back in rows]
    reading = table("\n".join(("Size|Chest (cm)|Back length (cm)", *lines)))
    backs = [ends for key, ends in values(reading).items() if key.endswith("back_length")]
    assert backs[0] == first
    assert "impossible" not in questions(reading)


@pytest.mark.parametrize("sizes", [("S", "M", "L"), ("36", "38", "40"), ("50", "56", "62")])
def test_a_grown_ups_is_not(sizes: tuple[str, ...]) -> None:
    rows = zip(sizes, ("22-24", "27-29", "30-32"), strict=True)
    lines = [f"{size}|84-88|{back}" for size, back in rows]
    reading = table("\n".join(("Size|Chest (cm)|Back length (cm)", *lines)))
    assert "impossible" in questions(reading)


def test_a_juniors_back_in_inches_under_cm_is_asked_still() -> None:
    reading = table("Size|Chest (cm)|Back (cm)\nJunior S|60-64|12\nJunior M|65-69|13")
    assert questions(reading) != []
