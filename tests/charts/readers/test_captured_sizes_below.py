"""Sizes on lines of their own, each of one name or of two, over measures in two units."""

from __future__ import annotations

from textwrap import dedent

import pytest

from charts.importer import read_pasted
from charts.readers.captured.lines import numbered
from charts.readers.captured.sizes_below import sizes_below_table
from tests.charts.read_text import questions, values

_TWO_NAMES = dedent("""\
    Youth sizes
    Size S
    6/6X-6/7
    M
    8/10
    L
    12/14
    Chest (1) in 25 27 29
    cm 64 69 74
    Waist (2) in 23 24 25
    cm 58 61 64
    """)


def test_two_names_of_each_size_take_turns_and_both_units_are_one_value() -> None:
    reading = read_pasted(_TWO_NAMES)
    assert values(reading) == {
        "kids S chest": 64,
        "kids M chest": 69,
        "kids L chest": 74,
        "kids S waist": 58,
        "kids M waist": 61,
        "kids L waist": 64,
    }
    assert questions(reading) == ["text-order"]
    (chart,) = reading.charts
    assert [[one.label for one in size.also] for size in chart.sizes] == [
        ["6/6X-6/7"],
        ["8/10"],
        ["12/14"],
    ]


def test_several_sizes_may_stand_on_one_line() -> None:
    text = _TWO_NAMES.replace("\nM\n8/10", "\nM 8/10")
    assert values(read_pasted(text)) == values(read_pasted(_TWO_NAMES))


def test_one_figure_that_is_not_the_other_in_its_unit_is_asked_about() -> None:
    assert "units-disagree" in questions(
        read_pasted(_TWO_NAMES.replace("cm 64 69 74", "cm 64 66 74"))
    )


@pytest.mark.parametrize(
    ("old", "new"),
    [
        ("\n8/10", ""),  # a name is missing
        ("\n8/10", "\nXL"),  # letters among the numbers
        ("\n12/14", "\n8/10"),  # one twice
        ("\nL\n", "\nZorbo and more\n"),
    ],
)
def test_counts_and_kinds_that_do_not_agree_make_no_table(old: str, new: str) -> None:
    assert sizes_below_table(numbered(_TWO_NAMES.replace(old, new))[1:]) is None


def test_figures_of_two_units_of_which_one_is_kept_beside_the_other_are_not_left_over() -> None:
    reading = read_pasted("Sizes S M L\nChest (1) in 25 27 29\nChest (1) cm 63 69 74\n")
    assert questions(reading) == []
    assert values(reading) == {"S chest": 63, "M chest": 69, "L chest": 74}
