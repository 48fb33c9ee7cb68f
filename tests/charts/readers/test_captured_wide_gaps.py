"""Cells of a printed table that stand far apart: the width of a gap says nothing."""

from __future__ import annotations

import pytest

from charts.importer import read_bytes
from charts.readers.captured.lines import Line, narrowed
from charts.schema import FileReading

ROWS = (
    ("Size", "S", "M", "L", "XL"),
    ("Chest (cm)", "84-88", "88-92", "92-96", "96-100"),
    ("Waist (cm)", "70-74", "74-78", "78-82", "82-86"),
)
NOTES = """How to measure
Chest: hold the tape under the arms, 6-8 cm below the shoulder, and read it without pulling.
Waist: where the trousers sit. For long vests measure 10-12 cm lower, then add 2 cm.
"""


def text(gap: int) -> str:
    first = max(len(row[0]) for row in ROWS) + gap
    lines = [row[0].ljust(first) + "".join(cell.rjust(10) for cell in row[1:]) for row in ROWS]
    return "\n".join([*lines, NOTES])


def values(reading: FileReading) -> list[tuple[str, str, str]]:
    return [
        (size.label, one.dimension.value, one.published)
        for chart in reading.charts
        for size in chart.sizes
        for one in size.ranges
    ]


@pytest.mark.parametrize("gap", [40, 400, 4000])
def test_a_wide_gap_is_read_like_a_narrow_one(gap: int) -> None:
    near, far = (read_bytes(text(one).encode(), "chart.txt") for one in (3, gap))
    assert len(values(near)) == 8
    assert values(far) == values(near)


def test_lines_without_wide_gaps_are_left_as_they_are() -> None:
    lines = [Line("Size   S   M", 1), Line("Chest  84  88", 2)]
    assert narrowed(lines) is lines


def test_only_the_wide_gaps_are_narrowed() -> None:
    wide = Line("Size" + " " * 300 + "S   M", 7)
    assert narrowed([wide]) == [Line("Size" + " " * 60 + "S   M", 7)]


def test_the_gap_of_a_blank_cell_keeps_its_width() -> None:
    rows = (
        "Size          S         M         L",
        "Chest (cm)    83-87     88-92     93-97",
        "Waist (cm)    67-71               77-81",
        "Hip (cm)                92-96     97-101",
    )
    found = values(read_bytes("\n".join(rows).encode(), "chart.txt"))
    assert ("L", "waist", "77-81") in found
    assert ("M", "hip", "92-96") in found
