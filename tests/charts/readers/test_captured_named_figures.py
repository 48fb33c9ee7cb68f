"""Rows whose names hold a figure of their own, and bare sizes over them, as lines of text."""

from __future__ import annotations

from decimal import Decimal
from textwrap import dedent

import pytest

from charts.importer import read_pasted
from charts.readers.captured.value_runs import counted_values
from charts.schema import Dimension
from tests.charts.read_text import questions
from tests.charts.readers.reading import paste

_JACKET = dedent("""\
    Measurement (in cm) S M L XL
    BACK TO END OF SLEEVE D2 91,5 94 96,5 99
    1/2 CHEST WIDTH at armhole H1 54 57 60 63
    1/2 HEM SWEEP H4 49 52 55 58
    Body measurements
    S M L XL
    Neck 37/38 39/40 41/42 43/44
    Chest 91-96 97-102 103-108 109-114
    """)
_TROUSERS = dedent("""\
    Size chart: +/- 1 cm
    34 36 38 40
    ½  waist width cm 36 38 40 42
    Inseam cm 81 81,50 82 82,50
    """)


@pytest.mark.parametrize(
    ("text", "count", "name"),
    [
        ("1/2 chest width H1 54 57 60", 3, "1/2 chest width H1"),
        ("½ waist 36 38 40", 3, "½ waist"),
        ("Chest 2 cm below armhole 54 57 60", 3, "Chest 2 cm below armhole"),
        ("1/2 chest (2,5 cm below armhole) 54 57 60", 3, "1/2 chest (2,5 cm below armhole)"),
        ("Neck 37/38 39/40", 2, "Neck"),
        ("Height 98/104 110/116", 2, "Height"),
    ],
)
def test_a_half_or_a_place_before_the_values_belongs_to_the_name(
    text: str, count: int, name: str
) -> None:
    found = counted_values(text, count)
    assert found is not None
    assert (found.name, len(found.parts)) == (name, count)


@pytest.mark.parametrize(
    ("text", "count"),
    [
        ("1/2 chest 54 57 60", 2),
        ("Chest 54 n/a 57 60", 2),
        ("Chest 54 57 (new) 60 63", 2),
        ("Chest 54 cm tall 57 60", 3),
        ("Chest 12 worn 57 60", 2),
        ("Size 32/30 34/32", 2),
        ("Ratio 28/30 30/32", 2),
        ("Chest 84/92 92/100", 2),
    ],
)
def test_figures_that_may_be_values_are_not_lost_in_a_name(text: str, count: int) -> None:
    assert counted_values(text, count) is None


def test_half_widths_with_the_codes_of_a_drawing_keep_their_sizes() -> None:
    (garment, body) = read_pasted(_JACKET).charts
    halves = [
        (size.label, one.value)
        for size in garment.sizes
        for one in size.ranges
        if one.dimension is Dimension.CHEST
    ]
    assert halves == [("S", 54), ("M", 57), ("L", 60), ("XL", 63)]
    necks = [
        (one.low, one.high)
        for size in body.sizes
        for one in size.ranges
        if one.dimension is Dimension.NECK
    ]
    assert necks == [(37, 38), (39, 40), (41, 42), (43, 44)]


def test_bare_numbers_over_named_halves_are_sizes_and_are_asked() -> None:
    reading = read_pasted(_TROUSERS)
    (chart,) = reading.charts
    inseams = {
        size.label: one.value
        for size in chart.sizes
        for one in size.ranges
        if one.dimension is Dimension.INSEAM
    }
    assert inseams == {"34": 81, "36": Decimal("81.5"), "38": 82, "40": Decimal("82.5")}
    assert "text-order" in questions(reading)


def test_a_place_told_by_a_figure_makes_the_rows_to_be_compared() -> None:
    text = "Size S M L\nChest 2 cm below armhole (cm) 54 57 60\nWaist (cm) 50 53 56\n"
    (sheet,) = paste(text).sheets
    assert sheet.inferred
    assert not paste(text.replace(" 2 cm below armhole", "")).sheet.inferred
