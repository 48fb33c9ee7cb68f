"""Figures of measures above the sizes they belong to."""

from __future__ import annotations

import pytest

from charts.importer import read_pasted
from charts.readers.captured.lines import numbered
from charts.readers.captured.sizes_under import sizes_under_table
from tests.charts.read_text import questions, values

_MEASURES = "Chest (cm) 81 85 89 95\nWaist (cm) 63 67 71 77\n"
_FOUND = {"S chest": 81, "M chest": 85, "L chest": 89, "XL chest": 95} | {
    "S waist": 63,
    "M waist": 67,
    "L waist": 71,
    "XL waist": 77,
}


@pytest.mark.parametrize("sizes", ["Size S M L XL", "S M L XL", "\nTaille S M L XL\n"])
def test_sizes_below_figures_in_as_great_a_number_are_theirs_without_a_question(sizes: str) -> None:
    reading = read_pasted(f"Our guide\n\n{_MEASURES}{sizes}\n")
    assert values(reading) == _FOUND
    assert questions(reading) == []


def test_rows_of_sizes_for_garments_make_a_chart_each_and_are_asked_once() -> None:
    text = f"{_MEASURES}Low waist trousers 4 6 8 10\nSkirts, wide S M L XL\n"
    reading = read_pasted(text)
    labels = [[size.label for size in chart.sizes] for chart in reading.charts]
    assert labels == [["4", "6", "8", "10"], ["S", "M", "L", "XL"]]
    assert {**values(reading), **_FOUND} == values(reading)
    assert questions(reading) == ["text-order"]


def test_a_row_of_fewer_sizes_is_asked_about_and_takes_no_figures() -> None:
    reading = read_pasted(f"{_MEASURES}Tunics S M L XL\nPolos M L XL\nVests 8 10 12\n")
    assert values(reading) == _FOUND
    assert set(questions(reading)) == {"text-order"}


@pytest.mark.parametrize(
    "below",
    [
        "S M L XL\nChest 80 84 88 94\n",  # the sizes of the next table
        "Men S M L XL\n80 84 88 94\n",
        "Hüvelyk 34 36 38 40\n",  # as well a measure that nobody knows here
        "34 36 38 40\n",
        "XL L M S\n",
        "S M L XL 2XL\n",
        "Vests M L XL\nHip (cm) 90 94 98 104\n",
        "Words\nS M L XL\n",
    ],
)
def test_sizes_in_doubt_take_no_figures(below: str) -> None:
    assert sizes_under_table(numbered(f"{_MEASURES}{below}")) is None


def test_fewer_sizes_alone_leave_the_figures_as_they_stand() -> None:
    table = sizes_under_table(numbered(f"{_MEASURES}Vests M L XL\n"))
    assert table is not None
    assert (max(map(len, table.rows)), table.inferred) == (1, True)
    assert set(questions(read_pasted(f"{_MEASURES}Vests M L XL\n"))) & {"text-order", "no-table"}
