"""Ways along the back in many words, and places that measuring begins at."""

from __future__ import annotations

import pytest

from charts.dimensions import Role, read_heading
from charts.headings.ways import begins_at_a_place
from charts.schema import Basis, Definition, Dimension, Kind
from tests.charts.read_text import asked_at, questions, ranges, table


@pytest.mark.parametrize(
    ("words", "definition"),
    [
        ("from C7 to waist", Definition.BACK_C7_WAIST),
        ("vom 7. Halswirbel bis zur Taille", Definition.BACK_C7_WAIST),
        ("de la 7e vertèbre cervicale à la taille", Definition.BACK_C7_WAIST),
        ("dalla 7a cervicale alla vita", Definition.BACK_C7_WAIST),
        ("desde la C7 hasta la cintura", Definition.BACK_C7_WAIST),
        ("van de zevende nekwervel tot de taille", Definition.BACK_C7_WAIST),
        ("from the top of the shoulder down to the waist", Definition.BACK_SHOULDER_WAIST),
        ("dalla nuca alla sella", Definition.BACK_C7_SEAT),
        ("Taille über Schulter zu Taille", Definition.BACK_WAIST_SHOULDER_WAIST),
    ],
)
@pytest.mark.parametrize("heading", ["{}", "Back length ({})", "Back length: {} (cm)"])
def test_a_way_is_the_measure_between_its_points(
    heading: str, words: str, definition: Definition
) -> None:
    reading = read_heading(heading.format(words))
    assert (reading.role, reading.dimension) == (Role.MEASURE, Dimension.BACK_LENGTH)
    assert reading.definition is definition or heading != "{}"


@pytest.mark.parametrize(
    ("text", "place"),
    [
        ("From 2 cm above the navel", True),
        ("from armpit round to armpit", True),
        ("from", False),
        ("from (cm)", False),
        ("von", False),
        ("ab Größe", False),
        ("from chest", False),
        ("up to", False),
    ],
)
def test_where_measuring_begins_is_told_from_an_end(text: str, place: bool) -> None:
    assert begins_at_a_place(text) is place


@pytest.mark.parametrize(
    "way", ["From C7 to waist", "from nape to waist", "dalla nuca alla vita", "von C7 bis Taille"]
)
def test_a_column_of_definitions_makes_no_figure_an_open_end(way: str) -> None:
    text = (
        "Measurements in cm\n\nMeasure|How|S|M|L\n"
        f"Chest|around the fullest part|82-86|87-91|92-96\nBack length|{way}|38|40|42"
    )
    reading = table(text)
    backs = [one for one in ranges(reading) if one.dimension is Dimension.BACK_LENGTH]
    assert [(one.kind, one.value) for one in backs] == [
        (Kind.SINGLE, 38),
        (Kind.SINGLE, 40),
        (Kind.SINGLE, 42),
    ]
    assert {one.definition for one in backs} == {Definition.BACK_C7_WAIST}
    assert questions(reading) == []


def test_nor_does_a_second_row_of_headings() -> None:
    rows = "Size|Waist (cm)|Chest (cm)\n|from 2 cm above the navel|\nS|68|82-86\nM|72|87-91"
    waists = [one for one in ranges(table(rows)) if one.dimension is Dimension.WAIST]
    assert [one.value for one in waists] == [68, 72]


def test_from_armpit_to_armpit_is_half_a_girth_still() -> None:
    rows = "Size|Chest (cm)|Waist (cm)\n|from armpit to armpit|\nS|43|66-70\nM|46|71-75"
    reading = table(rows)
    chests = [one for one in ranges(reading) if one.dimension is Dimension.CHEST]
    assert all(one.basis is Basis.FLAT or one.findings for one in chests)
    assert len(chests) == 2


def test_ends_below_a_measure_stay_ends() -> None:
    reading = table("Size|Chest (cm)|Chest (cm)\n|from|to\nS|82|86\nM|87|91")
    assert [(one.low, one.high) for one in ranges(reading)] == [(82, 86), (87, 91)]
    assert asked_at(reading, "column-unused") == []
