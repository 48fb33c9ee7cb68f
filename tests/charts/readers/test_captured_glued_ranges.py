"""Rows of sizes and ranges that ran together without units, parted by arithmetic."""

from __future__ import annotations

from textwrap import dedent

import pytest

from charts.importer import read_pasted
from charts.readers.captured.glued_ranges import glued_ranges_table
from charts.readers.captured.lines import numbered
from tests.charts.read_text import questions, values

_HEADS = "US SizeGeneral SizeApprox. AgeHeight (In)Weight (lbs.)\n"
_ROWS = """\
4XS3 - 438 - 41½30 - 38
6S5 - 644 - 46½45 - 50
6XS6 - 747 - 48 ½49 - 53
8M7 - 851 - 5354 - 64
10L8 - 953½ - 5563 - 80
18XL13 - 1463 - 66111 - 116
"""


def test_one_way_alone_to_part_all_rows_is_read_and_asked_once() -> None:
    reading = read_pasted(f"Chart\n\n{_HEADS}{_ROWS}")
    assert questions(reading) == ["text-order"]
    found = values(reading)
    assert len(found) == 18
    assert found["10 height"] == pytest.approx((53.5 * 2.54, 55 * 2.54))
    assert found["6X height"] == pytest.approx((47 * 2.54, 48.5 * 2.54))
    assert found["18 weight"] == pytest.approx((111 * 0.45359237, 116 * 0.45359237), abs=0.005)


def test_the_size_of_letters_alone_may_stand_first() -> None:
    table = glued_ranges_table(
        numbered("SizeChest (cm)Waist (cm)\nS86 - 9170 - 75\nM91 - 9675 - 80\nL96 - 10180 - 85\n")
    )
    assert table is not None
    assert [[cell.text for cell in row] for row in table.rows[1:]] == [
        ["S", "86 - 91", "70 - 75"],
        ["M", "91 - 96", "75 - 80"],
        ["L", "96 - 101", "80 - 85"],
    ]


def test_a_size_of_a_figure_stands_once_so_that_the_next_one_has_an_x_of_its_own() -> None:
    table = glued_ranges_table(
        numbered("SizeLettersHeightWeight\n6XS44 - 4645 - 50\n6XS46 - 4850 - 55\n7M48 - 5055 - 60")
    )
    assert table is not None
    labels = [[cell.text for cell in row[:2]] for row in table.rows[1:]]
    assert labels == [["6", "XS"], ["6X", "S"], ["7", "M"]]


@pytest.mark.parametrize(
    "rows",
    [
        pytest.param(
            "SizeLettersHeightWeight\n6XS44 - 4645 - 50\n7M46 - 4850 - 55\n8L48 - 5055 - 60",
            id="several ways",
        ),
        pytest.param(
            "SizeChestWaist\nS86 - 9170 - 75\nM91 - 9675 - 80\nL76 - 8165 - 70\n", id="falls"
        ),
        pytest.param(
            "SizeChestWaist\nS86 - 9170 - 75\nM99 - 9675 - 80\nL96 - 10180 - 85\n", id="no range"
        ),
    ],
)
def test_without_one_way_alone_no_line_of_the_block_is_read(rows: str) -> None:
    reading = read_pasted(f"Chart\n\n{rows}\n")
    assert values(reading) == {}
    assert questions(reading) == ["separator-lost", "no-table"]


@pytest.mark.parametrize(
    "text",
    [
        dedent("""\
            SizeChestWaist
            S86 - 91
            M91 - 96
            L96 - 101
            """),
        "Size and age\nS86 - 9170 - 75\nM91 - 9675 - 80\nL96 - 10180 - 85\n",
        "SizeChestWaist\nS86 - 9170 - 75\nM91 - 9675 - 80\n",
    ],
)
def test_other_lines_are_no_glued_ranges(text: str) -> None:
    assert glued_ranges_table(numbered(text)) is None
