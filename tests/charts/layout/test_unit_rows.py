"""A unit alone in a row below the sizes, where the merged cell over all columns is lost."""

from __future__ import annotations

import pytest

from charts.layout.unit_rows import units_spread
from charts.quantities import Unit
from charts.schema import Dimension
from charts.sheet import Addressing, Cell, Sheet
from tests.charts.read_text import questions, ranges, table, values

CHEST = {"S chest": 86, "M chest": 90, "L chest": 94}
"""In centimetres."""


@pytest.mark.parametrize("unit", ["cm", "(cm)", "centimetres"])
def test_a_unit_below_the_first_size_holds_for_all(unit: str) -> None:
    reading = table(f" | S | M | L\n | {unit} | | \nHeight | 164 | 170 | 176\nChest | 86 | 90 | 94")
    assert {k: v for k, v in values(reading).items() if "chest" in k} == CHEST
    assert questions(reading) == []


def test_two_units_below_the_first_size_are_both_of_each_cell() -> None:
    rows = "Height | 164 / 64.5 | 170 / 67 | 176 / 69.5\nChest | 86 / 34 | 90 / 35.5 | 94 / 37"
    reading = table(f" | S | M | L\n | cm / inch | | \n{rows}")
    assert questions(reading) == []
    chests = [one for one in ranges(reading) if one.dimension is Dimension.CHEST]
    also = [one.also_published for one in chests if one.also_published]
    assert [
        (float(one.value or 0), other.unit) for one, other in zip(chests, also, strict=True)
    ] == [
        (86, Unit.IN),
        (90, Unit.IN),
        (94, Unit.IN),
    ]


def test_a_unit_below_the_first_measure_may_be_of_that_alone() -> None:
    rows = [["Size", "Weight", "Chest"], ["", "kg", ""], ["S", "50-60", "86-90"]]
    cells = {(n, at): Cell(row[at]) for n, row in enumerate(rows) for at in range(3) if row[at]}
    sheet = Sheet("", Addressing.PLAIN, cells, 3, 3)
    assert units_spread(sheet) is sheet
