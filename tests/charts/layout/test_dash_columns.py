"""A dash, or a word for "to", in a column of its own between the ends of a range."""

from __future__ import annotations

import pytest

from tests.charts.read_text import questions, table, values

DUE = {"S chest": (84, 88), "M chest": (89, 93), "S waist": (68, 72), "M waist": (73, 77)}


@pytest.mark.parametrize("sign", ["-", "–", "bis", "to", "à"])
def test_the_sign_of_a_range_may_stand_in_a_column_of_its_own(sign: str) -> None:
    text = f"""Size | Chest (cm) | | | Waist (cm) | |
S | 84 | {sign} | 88 | 68 | {sign} | 72
M | 89 | {sign} | 93 | 73 | {sign} | 77"""
    reading = table(text)
    assert values(reading) == DUE
    assert questions(reading) == []


def test_a_dash_between_two_measures_joins_nothing() -> None:
    text = """Size | Chest (cm) | Hood | Waist (cm)
S | 84 | - | 88
M | 89 | - | 93"""
    found = values(table(text))
    assert (found["S chest"], found["S waist"]) == (84, 88)


def test_figures_that_fall_are_no_two_ends() -> None:
    text = """Size | Chest (cm) | |
S | 88 | - | 84
M | 93 | - | 89"""
    assert questions(table(text)) != []
