"""What is too little for a grown-up is whole at the age that names the size; halves stay asked."""

from __future__ import annotations

import pytest

from charts.schema import Kind
from tests.charts.read_text import questions, ranges, table, values


def test_girths_of_babies_are_whole_in_inches_and_in_centimetres() -> None:
    inches = table(
        "Age | Chest (in) | Waist (in)\n6 months | 17 | 16\n1 year | 19 | 18\n2 years | 20 | 19"
    )
    assert values(inches)["6 months chest"] == 43.18
    assert not {"laid-flat", "impossible"} & set(questions(inches))
    metric = "Talla | 0 meses | 6 meses | 12 meses\nContorno pecho (cm) | 40 | 44 | 48\n"
    across = table(metric + "Contorno cadera (cm) | 39 | 46 | 49")
    assert values(across)["0 meses hip"] == 39
    assert questions(across) == []


def test_babies_are_as_tall_in_inches_as_in_centimetres() -> None:
    text = "Age | Height (in)\n0-3 M | 21-24\n3-6 M | 24-26\n6-12 M | 26-29\n1 YR | 29-31"
    assert values(table(text))["3-6 M height"] == (60.96, 66.04)
    assert "impossible" not in questions(table(text))


def test_a_unit_printed_at_one_measure_holds_for_the_small_girths_beside_it() -> None:
    text = "Talla | 0 mes | 6 mes | 12 mes\nContorno cadera | 49 | 54 | 58\n"
    reading = table(text + "Estatura (cm) | 59 | 69 | 86")
    assert values(reading)["0 mes hip"] == 49
    assert questions(reading) == []


def test_a_childs_back_and_shoulders_are_as_short_as_the_child() -> None:
    text = "Age | Shoulder to waist (in) | Shoulder (cm)\n1 year | 7 | 16\n"
    reading = table(text + "2 years | 8 | 18\n4 years | 9 | 21")
    assert all(one.kind is Kind.SINGLE for one in ranges(reading))
    assert "impossible" not in questions(reading)


@pytest.mark.parametrize(
    ("age", "figure"), [("2 years", "13"), ("4 years", "15"), ("8 years", "17"), ("6 years", "16")]
)
def test_half_of_what_a_vest_for_that_age_measures_round_is_asked_about(
    age: str, figure: str
) -> None:
    reading = table(f"Age | Chest (in) | Length (in)\n{age} | {figure} | 15\n10 years | 30 | 20")
    small = next(one for one in ranges(reading) if one.published == figure)
    assert small.findings
    assert {"laid-flat", "impossible"} & set(questions(reading))


def test_without_ages_a_small_girth_is_asked_about_as_before() -> None:
    reading = table("Size | Chest (in) | Waist (in)\nXS | 17 | 16\nS | 19 | 18\nM | 20 | 19")
    assert {"laid-flat", "impossible"} & set(questions(reading))


@pytest.mark.parametrize(
    "text",
    [
        (
            "Size | Height (cm) | Chest (cm) | Waist (cm)\nA | 46-50 | 36-38 | 36-38\n"
            "B | 51-56 | 39-41 | 39-41\nC | 57-62 | 42-44 | 42-44"
        ),
        (
            "Größe | Alter (Jahre) | Brustumfang (cm) | Taillenumfang (cm)\n"
            "A | 0-1 | 36-38 | 36-38\nB | 1-2 | 39-41 | 39-41\nC | 2-3 | 42-44 | 42-44"
        ),
    ],
)
def test_a_height_or_a_column_of_ages_tells_how_small_a_girth_can_be(text: str) -> None:
    found = values(table(text))
    assert found["A chest"] == found["A waist"] == (36, 38)
    assert questions(table(text)) == []


def test_a_small_girth_beside_the_height_of_a_schoolchild_is_asked_about() -> None:
    reading = table(
        "Size | Height (cm) | Chest (cm)\nA | 128-134 | 32\nB | 134-140 | 34\nC | 140-146 | 36"
    )
    girths = [one for one in ranges(reading) if "chest" in one.dimension]
    assert all(one.findings for one in girths)
    assert {"laid-flat", "impossible"} & set(questions(reading))
