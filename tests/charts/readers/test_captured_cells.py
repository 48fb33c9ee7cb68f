"""Tables that a copy has taken apart: bars on their own lines, one cell a line, blocks of cells."""

from __future__ import annotations

from textwrap import dedent

import pytest

from charts.importer import read_bytes, read_pasted
from charts.readers.captured.lines import Line
from charts.readers.captured.stream import stream_table
from tests.charts.readers.reading import paste, read


def test_bars_part_cells_without_a_rule_row_in_the_middle_of_a_text() -> None:
    found = paste(
        "A sentence with a bar | in it, and nothing else to see here at all.\n\n"
        "Koko | Vyötärö | Pituus |\n46 | 81 cm | 170-176 cm |\n48 | 85 cm | 176-182 cm |\n"
    )
    assert found.rows()[1:] == [
        ["Koko", "Vyötärö", "Pituus"],
        ["46", "81 cm", "170-176 cm"],
        ["48", "85 cm", "176-182 cm"],
    ]


def test_a_table_without_a_known_heading_is_kept_and_asked_about() -> None:
    reading = read_pasted("Ukubwa | Aa | Vastaava\n46 | 81 cm | Small\n48 | 85 cm | Medium ½\n")
    (chart,) = reading.charts
    assert [size.label for size in chart.sizes] == ["46", "48"]
    assert {one.code for one in reading.findings} >= {"heading-unknown"}
    assert "no-table" not in {one.code for one in reading.findings}


_BARRED = """\
    Roupas
    TAMANHO
    |
    IDADE
    |
    BUSTO
    |
    P
    |
    0 a 3 meses
    |
    51 a
    64cm
    |
    M
    |
    4 a 6 meses
    |
    |
    1
    |
    1 ano
    |
    76 a 83cm
    |
    A sentence that is no cell.
    """


def test_bars_on_lines_of_their_own_part_cells_also_empty_and_broken_ones() -> None:
    found = paste(dedent(_BARRED))
    assert found.rows() == [
        ["Roupas", "", ""],
        ["TAMANHO", "IDADE", "BUSTO"],
        ["P", "0 a 3 meses", "51 a 64cm"],
        ["M", "4 a 6 meses", ""],
        ["1", "1 ano", "76 a 83cm"],
        ["A sentence that is no cell.", "", ""],
    ]
    assert found.sheet.place(2, 2) == "line 12"
    assert not found.sheet.inferred  # bars say where every cell ends


def test_an_empty_corner_behind_the_sizes_is_put_in_front_of_them() -> None:
    cells = ["S", "M", "", "Obvod", "87-92 cm", "92-97 cm", "Dĺžka", "67-69 cm", "69-71 cm"]
    found = paste("".join(f"{cell}\n|\n" for cell in cells))
    assert found.rows() == [
        ["", "S", "M"],
        ["Obvod", "87-92 cm", "92-97 cm"],
        ["Dĺžka", "67-69 cm", "69-71 cm"],
    ]


def test_one_cell_a_line_across_is_put_back_in_any_language_and_asked_once() -> None:
    reading = read_pasted("S\nM\nL\nMell\n84\n90\n96\nDerék\n70\n76\n82\n")
    (chart,) = reading.charts
    assert [size.label for size in chart.sizes] == ["S", "M", "L"]
    assert [one.published for one in chart.sizes[1].ranges] == ["90", "76"]
    order = [one for one in reading.findings if one.code == "text-order"]
    assert len(order) == 1
    values = [one for size in chart.sizes for one in size.ranges]
    assert all(order[0].id in one.findings for one in values)


@pytest.mark.parametrize(
    "cells",
    [
        ["Koko", "A", "1", "2", "B", "3"],  # rows of unequal length
        ["Koko", "A", "38", "90", "36", "84"],  # numbers for labels that fall
        ["Aa", "Bb", "Cc", "Dd", "1", "2"],  # no row is complete twice
        ["S", "M", "L", "86", "92", "98"],  # nothing names the figures
    ],
)
def test_what_does_not_come_out_even_is_left_alone(cells: list[str]) -> None:
    assert stream_table([Line(text, at) for at, text in enumerate(cells)]) is None


def test_figures_and_words_that_take_turns_as_labels_are_no_labels() -> None:
    text = "Size\nChest\nWaist\nHip\nS\n84-90\n70-76\nM\n90-96\n76-82\n96-102\nL\n96-102\n82-88\n"
    reading = read_pasted(text)  # a cell is lost in the row of S
    assert not reading.charts
    assert [one.code for one in reading.findings] == ["no-table"]


