"""Children's figures above most grown-ups' under one heading are asked about."""

from __future__ import annotations

import pytest

from tests.charts.read_text import asked_at, questions, table

BESIDE = """
 | Kids | | | Women | |
Size | 116 | 128 | 140 | XS | S | M
Chest (cm) | 60 | 64 | 68 | 80 | 84 | 88
Waist (cm) | {} | 62 | 66 | 70
"""
BELOW = """
Kids
Size | Chest (cm)
152 | {}
164 | {}
176 | {}

Adults
Size | Chest (cm)
S | 84
M | 90
L | 96
"""


def test_figures_of_children_above_the_middle_of_grown_ups_are_asked_about() -> None:
    beside = table(BESIDE.format("90 | 92 | 94"))
    assert "columns-shifted" in questions(beside)
    assert {"B4", "C4", "D4"} <= set(asked_at(beside, "columns-shifted"))
    assert "E4" not in asked_at(beside, "columns-shifted")
    below = table(BELOW.format(92, 96, 100))
    assert "columns-shifted" in questions(below)


@pytest.mark.parametrize("chests", [(72, 78, 84), (84, 90, 96), (86, 90, 95)])
def test_tall_children_may_measure_as_much_as_small_grown_ups(chests: tuple[int, ...]) -> None:
    assert "columns-shifted" not in questions(table(BELOW.format(*chests)))
