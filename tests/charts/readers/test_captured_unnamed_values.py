"""Lines of a size with a length and a mass that nobody names."""

from __future__ import annotations

import pytest

from charts.importer import read_bytes
from tests.charts.read_text import asked_at, questions, values

DUE = {
    "S height": (158, 166),
    "S weight": (49, 58),
    "M height": (166, 173),
    "M weight": (58, 67),
    "L height": (173, 181),
    "L weight": (67, 79),
}


@pytest.mark.parametrize(
    "form",
    [
        "{size}: {tall} cm, {heavy} kg",
        "  - {size} - {tall} cm / {heavy} kg",
        "Size {size} ({tall} cm, {heavy} kg)",
        "{size} = {tall} cm and {heavy} kg.",
        "{size}: {heavy}kg {tall}cm",
        "Talla {size}: {tall} cm | {heavy} kg",
    ],
)
def test_units_tell_the_columns_and_the_height_is_asked_about(form: str) -> None:
    figures = (("S", "158-166", "49-58"), ("M", "166-173", "58-67"), ("L", "173-181", "67-79"))
    lines = [form.format(size=size, tall=tall, heavy=heavy) for size, tall, heavy in figures]
    text = "\n".join(
        [
            "Sizes of our vests by height and weight",
            "",
            *lines,
            "",
            "Between two sizes take the larger one.",
        ]
    )
    reading = read_bytes(text.encode(), "a.txt")
    assert values(reading) == DUE
    assert questions(reading) == ["heading-two-readings"]
    assert len(asked_at(reading, "heading-two-readings")) == 3


def test_an_open_end_in_words_is_one_value() -> None:
    reading = read_bytes(
        b"S: 158-166 cm, 49-58 kg\nM: 166-173 cm, 58-67 kg\nL: 173 cm and over, 67-79 kg", "a.txt"
    )
    assert values(reading)["L height"] == (173, None)


def test_one_measure_in_two_units_is_no_pair_of_measures() -> None:
    reading = read_bytes(b"S: 84-89 cm, 33-35 in\nM: 89-94 cm, 35-37 in", "a.txt")
    assert all("height" not in key and "weight" not in key for key in values(reading))


def test_lengths_below_a_grown_ups_are_not_taken_for_heights() -> None:
    reading = read_bytes(b"S: 43-45 cm, 49-58 kg\nM: 46-48 cm, 58-67 kg", "a.txt")
    assert "heading-unknown" in questions(reading)
    assert not any("height" in key for key in values(reading))
