"""Measures in the place of the sizes: kept as measures, and behind the sizes that stand below."""

from __future__ import annotations

import pytest

from tests.charts.read_text import questions, table, values


def test_heights_that_name_the_sizes_are_stored_too() -> None:
    found = values(table("Height | Chest | Waist\n98-104 | 56 | 53\n110-116 | 58 | 54\ncm"))
    assert (found["98-104 height"], found["110-116 chest"]) == ((98, 104), 58)
    assert len(found) == 6


def test_waists_that_name_the_sizes_are_stored_too() -> None:
    found = values(table("Poitrine | 84-90 | 90-96\nTaille | 70-76 | 76-82\ncm"))
    assert (found["70-76 waist"], found["76-82 waist"]) == ((70, 76), (76, 82))


def test_a_nominal_measure_beside_the_measured_one_is_a_name_alone() -> None:
    text = "Waist size (UK) | To fit waist (cm) | Hip (cm)\n28 | 71-74 | 86-89\n30 | 76-79 | 91-94"
    assert len(values(table(text))) == 4
    assert questions(table(text)) == []


def test_a_nominal_measure_is_asked_about_once() -> None:
    reading = table("Chest size | Back length | Waist\n34 | 17 | 28\n36 | 17.5 | 30\ninches")
    assert values(reading)["34 chest"] == 86.36
    assert questions(reading) == ["heading-two-readings"]


@pytest.mark.parametrize("size", ["Your size", "Größe", "Vest size", "Taille"])
def test_a_row_of_sizes_below_others_names_them(size: str) -> None:
    rows = ("Height (cm) | 150-160 | 160-170", "Chest (cm) | 78-84 | 84-92")
    reading = table("\n".join((*rows, f"{size} | S | M", "Back length (cm) | 40 | 42")))
    assert values(reading) == {
        "S height": (150, 160),
        "M height": (160, 170),
        "S chest": (78, 84),
        "M chest": (84, 92),
        "S back_length": 40,
        "M back_length": 42,
    }


def test_a_second_table_that_measures_the_same_stays_a_table() -> None:
    text = (
        "Height | 150-160 | 160-170\nChest | 78-84 | 84-92\nSize | S | M\nChest | 80-86 | 86-94\ncm"
    )
    assert [len(chart.sizes) for chart in table(text).charts] == [2, 2]


def test_a_girth_in_the_corner_of_lengths_names_the_sizes() -> None:
    text = "Waist size | Short | Regular | Long\n28 | 76 | 81 | 86\n30 | 77 | 82 | 87\n"
    found = values(table(text + "inseam in cm"))
    assert (found["28 Short inseam"], found["30 Long inseam"]) == (76, 87)
    assert questions(table(text + "cm")) == ["heading-unknown"]


def test_the_same_girth_for_every_length_is_the_girth() -> None:
    text = "Chest | Short | Regular\nS | 84-88 | 84-88\nM | 88-92 | 88-92\ncm"
    assert values(table(text))["S Short chest"] == (84, 88)
