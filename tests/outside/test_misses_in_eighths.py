"""Body measurements of misses in inches and eighths, as a standard publishes them.

Source: ASTM D5585-11e1, Table 1, first rows, as seen on the standard's public page
(astm.org/Standards/D5585.htm): sizes 00 to 20, chest girth, upper chest, underbust, waist (curvy),
waist (straight). The centimetres are derived: inches times 2.54, exact by definition.
"""

from __future__ import annotations

from decimal import Decimal

import pytest

from charts.notation import Expected, Reading, read_cell
from charts.quantities import Unit
from charts.schema import Dimension
from charts.size_labels import read_label

ROWS = {
    "00": ("31 1/8", "31 3/4", "25 3/4", "23 7/8", "25 3/8"),
    "0": ("31 3/4", "32 1/4", "26 1/2", "24 5/8", "26 1/8"),
    "2": ("33", "33 1/4", "27 1/4", "25 3/8", "26 7/8"),
    "4": ("34 1/8", "34 1/8", "28", "26 1/8", "27 5/8"),
    "6": ("35 1/4", "35", "29", "27", "28 1/2"),
    "8": ("36 1/4", "35 7/8", "30", "28", "29 1/2"),
    "10": ("37 1/4", "36 3/4", "31", "29", "30 1/2"),
    "12": ("38 3/4", "38", "32 1/2", "30 3/4", "32 1/4"),
    "14": ("40 3/8", "39 1/4", "34", "32 1/2", "34"),
    "16": ("42 1/8", "40 5/8", "35 3/4", "34 1/2", "36"),
    "18": ("44", "42 1/4", "37 5/8", "36 3/4", "38 1/4"),
    "20": ("46", "43 7/8", "39 5/8", "39", "40 1/2"),
}
CHEST_CM = ("79.0575", "80.645", "83.82", "86.6775", "89.535", "92.075", "94.615", "98.425",
            "102.5525", "106.9975", "111.76", "116.84")  # fmt: skip
CURVY_CM = ("60.6425", "62.5475", "64.4525", "66.3575", "68.58", "71.12", "73.66", "78.105",
            "82.55", "87.63", "93.345", "99.06")  # fmt: skip
STRAIGHT_CM = ("64.4525", "66.3575", "68.2625", "70.1675", "72.39", "74.93", "77.47", "81.915",
               "86.36", "91.44", "97.155", "102.87")  # fmt: skip
NECK = ("12 3/8", "12 5/8", "12 7/8", "13 1/8", "13 3/8", "13 5/8", "13 7/8", "14 1/4", "14 5/8",
        "15", "15 1/2", "16")  # fmt: skip
VULGAR = {"1/8": "⅛", "1/4": "¼", "3/8": "⅜", "1/2": "½", "5/8": "⅝", "3/4": "¾", "7/8": "⅞"}
SIZES = tuple(ROWS)


def centimetres(text: str, dimension: Dimension) -> Decimal:
    reading = read_cell(text, Expected(dimension, Unit.IN))
    assert reading.reading is Reading.READ, text
    assert reading.quantity is not None
    assert reading.quantity.value is not None
    return reading.quantity.value.in_canonical(reading.quantity.unit or Unit.IN).value


@pytest.mark.parametrize(
    ("column", "dimension", "published"),
    [
        (0, Dimension.CHEST, CHEST_CM),
        (3, Dimension.WAIST, CURVY_CM),
        (4, Dimension.WAIST, STRAIGHT_CM),
    ],
)
def test_the_published_inches_come_to_the_derived_centimetres(
    column: int, dimension: Dimension, published: tuple[str, ...]
) -> None:
    for size, wanted in zip(SIZES, published, strict=True):
        assert centimetres(ROWS[size][column], dimension) == Decimal(wanted)


def test_vulgar_characters_say_the_same_as_written_fractions() -> None:
    for row in ROWS.values():
        for text in row:
            whole, _, part = text.partition(" ")
            assert centimetres(whole + VULGAR.get(part, ""), Dimension.CHEST) == centimetres(
                text, Dimension.CHEST
            )


def test_the_neck_girths_are_read_too() -> None:
    found = [centimetres(text, Dimension.NECK) for text in NECK]
    assert found == sorted(found)
    assert found[0] == Decimal("31.4325")
    assert found[-1] == Decimal("40.64")


def test_the_run_together_print_of_the_page_is_asked_about_and_never_read() -> None:
    """The page prints "311/831¾33 341/8": fractions glued to their whole numbers."""
    glued = read_cell("311/8", Expected(Dimension.CHEST, Unit.IN))
    assert glued.reading is Reading.ASK
    assert [why for _, why in glued.candidates] == ["fraction-glued"]
    assert read_cell("311/831¾33 341/8", Expected(Dimension.CHEST, Unit.IN)).quantity is None


def test_the_sizes_sort_from_00_to_20() -> None:
    labels = [read_label(size) for size in SIZES]
    orders = [label.order for label in labels if label is not None]
    assert len(orders) == len(SIZES)
    assert orders == sorted(orders)
