"""Sentences that differ from size to size."""

from __future__ import annotations

import pytest

from charts.importer import read_pasted
from tests.charts.read_text import questions, values
from tests.charts.readers.reading import paste

_LIMITS = """Sizes of a vest
Small: Riders who weigh less than 155 pounds and have a height of 5'7" or less.
Medium: Riders who weigh between 155 and 185 pounds, with a height between 5'7" and 6'1".
"""
_CZECH = """Velikost 59 je pro děti 1-3 měsíců. Miminka jsou vysoká 55-59 cm a váží 4-6 kg.

Velikost 66: Pro děti 3-6 měsíců. Miminka jsou vysoká 60-66 cm a váží 6-8,5 kg.
"""


def test_limits_and_ranges_go_to_the_measure_before_them() -> None:
    reading = read_pasted(_LIMITS)
    assert questions(reading) == ["text-order"]
    found = values(reading)
    assert found["Small weight"] == (None, 70.31)
    assert found["Small height"] == (None, 170.18)
    assert found["Medium height"] == (170.18, 185.42)


def test_figures_without_a_printed_unit_are_left_out_and_all_is_asked() -> None:
    reading = read_pasted(_CZECH)
    assert questions(reading) == ["text-order"]
    assert values(reading) == {
        "59 height": (55, 59),
        "59 weight": (4, 6),
        "66 height": (60, 66),
        "66 weight": (6, 8.5),
    }


@pytest.mark.parametrize(
    ("before", "after"),
    [
        ("a height between", "a weight between"),  # one measure twice
        ("between 155 and 185 pounds", "155 pounds mehr"),
        ("Medium", "Riders"),
        ("Medium: Riders who", "Medium: the model in the picture wears it; riders who"),
    ],
)
def test_a_sentence_that_is_not_sure_makes_no_row(before: str, after: str) -> None:
    found = paste(_LIMITS.replace(before, after))
    assert all(column == 0 for _, column in found.sheet.cells)
    assert found.codes == ["no-table"]


def test_a_measure_that_one_row_does_not_name_is_the_one_left_and_all_is_asked() -> None:
    reading = read_pasted(_LIMITS.replace("a height between", "a size between"))
    assert values(reading)["Medium height"] == (170.18, 185.42)
    assert questions(reading) == ["text-order"]


def test_sentences_about_ages_with_their_measures_behind_or_unsaid_make_rows() -> None:
    reading = read_pasted(
        "Talles de bebé\n-\n0-3 meses: Para bebés con un peso de 3.5 a 6 kg y 50 a 62 cm de altura."
        "\n-\n3-6 meses: Para bebés de 6 a 8 kg y 62 a 68 cm.\n"
    )
    found = values(reading)
    assert found["baby 3-6 meses weight"] == (6, 8)
    assert found["baby 3-6 meses height"] == (62, 68)
    assert "text-order" in questions(reading)


def test_a_second_list_of_the_same_sizes_is_a_table_of_its_own() -> None:
    lines = [line for line in _LIMITS.splitlines() if ":" in line]
    found = paste("\n".join([*lines, *lines]))
    assert [row[0] for row in found.rows()] == ["", "Small", "Medium"] * 2


def test_a_size_before_a_verb_begins_its_sentence() -> None:
    reading = read_pasted(
        "• XS is for children from 20 to 30 kg with a chest of 58 to 64 cm.\n"
        "• S is for children from 30 to 40 kg with a chest of 64 to 72 cm.\n"
    )
    assert values(reading)["S chest"] == (64, 72)
    assert values(reading)["XS weight"] == (20, 30)
    assert "text-order" in questions(reading)
