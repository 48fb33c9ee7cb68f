"""A column that may be the garment's is taken for what its own words say, and stays asked about."""

from __future__ import annotations

import pytest

from charts.schema import Basis, FileReading
from tests.charts.read_text import asked_at, ranges, table


def bases(reading: FileReading, heading: str) -> set[Basis]:
    return {one.basis for one in ranges(reading) if one.heading == heading}


def asked(reading: FileReading) -> set[str]:
    return {*asked_at(reading, "basis-doubtful"), *asked_at(reading, "laid-flat")}


HALVES = """
    Size | {heading} | Length (cm)
    S    | 52  | 68
    M    | 54  | 70
    L    | 56  | 72
"""


@pytest.mark.parametrize(
    "heading",
    [
        *("Chest width (cm)", "Brustbreite (cm)", "Largeur poitrine (cm)"),
        *("Larghezza torace (cm)", "Ancho de pecho (cm)", "Ширина груди (см)"),
    ],
)
def test_a_width_at_half_a_girth_is_kept_as_half_and_asked_about(heading: str) -> None:
    reading = table(HALVES.format(heading=heading))
    assert bases(reading, heading) == {Basis.FLAT}
    assert {"B2", "B3", "B4"} <= asked(reading)


def test_inches_and_sizes_that_run_across_make_no_difference() -> None:
    reading = table("Size | S | M | L\nChest width (in) | 20 | 21 | 22\nLength (in) | 27 | 28 | 29")
    assert bases(reading, "Chest width (in)") == {Basis.FLAT}
    assert {"B2", "C2", "D2"} <= asked(reading)


def test_a_width_too_large_for_a_half_is_the_whole_garments() -> None:
    text = "Size | Chest width (cm)\nS | 96\nM | 102\nL | 108"
    reading = table(text)
    assert bases(reading, "Chest width (cm)") == {Basis.FINISHED}
    assert asked(reading) == {"B2", "B3", "B4"}


@pytest.mark.parametrize("heading", ["Width (cm)", "Breite (cm)", "Largeur (cm)", "Szerokość (cm)"])
def test_a_width_of_no_part_is_the_garments(heading: str) -> None:
    reading = table(f"Size | {heading}\nS | 52\nM | 54\nL | 56")
    assert bases(reading, heading) == {Basis.FINISHED}
    assert asked(reading) == {"B2", "B3", "B4"}


def test_a_length_and_a_girth_that_only_sounds_like_a_width_stay_open() -> None:
    length = table("Taille | Tour de poitrine | Longueur\nS | 90 cm | 68 cm\nM | 96 cm | 70 cm")
    assert bases(length, "Longueur") == {Basis.UNKNOWN}
    girth = table("Storlek | Bröstvidd (cm)\nS | 84-92\nM | 92-100\nL | 100-110")
    assert bases(girth, "Bröstvidd (cm)") == {Basis.UNKNOWN}
    assert asked(girth) == {"B2", "B3", "B4"}


def test_halves_under_words_for_the_garment_lie_flat() -> None:
    text = "Talla | Pecho | Largo\nS | 49 cm | 69 cm\nM | 52 cm | 71 cm\nL | 55 cm | 73 cm\n"
    reading = table(text + "Medidas de la prenda")
    assert bases(reading, "Pecho") == {Basis.FLAT}
    assert {"B2", "B3", "B4"} <= set(asked_at(reading, "laid-flat"))


def test_a_bare_chest_at_half_a_girth_is_taken_for_nothing() -> None:
    reading = table("Size | Chest (cm)\nS | 49\nM | 52\nL | 55")
    assert bases(reading, "Chest (cm)") == {Basis.UNKNOWN}
    assert asked(reading) == {"B2", "B3", "B4"}
