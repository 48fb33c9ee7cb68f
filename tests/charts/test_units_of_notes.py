"""A figure in a note keeps its unit to itself, however long the unit's name is."""

from __future__ import annotations

import pytest

from charts.schema import UnitFrom
from tests.charts.read_text import questions, ranges, table

_TEXT = """
Size | Bust | Hem length
S | 20.7 | 24.4
M | 21.7 | 24.8
L | 22.6 | 25.2

Sizes can vary by 2-3 {unit} when they are measured by hand.
"""


@pytest.mark.parametrize("unit", ["centimeters", "centimetres", "Zentimeter", "centimètres", "cm"])
def test_the_allowance_of_a_note_is_no_unit_of_the_table(unit: str) -> None:
    reading = table(_TEXT.format(unit=unit))
    assert "unit-missing" in questions(reading)
    assert {one.unit_from for one in ranges(reading)} == {UnitFrom.INFERRED}
