"""A full stop where a hyphen was meant, in a column of ranges."""

from __future__ import annotations

import pytest

from charts.schema import FileReading
from tests.charts.read_text import asked_at, questions, table, values


def read(cell: str, *, before: str = "66-70", behind: str = "76-80") -> FileReading:
    rows = (f"S|82-86|{before}", f"M|87-91|{cell}", f"L|92-96|{behind}")
    return table("\n".join(("Size|Chest (cm)|Waist (cm)", *rows)))


@pytest.mark.parametrize("cell", ["71.75", "71,75"])
def test_it_is_asked_with_the_range_as_the_reading(cell: str) -> None:
    reading = read(cell)
    assert values(reading)["M waist"] == (71, 75)
    assert questions(reading) == ["separator-lost"]
    assert len(asked_at(reading, "separator-lost")) == 1
    why = {one.why for f in reading.findings for one in f.candidates if f.code == "separator-lost"}
    assert why == {"hyphen-lost", "as-printed"}


@pytest.mark.parametrize("cell", ["71.5", "71.70", "71.99", "73.25"])
def test_other_figures_are_left_as_they_are(cell: str) -> None:
    reading = read(cell)
    assert values(reading)["M waist"] == float(cell)
    assert "separator-lost" not in questions(reading)


def test_single_figures_with_decimals_ask_nothing() -> None:
    reading = read("71.75", before="66.70", behind="76.80")
    assert "separator-lost" not in questions(reading)
    assert values(reading)["M waist"] == 71.75
