"""Words with two meanings, settled by what stands beside them, and what lies flat."""

from __future__ import annotations

import pytest

from charts.dimensions import Role, read_heading
from charts.schema import Basis, Dimension
from tests.charts.read_text import questions, ranges, table, values

TWICE = "Taille | Poitrine | Taille | Bassin\nS | 84-88 | 64-68 | 90-94\nM | 88-92 | 68-72 | 94-98"


def test_a_waist_headed_like_the_sizes_starts_no_second_table() -> None:
    reading = table(f"Guide des tailles (cm)\n\n{TWICE}")
    assert values(reading)["S waist"] == (64, 68)
    assert len(reading.charts) == 1
    assert questions(reading) == []


def test_two_tables_side_by_side_headed_alike_are_still_two() -> None:
    text = (
        "Size | Chest (cm) | Size | Chest (cm)\nS | 84-88 | XL | 96-100\nM | 88-92 | XXL | 100-104"
    )
    found = values(table(text))
    assert (found["S chest"], found["XXL chest"]) == ((84, 88), (100, 104))


@pytest.mark.parametrize(
    ("title", "size", "chest", "length"),
    [
        ("Plaggets mått (cm)", "Storlek", "Bröstvidd", "Längd"),
        ("Rozměry výrobku (cm)", "Velikost", "Hrudník", "Délka"),
        ("Garment measurements (cm)", "Size", "Chest", "Length"),
    ],
)
def test_where_garments_were_measured_a_length_is_nobodys_height(
    title: str, size: str, chest: str, length: str
) -> None:
    rows = "S | 104 | 62\nM | 110 | 64\nL | 116 | 66"
    reading = table(f"{title}\n\n{size} | {chest} | {length}\n{rows}")
    assert questions(reading) == []
    assert {one.dimension for one in ranges(reading)} == {Dimension.CHEST, Dimension.OTHER}


def test_a_length_below_the_chest_is_nobodys_height() -> None:
    reading = table("Maat | Borst (cm) | Lengte (cm)\nS | 104 | 62\nM | 110 | 64\nL | 116 | 66")
    assert {one.dimension for one in ranges(reading)} == {Dimension.CHEST, Dimension.OTHER}


def test_a_length_laid_flat_is_no_half() -> None:
    text = "Mesures du vêtement à plat (cm)\n\nTaille | Largeur poitrine | Longueur dos"
    reading = table(f"{text}\nS | 48 | 58\nM | 51 | 60\nL | 54 | 62")
    assert questions(reading) == []
    assert [one.basis for one in ranges(reading)[:2]] == [Basis.FLAT, Basis.FINISHED]


@pytest.mark.parametrize("heading", ["Loader height", "Wader height"])
def test_the_words_that_are_known_stand_when_a_near_heading_is_looked_for(heading: str) -> None:
    assert read_heading(heading).dimension is Dimension.HEIGHT


@pytest.mark.parametrize(
    ("heading", "due"),
    [
        ("T. taille", Dimension.WAIST),
        ("Long. dos", Dimension.BACK_LENGTH),
        ("User height", Dimension.HEIGHT),
    ],
)
def test_short_words_met_in_charts(heading: str, due: Dimension) -> None:
    reading = read_heading(heading)
    assert (reading.role, reading.dimension, reading.candidates) == (Role.MEASURE, due, ())


def test_a_doubtful_heading_keeps_the_unit_of_the_title() -> None:
    heading = "Height v-neck opening, V-hals"
    reading = table(f"Sizes (cm)\nSize | Chest | {heading}\nS | 90 | 14\nM | 96 | 15\nL | 102 | 16")
    assert values(reading)["L other"] == 16
    assert questions(reading) == []
