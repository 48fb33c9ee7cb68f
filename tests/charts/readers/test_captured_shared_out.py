"""Rows of single blanks whose cells and headings are shared out over the same columns."""

from __future__ import annotations

from textwrap import dedent

import pytest

from charts.importer import read_pasted
from charts.readers.captured.lines import LineTable, numbered
from charts.readers.captured.rows import row_table
from charts.readers.captured.shared_out.named_bands import with_bands
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


def test_a_band_before_every_size_stands_above_its_rows() -> None:
    reading = read_pasted(
        dedent("""\
        For Size Chest (in) Hip (in)
        Ladies S 33-35 36-38
        Ladies M 35-37 38-40
        Gents S 36-38 36-38
        Gents M 38-40 38-40
        """)
    )
    found = values(reading)
    assert found["women S chest"] == (83.82, 88.9)
    assert found["men M hip"] == (96.52, 101.6)
    assert questions(reading) == []


def test_a_band_before_the_first_of_its_sizes_holds_for_the_others() -> None:
    reading = read_pasted(
        dedent("""\
        Size Chest (cm) Waist (cm)
        Women S 83-88 65-70
        M 89-94 71-76
        Men S 91-96 77-82
        M 97-102 83-88
        """)
    )
    found = values(reading)
    assert found["women M chest"] == (89, 94)
    assert found["men S waist"] == (77, 82)


def test_a_band_in_the_names_of_sizes_that_follow_each_other_stays_there() -> None:
    table = row_table(
        numbered(
            "Size Chest Waist\nYouth S 60-64 54-57\nYouth M 65-69 58-61\nAdult S 82-86 66-70\n"
        )
    )
    assert table is not None
    assert with_bands(table) == table


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


def test_bands_above_the_headings_share_the_measures() -> None:
    reading = read_pasted(
        dedent("""\
        All figures in centimetres
        Size Women Men
        Chest Waist Hip Chest Waist Hip
        S 83-89 67-73 91-97 89-95 77-83 91-97
        M 89-95 73-79 97-103 95-101 83-89 97-103
        """)
    )
    found = values(reading)
    assert found["women S hip"] == (91, 97)
    assert found["men M waist"] == (83, 89)
    assert questions(reading) == []


def test_bands_whose_measures_differ_are_compared() -> None:
    reading = read_pasted(
        dedent("""\
        Size Ladies' Gents'
        Bust (in) Hip (in) Chest (in) Waist (in)
        S 32-34 35-37 36-38 30-32
        M 34-36 37-39 38-40 32-34
        """)
    )
    assert values(reading)["women S hip"] == (88.9, 93.98)
    assert questions(reading) == ["text-order"]


def test_bands_stand_each_over_its_own_word_for_sizes() -> None:
    reading = read_pasted(
        dedent("""\
        Children Adults
        Size Chest (cm) Height (cm) Size Chest (cm) Height (cm)
        XS 57-61 105-117 S 85-91 161-169
        S 61-66 117-129 M 91-97 169-176
        """)
    )
    found = values(reading)
    assert found["kids S chest"] == (61, 66)
    assert found["M height"] == (169, 176)


def test_a_line_of_bands_at_the_end_heads_nothing() -> None:
    assert values(read_pasted("Women Men\n")) == {}


def test_two_names_under_two_words_for_sizes_are_a_column_each() -> None:
    reading = read_pasted(
        dedent("""\
        Size EU size Underbust (cm) Bust (cm)
        32B 70B 68-72 83-85
        34B 75B 73-77 88-90
        """)
    )
    assert values(reading)["32B underbust"] == (68, 72)


def test_a_size_of_two_words_stays_one_name() -> None:
    reading = read_pasted(
        dedent("""\
        Jersey size Chest (cm) Waist (cm) Wearer
        Extra Small 78-82 62-66 riders of the club
        Extra Large 98-104 82-88 trainers
        """)
    )
    assert values(reading)["Extra Small chest"] == (78, 82)


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
