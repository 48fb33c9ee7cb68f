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


@pytest.mark.parametrize(
    "title", ["Model's facts", "Unser Model trägt", "Notre mannequin", "Model Ölçüleri", "Manken"]
)
def test_a_person_that_words_name_is_left_out(title: str) -> None:
    reading = read(title, FACTS.format("176 cm", WEIGHT))
    assert dimensions(reading) == [{"chest"}]
    assert questions(reading) == []


def test_what_may_be_a_person_is_asked_about() -> None:
    reading = read("Details", FACTS.format("176 cm", WEIGHT))
    assert dimensions(reading) == [{"chest"}, {"height", "weight"}]
    assert questions(reading) == ["label-repeated"]


@pytest.mark.parametrize(
    "facts",
    [
        "<tr><td>Zorbo</td><td>176 cm</td></tr><tr><td>Weight</td><td>66 kg</td></tr>",
        "<tr><td>Bust</td><td>85 cm</td></tr><tr><td>Waist</td><td>64 cm</td></tr>",
    ],
)
def test_so_is_one_who_has_a_size_of_a_chart_and_no_height(facts: str) -> None:
    reading = read("Details", f"<table><tr><td>Size</td><td>M</td></tr>{facts}</table>")
    assert "label-repeated" in questions(reading)
    other = read("Details", f"<table><tr><td>Size</td><td>5XL</td></tr>{facts}</table>")
    assert "label-repeated" not in questions(other)


def test_two_persons_in_two_sizes_are_asked_about_as_well() -> None:
    second = FACTS.format("184 cm", WEIGHT).replace("<td>M<", "<td>S<")
    reading = read("Details", FACTS.format("176 cm", WEIGHT) + f"<h3>More</h3>{second}")
    assert questions(reading) == ["label-repeated", "label-repeated"]


def test_a_size_with_ranges_is_a_chart() -> None:
    reading = read("Details", FACTS.format("172-180 cm", WEIGHT))
    assert dimensions(reading) == [{"chest"}, {"height", "weight"}]
    assert questions(reading) == []
