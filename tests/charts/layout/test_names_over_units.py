"""Two levels of names: a measure over its units, beside one that nobody knows over the same.

Where the span of a name over its units is lost, the second unit stands without a name.
"""

from __future__ import annotations

import pytest

from charts.importer import read_bytes
from charts.schema import Dimension, FileReading
from tests.charts.read_text import figures, questions, ranges, values


def _page(name: str) -> FileReading:
    text = (
        "<h3>Sizing</h3><table><tr><td colspan=2></td><th>S<th>M<th>L</tr>"
        "<tr><th rowspan=2>Waist<th>inches<td>28-31<td>31-34<td>34-38</tr>"
        "<tr><th>cm<td>71-79<td>79-86<td>86-97</tr>"
        f"<tr><th rowspan=2>{name}<th>inches<td>20-22<td>22-24<td>24-26</tr>"
        "<tr><th>cm<td>51-56<td>56-61<td>61-66</tr></table>"
    )
    return read_bytes(text.encode(), "harness.html")


def test_an_unknown_name_over_units_is_not_the_measure_before_it() -> None:
    reading = _page("Florbel loops")
    assert set(questions(reading)) == {"heading-unknown"}
    waists = {key: ends for key, ends in values(reading).items() if key.endswith("waist")}
    assert waists == {"S waist": (71, 79), "M waist": (79, 86), "L waist": (86, 97)}


def test_leg_loops_are_a_measure_of_their_own_in_both_units() -> None:
    reading = _page("Leg loops")
    assert questions(reading) == []
    assert values(reading)["M other"] == (56, 61)


@pytest.mark.parametrize("turned", [False, True])
@pytest.mark.parametrize("units", [("inches", "cm"), ("cm", "inches")])
@pytest.mark.parametrize("name", ["Leg loops", "Thigh"])
def test_a_bare_unit_behind_a_measure_nobody_knows_is_of_that_measure(
    name: str, units: tuple[str, str], *, turned: bool
) -> None:
    printed = {"inches": ["20-22", "22-24", "24-26"], "cm": ["51-56", "56-61", "61-66"]}
    rows = [["", "", "S", "M", "L"], ["Waist", "cm", "71-79", "79-86", "86-97"]]
    rows += [[name, units[0], *printed[units[0]]], ["", units[1], *printed[units[1]]]]
    cells = [list(column) for column in zip(*rows, strict=True)] if turned else rows
    text = "\n".join(map(",".join, cells))
    found = ranges(read_bytes(text.encode(), "a.csv"))
    others = [one for one in found if one.dimension is Dimension.OTHER]
    assert [figures(one) for one in others] == [(51, 56), (56, 61), (61, 66)]
    assert all(one.also_published and name in one.heading for one in others)


def test_a_bare_unit_over_other_figures_is_asked_about() -> None:
    text = ",,S,M,L\nLeg loops,cm,51-56,56-61,61-66\n,inches,30-32,33-35,35-37\n"
    assert "units-disagree" in questions(read_bytes(text.encode(), "a.csv"))
