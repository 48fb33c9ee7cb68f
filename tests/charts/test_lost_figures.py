"""A text whose lines say more figures than the table read from them is asked about."""

from __future__ import annotations

import pytest

from charts.importer import read_pasted
from charts.readers.captured.losses import first_lossy
from tests.charts.read_text import questions, values

DRESSES = "\n".join(
    f"{size}/{tall}: length={length} bust={bust} sleeve={sleeve}, {age} Years Old"
    for size, tall, length, bust, sleeve, age in (
        ("S", 120, 70, 92, 40, "5-6"),
        ("M", 130, 74, 96, 44, "7-8"),
        ("L", 140, 78, 100, 48, "9-10"),
    )
)


def test_lines_of_which_one_part_only_is_read_are_asked_about() -> None:
    reading = read_pasted(f"Kids' riding vests\n{DRESSES}\n")
    girths = [key for key in values(reading) if "chest" in key]
    assert girths or "text-order" in questions(reading) or "no-table" in questions(reading)


@pytest.mark.parametrize(
    "text",
    [
        "Vests, spring 2027\nS: chest 84-88 cm, waist 68-72 cm\nM: chest 88-92 cm, waist 72-76 cm",
        "Size S: Chest 84-88 cm | Waist 68-72 cm\nSize M: Chest 88-92 cm | Waist 72-76 cm",
    ],
)
def test_lines_that_are_read_to_their_end_are_not(text: str) -> None:
    reading = read_pasted(text)
    assert values(reading)["M waist"] == (72, 76)
    assert questions(reading) == []


def test_only_figures_of_two_digits_in_several_lines_count() -> None:
    said = [(1, "S 84 68"), (2, "M 88 72"), (3, "L 92 76 in 1 of 3 lengths")]
    assert first_lossy(said, ["S", "84", "M", "88", "72", "L", "92", "76"]) is None
    assert first_lossy(said, ["84", "88", "L", "92", "76"]) is None
    assert first_lossy(said, ["S", "M", "L", "92", "76"]) == 1
