"""Numbers before the names of measures, as of a list of which some are left out."""

from __future__ import annotations

import pytest

from tests.charts.read_text import questions, table, values


@pytest.mark.parametrize("numbers", [(1, 4, 5), (1, 2, 3), (3, 7, 12)])
@pytest.mark.parametrize("word", ["No.", "Nr.", "Pos."])
def test_numbers_of_a_longer_list_before_the_measures_are_none_of_them(
    numbers: tuple[int, int, int], word: str
) -> None:
    one, two, three = numbers
    reading = table(
        f"""{word} | Measure | Maß | S | M | L
        {one} | Chest (cm) | Brustumfang | 88 | 94 | 100
        {two} | Waist (cm) | Taillenumfang | 72 | 78 | 84
        {three} | Hip (cm) | Hüftumfang | 94 | 100 | 106"""
    )
    assert values(reading)["S chest"] == 88
    assert values(reading)["L hip"] == 106
    assert len(values(reading)) == 9
    assert questions(reading) == []
