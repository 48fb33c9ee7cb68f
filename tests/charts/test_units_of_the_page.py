"""A unit said once below the last of several tables of a page."""

from __future__ import annotations

import pytest

from charts.importer import read_bytes
from charts.schema import Basis, FileReading
from tests.charts.read_text import questions, ranges

HEAD = "| Size | Chest | Waist |\n| --- | --- | --- |\n"
WOMEN = f"## Women\n\n{HEAD}| S | 82-86 | 66-70 |\n| M | 87-91 | 71-75 |\n\n"
MEN = f"## Men\n\n{HEAD}| S | 92-97 | 78-83 |\n| M | 98-103 | 84-89 |\n\n"


def read(*parts: str) -> FileReading:
    return read_bytes("".join(parts).encode(), "vests.md")


@pytest.mark.parametrize(
    "note",
    ["All measurements in cm", "Measurements in cm.", "* Alle Maße in cm", "Mesures en cm"],
)
def test_it_holds_for_all_of_them_where_their_figures_can_be_in_it(note: str) -> None:
    reading = read(WOMEN, MEN, note, "\n")
    assert questions(reading) == []
    assert {one.low for one in ranges(reading)} == {82, 66, 87, 71, 92, 78, 98, 84}


def test_a_unit_that_the_figures_cannot_be_in_is_none_of_theirs() -> None:
    small = MEN.replace("92-97", "36-38").replace("98-103", "38-40")
    small = small.replace("78-83", "30-32").replace("84-89", "32-34")
    reading = read(WOMEN, small, "Measurements in inches\n")
    assert "unit-missing" in questions(reading)


def test_a_note_of_the_body_below_one_table_says_nothing_of_another() -> None:
    reading = read(WOMEN, MEN, "Body measurements in cm\n")
    assert ranges(reading)[0].basis is Basis.UNKNOWN
