"""Halves laid flat beside a person's height: one that is too small for a body tells of them all."""

from __future__ import annotations

from charts.schema import Dimension
from tests.charts.read_text import questions, ranges, table

HALVES = """
Size | Recommended height | Chest
S (165/84A) | 160-167 cm | {0}"
M (170/92A) | 166-173 cm | {1}"
L (175/100A) | 172-179 cm | {2}"
"""


def test_every_figure_of_the_column_carries_the_question() -> None:
    reading = table(HALVES.format("19.5", "20.5", "21.75"))
    assert questions(reading) == ["laid-flat"]
    chests = [one for one in ranges(reading) if one.dimension is Dimension.CHEST]
    assert [bool(one.findings) for one in chests] == [True, True, True]


def test_whole_girths_beside_a_height_are_not_asked_about() -> None:
    assert questions(table(HALVES.format("33", "36", "39"))) == []


def test_whose_measure_a_half_is_is_asked_with_the_half() -> None:
    rows = "S | 46 | 155-160\nM | 48 | 160-165\nL | 50 | 165-170"
    reading = table(f"尺码 | 胸宽(cm) | 身高(cm)\n{rows}")
    assert questions(reading) == ["laid-flat"]
