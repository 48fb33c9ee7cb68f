"""Numbers without a heading beside the letters of the sizes."""

from __future__ import annotations

import pytest

from charts.importer import read_pasted
from tests.charts.read_text import questions, values

_TEXT = """XS S M L XL
36 38 40 42 44
Tour de poitrine (cm)
Chest size
83-87 88-92 93-97 98-102 103-107
Tour de taille (cm)
Waist size
67-71 72-76 77-81 82-86 87-91
"""


def test_they_are_a_second_name_where_chest_and_waist_are_named() -> None:
    reading = read_pasted(_TEXT)
    assert questions(reading) == []
    assert values(reading)["M waist"] == (77, 81)
    also = [[one.label for one in size.also] for size in reading.charts[0].sizes]
    assert also == [["36"], ["38"], ["40"], ["42"], ["44"]]


@pytest.mark.parametrize(
    ("before", "after"),
    [
        ("Tour de poitrine (cm)\nChest size", "Tour de bassin (cm)\nHip size"),  # a lost chest
        ("36 38 40 42 44", "36 38 40 42 45"),
        ("36 38 40 42 44", "86 88 90 92 94"),
    ],
)
def test_anything_else_could_be_a_measure_and_is_asked(before: str, after: str) -> None:
    assert "heading-unknown" in questions(read_pasted(_TEXT.replace(before, after)))


def test_two_lines_that_name_different_measures_are_asked() -> None:
    assert "text-order" in questions(read_pasted(_TEXT.replace("Chest size", "Waist size")))
