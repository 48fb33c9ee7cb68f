"""Rows opened by a bar, their cells one a line: only the bar in front tells where a row begins."""

from __future__ import annotations

import pytest

from charts.importer import read_bytes
from tests.charts.read_text import questions, values
from tests.charts.readers.reading import read, rows_of

ROWS = (
    "| |\nS |\nM |\nL |\n|\n|\n| Chest (cm) |\n86 |\n92 |\n98 |\n"
    "|\n| Full\nhip (cm) |\n90 |\n96 |\n102 |\n"
)
"""A blank corner, a heading over two lines, and bars alone between the rows."""


def test_rows_end_where_the_next_bar_opens_one() -> None:
    found = read(f"| Vest guide |\n|\n|\n{ROWS}", "page.txt").sheet
    assert rows_of(found)[-3:] == [
        ["", "S", "M", "L"],
        ["Chest (cm)", "86", "92", "98"],
        ["Full hip (cm)", "90", "96", "102"],
    ]


def test_their_figures_are_read_and_to_be_compared_once() -> None:
    reading = read_bytes(f"| Vest guide |\n|\n|\n{ROWS}".encode(), "page.txt")
    assert values(reading)["S chest"] == 86
    assert values(reading)["L hip"] == 102
    assert questions(reading) == ["text-order"]


@pytest.mark.parametrize(
    "text",
    [
        "| |\nS |\nM |\n| Chest (cm) |\n86 |\n92 |\n98 |\n",
        "| |\nS |\nM |\n| Chest (cm) |\n86 |\nask us |\n",
        "| |\nS |\nM |\n| Article |\n86 |\n92 |\n",
    ],
)
def test_uneven_rows_words_and_rows_without_a_measure_are_not_taken_for_it(text: str) -> None:
    assert all(len(row) < 3 for row in rows_of(read(text, "page.txt").sheet))
