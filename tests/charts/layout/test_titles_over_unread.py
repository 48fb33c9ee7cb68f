"""Titles above figures that made no table: they say nothing of the table that comes after."""

from __future__ import annotations

import pytest

from tests.charts.read_text import questions, ranges, table

UNREAD = "Size | Chest |\nS | 23 - 25 around Chest (27) |\nM | 26 - 28 around Chest (30) |"
BELT = "Size | To fit waist |\nM | 33 - 35 in |\nL | 37 - 39 in |\nXL | 41 - 43 in |"


@pytest.mark.parametrize("between", ["Belt sizes", "Belts", "Belt sizes\n\nOf plain webbing"])
def test_a_band_over_figures_nobody_reads_is_not_that_of_the_next_table(between: str) -> None:
    reading = table(f"Boys' waistcoats\n{UNREAD}\n\n{between}\n{BELT}")
    assert {chart.band for chart in reading.charts} == {None}
    assert len(ranges(reading)) == 3
    assert questions(reading), "the boys' figures are not left out in silence"


@pytest.mark.parametrize("between", ["", "Please note that a belt is worn over the vest.\n"])
def test_a_band_over_figures_nobody_reads_stays_where_no_other_name_follows(between: str) -> None:
    reading = table(f"Boys' belts\n{UNREAD}\n\n{between}{BELT}")
    assert {chart.band for chart in reading.charts} == {"boys"}
