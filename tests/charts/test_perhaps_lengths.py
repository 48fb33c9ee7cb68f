"""A height that may be how long a garment is, and the girths beside it that it tells nothing of."""

from __future__ import annotations

import pytest

from charts.schema import Basis, Dimension
from tests.charts.read_text import questions, ranges, table

ROWS = "S | 57 | 98\nM | 59 | 100\nL | 61 | 102"


def test_a_girth_beside_a_height_that_is_asked_about_is_not_taken_for_the_bodys() -> None:
    reading = table(f"Size | Chest (cm) | Boy (cm)\n{ROWS}")
    chests = [one for one in ranges(reading) if one.dimension is Dimension.CHEST]
    assert {one.basis for one in chests} == {Basis.UNKNOWN}
    assert sorted(questions(reading)) == ["heading-two-readings", "laid-flat"]
    assert all(one.findings for one in chests)


def test_a_girth_beside_a_height_that_is_sure_stays_the_bodys() -> None:
    reading = table(f"Size | Chest (cm) | Body height (cm)\n{ROWS}")
    assert questions(reading) == []
    chests = [one for one in ranges(reading) if one.dimension is Dimension.CHEST]
    assert {one.basis for one in chests} == {Basis.BODY}


def test_a_word_of_the_files_name_that_heads_a_measure_names_no_band() -> None:
    text = f"Size | Chest (cm) | Boy (cm)\n{ROWS}"
    named, plain = table(text, "zorbo_chest_boy.csv"), table(text)
    assert questions(named) == questions(plain)
    assert [chart.band for chart in named.charts] == [None]


def test_another_word_of_the_files_name_names_its_band() -> None:
    text = f"Size | Chest (cm) | Back length (cm)\n{ROWS}"
    assert [chart.band for chart in table(text, "zorbo_chest_boys.csv").charts] == ["boys"]


LONG = "6Y | 62 | 52\n8Y | 66 | 55\n10Y | 70 | 59\n12Y | 76 | 63"
ROUND = "4-5 | 77 | 55\n5-6 | 81 | 57\n6-7 | 85 | 59"


@pytest.mark.parametrize("rows", [f"Size | Chest (cm) | Length (cm)\n{LONG}", ROUND])
def test_no_child_is_as_short_as_a_shirt_for_its_age_nor_as_its_chest_is_round(rows: str) -> None:
    reading = table(rows if rows is not ROUND else f"Age | Chest (cm) | Length (cm)\n{rows}")
    assert Dimension.HEIGHT not in {one.dimension for one in ranges(reading)}
    assert "heading-two-readings" not in questions(reading)
