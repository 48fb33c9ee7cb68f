"""Rows of single blanks whose cells and headings are shared out over the same columns."""

from __future__ import annotations

from textwrap import dedent

import pytest

from charts.importer import read_pasted
from charts.readers.captured.lines import LineTable, numbered
from charts.readers.captured.rows import row_table
from charts.readers.captured.shared_out.table import shared_table
from charts.readers.captured.shared_out.tokens import Kind, row_of
from tests.charts.read_text import questions, values


def _table(text: str) -> LineTable | None:
    return shared_table(numbered(dedent(text)))


def _rows(table: LineTable | None) -> list[list[str]]:
    assert table is not None
    return [[cell.text for cell in row] for row in table.rows]


@pytest.mark.parametrize(
    ("text", "name", "cells"),
    [
        ("M 48-55 kg 50N black, red", "M", ["48-55 kg", "50N", "black, red"]),
        ("XS / 28 65-69 77", "XS / 28", ["65-69", "77"]),
        ("S US 2-4 79 - 84 cm", "S US 2-4", ["79 - 84 cm"]),
        ("4 (S) 31 - 32 24-25", "4 (S)", ["31 - 32", "24-25"]),
        ("Junior over 30 kg up to 45 kg 60-80", "Junior", ["over 30 kg up to 45 kg", "60-80"]),
        ("L 71-86 / 156-190 96-103", "L", ["71-86 / 156-190", "96-103"]),
        ("S 88-92 £42.00", "S", ["88-92", "£42.00"]),
    ],
)
def test_a_row_is_a_name_and_cells(text: str, name: str, cells: list[str]) -> None:
    row = row_of(text, 1)
    assert row is not None
    assert (row.name, [part.text for part in row.parts]) == (name, cells)


def test_figures_of_no_measure_are_told_from_values() -> None:
    row = row_of("S 88-92 £42.00 14 - red", 1)
    assert row is not None
    assert row.kinds == (Kind.VALUE, Kind.AMOUNT, Kind.VALUE, Kind.NOTHING, Kind.WORDS)


def test_words_that_stand_together_are_one_cell_under_what_is_no_measure() -> None:
    table = _table("""\
        Size Chest (cm) Waist (cm) Usual wearer
        S 85-93 77-85 stable hand, groom
        M 94-102 85-92 lead rider
        L 103-111 93-100 trainers and guests of the yard
        """)
    assert _rows(table)[:2] == [
        ["Size", "Chest (cm)", "Waist (cm)", "Usual wearer"],
        ["S", "85-93", "77-85", "stable hand, groom"],
    ]
    assert table is not None
    assert not table.inferred


def test_a_weight_is_looked_for_under_no_girth() -> None:
    table = _table("""\
        Size Rider weight Chest Lift Price
        Child 22-31 kg 57-67 cm 50N £41.00
        Junior 32-41 kg 66-78 cm 50N £43.00
        """)
    assert _rows(table)[0] == ["Size", "Rider weight", "Chest", "Lift", "Price"]


def test_a_blank_cell_is_placed_by_the_rows_around_it_and_compared() -> None:
    text = dedent("""\
        Size Chest (cm) Waist (cm) Hip (cm) Height (cm)
        S 85-89 67-71 91-95 161-167
        M 89-93 71-75 95-99
        L 93-98 75-80 99-104 167-173
        XL 98-104 104-110 169-175
        """)
    table = _table(text)
    assert _rows(table)[2] == ["M", "89-93", "71-75", "95-99", ""]
    assert _rows(table)[4] == ["XL", "98-104", "", "104-110", "169-175"]
    reading = read_pasted(text)
    assert "XL waist" not in values(reading)
    assert questions(reading) == ["blank-inside", "text-order"]


def test_a_blank_cell_that_could_be_of_two_columns_is_placed_in_none() -> None:
    table = _table("""\
        Size Chest (cm) Bust (cm) Hip (cm)
        S 85-89 85-89 91-95
        M 89-93 95-99
        L 93-98 93-98 99-104
        """)
    assert table is None


def test_headings_that_fit_in_two_ways_are_left_alone() -> None:
    table = _table("""\
        Size Chest Waist Hip Inseam
        S 85-89 91-95 80
        M 89-93 95-99 81
        """)
    assert table is None


def test_numbers_that_fall_are_no_sizes() -> None:
    assert _table("Size Chest Zork\n38 84-90 14\n36 90-96 15\n") is None


