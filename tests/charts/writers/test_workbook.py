"""The workbook a shop prints: read back cell by cell, as openpyxl finds it."""

from __future__ import annotations

from dataclasses import replace
from io import BytesIO
from typing import TYPE_CHECKING

import pytest

from charts.in_house import InHouseChart
from charts.wording import Wording
from charts.writers.workbook import FIRST_ROW, HEAD_ROW, UNIT_ROW, workbook_bytes

if TYPE_CHECKING:
    from openpyxl import Workbook
    from openpyxl.cell.cell import Cell
    from openpyxl.worksheet.worksheet import Worksheet


@pytest.fixture
def book(chart: InHouseChart) -> Workbook:
    from openpyxl import load_workbook

    return load_workbook(BytesIO(workbook_bytes(chart, Wording("en"))))


@pytest.fixture
def sheet(book: Workbook) -> Worksheet:
    return book.worksheets[0]


def column(sheet: Worksheet, head: str, unit: str = "") -> int:
    """The number of the column under ``head``, and under ``unit`` where the head is shared."""
    over = ""
    for number in range(1, sheet.max_column + 1):
        over = sheet.cell(HEAD_ROW, number).value or over
        below = sheet.cell(UNIT_ROW, number).value or ""
        if over == head and below == unit:
            return number
    raise AssertionError(f"no column {head} {unit}")


def cell(sheet: Worksheet, row: int, head: str, unit: str = "") -> Cell:
    return sheet.cell(FIRST_ROW + row, column(sheet, head, unit))


def text(sheet: Worksheet) -> str:
    return "\n".join(str(each) for row in sheet.values for each in row if each)


def test_the_makers_figure_is_bold_and_upright(sheet: Worksheet) -> None:
    published = cell(sheet, 1, "Chest", "in")
    assert (published.value, published.font.bold, published.font.italic) == ("36–39", True, False)


def test_the_converted_figure_is_slanted_and_light(sheet: Worksheet) -> None:
    converted = cell(sheet, 1, "Chest", "cm")
    assert (converted.value, converted.font.bold, converted.font.italic) == (
        "91.5–99",
        False,
        True,
    )
    assert converted.font.color.rgb != cell(sheet, 1, "Chest", "in").font.color.rgb


def test_two_printed_units_are_both_bold(sheet: Worksheet) -> None:
    assert [cell(sheet, 2, "Chest", unit).font.bold for unit in ("cm", "in")] == [True, True]


def test_a_value_in_question_is_marked_by_a_sign_and_not_by_colour_alone(
    sheet: Worksheet,
) -> None:
    asked = cell(sheet, 0, "Chest", "in")
    assert asked.value == "34–36 ?"
    assert asked.fill.fgColor.rgb != cell(sheet, 1, "Chest", "in").fill.fgColor.rgb


def test_two_back_lengths_of_one_size_stand_apart_with_their_signs(sheet: Worksheet) -> None:
    assert cell(sheet, 0, "Back length", "in").value == "16–17 †\n22–23 ‡"


def test_every_sign_has_its_footnote(sheet: Worksheet) -> None:
    assert "† Back from the prominent bone of the neck (C7)" in text(sheet)
    assert "‡ Measured on the finished vest, not on the body" in text(sheet)


def test_nothing_is_filled_in_where_the_maker_gives_nothing(sheet: Worksheet) -> None:
    for unit in ("cm", "in"):
        assert cell(sheet, 1, "Waist", unit).value == "not given"
        assert cell(sheet, 0, "Hip", unit).value == "not given"


def test_a_row_names_its_source_its_cells_its_season_and_its_day(sheet: Worksheet) -> None:
    heads = ("Source file", "Cells", "Season", "File of")
    assert [cell(sheet, 0, head).value for head in heads] == [
        "tarnwhistle/ladies.xlsx",
        "Women!A3:F9",
        "spring 2027",
        "3 Nov 2026",
    ]


def test_what_stands_beside_the_chart_is_printed_with_it(sheet: Worksheet) -> None:
    heads = ("Kind", "Level", "Rider's weight", "Adjusters, cm", "Between sizes")
    assert [cell(sheet, 0, head).value for head in heads] == [
        "inflatable",
        "3",
        "from 31.8 kg\n(70 lb)",
        "Chest: in 4, out 4",
        "the larger (instructions p. 4)",
    ]


