"""Names of measures as sentences bend them, and places that are named by "upper"."""

from __future__ import annotations

import pytest

from charts.dimensions import Role, read_heading
from charts.schema import Dimension
from tests.charts.read_text import questions, table, values


@pytest.mark.parametrize(
    ("word", "dimension"),
    [
        ("wieku", Dimension.AGE),
        ("wzroście", Dimension.HEIGHT),
        ("wzrostu", Dimension.HEIGHT),
        ("wadze", Dimension.WEIGHT),
        ("wagi", Dimension.WEIGHT),
    ],
)
def test_polish_names_of_measures_are_known_in_other_cases(word: str, dimension: Dimension) -> None:
    heading = read_heading(word)
    assert (heading.role, heading.dimension, heading.rest) == (Role.MEASURE, dimension, "")


def test_an_upper_thigh_is_a_place_and_no_limit() -> None:
    reading = table("Size|Waist (in)|Upper thigh (in)\nSmall|29-31|23.5\nMedium|31-33|25\n")
    assert values(reading)["Small other"] == 59.69
    assert "heading-unknown" not in questions(reading)


def test_an_upper_bust_is_no_upper_limit_of_the_bust_below_it() -> None:
    reading = table("Size | S | M | L\nUpper bust (cm) | 80 | 84 | 88\nBust (cm) | 83 | 88 | 93\n")
    assert values(reading)["M chest"] == 88
    assert values(reading)["M other"] == 84
    assert questions(reading) == []


@pytest.mark.parametrize(
    ("title", "band"),
    [
        ("Таблица женских размеров одежды", "women"),
        ("Таблица мужских размеров одежды", "men"),
        ("Размеры детской одежды", "kids"),
        ("Таблиця жіночих розмірів", "women"),
        ("Таблиця чоловічих розмірів", "men"),
        ("Tabela ženskih velikosti", "women"),
    ],
)
def test_bands_are_known_in_the_cases_of_a_title(title: str, band: str) -> None:
    assert read_heading(title).band == band
