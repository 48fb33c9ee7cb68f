"""Pasted lines become rows where they are sure, and a question where they are not."""

from __future__ import annotations

import pytest

from charts.sheet import Addressing
from tests.charts.readers.reading import paste, read, rows_of


def test_tab_separated_rows_are_addressed_by_line() -> None:
    found = paste("Vest\n\nSize\tChest\nS\t86-91\nM\t92-97\n").sheet
    assert rows_of(found) == [["Vest", ""], ["Size", "Chest"], ["S", "86-91"], ["M", "92-97"]]
    assert (found.addressing, found.place(3, 1)) == (Addressing.LINE, "line 4")


def test_one_cell_a_line_is_put_back_into_rows_that_know_their_lines() -> None:
    found = paste("Chart 2027\nSIZE\nCHEST\nWAIST\nXS\n76-81\n61-66\nS\n81-86\n66-71\n").sheet
    assert rows_of(found) == [
        ["Chart 2027", "", ""],
        ["SIZE", "CHEST", "WAIST"],
        ["XS", "76-81", "61-66"],
        ["S", "81-86", "66-71"],
    ]
    assert found.place(3, 2) == "line 10"


def test_labels_that_are_numbers_do_not_confuse_the_count() -> None:
    found = paste("Size chart\nSIZE\nCHEST\n34\n86-91\n36\n91-96\n38\n97-102\n")
    assert found.rows()[1:] == [
        ["SIZE", "CHEST"],
        ["34", "86-91"],
        ["36", "91-96"],
        ["38", "97-102"],
    ]


def test_blank_lines_between_rows_are_no_rows() -> None:
    found = paste("Size\nChest\n\nS\n86-91\n\nM\n92-97\n")
    assert found.rows() == [["Size", "Chest"], ["S", "86-91"], ["M", "92-97"]]


def test_cells_that_do_not_come_out_even_stay_lines_and_ask() -> None:
    found = paste("SIZE\nCHEST\nWAIST\nXS\nS\nM\n76-81\n81-86\n")
    assert all(column == 0 for _, column in found.sheet.cells)
    assert found.codes == ["no-table"]


def test_columns_of_blanks_keep_an_empty_cell_in_its_column() -> None:
    found = paste(
        "Size      Chest (in)    Waist (in)\n"
        "Small     34 - 36       28 - 30\n"
        "Medium                  32 - 34\n"
        "Large     42 - 44       36 - 38\n"
    )
    assert found.rows()[2] == ["Medium", "", "32 - 34"]


def test_single_blanks_separate_only_where_every_row_comes_out_even() -> None:
    found = paste("Size Chest (cm) Waist\nS 84-90 68-74\nM 90-96 74-80\n")
    assert found.rows()[0] == ["Size", "Chest (cm)", "Waist"]
    assert found.rows()[2] == ["M", "90-96", "74-80"]
    assert paste("Size Chest\nS 84 - 90\nM 90 - 96 x\n").codes == ["no-table"]


@pytest.mark.parametrize(
    ("text", "rows"),
    [
        (
            "Talla S: Talle 71-76 cm | Cadera 86-91 cm\nTalla M: Talle 76 cm | Cadera 91 cm",
            [["Talla", "Talle", "Cadera"], ["S", "71-76 cm", "86-91 cm"], ["M", "76 cm", "91 cm"]],
        ),
        (
            "• S: chest 86-91 cm, waist up to 76 cm\n• M: chest 91 cm, waist to 81 cm",
            [["", "chest", "waist"], ["S", "86-91 cm", "up to 76 cm"], ["M", "91 cm", "to 81 cm"]],
        ),
        ('Small - 36"-38"\nMedium - 38"-40"', [["Small", '36"-38"'], ["Medium", '38"-40"']]),
        (
            'X/Small = 30" chest.Small = 32" chest.Large = 36" chest.',
            [["", "chest"], ["X/Small", '30"'], ["Small", '32"'], ["Large", '36"']],
        ),
        (
            "Size S\nChest: 86-91 cm\nWaist: 71 cm\n\nSize M\nChest: 92-97 cm\nWaist: 77 cm",
            [["Size", "Chest", "Waist"], ["S", "86-91 cm", "71 cm"], ["M", "92-97 cm", "77 cm"]],
        ),
        (
            "S\nChest 86-91 cm\nWaist 71 cm\nM\nChest 92-97 cm\nWaist 77 cm",
            [["", "Chest", "Waist"], ["S", "86-91 cm", "71 cm"], ["M", "92-97 cm", "77 cm"]],
        ),
        (
            "Chest: S 84-90 cm, M 90-96 cm, L 96-102 cm",
            [["", "S", "M", "L"], ["Chest", "84-90 cm", "90-96 cm", "96-102 cm"]],
        ),
        ("S: up to 82cm\nM: 82 to 88 cm", [["S", "up to 82cm"], ["M", "82 to 88 cm"]]),
    ],
)  # fmt: skip
def test_sentences_are_rows(text: str, rows: list[list[str]]) -> None:
    found = paste(text)
    assert found.rows() == rows
    assert found.codes == []


