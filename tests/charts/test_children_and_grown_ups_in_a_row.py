"""Heights of children and letters of grown-ups in one row of sizes, with people named above."""

from __future__ import annotations

import pytest

from charts.importer import read_bytes
from tests.charts.read_text import questions

ROWS = """,KIDS,,,ADULTS,,
{size},128,140,152,S,M,L
{chest},66,70,74,88,94,100"""


@pytest.mark.parametrize(
    ("size", "chest"),
    [("Size", "Chest (cm)"), ("GRÖSSEN / SIZES", "Brustumfang (cm)")],
)
def test_sizes_of_children_before_letters_are_no_heights_with_gaps(size: str, chest: str) -> None:
    reading = read_bytes(ROWS.format(size=size, chest=chest).encode(), "a.csv")
    found = [(chart.band, [size.label for size in chart.sizes]) for chart in reading.charts]
    assert found == [("kids", ["128", "140", "152"]), (None, ["S", "M", "L"])]
    figures = [one.value for chart in reading.charts for size in chart.sizes for one in size.ranges]
    assert figures == [66, 70, 74, 88, 94, 100]
    assert questions(reading) == []
