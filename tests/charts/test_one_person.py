"""What a person in a picture measures is no chart of one size."""

from __future__ import annotations

import pytest

from charts.importer import read_bytes
from charts.schema import FileReading
from tests.charts.read_text import questions

CHART = (
    "<table><tr><th>Size</th><th>Chest</th></tr><tr><td>S</td><td>84-88 cm</td></tr>"
    "<tr><td>M</td><td>89-93 cm</td></tr></table>"
)
FACTS = "<table><tr><td>Size</td><td>M</td></tr><tr><td>Height</td><td>{}</td></tr>{}</table>"
WEIGHT = "<tr><td>Weight</td><td>66 kg</td></tr>"


def read(title: str, facts: str) -> FileReading:
    return read_bytes(f"<h2>Vest</h2>{CHART}<h3>{title}</h3>{facts}".encode(), "page.html")


def dimensions(reading: FileReading) -> list[set[str]]:
    return [
        {str(one.dimension) for size in chart.sizes for one in size.ranges}
        for chart in reading.charts
    ]


@pytest.mark.parametrize("title", ["Model's facts", "Unser Model trägt", "Notre mannequin"])
def test_a_person_that_words_name_is_left_out(title: str) -> None:
    reading = read(title, FACTS.format("176 cm", WEIGHT))
    assert dimensions(reading) == [{"chest"}]
    assert questions(reading) == []


def test_what_may_be_a_person_is_asked_about() -> None:
    reading = read("Details", FACTS.format("176 cm", WEIGHT))
    assert dimensions(reading) == [{"chest"}, {"height", "weight"}]
    assert questions(reading) == ["label-repeated"]


def test_a_size_with_ranges_is_a_chart() -> None:
    reading = read("Details", FACTS.format("172-180 cm", WEIGHT))
    assert dimensions(reading) == [{"chest"}, {"height", "weight"}]
    assert questions(reading) == []
