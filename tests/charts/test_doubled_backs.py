"""The way from the waist over the shoulder, under the words for half of it."""

from __future__ import annotations

import pytest

from charts.importer import read_bytes
from charts.schema import Definition, Dimension, FileReading
from tests.charts.read_text import questions, ranges

OVER, UP_TO = Definition.BACK_WAIST_SHOULDER_WAIST, Definition.BACK_SHOULDER_WAIST
LONG = "S;83-87\nM;88-92\nL;93-97\n"
SHORT = "S;41-43\nM;44-46\nL;47-49\n"
CHILDREN = "S;51-55\nM;56-60\nL;61-64\n"


def read(heading: str, rows: str, above: str = "") -> FileReading:
    return read_bytes(f"{above}\nSize;{heading}\n{rows}".encode(), "chart.csv")


def definitions(reading: FileReading) -> set[Definition]:
    assert {one.dimension for one in ranges(reading)} == {Dimension.BACK_LENGTH}
    return {one.definition for one in ranges(reading)}


@pytest.mark.parametrize(
    ("heading", "above"),
    [
        ("Waist to shoulder x 2 (cm)", ""),
        ("Taille bis Schulter x 2, cm", ""),
        ("Waist to shoulder (cm)", "Waist to shoulder: the measurement multiplied by two."),
    ],
)
def test_twice_the_way_is_the_way_over_the_shoulder(heading: str, above: str) -> None:
    for rows in (LONG, CHILDREN):
        reading = read(heading, rows, above)
        assert definitions(reading) == {OVER}
        assert "heading-two-readings" not in questions(reading)


def test_what_is_too_long_for_half_of_the_way_is_asked_about() -> None:
    reading = read("Waist to shoulder (cm)", LONG)
    assert definitions(reading) == {OVER}
    assert "heading-two-readings" in questions(reading)


@pytest.mark.parametrize("above", ["", "Waist to shoulder: not doubled.", "Chest: x 2"])
def test_half_of_the_way_stays_so(above: str) -> None:
    reading = read("Waist to shoulder (cm)", SHORT, above)
    assert definitions(reading) == {UP_TO}
    assert "heading-two-readings" not in questions(reading)
