"""Sentences that could be taken for rows: quoted ones, equations of units; short names of sizes."""

from __future__ import annotations

import pytest

from charts.importer import read_bytes
from tests.charts.read_text import values


@pytest.mark.parametrize(
    "note",
    [
        '"Chest in cm, measured on the body. Back length in cm, measured on the vest."',
        'cm,"* longer panel of L and XL, +3 cm behind"',
        '"1 inch = 2.54 cm"',
        "1 cm = 0.39 inch",
    ],
)
def test_a_sentence_below_is_no_size(note: str) -> None:
    text = f"Size,Chest,Back length\nS,84-90,42\nM,90-96,44\nL,96-104,46\n{note}\n"
    reading = read_bytes(text.encode(), "chart.csv")
    assert [[size.label for size in chart.sizes] for chart in reading.charts] == [["S", "M", "L"]]
    assert len(values(reading)) == 6


def test_inch_marks_still_part_nothing() -> None:
    text = 'Size,Chest,Waist\nS,34",28"\nM,36",30"\nL,"38,32"\n'
    assert values(read_bytes(text.encode(), "chart.csv"))["S chest"] == 86.36


def test_cm_behind_other_sizes_of_children_is_a_size() -> None:
    text = (
        "Size / Chest / Back\nCXS / 55-60 / 30\nCS / 60-65 / 33\nCM / 65-70 / 36\nCL / 70-76 / 39\n"
    )
    found = values(read_bytes(text.encode(), "chart.txt"))
    assert (found["CM chest"], found["CL back_length"]) == ((65, 70), 39)
