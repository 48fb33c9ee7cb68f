"""One number, in the ways that published tables print it."""

from __future__ import annotations

from decimal import Decimal

import pytest

from charts.notation import Expected, read_cell
from charts.quantities import Unit
from charts.schema import Dimension
from tests.charts.told import candidates, told

CHEST, HEIGHT, BACK, NECK = (
    Dimension.CHEST,
    Dimension.HEIGHT,
    Dimension.BACK_LENGTH,
    Dimension.NECK,
)
CM, IN, MM = Unit.CM, Unit.IN, Unit.MM


@pytest.mark.parametrize(
    ("text", "reading"),
    [
        ("86", "86"),
        ("104", "104"),
        ("37.5", "37.5"),
        ("86.36", "86.36"),
        ("57,5", "57.5"),
        ("73,5 cm", "73.5 cm"),
        ("78,50", "78.5"),
        (".5 in", "0.5 in"),
    ],
)
def test_whole_and_decimal_numbers_are_read_with_either_mark(text: str, reading: str) -> None:
    assert told(text) == reading


@pytest.mark.parametrize(
    ("text", "value"),
    [
        ("20 1/2", "20.5"),
        ('14 ½ "', "14.5"),
        ("28 ½", "28.5"),
        ("35½", "35.5"),
        ("43¼", "43.25"),
        ("52¾", "52.75"),
        ("33⅝", "33.625"),
        ("34&frac12;", "34.5"),
        ("34<sup>1</sup>/<sub>2</sub>", "34.5"),
        ("34¹⁄₂", "34.5"),
        ("34 1⁄2", "34.5"),
        ("36 7/16", "36.4375"),
    ],
)
def test_a_fraction_behind_a_space_or_as_a_character_means_inches(text: str, value: str) -> None:
    assert told(text) == f"{value} in"


def test_a_fraction_has_the_step_it_is_printed_to() -> None:
    quantity = read_cell("34 3/8").quantity
    assert quantity is not None
    assert quantity.value is not None
    assert quantity.value.step == Decimal("0.125")


@pytest.mark.parametrize(
    ("text", "step"), [("34", "1"), ("34.5", "0.1"), ("86,36", "0.01"), ("13.875", "0.001")]
)
def test_a_decimal_has_the_step_of_its_last_place(text: str, step: str) -> None:
    quantity = read_cell(text).quantity
    assert quantity is not None
    assert quantity.value is not None
    assert quantity.value.step == Decimal(step)


def test_eighths_as_decimals_mean_inches() -> None:
    assert told("13.875", Dimension.SHOULDER_BREADTH) == "13.875 in"


def test_a_half_centimetre_written_as_a_fraction_stays_the_column_s_centimetre() -> None:
    assert told("44½", BACK, CM) == "44.5"


def test_a_fraction_that_cannot_be_inches_of_its_dimension_proves_no_unit() -> None:
    assert told("86½", CHEST) == "86.5"


def test_a_fraction_alone_is_read_where_inches_are_expected() -> None:
    assert told("1 /2 to 1 inch") == "[0.5, 1] in"
    assert told("3/4 in") == "0.75 in"


def test_a_fraction_alone_is_no_number_where_no_inches_are_expected() -> None:
    assert told("3/4", unit=CM) == "unread unreadable"


def test_the_letter_h_is_a_half_where_inches_are_expected() -> None:
    assert told("11h", NECK, IN) == "11.5 in"
    assert told("11h", NECK, CM) == "unread unreadable"


def test_a_hyphen_before_a_fraction_is_a_joint_and_is_asked_about() -> None:
    assert told("2-3/4") == "ask double-range 2.75 in"
    assert told("34-1/2 - 36-1/2", CHEST, IN) == "ask double-range [34.5, 36.5] in"


def test_a_second_unit_proves_the_joint() -> None:
    assert told("2-3/4 ± 1-1/4 inches (6.99 ± 3.18 cm)") == "6.99 ±3.18 cm also 2.75 ±1.25 in"


def test_three_digits_behind_a_comma_are_asked_about() -> None:
    assert told("1,250") == "ask separator-lost"
    assert candidates("1,250") == ["1.25 (as-printed)", "1250 (thousands)"]


def test_a_thousand_with_a_point_is_asked_about_where_millimetres_are_printed() -> None:
    assert candidates("1.650 mm") == ["1.65 mm (as-printed)", "1650 mm (thousands)"]


def test_a_comma_between_two_numbers_is_asked_about_where_it_is_no_decimal_mark() -> None:
    assert candidates("34,36", Expected(decimal_comma=False)) == [
        "34.36 (as-printed)",
        "[34, 36] (comma-between)",
    ]


@pytest.mark.parametrize("text", ["1.401,40", "12.3.4", "34,5,6", "4099990000017", "34.12345"])
def test_a_number_that_no_size_chart_holds_is_not_read(text: str) -> None:
    assert told(text).startswith("unread")


@pytest.mark.parametrize(
    ("text", "reading"),
    [
        ("1,70", "1.7 m"),
        ("1,64 m", "1.64 m"),
        ("1m55", "1.55 m"),
        ("1 m 55", "1.55 m"),
        ("1m55 - 1m60", "[1.55, 1.6] m"),
        ("1,60 - 1,70 m", "[1.6, 1.7] m"),
        ("1.60-1.70", "[1.6, 1.7] m"),
        ("95 cm - 1,05 m", "[95, 105] cm"),
    ],
)
def test_heights_in_metres_are_read_as_such(text: str, reading: str) -> None:
    assert told(text, HEIGHT) == reading


def test_a_figure_like_metres_is_asked_about_where_the_dimension_is_not_known() -> None:
    assert told("1,70") == "ask unit-missing 1.7"
    assert candidates("1,70") == ["1.7 m (other-unit)"]


def test_millimetres_keep_their_unit() -> None:
    assert told("1500-1650 mm", HEIGHT) == "[1500, 1650] mm"
    assert told("117", NECK, MM) == "ask impossible 117"


@pytest.mark.parametrize(
    ("text", "value"),
    [("34 2/5", "34.4"), ("31 3/5 - 32 4/5", "[31.6, 32.8]"), ("25 7/10", "25.7")],
)
def test_fifths_and_tenths_behind_a_girth_mean_inches_too(text: str, value: str) -> None:
    assert told(text) == f"{value} in"


@pytest.mark.parametrize("text", ["6 2/3", "98 2/3", "62 3/6", "34 5/3", "34 2/11"])
def test_ages_behind_a_size_are_no_fraction_of_an_inch(text: str) -> None:
    assert " in" not in told(text)
