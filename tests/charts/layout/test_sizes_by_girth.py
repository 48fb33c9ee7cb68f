"""Sizes that have no other name than the girth they fit."""

from __future__ import annotations

import pytest

from tests.charts.read_text import questions, table

SIZES = '24/26" | 28/30" | 32/34"'


@pytest.mark.parametrize("heading", ["Chest size", "Bust Size", "Waist size"])
@pytest.mark.parametrize(
    "sizes", [SIZES, "24/26 | 28/30 | 32/34", "24-26 in | 28-30 in | 32-34 in"]
)
def test_two_figures_under_a_measure_and_a_word_for_size_name_the_sizes(
    heading: str, sizes: str
) -> None:
    reading = table(f"{heading} | {sizes}\nLength (cm) | 50 | 54 | 58\nHip (cm) | 74 | 82 | 90")
    (chart,) = reading.charts
    assert [size.label for size in chart.sizes] == [one.strip() for one in sizes.split("|")]


def test_a_girth_that_is_fitted_names_the_sizes_of_the_garment() -> None:
    down = 'To fit chest | Garment chest (cm)\n24/26" | 76\n28/30" | 86\n32/34" | 96'
    (chart,) = table(down).charts
    assert [size.label for size in chart.sizes] == ['24/26"', '28/30"', '32/34"']


def test_a_girth_in_plain_ranges_before_others_names_no_sizes() -> None:
    reading = table("Chest (cm) | Waist (cm)\n84-88 | 66-70\n88-92 | 70-74\n92-96 | 74-78")
    assert questions(reading) == ["no-table"]
