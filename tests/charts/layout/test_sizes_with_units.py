"""Sizes named by a length: names where the measure has a column of its own, measures elsewhere."""

from __future__ import annotations

import pytest

from charts.schema import Dimension
from tests.charts.read_text import questions, ranges, table, values

ROWS = """
110 cm | 100 - 110 cm | 15 - 20 kg | 4 - 5 Yrs
130 cm | 120 - 130 cm | 25 - 32 kg | 8 - 9 Yrs
160 cm | 150 - 160 cm | 48 - 58 kg | Junior / Small
180 cm | 170 - 180 cm | 68+ kg | Adult Large
"""


@pytest.mark.parametrize("size", ["Uniform size", "Size", "Größe", "Talla", "Taille"])
def test_the_first_column_names_the_sizes_beside_a_height(size: str) -> None:
    reading = table(f"{size} | Height | Weight | Age / fit{ROWS}")
    found = values(reading)
    assert found["110 cm height"] == (100, 110)
    assert found["160 cm weight"] == (48, 58)
    assert found["180 cm weight"] == (68, None)
    assert len(found) == 8
    assert questions(reading) == []


def test_the_ages_are_kept_beside_the_sizes() -> None:
    reading = table(f"Uniform size | Height | Weight | Age / fit{ROWS}")
    assert reading.charts[0].sizes[0].also[0].label == "4 - 5 Yrs"


def test_a_girth_that_holds_the_figure_makes_it_a_name() -> None:
    reading = table("Size | Waist | Hip\n85 cm | 80 - 90 cm | 92 cm\n95 cm | 90 - 100 cm | 98 cm")
    assert values(reading) == {
        "85 cm waist": (80, 90),
        "85 cm hip": 92,
        "95 cm waist": (90, 100),
        "95 cm hip": 98,
    }


def test_without_the_measure_beside_it_the_figure_is_one() -> None:
    reading = table("Size | Chest | Waist\n110 cm | 60 cm | 56 cm\n120 cm | 64 cm | 58 cm")
    assert Dimension.HEIGHT in {one.dimension for one in ranges(reading)}
