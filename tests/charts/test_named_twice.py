"""``Taille`` twice in one table: how tall a child is, and round the waist."""

from __future__ import annotations

import pytest

from tests.charts.read_text import asked_at, questions, table, values

CHILDREN = """
    Âge       | {one}   | Poitrine (cm) | {two}
    4-5 ans   | 104-110 | 56-58 | 52-54
    6-7 ans   | 116-122 | 60-62 | 54-56
    8-9 ans   | 128-134 | 64-66 | 56-58
"""


@pytest.mark.parametrize("word", ["Taille (cm)", "TAILLE en cm", "taille [cm]"])
def test_the_taller_of_two_is_the_height_and_both_are_asked_about_once(word: str) -> None:
    reading = table(CHILDREN.format(one=word, two=word))
    found = values(reading)
    assert found["6-7 ans height"] == (116, 122)
    assert found["6-7 ans waist"] == (54, 56)
    assert questions(reading).count("heading-two-readings") == 1
    assert {"B2", "B4", "D2", "D4"} <= set(asked_at(reading, "heading-two-readings"))


def test_the_order_of_the_two_and_which_way_the_sizes_run_make_no_difference() -> None:
    across = table(
        "Taille | S | M | L\nTaille (cm) | 66-70 | 70-74 | 74-78\n"
        "Poitrine (cm) | 86-90 | 90-94 | 94-98\nTaille (cm) | 158-164 | 164-170 | 170-176"
    )
    assert values(across)["M waist"] == (70, 74)
    assert values(across)["M height"] == (164, 170)


def test_two_girths_under_one_word_are_no_height() -> None:
    reading = table(CHILDREN.format(one="Taille (cm)", two="Taille (cm)").replace("1", ""))
    assert "6-7 ans height" not in values(reading)
    assert questions(reading)


def test_a_second_column_that_can_be_no_such_measure_leaves_the_first_alone() -> None:
    reading = table("Size | Hip (cm) | Hip (cm)\n4 | 68 | 12.5\n6 | 72 | 13.5\n8 | 76 | 14.5")
    assert values(reading)["6 hip"] == 72
    assert questions(reading) == ["impossible"]
    assert asked_at(reading, "impossible") == []


def test_two_columns_that_can_both_be_the_measure_are_asked_about() -> None:
    reading = table("Size | Hip (cm) | Hip (cm)\n4 | 68 | 80\n6 | 72 | 84\n8 | 76 | 88")
    assert asked_at(reading, "column-unused") == ["B2", "B3", "B4"]
