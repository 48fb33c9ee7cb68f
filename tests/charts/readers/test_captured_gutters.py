"""Printed columns with blank cells: the blanks that run down between them tell the columns."""

from __future__ import annotations

import pytest

from charts.importer import read_bytes
from charts.schema import FileReading
from tests.charts.read_text import questions, values

ACROSS = (
    ("", "S", "M", "L"),
    ("", "cm / inch", "", ""),
    ("Height", "164 / 64.5", "170 / 67", "176 / 69.5"),
    ("Chest", "86 / 34", "92 / 36", "98 / 38.5"),
    ("Arm length", "", "62 / 24.5", "64 / 25"),
)
LENGTHS = (
    ("Size", "Chest (cm)", "Waist (cm)", "Back length (cm)"),
    ("S", "84-90", "", "42"),
    ("M", "90-96", "74-80", "44"),
    ("L", "", "80-86", "46"),
)


def printed(rows: tuple[tuple[str, ...], ...], way: str) -> str:
    """The rows as a terminal prints them, each column as wide as its longest text."""
    wide = [max(map(len, column)) + 2 for column in zip(*rows, strict=True)]
    put = {"left": str.ljust, "right": str.rjust, "centred": str.center}[way]
    lines = ("".join(put(*pair) for pair in zip(row, wide, strict=True)) for row in rows)
    return "\n".join(line.rstrip() for line in lines) + "\n"


def read(text: str) -> FileReading:
    return read_bytes(text.encode(), "chart.txt")


WAYS = pytest.mark.parametrize("way", ["left", "right", "centred"])


@WAYS
@pytest.mark.parametrize("title", ["", "Sizes of the body\n", "Sizes of the body\n\n"])
def test_sizes_across_may_begin_over_the_second_column(way: str, title: str) -> None:
    reading = read(title + printed(ACROSS, way))
    assert values(reading) == {
        "S height": 164, "S chest": 86,
        "M height": 170, "M chest": 92, "M arm_length": 62,
        "L height": 176, "L chest": 98, "L arm_length": 64,
    }  # fmt: skip
    assert questions(reading) == []


@WAYS
def test_a_blank_cell_leaves_the_others_in_their_columns(way: str) -> None:
    assert values(read(printed(LENGTHS, way))) == {
        "S chest": (84, 90), "S back_length": 42,
        "M chest": (90, 96), "M waist": (74, 80), "M back_length": 44,
        "L waist": (80, 86), "L back_length": 46,
    }  # fmt: skip


@WAYS
def test_rows_behind_an_empty_line_keep_to_the_columns_above(way: str) -> None:
    rows = (("", "6 years", "8 years", "10 years"), ("", "", "", ""))
    rows += (("Chest (cm)", "61", "66", "70"), ("Waist (cm)", "56", "", "60"))
    assert values(read(printed(rows, way))) == {
        "6 years chest": 61, "6 years waist": 56,
        "8 years chest": 66,
        "10 years chest": 70, "10 years waist": 60,
    }  # fmt: skip


def test_a_name_of_two_words_over_a_line_alone_is_its_own_row() -> None:
    rows = (("", "KIDS", "", "ADULTS", ""), ("SIZE", "140", "152", "S", "M"))
    rows += (("Half chest (cm)", "42", "45", "50", "53"), ("Back (cm)", "40", "43", "60", "62"))
    found = values(read(printed(rows, "left")))
    assert {key.split()[0] for key in found if key.split()[1] in ("140", "152")} == {"kids"}
    assert found["kids 152 chest"] == 45


def test_a_price_for_each_parcel_below_is_no_size() -> None:
    rows = (("Weight of the parcel", "Home", "Abroad"), ("to 2 kg", "4.90 €", "9.90 €"))
    rows += (("to 5 kg", "5.90 €", "14.90 €"), ("to 20 kg", "9.90 €", "24.90 €"))
    sizes = printed(
        (("Size", "Chest", "Waist"), *[(s, "84-88 cm", "70-74 cm") for s in "SM"]), "left"
    )
    assert not [
        key
        for key in values(read(f"{sizes}\nDelivery\n{printed(rows, 'left')}"))
        if "weight" in key
    ]


def test_a_banner_over_two_columns_belongs_to_no_single_one() -> None:
    text = (
        "           Men            Women\n"
        "Size  Chest  Waist   Chest  Waist\n"
        "S     84-88  70-74   80-84  62-66\n"
        "M     88-92  74-78   84-88  66-70\n"
    )
    found = values(read(text))
    assert not any(key.startswith("S ") for key in found) or questions(read(text))