def test_a_value_keeps_the_line_it_came_from() -> None:
    found = paste("Tallas\n\nTalla S: Pecho 84-90 cm\nTalla M: Pecho 90-96 cm\n").sheet
    at = next(at for at, cell in found.cells.items() if cell.text == "90-96 cm")
    assert found.place(*at) == "line 4"


@pytest.mark.parametrize(
    "line",
    [
        "S84-90 cm70-76 cm",
        "XXXS304030 - 3263 - 64",
        "Bust30.5”31.5”32.5”",
        "SMALLMEDIUMLARGEXLARGE",
        'Waist26"28"30"',
    ],
)
def test_cells_glued_together_stay_one_cell_and_ask(line: str) -> None:
    found = paste(f"Chart\n{line}\n")
    assert found.rows() == [["Chart"], [line]]
    assert found.codes == ["separator-lost"]
    assert found.findings[0].place == "line 2"


def test_numbers_of_articles_are_no_glued_cells() -> None:
    assert "separator-lost" not in paste("Article AB1234567\nSize\tChest\nS\t86-91\n").codes
    assert paste("Article AB1234567\nEAN 4099990000017\n").codes == ["no-table"]


def test_separated_rows_are_never_taken_for_sentences() -> None:
    found = read("Size,Chest (cm),Waist (cm)\nWomen,,\nS,82-87,64-69\nMen,,\nS,90-95,76-81\n")
    assert found.rows()[2] == ["S", "82-87", "64-69"]


def test_a_piece_of_a_web_page_is_read_as_one() -> None:
    found = paste("<tr><td>Size<td>Chest</tr><tr><td>S<td>34<sup>1</sup>/<sub>2</sub></tr>")
    assert found.rows() == [["Size", "Chest"], ["S", "34 1/2"]]


def test_bars_with_an_alignment_row_are_markdown() -> None:
    assert paste("|Size|Chest|\n|--|--|\n|S|86|\n").sheet.name == "table 1"


def test_a_letter_without_a_chart_asks() -> None:
    found = paste("Hello,\nplease find our chart attached, as agreed.\nBest regards\n")
    assert found.codes == ["no-table"]


def test_a_plain_text_file_of_sentences_is_read_like_a_pasted_one() -> None:
    found = read("Talla S: Pecho 84-90 cm\nTalla M: Pecho 90-96 cm\n", "mail.txt")
    assert found.rows()[0] == ["Talla", "Pecho"]


def test_nothing_pasted_is_said() -> None:
    assert paste(" \n ").codes == ["empty-file"]


def test_sentences_of_one_pattern_are_rows_where_each_figure_has_its_measure() -> None:
    found = paste(
        "Small fits chests from 34 to 36 inches and waists from 28 to 30 inches.\n"
        "Large fits chests from 39 to 42 inches and waists from 33 to 36 inches.\n"
    )
    assert found.rows() == [
        ["", "chest", "waist"],
        ["Small", "34 to 36 inches", "28 to 30 inches"],
        ["Large", "39 to 42 inches", "33 to 36 inches"],
    ]
    limits = paste("Size S is for a chest up to 90 cm.\nSize M is for a chest up to 98 cm.\n")
    assert limits.rows() == [["Size", "chest"], ["S", "up to 90 cm"], ["M", "up to 98 cm"]]


def test_sentences_without_a_measure_to_each_figure_stay_sentences() -> None:
    hours = "We are open on Monday from 9 to 12.\nWe are open on Friday from 9 to 14.\n"
    assert paste(hours).codes == ["no-table"]
    both = "S fits a chest and a waist from 84 to 90.\nM fits a chest and a waist from 90 to 96.\n"
    assert paste(both).codes == ["no-table"]
