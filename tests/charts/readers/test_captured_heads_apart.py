"""A line of headings that a blank line parts from its rows heads these rows."""

from __future__ import annotations

import pytest

from charts.importer import read_pasted
from tests.charts.read_text import questions, values
from tests.charts.readers.reading import paste

_SHIRTS = "Shirts\nSize  Chest (cm)  Sleeve (cm)\n\nS  84-88  60\nM  89-93  61\nL  94-98  62\n"
_SUITS = "Suits\nSize  Waist (cm)  Hip (cm)\n\n38  80  96\n40  84  100\n42  88  104\n"


def test_each_table_is_headed_by_the_line_before_its_blank_one() -> None:
    reading = read_pasted(f"{_SHIRTS}\n{_SUITS}")
    assert values(reading)["S chest"] == (84, 88)
    assert values(reading)["38 waist"] == 80
    assert values(reading)["42 hip"] == 104
    assert not questions(reading)


@pytest.mark.parametrize("corner", ["    ", "Size"])
def test_sizes_across_stand_in_such_a_line_too(corner: str) -> None:
    text = (
        f"{corner}      S      M      L\n\nChest   84-88  89-93  94-98\nHip     90     95     100\n"
    )
    assert paste(text).rows()[0] == [corner.strip(), "S", "M", "L"]


@pytest.mark.parametrize(
    "line",
    ["Our new vests  light and warm", "Season  2024  No. 7", "Size  Chest (cm)"],
)
def test_a_line_that_heads_nothing_stays_one_text(line: str) -> None:
    rows = paste(f"{line}\n\nS  84-88  60\nM  89-93  61\nL  94-98  62\n").rows()
    assert rows[0] == [line, "", ""]
