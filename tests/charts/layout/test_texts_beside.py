"""Titles before the headings of a table and notes behind them, in columns that hold no more."""

from __future__ import annotations

from collections.abc import Iterator

import pytest

from charts.layout.texts_beside import parted_from_texts
from charts.layout.view import View
from charts.sheet import Addressing, Cell, Sheet
from tests.charts.read_text import questions, table, values

MEN = {"men S chest": (86, 90), "men M chest": (90, 94)}


@pytest.mark.parametrize("title", ["Men's vests", "Men", "Colete de rio masculino"])
def test_a_title_before_the_headings_names_the_table(title: str) -> None:
    reading = table(f"{title} | Size | Chest (cm)\n | S | 86-90\n | M | 90-94")
    assert values(reading) == MEN


def test_a_title_before_sizes_that_run_across_names_the_table() -> None:
    reading = table("Men's size chart | Body, in cm | Size | S | M\n | | Chest | 86-90 | 90-94")
    assert (values(reading), questions(reading)) == (MEN, [])


def test_a_sentence_behind_the_headings_is_a_note_of_the_table() -> None:
    reading = table(
        "Size | Chest | All measurements are taken on the body in inches.\nS | 34-36 |\nM | 36-38 |"
    )
    assert values(reading) == {"S chest": (86.36, 91.44), "M chest": (91.44, 96.52)}
    assert questions(reading) == []


@pytest.mark.parametrize("head", ["Size", "Waist", "cm", "from"])
def test_what_heads_a_column_whose_cells_are_lost_is_no_title(head: str) -> None:
    rows = [[head, "Age", "Chest (cm)"], ["", "3-4", "56"], ["", "5-6", "60"]]
    filled = ((at, text) for at, text in _places(rows) if text)
    sheet = Sheet("", Addressing.PLAIN, {at: Cell(text) for at, text in filled}, 3, 3)
    view = View(sheet, (0, 1, 2), (0, 1, 2))
    assert parted_from_texts(view).view == view


def _places(rows: list[list[str]]) -> Iterator[tuple[tuple[int, int], str]]:
    for number, row in enumerate(rows):
        for column, text in enumerate(row):
            yield (number, column), text


def test_titles_before_several_rows_of_sizes_do_not_part_them() -> None:
    title = (
        "Women's wetsuits | All girths and all heights are given in cm. | UK | 6 | 8 | 8T | 10 | 12"
    )
    names = " | | EU | 34 | 36 | 36T | 38 | 40\n | | US | 2 | 4 | 4T | 6 | 8\n"
    bust = " | | Bust | 78-81 | 81-85 | 81-85 | 85-89 | 89-94\n"
    height = " | | Height | 157-163 | 160-166 | 168-174 | 163-169 | 165-171\n"
    reading = table(f"{title} | UK | 6 | 8 | 8T | 10 | 12\n{names}{bust}{height}")
    assert len(reading.charts) == 1
    assert values(reading)["women 12 chest"] == (89, 94)
