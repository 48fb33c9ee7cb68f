"""Two levels of names: a measure over its units, beside one that nobody knows over the same."""

from __future__ import annotations

from charts.importer import read_bytes
from charts.schema import FileReading
from tests.charts.read_text import questions, values


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
