"""Words that say "taken flat" over figures that can only be whole girths."""

from __future__ import annotations

import pytest

from charts.answers import Answer, Meaning, Scope
from charts.importer import read_bytes
from charts.schema import Basis, Dimension
from tests.charts.read_text import asked_at, questions, ranges, table, values

GIRTHS = {Dimension.CHEST, Dimension.WAIST, Dimension.HIP}
WHOLE = """
Size | Chest (cm) | Waist (cm) | Hip (cm) | Length (cm)
XS | 79-87 | 72-79 | 82-90 | 60
S | 88-96 | 80-87 | 91-99 | 62
M | 97-105 | 88-95 | 100-108 | 64
L | 106-114 | 96-103 | 109-117 | 66
All measurements are taken flat across the garment.
"""
HALVES = """
Size | Chest (cm) | Waist (cm)
S | 46 | 42
M | 49 | 45
L | 52 | 48
All measurements are taken flat across the garment.
"""
ODD = """
Size | Chest (in) | Waist (in)
XS | 34-36 | 29
S | 36-38 | 301
M | 38-40 | 311
L | 40-42 | 321
XL | 42-44 | 331
"""


def test_one_question_bears_on_every_girth_and_the_figures_stay() -> None:
    reading = table(WHOLE)
    assert questions(reading) == ["basis-doubtful"]
    girths = [one for one in ranges(reading) if one.dimension in GIRTHS]
    assert len(asked_at(reading, "basis-doubtful")) == len(girths) == 12
    assert {one.basis for one in girths} == {Basis.UNKNOWN}
    assert girths[1].low == 72


def test_halves_that_are_said_to_lie_flat_are_not_asked_about() -> None:
    reading = table(HALVES)
    assert questions(reading) == []
    assert {one.basis for one in ranges(reading)} == {Basis.FLAT}


def test_a_column_that_cannot_be_right_is_in_doubt_with_all_its_values() -> None:
    reading = table(ODD)
    assert "impossible" in questions(reading)
    waists = [one.place for one in ranges(reading) if one.dimension is Dimension.WAIST]
    assert asked_at(reading, "impossible") == waists


@pytest.mark.parametrize("basis", [Basis.BODY, Basis.FINISHED])
def test_who_says_whose_measure_it_is_is_asked_no_more(basis: Basis) -> None:
    headings = ("Chest (cm)", "Waist (cm)", "Hip (cm)")
    answers = [Answer(Meaning(Scope.COLUMN, "A1:E5", headings, basis=basis), "Ann")]
    text = WHOLE.strip().replace(" | ", "\t")
    reading = read_bytes(text.encode(), "chart.csv", "", answers)
    assert questions(reading) == []
    assert {one.basis for one in ranges(reading) if one.dimension in GIRTHS} == {basis}


HEADED = """
    Size          | S    | M    | L
    {half} (cm)   | 110  | 114  | 118
    Sleeve (cm)   | 64   | 65   | 66
"""


@pytest.mark.parametrize("half", ["Half chest", "1/2 chest", "Chest laid flat", "Pit to pit"])
def test_a_heading_of_halves_over_whole_girths_is_asked_about_and_keeps_them(half: str) -> None:
    reading = table(HEADED.format(half=half))
    assert values(reading)["M chest"] == 114
    assert {"B2", "C2", "D2"} <= set(asked_at(reading, "basis-doubtful"))
    assert "impossible" not in questions(reading)


def test_half_a_chest_that_can_be_one_stays_half_of_it() -> None:
    reading = table(HEADED.format(half="Half chest").replace("11", "5"))
    chests = [one for one in ranges(reading) if one.dimension is Dimension.CHEST]
    assert {one.basis for one in chests} == {Basis.FLAT}
    assert "basis-doubtful" not in questions(reading)


def test_three_girths_in_one_cell_before_the_figures_are_no_obstacle() -> None:
    reading = table(
        "Size | Size | Size | Size\nSize\nSize | 87-64-93 | 4-5 years | 36-38\n1/2 chest"
    )
    assert "basis-doubtful" in questions(reading)
