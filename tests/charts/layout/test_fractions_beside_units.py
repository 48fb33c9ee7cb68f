"""Halves in a row that says cm: the unit printed beside a fraction is stronger than it."""

from __future__ import annotations

from charts.importer import read_bytes
from charts.schema import FileReading
from tests.charts.read_text import questions, ranges, table, values

ACROSS = """
Size | UK 4 | UK 4 | UK 6 | UK 6
 | CM | In | CM | In
Brust | 76 | 30 | 78½ | 31
Hüfte | 83½ | 32¾ | 86½ | 34
"""


def _page() -> FileReading:
    text = (
        "<table><tr><th>Größe<th colspan=2>UK 4<th colspan=2>UK 6</tr>"
        "<tr><td>&nbsp;<td>CM<td>In<td>CM<td>In</tr>"
        "<tr><td>Brust<td>76<td>30<td>78&frac12;<td>31</tr>"
        "<tr><td>Hüfte<td>83&frac12;<td>32&frac34;<td>86&frac12;<td>34</tr></table>"
    )
    return read_bytes(text.encode(), "sizes.html")


def test_two_columns_of_a_size_are_its_two_units() -> None:
    reading = _page()
    assert questions(reading) == []
    assert values(reading) == {
        "UK 4 chest": 76,
        "UK 4 hip": 83.5,
        "UK 6 chest": 78.5,
        "UK 6 hip": 86.5,
    }
    assert all(value.also_published is not None for value in ranges(reading))


def test_the_same_where_each_column_repeats_its_size() -> None:
    assert values(table(ACROSS)) == values(_page())


def test_a_unit_in_the_cell_is_not_written_twice() -> None:
    text = ACROSS.replace("83½", "83½ cm").replace("32¾", '32¾"')
    reading = table(text)
    assert questions(reading) == []
    assert values(reading)["UK 4 hip"] == 83.5