def test_numbers_for_sizes_across_with_a_word_before_them_or_without() -> None:
    rows = "Brust\n84\n88\n92\nTaille\n66\n70\n74\n"
    for head in ("36\n38\n40\n", "Ukubwa\n36\n38\n40\n"):
        found = paste(head + rows)
        assert found.rows()[0][1:] == ["36", "38", "40"]
        assert found.rows()[1:] == [["Brust", "84", "88", "92"], ["Taille", "66", "70", "74"]]
        assert found.sheet.inferred


def test_both_units_in_turn_below_sizes_on_lines_of_their_own() -> None:
    text = 'Size\nXS\nS\nChest\n30-32"\n76-81 cm\n32-34"\n81-86 cm\n'
    more = 'Waist\n24-26"\n61-66 cm\n26-28"\n66-71 cm\n'
    found = paste(text + more)
    assert found.rows()[1] == ["Chest", '30-32"\n76-81 cm', '32-34"\n81-86 cm']
    assert found.sheet.inferred


def test_a_table_a_cell_a_line_beside_a_table_with_tabs_is_read_too() -> None:
    women = "Women\nSize\tBust\tWaist\nXS\t78-82\t60-64\nS\t82-86\t64-68\n\n"
    men = "Men\nSize\nChest\nWaist\nS\n88-94\n76-82\nM\n94-100\n82-88\n"
    for reading in (read_pasted(women + men), read_bytes((women + men).encode(), "a.txt")):
        assert [chart.band for chart in reading.charts] == ["women", "men"]
        assert [len(chart.sizes) for chart in reading.charts] == [2, 2]


def test_an_indented_block_is_no_column_behind_a_tab() -> None:
    found = read("Sizes below\n\tSIZE\n\tCHEST\n\tS\n\t84-90\n\tM\n\t90-96\n", "page.txt")
    assert found.rows()[1:] == [["SIZE", "CHEST"], ["S", "84-90"], ["M", "90-96"]]


_BLOCKS = """\
    Jumpers

    Age (Years)
    3-4
    4-5

    Height
    Chest

    90-98
    58-60

    35½-38½
    23-23½

    98-104
    60-62

    38½-41
    23½-24½
    """


def test_blocks_of_figures_for_each_size_in_both_units_are_proved_by_their_ratio() -> None:
    found = paste(dedent(_BLOCKS))
    assert found.rows() == [
        ["Jumpers", "", "", "", ""],
        ["Age (Years)", "Height", "Height", "Chest", "Chest"],
        ["3-4", "90-98", "35½-38½", "58-60", "23-23½"],
        ["4-5", "98-104", "38½-41", "60-62", "23½-24½"],
    ]
    assert found.sheet.inferred
    assert paste(dedent(_BLOCKS).replace("35½-38½", "55½-58½")).rows()[1] != found.rows()[1]


def test_all_sizes_first_and_a_block_of_figures_for_each_heading() -> None:
    text = "S\nM\nL\n\nChest\n84-90\n90-96\n96-102\n\nWaist\n70-76\n76-82\n82-88\n"
    assert paste(text).rows() == [
        ["", "S", "M", "L"],
        ["Chest", "84-90", "90-96", "96-102"],
        ["Waist", "70-76", "76-82", "82-88"],
    ]


_GLUED = (
    "SizeA BrustumfangB Taille (innen)C Schulter\nS86-92 cm91-96 cm97 cm\nM92-98 cm96-99 cm98 cm\n"
)


def test_glued_cells_that_each_end_in_a_unit_are_parted_and_asked() -> None:
    found = paste(_GLUED)
    assert found.rows() == [
        ["Size", "A Brustumfang", "B Taille (innen)", "C Schulter"],
        ["S", "86-92 cm", "91-96 cm", "97 cm"],
        ["M", "92-98 cm", "96-99 cm", "98 cm"],
    ]
    assert found.sheet.inferred


@pytest.mark.parametrize(
    ("old", "new"),
    [
        ("B Taille", "b taille"),  # a heading too few
        ("M92-98 cm96-99 cm98 cm", "M92-98 cm96-99 cm"),  # a figure too few
        ("M92-98 cm96-99 cm98 cm", "M92-98 cm96-9998 cm"),  # a seam is lost
        ("M92", "S92"),  # the same size twice
    ],
)
def test_glued_cells_in_any_doubt_stay_glued(old: str, new: str) -> None:
    assert paste(_GLUED.replace(old, new)).sheet.columns == 1


_BAR_AT_EACH_END = (
    "Tableau\nFilles de 2 à 5 ans |\nAge |\nStature\nen cm |\nTour de poitrine en cm |\n"
    "2 ans |\n83 à 88 |\n53 |\n3 ans |\n91 à 96 |\n55 |\n4 ans |\n99 à 104 |\n57 |\n"
    "Filles de 6 à 8 ans\nFilles de 6 à 8 ans |\nAge |\nStature en cm |\nTour de poitrine en cm |\n"
    "6 ans |\n111 à 116 |\n61 |\n8 ans |\n123 à 128 |\n65 |\nIndicatif.\n"
)


