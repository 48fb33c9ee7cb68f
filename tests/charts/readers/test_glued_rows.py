"""Rows whose cells ran together: parted in the one way their headings allow, and asked about."""

from __future__ import annotations

import pytest

from charts.importer import read_pasted
from charts.readers.captured.glued_rows import glued_rows_table
from charts.readers.captured.lines import Line, LineTable
from tests.charts.readers.lost_cells import TABLES, Whole, values_read


def _glued(whole: Whole) -> str:
    return "\n".join(map("".join, (whole.heads, *whole.rows)))


def _table(*texts: str) -> LineTable | None:
    return glued_rows_table([Line(text, at) for at, text in enumerate(texts, start=1)])


@pytest.mark.parametrize("table", TABLES)
def test_rows_without_a_blank_are_parted_and_asked_about(table: str) -> None:
    whole = TABLES[table]
    read = read_pasted(_glued(whole))
    assert values_read(read) == whole.values
    assert not values_read(read, unasked=True)


@pytest.mark.parametrize("table", TABLES)
def test_a_blank_behind_the_size_and_between_headings_changes_nothing(table: str) -> None:
    whole = TABLES[table]
    rows = [f"{row[0]} {''.join(row[1:])}" for row in whole.rows]
    assert values_read(read_pasted("\n".join([" ".join(whole.heads), *rows]))) == whole.values


@pytest.mark.parametrize("table", TABLES)
def test_a_row_that_lost_a_digit_gives_nothing_without_a_question(table: str) -> None:
    lines = _glued(TABLES[table]).split("\n")
    for at in range(1, len(lines)):
        cut = [*lines[:at], lines[at][:-1], *lines[at + 1 :]]
        assert not values_read(read_pasted("\n".join(cut)), unasked=True)


def test_ranges_and_single_figures_take_turns_in_a_column() -> None:
    table = _table(
        "Taille à choisirPoids en KilosHauteur en cm",
        "Naissance3,250",
        "1 mois454",
        "3 mois5 à 660",
        "6 mois7 à 867",
    )
    assert table is not None
    assert table.inferred
    assert [[cell.text for cell in row] for row in table.rows][1:] == [
        ["Naissance", "3,2", "50"],
        ["1 mois", "4", "54"],
        ["3 mois", "5 à 6", "60"],
        ["6 mois", "7 à 8", "67"],
    ]


@pytest.mark.parametrize("sizes", ["SizeSMLXL", "SMALLMEDIUMLARGEXLARGE"])
def test_sizes_that_ran_together_head_the_figures_of_each_measure(sizes: str) -> None:
    table = _table(sizes, 'Bust33.5"35.5"37.5"40"', 'Waist26"28"30"32.5"')
    assert table is not None
    columns = list(zip(*([cell.text for cell in row] for row in table.rows), strict=True))
    assert columns[1:] == [
        ("Bust", '33.5"', '35.5"', '37.5"', '40"'),
        ("Waist", '26"', '28"', '30"', '32.5"'),
    ]


def test_rows_that_blanks_part_already_are_left_to_others() -> None:
    assert _table("Maat Borstomtrek Heupomtrek", "S 80 88", "M 84 92", "L 88 96") is None


def test_rows_of_which_two_ways_to_part_are_as_good_are_left() -> None:
    assert _table("SizeChest (cm)Waist (cm)", "S100100", "M1001005", "L10010055") is None


def test_very_long_lines_of_digits_are_done_with_at_once() -> None:
    heads = "Size" + "Chest (cm)" * 12
    assert _table(heads, *(f"{size}{'1' * 150}" for size in ("S", "M", "L", "XL"))) is None
