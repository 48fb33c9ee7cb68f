"""A row that is longer than the sizes above it has slipped, if one of its cells is no figure."""

from __future__ import annotations

import pytest

from charts.schema import Dimension
from tests.charts.read_text import questions, ranges, table, values


@pytest.mark.parametrize("extra", ["navel", "2 cm above navel"])
def test_every_figure_of_a_row_that_reaches_past_the_sizes_is_asked_about(extra: str) -> None:
    reading = table(
        f"Size | S | M | L\nChest (cm) | 82-86 | 87-91 | 92-96 | \n"
        f"Waist (cm) | {extra} | 66-70 | 71-75 | 76-80"
    )
    waists = [one for one in ranges(reading) if one.dimension is Dimension.WAIST]
    chests = [one for one in ranges(reading) if one.dimension is Dimension.CHEST]
    assert len(waists) == 4
    assert all(one.findings for one in waists)
    assert not any(one.findings for one in chests)
    assert "columns-shifted" in questions(reading)


ENGLISH = """
    Size | S | M | XL
    Chest (cm) | 82-86 | 87-91 | 92-96 | 97-101
    Waist (cm) | 66-70 | 71-75 | 76-80 | 81-85
"""
GERMAN = """
    Größe | 46 | 48 | 52 |
    Brustumfang (cm) | 92 | 96 | 100 | 104
    Taillenumfang (cm) | 80 | 84 | 88 | 92
"""
FRENCH = """
    Taille | S | M | L
    Tour de poitrine (in) | 32-34 | 34-36 | 36-38 | 38-40
    Tour de hanches (in) | 34-36 | 36-38 | 38-40 | 40-42
"""


@pytest.mark.parametrize("text", [ENGLISH, GERMAN, FRENCH])
def test_where_all_rows_reach_past_them_any_name_may_be_lost(text: str) -> None:
    reading = table(text)
    assert questions(reading) == ["blank-inside", "columns-shifted"]
    assert len(ranges(reading)) == 8
    assert all(one.findings for one in ranges(reading))


@pytest.mark.parametrize(("first", "second"), [("4", "2"), ("body", "navel")])
def test_ease_or_words_behind_the_sizes_are_no_lost_size(first: str, second: str) -> None:
    reading = table(
        f"Size | S | M | L\nChest (cm) | 82-86 | 87-91 | 92-96 | {first}\n"
        f"Waist (cm) | 66-70 | 71-75 | 76-80 | {second}"
    )
    assert "columns-shifted" not in questions(reading)
    assert values(reading)["L chest"] == (92, 96)
