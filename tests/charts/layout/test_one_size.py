"""Blocks for one size each: the size stands above the measures, not in a column of its own."""

from __future__ import annotations

import pytest

from charts.importer import read_bytes
from tests.charts.read_text import questions, ranges, table, values

DUE: dict[str, object] = {
    "S chest": (84, 88),
    "S waist": (70, 74),
    "M chest": (88, 92),
    "M waist": (74, 78),
}


def test_a_size_above_each_block_is_the_size_of_its_measures() -> None:
    reading = table(
        """
        Vest Alpha

        Size S
        Chest | 84-88 cm
        Waist | 70-74 cm

        Size M
        Chest | 88-92 cm
        Waist | 74-78 cm
        """
    )
    assert values(reading) == DUE
    assert questions(reading) == []


def test_a_page_may_name_the_size_before_each_table_or_beside_the_unit() -> None:
    page = (
        "<h3>Size S</h3><table><tr><td>Chest</td><td>84-88 cm</td></tr>"
        "<tr><td>Waist</td><td>70-74 cm</td></tr></table>"
        "<p>and</p><table><tr><th>Size M</th><th>cm</th></tr><tr><td>Chest</td><td>88-92</td></tr>"
        "<tr><td>Waist</td><td>74-78</td></tr></table>"
    )
    reading = read_bytes(page.encode(), "page.html")
    assert values(reading) == DUE
    assert questions(reading) == []


def test_a_block_below_words_that_are_no_size_is_not_read_as_one() -> None:
    reading = table("Our vest\nChest | 84-88 cm\nWaist | 70-74 cm\nHip | 90-94 cm")
    assert not [size for chart in reading.charts for size in chart.sizes if size.label]


def test_a_word_for_size_over_chests_of_lettered_sizes_is_a_chest_and_asked() -> None:
    reading = table("Size | Size\nS | 96-101 cm\nM | 101-106 cm\nL | 106-111 cm\nXL | 111-116 cm")
    assert values(reading)["S chest"] == (96, 101)
    assert questions(reading) == ["heading-two-readings"]


@pytest.mark.parametrize(
    "rows",
    ["Height | 150-160 cm\nWeight | 40-50 kg", "Height | Weight\n150-160 cm | 40-50 kg"],
    ids=["below", "beside"],
)
def test_a_height_is_a_measure_of_the_size_above_it(rows: str) -> None:
    reading = table(f"Size S\n{rows}")
    assert values(reading) == {"S height": (150, 160), "S weight": (40, 50)}
    assert questions(reading) == []


@pytest.mark.parametrize(
    "rows",
    [
        "Height | 150-160 cm\nChest | 80-84 cm\nWeight | 40-50 kg",
        "Height | Chest | Weight\n150-160 cm | 80-84 cm | 40-50 kg",
        "Our vest\nHeight (cm) | 150-160\nChest (cm) | 80-84\nWaist (cm) | 60-64",
    ],
)
def test_a_table_of_one_size_that_only_a_measure_names_is_asked_about(rows: str) -> None:
    reading = table(rows)
    assert questions(reading) == ["blank-inside"]
    assert all(one.findings for one in ranges(reading))


def test_a_lone_size_with_its_unit_is_no_block_and_no_fault() -> None:
    assert questions(table("S | cm")) == ["no-table"]