def test_cells_that_end_in_a_bar_each_are_rows_even_under_ages() -> None:
    found = paste(_BAR_AT_EACH_END)
    rows = found.rows()
    assert rows[3] == ["", "Stature en cm", "Tour de poitrine en cm"]
    assert rows[4:7] == [
        ["2 ans", "83 à 88", "53"],
        ["3 ans", "91 à 96", "55"],
        ["4 ans", "99 à 104", "57"],
    ]
    assert rows[-3:-1] == [["6 ans", "111 à 116", "61"], ["8 ans", "123 à 128", "65"]]
    assert found.sheet.place(4, 1) == "line 8"


@pytest.mark.parametrize("lost", ["\n83 à 88 |", "\n91 à 96 |", "\n99 à 104 |", "\n57 |"])
def test_a_cell_lost_among_bars_makes_no_table_of_ages(lost: str) -> None:
    reading = read_pasted(_BAR_AT_EACH_END.replace(lost, ""))
    labels = [size.label for chart in reading.charts for size in chart.sizes]
    assert labels == ["6 ans", "8 ans"]
    assert "text-order" in {one.code for one in reading.findings}


def test_bars_on_lines_of_their_own_may_part_columns_of_words_too() -> None:
    cells = ["Size", "Like", "Chest", "CS (Child Small)", "Girls' 4-6", '28-31"']
    cells += ["CL (Child Large)", "N/A", '33-36"', "AS (Adult Small)", "N/A", "35-41"]
    found = paste("\n|\n".join([*cells, "Guidelines only"]))
    assert found.rows()[:4] == [cells[at : at + 3] for at in range(0, 12, 3)]
    assert found.sheet.inferred


def test_bars_that_keep_no_columns_apart_are_no_table() -> None:
    cells = ["Size", "Like", "Chest", "CS", "Girls' 4-6", '28-31"', "CL", '33-36"', "N/A", "AS"]
    assert paste("\n|\n".join([*cells, "N/A", "35-41", "end"])).codes == ["no-table"]


_BROKEN_HEADS = [
    *("A guide", "Size", "(in cm)", "Chest (A)", "(in cm)", "Waist (B)", "(in cm)", "Age"),
    *("(to order)", "102", "56", "52", "4", "114", "59", "54", "6", "126", "64", "58", "8"),
]


def test_headings_broken_before_their_bracket_are_whole_again() -> None:
    found = paste("\n".join(_BROKEN_HEADS) + "\n")
    assert found.rows()[1:3] == [
        ["Size (in cm)", "Chest (A) (in cm)", "Waist (B) (in cm)", "Age (to order)"],
        ["102", "56", "52", "4"],
    ]
    assert found.sheet.inferred


def test_one_bracket_on_a_line_may_be_a_heading_of_its_own() -> None:
    cells = ["Size", "(European)", "Chest", "Waist", "S", "36", "84", "66", "M", "38", "88", "70"]
    table = stream_table([Line(text, at) for at, text in enumerate(cells, start=1)])
    assert table is not None
    read = paste("\n".join(cells) + "\n")
    assert read.rows() == [[cell.text for cell in row] for row in table.rows]


def test_ranges_that_go_up_and_down_in_the_first_column_are_no_sizes() -> None:
    cells = ["Size", "Chest (cm)", "Waist (cm)", "32", "80-85", "64-69", "86-91", "70-75", "92-97"]
    cells += ["76-81", "98-103", "82-87", "34 36 38"]
    reading = read_pasted("\n\n".join(cells) + "\n")
    assert (reading.charts, [one.code for one in reading.findings]) == ((), ["no-table"])
    sound = [*cells[:3], "1-2", "50-54", "48-50", "3-4", "55-59", "51-53", "5-6", "60-64", "54-56"]
    reading = read_pasted("\n\n".join(sound) + "\n")
    assert [size.label for size in reading.charts[0].sizes] == ["1-2", "3-4", "5-6"]


def test_tall_sizes_between_the_others_and_a_row_that_comes_twice() -> None:
    head = ["SIZE", "HEIGHT", "BUST", "WAIST"]
    rows = [
        ["4", "162 - 168 cm", "81 - 86 cm", "62 - 67 cm"],
        ["6", "165 - 170 cm", "84 - 89 cm", "65 - 70 cm"],
        ["6T", "170 - 175 cm", "84 - 89 cm", "65 - 70 cm"],
        ["8", "168 - 173 cm", "87 - 92 cm", "68 - 73 cm"],
        ["8T", "173 - 178 cm", "87 - 92 cm", "68 - 73 cm"],
    ]
    cells = [cell for row in (head, *rows, rows[0]) for cell in row]
    sheet = paste("\n\n".join(cells))
    assert [[cell for cell in row if cell] for row in sheet.rows()] == [head, *rows]
