"""Rows parted by strokes below headings parted by strokes."""

from __future__ import annotations

import pytest

from charts.importer import read_bytes
from tests.charts.read_text import values
from tests.charts.readers.reading import paste

_TEXT = "Dimensions: Size / chest / back length\nS / 86 cm / 62 cm\nM / 90 cm / 64 cm\nNew!\n"


def test_the_first_line_names_every_part() -> None:
    found = paste(_TEXT)
    assert found.rows()[:3] == [
        ["Size", "chest", "back length"],
        ["S", "86 cm", "62 cm"],
        ["M", "90 cm", "64 cm"],
    ]


def test_broken_lines_of_a_page_are_read_too() -> None:
    page = f"<html><body><div>{_TEXT.replace(chr(10), '<br>')}</div></body></html>"
    found = values(read_bytes(page.encode(), "page.html"))
    assert (found["S chest"], found["M back_length"]) == (86, 64)


@pytest.mark.parametrize(
    ("before", "after"),
    [
        ("back length", "colour"),
        ("Size /", "Chest /"),
        ("M / 90 cm / 64 cm", "M / 90 cm"),
        ("M / 90 cm / 64 cm", "M / 90 cm / 64 cm / 20 cm"),
    ],
)
def test_what_is_uneven_or_unnamed_makes_no_table(before: str, after: str) -> None:
    found = paste(_TEXT.replace(before, after))
    assert all(column == 0 for _, column in found.sheet.cells)
