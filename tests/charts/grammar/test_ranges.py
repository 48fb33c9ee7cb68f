"""Ranges, single values and tolerances, in the ways that published tables print them."""

from __future__ import annotations

import pytest

from charts.notation import Expected, Reading, read_cell
from charts.quantities import Unit
from charts.schema import Dimension
from tests.charts.told import candidates, told


@pytest.mark.parametrize(
    ("text", "reading"),
    [
        ("34-36", "[34, 36]"),
        ("86-91 cm", "[86, 91] cm"),
        ("36 - 38", "[36, 38]"),
        ("75 -86 lbs", "[75, 86] lb"),
        ("12- 14", "[12, 14]"),
        ("82–86", "[82, 86]"),
        ("16 – 20”", "[16, 20] in"),
        ("80–88cm", "[80, 88] cm"),
        ("38\u00a0–\u00a040", "[38, 40]"),
        ("38 &ndash; 40", "[38, 40]"),
        ("82â€“86", "[82, 86]"),
        ("82\x9686", "[82, 86]"),
        ("82−86", "[82, 86]"),
        ("(35-36)", "[35, 36]"),
        ("170~180cm", "[170, 180] cm"),
        ("87/91", "[87, 91]"),
        ("77,5/80,5", "[77.5, 80.5]"),
        ("36-36", "[36, 36]"),
        ("83...87", "[83, 87]"),
        ("79.8--83.55", "[79.8, 83.55]"),
        ("86 -- 91 cm", "[86, 91] cm"),
        ('34"---36"', "[34, 36] in"),
        ("83,5 … 87,5 cm", "[83.5, 87.5] cm"),
    ],
)
def test_the_marks_of_a_range(text: str, reading: str) -> None:
    assert told(text) == reading


@pytest.mark.parametrize(
    "text",
    [
        "83 to 88",
        "83 à 88",
        "83 bis 88",
        "83 tot 88",
        "83 t/m 88",
        "83 a 88",
        "83 até 88",
        "83 til 88",
        "83 till 88",
        "83 do 88",
        "83 až 88",
        "from 83 to 88",
        "von 83 bis 88",
        "de 83 à 88",
        "van 83 tot 88",
        "da 83 a 88",
        "de 83 a 88",
        "från 83 till 88",
        "fra 83 til 88",
        "od 83 do 88",
        "between 83 and 88",
        "zwischen 83 und 88",
        "entre 83 et 88",
        "entre 83 y 88",
        "tussen 83 en 88",
        "tra 83 e 88",
        "mellan 83 och 88",
        "mellem 83 og 88",
        "między 83 a 88",
        "mezi 83 a 88",
        "from 83 - 88",
    ],
)
def test_the_words_of_a_range_in_every_language(text: str) -> None:
    assert told(text) == "[83, 88]"


@pytest.mark.parametrize(
    ("text", "reading"),
    [
        ("36”-38”", "[36, 38] in"),
        ("56kg - 58kg", "[56, 58] kg"),
        ('38 - 43"', "[38, 43] in"),
        ('36" - 38', "[36, 38] in"),
        ("42 to 44 inches", "[42, 44] in"),
        ("98 bis 102 Zentimetern", "[98, 102] cm"),
        ('25"- 27"', "[25, 27] in"),
    ],
)
def test_one_unit_anywhere_holds_for_the_whole_cell(text: str, reading: str) -> None:
    assert told(text) == reading


def test_two_units_that_measure_different_things_are_no_range() -> None:
    assert told("56 kg - 58 cm") == "unread unreadable"


def test_a_falling_range_is_asked_about_and_not_turned() -> None:
    assert told("40-36") == "ask order-broken"
    assert candidates("40-36") == ["[36, 40] (ends-turned)"]


def test_a_double_range_is_asked_about_with_its_three_readings() -> None:
    assert told("20- 23” to 23-25”") == "ask double-range"
    assert candidates("20- 23” to 23-25”") == [
        "[20, 23] in (first-range)",
        "[23, 25] in (second-range)",
        "[20, 25] in (whole-span)",
    ]


@pytest.mark.parametrize("text", ["85-60-90", "85 - 65 - 92", "85-60-90 cm"])
def test_three_numbers_are_bust_waist_and_hip_and_no_range(text: str) -> None:
    assert told(text) == "unread double-range"


@pytest.mark.parametrize("text", ["5/6", "9/10", "11/12", "90/86", "24/0"])
def test_a_slash_between_small_or_falling_numbers_is_no_range(text: str) -> None:
    assert told(text, unit=Unit.CM).startswith("unread")


@pytest.mark.parametrize(
    "text", ["35 35 36 36", "34-36-38-40", "86 - ", "- 86", "34-_-36", "86-91 x"]
)
def test_the_whole_cell_must_match(text: str) -> None:
    assert told(text).startswith(("unread", "ask"))
    assert read_cell(text).reading is not Reading.READ


@pytest.mark.parametrize(
    ("text", "reading"),
    [
        ("~82cm", "~82 cm"),
        ("ca. 82 cm", "~82 cm"),
        ("ca.82 cm", "~82 cm"),
        ('approx. 34"', "~34 in"),
        ("about 82", "~82"),
        ("env. 82", "~82"),
        ("etwa 82", "~82"),
        ("ok. 82", "~82"),
        ("cca 82", "~82"),
    ],
)
def test_a_word_for_about_marks_the_value(text: str, reading: str) -> None:
    assert told(text) == reading


@pytest.mark.parametrize(
    ("text", "reading"),
    [
        ("96 ± 2", "96 ±2"),
        ("96 +/- 2 cm", "96 ±2 cm"),
        ("96 cm ± 1,5 cm", "96 ±1.5 cm"),
        ("86-90 ± 1", "[86, 90] ±1"),
    ],
)
def test_a_tolerance_is_kept_apart_and_widens_nothing(text: str, reading: str) -> None:
    assert told(text) == reading


@pytest.mark.parametrize("text", ["+/- 1", "± 1", "1 +/-", "+- 1", "1 ±"])
def test_a_lone_tolerance_is_a_tolerance(text: str) -> None:
    assert told(text) == "tolerance ±1"


def test_the_sign_of_a_tolerance_before_a_girth_says_about() -> None:
    assert told("± 97 cm") == told("ca. 97 cm")
    assert told("± 25 mm") == "tolerance ±25 mm"


def test_a_lone_tolerance_keeps_its_unit() -> None:
    assert told("1cm +/-") == "tolerance ±1 cm"


@pytest.mark.parametrize("text", ["24 + 1 inch", "24 / + 1 inch"])
def test_a_plus_between_two_values_may_have_lost_its_minus(text: str) -> None:
    assert told(text) == "ask separator-lost 24 ±1 in"


def test_ages_are_read_in_a_column_of_ages_only() -> None:
    ages = Expected(Dimension.AGE)
    assert told("3-4 Years", Dimension.AGE) == "[3, 4] years"
    assert told("6-12 Monate", Dimension.AGE) == "[0.5, 1] years"
    assert told("12 ans", Dimension.AGE) == "12 years"
    assert told("3-4 Years") == "unread unreadable"
    assert read_cell("12- 14", ages).reading is Reading.READ