def test_a_label_that_looks_like_a_formula_stays_text(book: Workbook, sheet: Worksheet) -> None:
    label = cell(sheet, 2, "Size")
    assert (label.value, label.data_type) == ("=cmd|' /C calc'!A0", "s")
    assert label.quotePrefix


def test_no_cell_of_the_book_is_a_formula(book: Workbook) -> None:
    cells = [each for sheet in book.worksheets for row in sheet.iter_rows() for each in row]
    assert {each.data_type for each in cells if each.value is not None} == {"s"}


def test_letters_that_a_workbook_cannot_hold_are_replaced(chart: InHouseChart) -> None:
    from openpyxl import load_workbook

    odd = replace(chart.rows[0], model="Fell\x00run\x1bner")
    data = workbook_bytes(replace(chart, rows=(odd,)), Wording("en"))
    printed = cell(load_workbook(BytesIO(data)).worksheets[0], 0, "Model").value
    assert printed == "Fell\N{REPLACEMENT CHARACTER}run\N{REPLACEMENT CHARACTER}ner"


def test_the_model_is_named_strongly_once_and_repeated_in_every_row(sheet: Worksheet) -> None:
    names = [cell(sheet, row, "Model") for row in range(3)]
    assert [each.value for each in names] == ["Fellrunner", "Fellrunner", "Airebruna"]
    assert [each.font.bold for each in names] == [True, False, True]


def test_heads_and_names_stay_in_sight(sheet: Worksheet) -> None:
    assert sheet.freeze_panes == sheet.cell(FIRST_ROW, column(sheet, "Length") + 1).coordinate


def test_the_page_is_landscape_one_page_wide_with_its_heads_on_every_page(
    sheet: Worksheet,
) -> None:
    page = sheet.page_setup
    assert (page.orientation, page.fitToWidth, page.fitToHeight) == ("landscape", 1, 0)
    assert sheet.sheet_properties.pageSetUpPr.fitToPage
    assert sheet.print_title_rows == f"${HEAD_ROW}:${UNIT_ROW}"


def test_the_print_area_reaches_from_the_title_to_the_last_caution(sheet: Worksheet) -> None:
    end = sheet.cell(sheet.max_row, sheet.max_column).coordinate
    assert sheet.print_area.replace("$", "") == f"'Size chart'!A1:{end}"
    assert "No vest prevents all injuries" in str(sheet.cell(sheet.max_row, 1).value)


def test_every_page_says_season_version_and_day_of_printing(
    sheet: Worksheet, chart: InHouseChart
) -> None:
    assert sheet.oddHeader.center.text == "Season spring 2027"
    assert sheet.oddHeader.right.text == f"Version {chart.version}, printed on &D"
    assert sheet.oddFooter.right.text == "page &P of &N"


def test_the_foot_says_that_the_maker_takes_precedence_and_what_is_left_out(
    sheet: Worksheet,
) -> None:
    assert "The maker's current size chart and instructions take precedence" in text(sheet)
    assert "Tarnwhistle Oldcoat (recalled)" in text(sheet)


def test_the_second_sheet_lists_what_is_open_with_its_place_and_readings(book: Workbook) -> None:
    row = [each.value for each in book["Open questions"][5]]
    assert row[:2] == ["tarnwhistle/ladies.xlsx", "Women!B2"]
    assert "Chest" in row[2]
    assert row[3] == "34-36 in"


def test_the_whole_book_speaks_german_when_asked(chart: InHouseChart) -> None:
    from openpyxl import load_workbook

    book = load_workbook(BytesIO(workbook_bytes(chart, Wording("de"))))
    assert book.sheetnames == ["Größentabelle", "Offene Fragen"]
    assert cell(book.worksheets[0], 1, "Brust", "cm").value == "91,5–99"


def test_a_chart_without_rows_is_still_a_book(chart: InHouseChart) -> None:
    from openpyxl import load_workbook

    empty = replace(chart, rows=(), questions=(), withheld=())
    book = load_workbook(BytesIO(workbook_bytes(empty, Wording("en"))))
    assert book.sheetnames == ["Size chart"]
