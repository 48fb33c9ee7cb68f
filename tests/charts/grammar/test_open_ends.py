"""Ends left open, in the ways that published tables print them."""

from __future__ import annotations

import pytest

from charts.schema import Dimension
from tests.charts.told import told


@pytest.mark.parametrize(
    "text",
    [
        "bis 82",
        "bis zu 82",
        "max. 82",
        "(max 82)",
        "82 max",
        "höchstens 82",
        "up to 82",
        "at most 82",
        "less than or equal to 82",
        "≤ 82",
        "<= 82",
        "82 or less",
        "até 82",
        "jusqu'à 82",
        "jusqu’a 82",
        "maxi 82",
        "tot 82",
        "tot en met 82",
        "fino a 82",
        "hasta 82",
        "upp till 82",
        "op til 82",
        "inntil 82",
        "do 82",
        "maks. 82",
    ],
)
def test_up_to_includes_its_figure(text: str) -> None:
    assert told(text) == "[.., 82]"


@pytest.mark.parametrize(
    "text",
    [
        "< 82",
        "&lt; 82",
        "less than 82",
        "under 82",
        "below 82",
        "unter 82",
        "weniger als 82",
        "kleiner als 82",
        "moins de 82",
        "minder dan 82",
        "meno di 82",
        "menos de 82",
        "abaixo de 82",
        "mindre än 82",
        "mindre end 82",
        "poniżej 82",
        "méně než 82",
        "Dưới 82",
    ],
)
def test_below_leaves_its_figure_out(text: str) -> None:
    assert told(text) == "[.., 82)"


@pytest.mark.parametrize(
    "text",
    [
        "ab 82",
        "from 82",
        "min. 82",
        "mindestens 82",
        "≥ 82",
        ">= 82",
        "82+",
        "+82",
        "82 +",
        "82 and above",
        "82 and up",
        "82 or taller",
        "82 und mehr",
        "82 et plus",
        "82 y más",
        "82 e oltre",
        "82 en meer",
        "82 e mais",
        "82 och uppåt",
        "82 og over",
        "82 i więcej",
        "82 a více",
        "à partir de 82",
        "vanaf 82",
        "a partire da 82",
        "desde 82",
        "från 82",
        "od 82",
    ],
)
def test_from_includes_its_figure(text: str) -> None:
    assert told(text) == "[82, ..]"


@pytest.mark.parametrize(
    "text",
    [
        "> 82",
        "over 82",
        "above 82",
        "greater than 82",
        "more than 82",
        "über 82",
        "mehr als 82",
        "plus de 82",
        "meer dan 82",
        "oltre 82",
        "más de 82",
        "acima de 82",
        "över 82",
        "mere end 82",
        "powyżej 82",
        "více než 82",
    ],
)
def test_over_leaves_its_figure_out(text: str) -> None:
    assert told(text) == "(82, ..]"


@pytest.mark.parametrize(
    ("text", "reading"),
    [
        ("> 50 and < 60", "(50, 60)"),
        ("> 50, < 60", "(50, 60)"),
        ("over 50, up to 60 kg", "(50, 60] kg"),
        ("über 50 bis 60 kg", "(50, 60] kg"),
        ("50 bis unter 60 kg", "[50, 60) kg"),
        ("ab 50 bis 60", "[50, 60]"),
        ("≥ 50 - < 60", "[50, 60)"),
        ("50 - <60", "[50, 60)"),
    ],
)
def test_both_ends_may_be_said(text: str, reading: str) -> None:
    assert told(text) == reading


def test_bis_with_a_number_in_front_is_a_range() -> None:
    assert told("50 bis 60 kg") == "[50, 60] kg"


@pytest.mark.parametrize(
    ("text", "reading"),
    [
        ("under 5 feet tall", "[.., 60) in"),
        ("< 5 feet", "[.., 60) in"),
        ("Below 5'0\"", "[.., 60) in"),
        ("5'10\" and above", "[70, ..] in"),
        ("6'0\"+", "[72, ..] in"),
        ("+16 kg", "[16, ..] kg"),
    ],
)
def test_open_ends_in_feet_and_kilograms(text: str, reading: str) -> None:
    assert told(text) == reading


@pytest.mark.parametrize("text", ["up to 34-36", "< 34-36", "max 34 - 36", "bis", "<", "+"])
def test_an_open_end_of_a_range_is_not_read(text: str) -> None:
    assert told(text).startswith(("unread", "note", "ask"))


def test_a_size_in_front_of_an_open_end_is_its_label() -> None:
    assert told("L (bis 60 kg)") == "L: [.., 60] kg"
    assert told("S bis 20 kg") == "S: [.., 20] kg"
    assert told("XL (über 60 kg)", Dimension.WEIGHT) == "XL: (60, ..] kg"


@pytest.mark.parametrize("text", ["82+ cm", "82 + cm", "82 cm+", "82cm +"])
def test_the_unit_stands_before_or_behind_the_plus(text: str) -> None:
    assert told(text) == "[82, ..] cm"


@pytest.mark.parametrize(
    ("text", "reading"),
    [("+ de 70 kg", "(70, ..] kg"), ("- de 10 kg", "[.., 10) kg"), ("+de 70", "(70, ..]")],
)
def test_a_plus_or_a_minus_before_de_is_more_or_less(text: str, reading: str) -> None:
    assert told(text) == reading
