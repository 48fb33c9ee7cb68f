"""Ends, tolerances and letters that belong to columns beside them, and headings of two measures."""

from __future__ import annotations

import pytest

from charts.findings import Level
from charts.importer import read_bytes
from charts.schema import Basis, Dimension
from tests.charts.read_text import asked_at, questions, ranges, table, values


def test_an_end_belongs_to_the_measure_right_before_it() -> None:
    text = """
        Größe | Brust von | bis | Taille von | bis | Rücken (cm)
        S | 86 | 91 | 71 | 76 | 42
        M | 91 | 97 | 76 | 81 | 44
        L | 97 | 102 | 81 | 86 | 46
        Maße in cm
        """
    found = values(table(text))
    assert (found["S chest"], found["S waist"]) == ((86, 91), (71, 76))


def test_an_end_behind_a_measure_nobody_knows_is_asked() -> None:
    text = """
        Größe | Brust von | bis | Zorbo von | bis
        S | 86 | 91 | 71 | 76
        M | 91 | 97 | 76 | 81
        L | 97 | 102 | 81 | 86
        Maße in cm
        """
    reading = table(text)
    assert values(reading)["S chest"] == (86, 91)
    assert set(questions(reading)) == {"heading-unknown"}


def test_a_lone_tolerance_at_the_end_is_every_measures() -> None:
    text = """
        Size | Chest | Waist | Back | Tol.
        S | 92 | 80 | 62 | ±2
        M | 98 | 86 | 64 | ±2
        cm
        """
    assert {one.tolerance for one in ranges(table(text))} == {2}


def test_tolerances_of_their_own_stay_with_their_measures() -> None:
    text = """
        Size | Chest | Tol | Waist | Tol
        S | 92 | ±2 | 80 | ±1
        M | 98 | ±2 | 86 | ±1
        cm
        """
    found = {(one.dimension, one.tolerance) for one in ranges(table(text))}
    assert found == {(Dimension.CHEST, 2), (Dimension.WAIST, 1)}


@pytest.mark.parametrize("heading", ["Waist/chest", "Chest or waist", "Brust/Taille"])
def test_two_girths_over_one_range_are_asked(heading: str) -> None:
    text = f"Size | {heading} (cm)\nXS | 40-55\nS | 50-70\nM | 60-85\nL | 80-120"
    assert len(asked_at(table(text), "heading-two-readings")) == 4


@pytest.mark.parametrize(
    ("body", "garment", "legend"),
    [("B", "G", "B = body, G = garment, cm"), ("K", "W", "K: Körpermaß, W: Fertigmaß, cm")],
)
def test_letters_in_brackets_mean_what_a_sentence_says(
    body: str, garment: str, legend: str
) -> None:
    text = f"Size | Chest ({body}) | Chest ({garment})\nS | 84-90 | 104\nM | 90-96 | 110\n{legend}"
    reading = table(text)
    assert [size.label for size in reading.charts[0].sizes] == ["S", "M"]
    assert [one.basis for one in ranges(reading)] == [Basis.BODY, Basis.FINISHED] * 2


def test_letters_of_cups_stay_cups() -> None:
    text = "Size | Bust (B) | Bust (C) | Bust (D)\n32 | 84 | 86 | 88\n34 | 88 | 90 | 92\ncm"
    labels = [size.label for size in table(text).charts[0].sizes]
    assert labels[:3] == ["32B", "32C", "32D"]


def test_a_plus_before_the_unit_keeps_its_row_in_lines_of_text() -> None:
    text = "Buoyancy aid\nSize: S M L\nChest: 80-95 cm 90-105 cm 100-120 cm\n"
    text += "Weight: 40-70 kg 60-90 kg 80+ kg\n"
    reading = read_bytes(text.encode(), "aid.txt")
    weights = [one for one in ranges(reading) if one.dimension is Dimension.WEIGHT]
    assert [one.low for one in weights] == [40, 60, 80]
    assert weights[-1].high is None


@pytest.mark.parametrize("slip", ["3305", "abc 33", "33..5"])
def test_a_slip_in_the_other_unit_is_asked_about_at_the_figure_beside_it_too(slip: str) -> None:
    text = f"Size | Waist (cm) | Waist (in)\nS | 80 | 31.5\nM | 85 | {slip}\nL | 90 | 35.5"
    reading = table(text)
    asked = {one.id for one in reading.findings if one.level is Level.QUESTION}
    assert [bool(asked.intersection(one.findings)) for one in ranges(reading)] == [
        False,
        True,
        False,
    ]
