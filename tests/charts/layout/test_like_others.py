"""Sizes with a word of the shop beside their name, and limits below the sizes."""

from __future__ import annotations

import pytest

from charts.layout.like_others import names_a_size
from tests.charts.read_text import questions, table, values

ROWS = "Size|Chest (cm)|Waist (cm)\nS|82-86|66-70\nM|87-91|71-75\nL|92-96|76-80\n"
ACROSS = "Size|S|M|L|{}\nChest (cm)|82-86|87-91|92-96|97-102\nWaist (cm)|66-70|71-75|76-80|81-86"


@pytest.mark.parametrize("name", ["XL - sold out", "XL in stock", "Level 3 XL", "XL (in stock)"])
def test_a_word_of_the_shop_drops_no_size(name: str) -> None:
    down, across = table(f"{ROWS}{name}|97-102|81-86"), table(ACROSS.format(name))
    for reading in (down, across):
        assert (97, 102) in values(reading).values()
        assert (81, 86) in values(reading).values()
        assert questions(reading) == []


@pytest.mark.parametrize("line", ["Stock|12|30", "Price|49.90|59.90", "In stock L|3|4"])
def test_what_a_shop_counts_below_the_sizes_is_no_size(line: str) -> None:
    reading = table(ROWS + line)
    assert len(values(reading)) == 6


@pytest.mark.parametrize(
    ("text", "size"),
    [("XL - sold out", True), ("Level 3 XL", True), ("Stock", False), ("XL", False)],
)
def test_a_size_is_told_from_a_word_of_the_shop(text: str, size: bool) -> None:
    assert names_a_size(text) is size


def test_a_limit_alone_below_the_sizes_is_none_of_them() -> None:
    reading = table(
        "Size|Chest (cm)|Waist (cm)\nS|82-86|66-70\nM|87-91|71-75\nL|92-96|76-80\nMax. 110 kg||"
    )
    assert len(values(reading)) == 6
    assert not any("weight" in key for key in values(reading))


def test_sizes_that_are_named_by_weights_stay() -> None:
    reading = table("Size|Chest (cm)\n40-50 kg|82-86\n50-60 kg|\n60-70 kg|92-96")
    assert {key for key in values(reading) if key.endswith("weight")} != set()
