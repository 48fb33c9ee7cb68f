"""One girth with two figures in every size is asked about where the columns are no twins."""

from __future__ import annotations

import pytest

from charts.importer import read_bytes
from charts.schema import Dimension
from tests.charts.read_text import questions, ranges, table

ROWS = "S | 80-84 | 98\nM | 84-88 | 104\nL | 88-92 | 110"


@pytest.mark.parametrize(
    "text",
    [
        f"Size | Chest size (cm) | Chest circumference (cm)\n{ROWS}",
        'Chest size | Chest circumference (cm)\n24/26" | 76\n28/30" | 86\n32/34" | 96',
        'Bust size | 24/26" | 28/30"\nBust girth (cm) | 78 | 88\nLength (cm) | 50 | 54',
    ],
)
def test_two_figures_of_one_girth_are_asked_about_at_all_of_them(text: str) -> None:
    reading = table(text)
    (asked,) = [one for one in reading.findings if one.values.get("case") == "girths"]
    chests = [one for one in ranges(reading) if one.dimension is Dimension.CHEST]
    assert len(chests) > 2
    assert all(asked.id in one.findings for one in chests)


def test_the_body_beside_the_garment_is_not_asked_about() -> None:
    assert questions(table(f"Size | Chest (cm) | Garment chest (cm)\n{ROWS}")) == []


def test_the_same_girth_in_two_units_is_not_asked_about() -> None:
    rows = "S | 84 | 33\nM | 89 | 35\nL | 94 | 37"
    assert questions(table(f"Size | Chest girth (cm) | Chest (in)\n{rows}")) == []


def test_a_girth_whose_basis_is_asked_about_already_is_not_asked_about_again() -> None:
    page = (
        "<table><tr><th>Size<th colspan=2>Body measurements<th colspan=2>Kromp"
        "<tr><th><th>Chest (cm)<th>Waist (cm)<th>Chest (cm)<th>Hip (cm)"
        "<tr><td>S<td>84<td>68<td>98<td>100<tr><td>M<td>88<td>72<td>104<td>106</table>"
    )
    assert questions(read_bytes(page.encode(), "chart.html")) == ["basis-doubtful"]
