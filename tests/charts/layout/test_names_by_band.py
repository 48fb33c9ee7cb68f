"""Two columns of names for different people make a chart for each."""

from __future__ import annotations

from charts.schema import FileReading
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
