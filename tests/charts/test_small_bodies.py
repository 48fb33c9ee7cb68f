"""A word for a length beside what only a child has: a small weight, the girth of a head, an age."""

from __future__ import annotations

import pytest

from charts.schema import Dimension, Kind
from tests.charts.read_text import asked_at, questions, ranges, table, values

PRETERM = """
Weeks | Gewicht | Lengte | Hoofdomtrek
25 | 750 gr | 33 cm | 23 cm
30 | 1150 gr | 40 cm | 28 cm
34 | 2000 gr | 45 cm | 32 cm
"""
GARMENT = """
Size | Weight (kg) | Length (cm) | Chest (cm)
S | 50-60 | 58 | 84-88
M | 60-70 | 60 | 88-92
L | 70-80 | 62 | 92-96
"""


def test_a_length_beside_a_small_weight_is_the_childs_and_asked_about() -> None:
    reading = table(PRETERM)
    found = values(reading)
    assert found["25 height"] == 33
    assert found["34 weight"] == 2
    assert {"C2", "C3", "C4"} <= set(asked_at(reading, "heading-two-readings"))


def test_weights_in_grams_are_part_of_the_same_question() -> None:
    reading = table(PRETERM)
    weights = [one for one in ranges(reading) if one.dimension is Dimension.WEIGHT]
    assert [one.kind for one in weights] == [Kind.SINGLE] * 3
    assert {one.findings for one in weights} == {ranges(reading)[1].findings}


def test_grams_of_something_for_sale_are_no_riders_weight() -> None:
    reading = table("Size | Gewicht | Chest (cm)\nS | 500 g | 84-88\nM | 800 gr | 88-92")
    weights = [one for one in ranges(reading) if one.dimension is Dimension.WEIGHT]
    assert [one.kind for one in weights] == [Kind.UNREAD] * 2
    assert all(one.findings for one in weights)


def test_a_length_beside_the_girth_of_a_head_is_asked_about() -> None:
    reading = table("Size | Length (cm) | Head girth (cm)\nA | 50 | 34\nB | 56 | 38\nC | 62 | 41")
    assert asked_at(reading, "heading-two-readings") == ["B2", "B3", "B4"]


def test_a_garments_length_beside_the_weight_of_grown_ups_is_not_asked_about() -> None:
    assert questions(table(GARMENT)) == []


def test_a_length_beside_a_height_is_the_garments() -> None:
    text = (
        "Size | Height (cm) | Weight (kg) | Length (cm)\nA | 86-92 | 12 | 40\nB | 98-104 | 15 | 44"
    )
    assert asked_at(table(text), "heading-two-readings") == []


def test_a_height_as_tall_as_the_ages_that_name_the_sizes_is_the_childs() -> None:
    reading = table(
        "Talla | Altura (cm)\n0 a 6 meses | 53-57\n1 a 2 años | 75-81\n3 a 4 años | 96\n"
    )
    assert values(reading)["1 a 2 años height"] == (75, 81)
    assert asked_at(reading, "heading-two-readings") == []


def test_a_length_as_tall_as_the_ages_that_name_the_sizes_is_asked_about() -> None:
    reading = table(
        "Talla | Largo (cm)\n0 a 6 meses | 53-57\n1 a 2 años | 75-81\n3 a 4 años | 96\n"
    )
    found = {one.dimension for one in ranges(reading)}
    assert Dimension.HEIGHT not in found or asked_at(reading, "heading-two-readings")


def test_a_garments_length_beside_ages_is_none() -> None:
    reading = table("Size | Length (cm) | Chest (cm)\n1-2 years | 38 | 52\n3-4 years | 42 | 56\n")
    assert "1-2 years height" not in values(reading)
    assert questions(reading) == []


@pytest.mark.parametrize(("length", "waist"), [("Length", "Waist"), ("Länge", "Taillenumfang")])
def test_a_length_that_coats_and_belts_have_is_no_height_without_a_question(
    length: str, waist: str
) -> None:
    rows = "S | 95 | 70-80\nM | 105 | 80-90\nL | 125 | 90-100"
    reading = table(f"Size | {length} (cm) | {waist} (cm)\n{rows}")
    assert {"B2", "B3", "B4"} <= set(asked_at(reading, "heading-two-readings"))


@pytest.mark.parametrize(
    "text",
    [
        "Kids\nSize | Length (cm) | Waist (cm)\nS | 98 | 52\nM | 125 | 54",
        "Age | Length (cm) | Waist (cm)\n3 years | 98 | 52\n6 years | 125 | 54",
        "Size | Length (cm) | Waist (cm)\nKids S | 98 | 52\nKids M | 125 | 54",
        "Size | Lengte (cm) | Taille (cm)\nS | 165-172 | 70-80\nM | 172-180 | 80-90",
    ],
)
def test_children_and_grown_ups_are_as_tall_as_they_are(text: str) -> None:
    reading = table(text)
    assert {one.dimension for one in ranges(reading)} == {Dimension.HEIGHT, Dimension.WAIST}
    assert asked_at(reading, "heading-two-readings") == []


def test_a_name_that_is_no_age_among_ages_hides_no_height() -> None:
    reading = table(
        "Talla | Recién nacido | 0-3 meses | 3-6 meses | 6-9 meses\n"
        "Altura | 50 cm | 60 cm | 68 cm | 74 cm\nLargo de manga | 25 cm | 27 cm | 29 cm | 30 cm"
    )
    heights = [one for one in ranges(reading) if one.dimension is Dimension.HEIGHT]
    assert len(heights) == 4


def test_heights_of_grown_ups_in_inches_under_cm_are_asked_about() -> None:
    reading = table("Size | Height (cm) | Chest (cm)\nS | 64 | 86\nM | 66 | 91\nL | 68 | 96")
    heights = [one for one in ranges(reading) if one.dimension is Dimension.HEIGHT]
    assert [round(float(one.value or 0)) for one in heights] == [163, 168, 173]
    assert all(one.findings for one in heights)
    assert "units-swapped" in questions(reading)


@pytest.mark.parametrize(
    "text",
    [
        "Size | Height (cm) | Chest (cm)\n0-3 months | 56 | 42\n3-6 months | 64 | 44",
        "Babies\nSize | Height (cm) | Weight (kg)\nS | 60 | 5\nM | 66 | 7",
        "Size | Height (cm) | Weight (kg)\nS | 60 | 5\nM | 66 | 7",
        "Size | Height (cm) | Chest (cm)\nS | 158-164 | 86\nM | 164-170 | 91",
    ],
)
def test_babies_and_riders_in_cm_stay_in_cm(text: str) -> None:
    assert "units-swapped" not in questions(table(text))


def test_a_height_beside_the_ages_it_suits_is_the_childs_and_asked_about() -> None:
    reading = table(
        "Size | Age | Waist | Average Height\n"
        'XS | 2 to 3 years | 19"-23" | 29"-40"\n'
        'S | 3 to 6 years | 21"-29" | 35"-48"\n'
        'L | 5 to 11 years | 23"-35" | 45"-57"'
    )
    assert values(reading)["XS height"] == (73.66, 101.6)
    assert asked_at(reading, "heading-two-readings") == ["D2", "D3", "D4"]
