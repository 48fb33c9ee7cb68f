"""Two columns that are two ends: a bare ``to``, one heading merged over both, or none over one."""

from __future__ import annotations

from datetime import date

import pytest

from charts.choices import answers, choices
from charts.findings import Level
from charts.importer import read_bytes
from tests.charts.read_text import asked_at, questions, table, values

WHOLE = {"S chest": (84, 88), "S waist": (68, 72), "M chest": (88, 92), "M waist": (72, 76)}


@pytest.mark.parametrize("word", ["to", "bis", "à", "-to-"])
def test_a_bare_word_for_the_upper_end_makes_its_neighbour_the_lower(word: str) -> None:
    reading = table(
        f"""
        Size | Chest (cm) | {word} | Waist (cm) | {word}
        S | 84 | 88 | 68 | 72
        M | 88 | 92 | 72 | 76
        """
    )
    assert values(reading) == WHOLE
    assert questions(reading) == []


def test_the_ends_of_a_false_friend_are_its_own() -> None:
    reading = table(
        """
        Size | Brust min | Brust max | Taille min | Taille max
        S | 84 | 88 | 68 | 72
        M | 88 | 92 | 72 | 76
        Alle Maße in cm
        """
    )
    assert values(reading) == WHOLE
    assert questions(reading) == []


@pytest.mark.parametrize("merged", [True, False])
@pytest.mark.parametrize("gap", [0, 1])
def test_ends_that_follow_each_other_prove_themselves(merged: bool, gap: int) -> None:
    span, blank = ("colspan=2", "") if merged else ("", "<th></th>")
    rows = "".join(
        f"<tr><td>{size}<td>{low}<td>{low + 4 - gap}</tr>"
        for size, low in (("S", 84), ("M", 88), ("L", 92))
    )
    page = f"<table><tr><th>Size<th {span}>Chest (cm)</th>{blank}</tr>{rows}</table>"
    reading = read_bytes(page.encode(), "page.html")
    assert values(reading)["M chest"] == (88, 92 - gap)
    assert questions(reading) == []


def test_figures_that_prove_nothing_are_asked_about_in_both_columns() -> None:
    reading = table(
        """
        Size | Chest (cm) | | Waist (cm)
        S | 84 | 98 | 68-72
        M | 88 | 102 | 72-76
        L | 92 | 106 | 76-80
        """
    )
    assert questions(reading) == ["heading-unknown"]
    assert set(asked_at(reading, "heading-unknown")) == {"B2", "C2", "B3", "C3", "B4", "C4"}


def test_the_corner_may_say_for_whom_a_block_is() -> None:
    reading = table(
        """
        Women | S | M
        Chest (cm) | 84-88 | 88-92
        Men | S | M
        Chest (cm) | 92-96 | 96-100
        """
    )
    assert values(reading)["women S chest"] == (84, 88)
    assert values(reading)["men M chest"] == (96, 100)
    assert questions(reading) == []


def test_rows_in_the_other_unit_are_one_question_and_can_be_confirmed() -> None:
    text = (
        b"Size,Chest (cm),Waist (cm)\nS,84-88,68-72\nM,34.5-36,28.5-30\nL,92-96,76-80\n"
        b"XL,38-39.5,31.5-33\n3XL,100-104,84-88\n"
    )
    reading = read_bytes(text, "a.csv")
    (asked,) = (one for one in reading.findings if one.level is Level.QUESTION)
    assert asked.code == "units-swapped"
    assert set(asked_at(reading, "units-swapped")) == {"B3", "C3", "B5", "C5"}
    for choice in choices(asked, reading):
        after = read_bytes(text, "a.csv", "", answers(choice, asked, "Ann", date(2027, 2, 11)))
        assert questions(after) == []
    assert choices(asked, reading)