@pytest.mark.parametrize(
    ("text", "heads"),
    [
        (
            "Size Chest Waist to shoulder to waist Height\nS 56-61 62-68 104\nM 61-66 68-73 116",
            ["Size", "Chest", "Waist to shoulder to waist", "Height"],
        ),
        (
            "Size Zork size Men Zork size Women Chest (cm)\n2 42 36 82-86\n3 44 38 86-90\n",
            ["Size", "Zork size Men", "Zork size Women", "Chest (cm)"],
        ),
    ],
)
def test_headings_are_parted_where_no_small_word_begins_one_and_alike(
    text: str, heads: list[str]
) -> None:
    assert heads in _rows(row_table(numbered(text)) or shared_table(numbered(text)))


def test_the_rows_of_a_table_do_not_end_at_a_cell_that_is_blank() -> None:
    reading = read_pasted(
        dedent("""\
        Size Chest (cm) Waist (cm) Hip (cm)
        S 85-89 67-71 91-95
        M 89-93 71-75 95-99
        L 93-98 99-104
        XL 98-104 80-86 104-110
        """)
    )
    found = values(reading)
    assert found["L hip"] == (99, 104)
    assert found["XL waist"] == (80, 86)
    assert "text-order" in questions(reading)


def test_sizes_with_a_second_name_in_brackets_stand_above_their_figures() -> None:
    reading = read_pasted(
        dedent("""\
        Measurement 140 146 152 158 (40) 164 (42)
        Age 9-10 10-11 11-12 12-13 13-14
        Chest (cm) 71-75 74-78 77-81 80-84 83-87
        """)
    )
    found = values(reading)
    assert found["146 chest"] == (74, 78)
    assert "9-10 chest" not in found


def test_the_word_for_sizes_before_others_begins_the_next_table() -> None:
    reading = read_pasted(
        dedent("""\
        Measure XS/S M/L XL/XXL
        Chest (cm) 82-90 91-99 100-108
        Waist (cm) 66-74 75-83 84-92

        Measure Zork Plim Quon
        Chest (cm) 101-109 110-118 119-127
        Waist (cm) 84-92 93-101 102-110
        """)
    )
    found = values(reading)
    assert found["XS/S chest"] == (82, 90)
    assert len(found) == 6
    assert "text-order" in questions(reading)


def test_a_note_below_the_rows_is_no_row() -> None:
    table = _table("""\
        Size Int. Chest Waist
        2 XS 81-87 67-73
        3 S 87-93 73-79
        Delivery within: 30-40 working days
        """)
    assert _rows(table)[-1] == ["3", "S", "87-93", "73-79"]


def test_a_line_of_sizes_below_a_title_of_as_many_words_heads_the_figures() -> None:
    reading = read_pasted(
        "All figures here in cm\nSize 34 36 38 40\nChest 83 87 91 95\nHip 91 95 99 103\n"
    )
    assert values(reading)["38 chest"] == 91


def test_a_size_by_times_stands_among_letters() -> None:
    reading = read_pasted(
        "SIZE S M L XL 2X\nCHEST (cm) 86 92 98 104 112\nHIP (cm) 92 98 104 110 118\n"
    )
    assert values(reading)["2X chest"] == 112


def test_ends_of_ranges_have_a_column_each() -> None:
    reading = read_pasted(
        dedent("""\
        Size Chest from (cm) Chest to (cm) Waist up to (cm)
        S 85 91 77
        M 91 97 83
        """)
    )
    assert values(reading)["S chest"] == (85, 91)


def test_a_unit_behind_another_heads_a_column() -> None:
    reading = read_pasted("Size Bust cm inch Waist cm inch\n8 81 32 63 25\n10 86 34 68 27\n")
    assert values(reading)["10 chest"] == 86


def test_the_row_of_a_size_is_no_heading() -> None:
    table = row_table(
        numbered("SIZE UK USA\nCHEST COLLAR\nXS INCHES\nS 38-40 15 38\nM 40-42 16 40\n")
    )
    assert table is None


def test_a_word_for_sizes_stands_over_no_figures_with_units() -> None:
    table = _table("Size Chest Waist Stock\nSmall 91 cm 31.0″ 14 pcs\nLarge 103 cm 36.0″ 9 pcs\n")
    assert _rows(table)[0] == ["Size", "Chest", "Waist", "Stock"]
