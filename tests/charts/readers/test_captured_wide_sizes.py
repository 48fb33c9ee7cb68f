"""Sizes of several words in one line, counted by the measures below."""

from __future__ import annotations

import pytest

from charts.importer import read_pasted
from charts.readers.captured.lines import numbered
from charts.readers.captured.wide_sizes import wide_sizes_table
from tests.charts.read_text import questions, values


@pytest.mark.parametrize(
    ("sizes", "key"),
    [
        ("Size Child Small Child Medium Adult Small", "Child Medium chest"),
        ("Age 3-4 yrs 5-6 yrs 7-8 yrs", "5-6 yrs chest"),
        ("Größe Kinder S Kinder M Kinder L", "Kinder M chest"),
    ],
)
def test_words_are_parted_into_as_many_sizes_as_there_are_figures(sizes: str, key: str) -> None:
    reading = read_pasted(f"{sizes}\nChest (cm) 58-64 64-70 84-90\nWaist (cm) 54-58 58-62 68-74\n")
    found = {name.removeprefix("kids "): value for name, value in values(reading).items()}
    assert found[key] == (64, 70)
    assert len(found) == 6
    assert questions(reading) == []


@pytest.mark.parametrize(
    "sizes",
    [
        "Size Child Small Child Medium Adult",  # does not come out even
        "Size Child Small Child Small Adult Small",  # one twice
        "Size XS S M L XL XXL",  # two sizes each
        "Size Zorbo one Zorbo two Zorbo three",
    ],
)
def test_words_that_are_no_sizes_make_no_table(sizes: str) -> None:
    assert wide_sizes_table(numbered(f"{sizes}\nChest (cm) 58-64 64-70 84-90\n")) is None
