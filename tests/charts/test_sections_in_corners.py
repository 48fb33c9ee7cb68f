"""The corner of each section says whose measures stand below the same sizes."""

from __future__ import annotations

import pytest

from charts.schema import Basis, Dimension
from tests.charts.read_text import questions, ranges, table, values

SECTIONS = [
    ("Body measurements (cm)", "Bust", "Garment measurements (cm)", "Length"),
    ("Körpermaße in cm", "Oberweite", "Fertigmaße in cm", "Rückenlänge"),
    ("Mesures du corps (cm)", "Poitrine", "Vêtement fini (cm)", "Longueur dos"),
    ("Wymiary ciała (cm)", "Klatka piersiowa", "Wymiary gotowego wyrobu (cm)", "Długość pleców"),
]


@pytest.mark.parametrize(("body", "chest", "garment", "length"), SECTIONS)
@pytest.mark.parametrize("sizes", ["8 | 10 | 12", "S | M | L"])
def test_the_sizes_printed_again_begin_another_table(
    body: str, chest: str, garment: str, length: str, sizes: str
) -> None:
    reading = table(
        f"{body} | {sizes}\n{chest} | 83 | 87 | 92\n"
        f"{garment} | {sizes}\n{chest} | 92 | 96 | 101\n{length} | 40 | 41 | 42"
    )
    assert len(reading.charts) == 2
    chests = [one for one in ranges(reading) if one.dimension is Dimension.CHEST]
    assert [one.basis for one in chests] == [Basis.BODY] * 3 + [Basis.FINISHED] * 3
    assert questions(reading) == []


def test_who_wears_it_may_stand_before_the_sizes() -> None:
    reading = table(
        "Women (cm) | 34 | 36\nBust | 80 | 84\nWaist | 62 | 66\n"
        "Men (cm) | 46 | 48\nChest | 92 | 96\nWaist | 80 | 84"
    )
    found = values(reading)
    assert (found["women 36 chest"], found["men 46 chest"]) == (84, 92)
    assert questions(reading) == []


def test_figures_that_are_the_same_in_two_rows_begin_no_table() -> None:
    reading = table("Size | 80 | 84 | 88\nChest (cm) | 80 | 84 | 88\nWaist (cm) | 62 | 66 | 70")
    assert len(reading.charts) == 1
    assert values(reading)["84 chest"] == 84


def test_what_carries_tolerances_is_more_likely_made_than_measured_on_a_body() -> None:
    reading = table(
        "Specifications\nSize (cm) | 6 | 8 | Allowance\nBust | 91 | 96 | 1.3\n"
        "Waist | 76 | 81 | 1.3\n\n"
        "To Fit Guide\nSize (cm) | 6 | 8 |\nBust | 81 | 86 |\nWaist | 71 | 76 |"
    )
    first = ranges(reading)[0]
    assert first.basis is Basis.FINISHED
    assert questions(reading) == ["basis-doubtful"]


def test_a_material_is_no_figure() -> None:
    reading = table("Size | Shell | Chest (cm)\nS | 100% nylon | 84-88\nM | 100% nylon | 88-94")
    assert questions(reading) == []


def test_a_corner_that_only_names_the_sizes_says_nothing_of_whose_measures_they_are() -> None:
    reading = table("Garment label size | S | M\nTo fit chest (cm) | 84-88 | 88-92")
    assert ranges(reading)[0].basis is Basis.BODY
    assert questions(reading) == []
