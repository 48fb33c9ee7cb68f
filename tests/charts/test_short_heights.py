"""Heights too small for whoever wears letters: how high the garment is, asked about once."""

from __future__ import annotations

import pytest

from charts.schema import Dimension
from tests.charts.read_text import questions, ranges, table


def measured(text: str) -> set[Dimension]:
    """The dimensions of the second column."""
    return {one.dimension for one in ranges(table(text)) if str(one.place)[0] == "B"}


@pytest.mark.parametrize(
    "text",
    [
        "Size | Height (in) | Chest width (in)\nS | 30 | 20\nM | 31 | 21\nL | 32 | 22",
        "size | body_height (in) | sleeve (in)\nS | 23.5 | 19\nM | 24.5 | 20\nL | 25.5 | 21",
    ],
)
def test_no_grown_up_is_so_small(text: str) -> None:
    assert measured(text) == {Dimension.OTHER}
    assert "heading-two-readings" in questions(table(text))


@pytest.mark.parametrize(
    "text",
    [
        "Size | Height (in) | Chest (in)\nS | 62-65 | 34\nM | 65-68 | 36\nL | 68-71 | 38",
        "Size | Height (in) | Weight (lb)\n3 months | 24 | 13\n6 months | 26 | 17",
        "Baby\nSize | Height (in) | Chest (in)\nS | 24 | 17\nM | 26 | 18\nL | 28 | 19",
    ],
)
def test_heights_of_grown_ups_and_of_children_stay_heights(text: str) -> None:
    assert measured(text) == {Dimension.HEIGHT}
    assert "heading-two-readings" not in questions(table(text))
