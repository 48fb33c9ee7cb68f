"""One column for two measures is parted where heading and cells are parted alike."""

from __future__ import annotations

import pytest

from tests.charts.read_text import questions, table, values


@pytest.mark.parametrize(
    ("heading", "first", "second"),
    [
        ("Chest / Waist (cm)", "84-88 / 68-72", "88-92 / 72-76"),
        ("Brustumfang und Taillenumfang (cm)", "84-88 / 68-72", "88-92 / 72-76"),
        ("Chest & Waist (cm)", "84-88/68-72", "88-92/72-76"),
        ("Poitrine + Taille (cm)", "84-88 / 68-72", "88-92 / 72-76"),
    ],
)
def test_each_part_of_a_cell_stands_under_its_own_measure(
    heading: str, first: str, second: str
) -> None:
    reading = table(f"Size | {heading}\nS | {first}\nM | {second}")
    assert values(reading)["S chest"] == (84, 88)
    assert values(reading)["M waist"] == (72, 76)
    assert questions(reading) == []


def test_single_figures_that_fall_are_two_measures() -> None:
    reading = table(
        "Taille | Poitrine / Taille / Bassin (cm)\n36 | 84 / 66 / 92\n38 | 88 / 70 / 96"
    )
    assert values(reading) == {
        "36 chest": 84, "36 waist": 66, "36 hip": 92,
        "38 chest": 88, "38 waist": 70, "38 hip": 96,
    }  # fmt: skip


def test_single_figures_that_rise_may_be_a_range_and_are_asked_about() -> None:
    reading = table("Size | Chest/Waist (cm)\nS | 84/88\nM | 88/92\nL | 92/96")
    assert questions(reading) == ["heading-two-readings"]


@pytest.mark.parametrize(
    "cell", ["82-86 cm / 32-34 in", '82-86 cm / 32-34"', "32-34 in / 82-86 cm"]
)
def test_one_measure_in_two_units_is_no_second_measure(cell: str) -> None:
    reading = table(f"Size | Chest / Waist\nS | {cell}\nM | {cell}")
    assert "S waist" not in values(reading)
    assert questions(reading) != []
