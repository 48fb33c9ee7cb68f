"""Two columns of names for different people make a chart for each."""

from __future__ import annotations

import pytest

from charts.schema import Dimension, FileReading
from tests.charts.read_text import questions, table, values


def names(reading: FileReading) -> list[tuple[str | None, list[str | None]]]:
    return [(chart.band, [size.label for size in chart.sizes]) for chart in reading.charts]


def test_each_band_has_its_own_names_for_the_same_figures() -> None:
    reading = table("""Women's size | Men's size | Chest | Unit
S | XS | 82-88 | cm
M | S | 89-95 | cm
 | M | 38-40 | in""")
    assert names(reading) == [("women", ["S", "M"]), ("men", ["XS", "S", "M"])]
    found = values(reading)
    assert (found["women M chest"], found["men S chest"]) == ((89, 95), (89, 95))
    assert found["men M chest"] == (96.52, 101.6)


def test_names_across_are_parted_too() -> None:
    reading = table("""Damengröße | 36 | 38
Herrengröße | 46 | 48
Brust (cm) | 82-88 | 89-95""")
    assert names(reading) == [("women", ["36", "38"]), ("men", ["46", "48"])]


def test_a_name_for_everybody_remains_the_one() -> None:
    reading = table("""Size | Women EU | Men EU | Chest (cm)
S | 36 | 46 | 82-88
M | 38 | 48 | 89-95""")
    assert names(reading) == [(None, ["S", "M"])]
    assert questions(reading) == []


_ORDERED = """Bestellgröße | INTL | Herren | Damen | Brust (cm) | Bund (cm)
2 | XS | 44 | 34/36 | 84-88 | 70-74
3 | S | 46 | 38 | 88-92 | 74-78
4 | M | 48 | 40 | 92-96 | 78-82"""


def test_numbered_sizes_under_people_are_names_beside_the_one_for_all() -> None:
    reading = table(_ORDERED)
    assert names(reading) == [(None, ["2", "3", "4"])]
    assert questions(reading) == []
    assert [one.label for one in reading.charts[0].sizes[0].also] == ["XS", "44", "34/36"]


@pytest.mark.parametrize(
    ("before", "after"), [("| 48 |", "| 49 |"), ("44 | 34/36", "94 | 84"), ("Brust (cm)", "Arm")]
)
def test_what_could_be_a_measure_of_each_is_asked(before: str, after: str) -> None:
    assert "heading-unknown" in questions(table(_ORDERED.replace(before, after)))


def test_columns_that_only_name_people_make_no_charts_of_the_shared_measures() -> None:
    reading = table(_ORDERED.replace("44 | 34/36", "94 | 84"))
    assert [chart.band for chart in reading.charts] == [None]
    given = [one for one in reading.charts[0].sizes[0].ranges if one.dimension is Dimension.CHEST]
    assert [(one.low, one.high) for one in given] == [(84, 88)]
