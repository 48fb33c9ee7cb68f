"""Slips of typing and copying, as published tables hold them."""

from __future__ import annotations

import pytest

from charts.notation import Expected, Reading, read_cell
from charts.quantities import Unit
from charts.schema import Dimension
from tests.charts.told import candidates, told


def test_a_lost_hyphen_is_asked_about_with_the_range_it_may_be() -> None:
    assert told("3050 lbs") == "ask separator-lost"
    assert candidates("3050 lbs") == ["[30, 50] lb (hyphen-lost)"]
    assert candidates("99102", Expected(Dimension.CHEST, Unit.CM)) == ["[99, 102] cm (hyphen-lost)"]


def test_a_number_that_would_part_into_a_doubled_range_is_no_lost_hyphen() -> None:
    assert told("45120", Dimension.WAIST, Unit.CM) == "ask was-a-date"
    assert candidates("45120", Expected(Dimension.WAIST, Unit.CM)) == []


def test_a_lost_space_before_a_fraction_is_asked_about() -> None:
    assert told("341/2", Dimension.CHEST, Unit.IN) == "ask separator-lost"
    assert candidates("311/8-331/4", Expected(Dimension.CHEST, Unit.IN)) == [
        "[31.125, 33.25] in (fraction-glued)"
    ]


@pytest.mark.parametrize(
    "text", ["12-Oct", "12. Okt", "Oct-12", "12 ott", "2024-10-12 00:00:00", "10/12/2024"]
)
def test_a_date_is_asked_about_with_its_two_numbers_in_order(text: str) -> None:
    assert told(text) == "ask was-a-date"
    assert candidates(text) == ["[10, 12] (day-month)"]


@pytest.mark.parametrize("text", ["28/30/32", "30/32/34", "14.40.26"])
def test_three_figures_of_which_none_can_be_a_month_are_no_date(text: str) -> None:
    assert told(text) != "ask was-a-date"


def test_a_date_in_a_column_of_heights_keeps_both_orders() -> None:
    assert candidates("2024-05-04", Expected(Dimension.HEIGHT)) == [
        "64 in (month-day)",
        "53 in (day-month)",
    ]


def test_a_number_like_a_date_s_serial_is_asked_about() -> None:
    assert told("45577", Dimension.CHEST, Unit.CM) == "ask was-a-date"


@pytest.mark.parametrize(
    ("text", "reading"),
    [
        ("XS (81-86 cm)", "XS: [81, 86] cm"),
        ("Small - 36”-38”", "Small: [36, 38] in"),
        ("M: 86-91 cm", "M: [86, 91] cm"),
        ("XS/S 81-86 cm", "XS/S: [81, 86] cm"),
    ],
)
def test_a_size_and_its_quantity_in_one_cell_are_parted(text: str, reading: str) -> None:
    assert told(text) == reading


@pytest.mark.parametrize("text", ["S (6-7)", "S (6½)", "X-Large (46-49)", "Small - 36", "00 (XS)"])
def test_no_value_is_made_from_a_label_unless_a_unit_stands_there(text: str) -> None:
    assert told(text) == "unread unreadable"


@pytest.mark.parametrize(
    "text",
    ["S/M", "2XL", "36R", "165/80A", "7080/8494", "14S +", "14T -", "Age 14+", "2T", "6X", "12 ans",
     "40 extra short", "170104A"],
)  # fmt: skip
def test_a_size_label_is_never_a_measurement(text: str) -> None:
    assert read_cell(text).reading in {Reading.NOTE, Reading.UNREAD}


@pytest.mark.parametrize(
    "text",
    ["41.3 cm, round up to 43 cm", 'High Hip 4" below waist', 'X/Small = 30" chest', "4 =6", "9 O",
     "XXXS304030 - 3263 - 64"],
)  # fmt: skip
def test_prose_with_figures_is_not_read(text: str) -> None:
    assert read_cell(text).reading is Reading.UNREAD


@pytest.mark.parametrize(
    "text",
    ["", " ", "-", "–", "—", "x", "X", "n/a", "N/A", "na", "n.a.", "None", "k.A.", "tbc", "?",
     "...", "…", "/", "*", "&nbsp;", "\u00a0", "nvt", "brak",
     '"', "〃", "ditto"],
)  # fmt: skip
def test_what_stands_for_nothing_is_blank(text: str) -> None:
    assert told(text) == "blank"


@pytest.mark.parametrize("text", ["one size", "to fit", "see chart", "adjustable", "Sizes vary"])
def test_words_without_a_figure_are_a_note(text: str) -> None:
    assert told(text) == "note"
