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


def test_where_all_rows_are_as_long_a_size_is_missing() -> None:
    reading = table("Size | S | M | \nChest (cm) | 82 | 87 | 92\nWaist (cm) | 66 | 71 | 76")
    assert "columns-shifted" not in questions(reading)
    assert values(reading)["S chest"] == 82
