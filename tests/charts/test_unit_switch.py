"""Cm and inches around one table, as a switch prints them, are no unit of single columns."""

from __future__ import annotations

import pytest

from charts.importer import read_bytes
from charts.schema import Dimension
from tests.charts.read_text import questions, ranges, table

ROWS = "Size | 30 | 32 | 34\nWaist (B) | 85 | 90 | 95\nInside leg | {} | {} | {}"


@pytest.mark.parametrize("switch", ["• INCHES\n• CM", "CM\nIN"])
def test_a_column_that_fits_only_the_other_unit_of_a_switch_is_not_silently_in_it(
    switch: str,
) -> None:
    reading = table(f"{switch}\n{ROWS.format(14, 14, 15)}")
    legs = [one for one in ranges(reading) if one.dimension is Dimension.INSEAM]
    assert len(legs) == 3
    assert all(one.findings for one in legs)
    assert "unit-missing" in questions(reading)


def test_a_switch_whose_one_unit_all_columns_fit_is_believed() -> None:
    reading = table(f"INCHES\nCM\n{ROWS.format(76, 78, 80)}")
    assert questions(reading) == []


def test_one_unit_around_the_table_is_believed() -> None:
    reading = table(f"All measurements in cm\n{ROWS.format(76, 78, 80)}")
    assert questions(reading) == []


@pytest.mark.parametrize("switch", ["CM | INCHES", "METRIC | IMPERIAL", "Imperial\nMetric"])
def test_figures_that_fit_both_units_of_a_switch_are_asked_about(switch: str) -> None:
    panes = "".join(f"<p>{line}</p>" for line in switch.splitlines())
    rows = "<tr><td>Size<td>Length<td>Chest<tr><td>S<td>27<td>42<tr><td>M<td>28<td>44"
    reading = read_bytes(f"{panes}<table>{rows}</table>".encode(), "chart.html")
    assert all(one.findings for one in ranges(reading))
    assert "unit-missing" in questions(reading)
