"""Workbooks are read as a person sees them, with the stored value behind each cell."""

from __future__ import annotations

import re
from datetime import datetime, time
from decimal import Decimal

import pytest
from openpyxl.cell.rich_text import CellRichText, TextBlock
from openpyxl.cell.text import InlineFont
from openpyxl.comments import Comment
from openpyxl.styles import Font

from tests.charts.readers.reading import book_of, read, rows_of, saved, with_part

SHEET = "xl/worksheets/sheet1.xml"


def test_every_sheet_keeps_its_name_and_its_places() -> None:
    book, sheet = book_of(["Size", "Chest"], ["S", "86-91"])
    sheet["D9"] = "note"
    book.create_sheet("Men").append(["Size", "Waist"])
    women, men = read(saved(book), "a.xlsx").sheets
    assert [women.name, men.name] == ["Women", "Men"]
    assert women.place(1, 1) == "Women!B2"
    assert women.text(8, 3) == "note"
    assert women.filled_rows == (0, 1, 8)


def test_text_is_what_is_shown_and_the_stored_number_stays_exact() -> None:
    book, sheet = book_of(["Chest"], [96], [34.5], [274.65999999999997], [33.85826771653543])
    sheet["A2"].number_format = '0" cm"'
    sheet["A3"].number_format = "# ?/?"
    cells = read(saved(book), "a.xlsx").sheet.cells
    assert [cells[row, 0].text for row in (1, 2, 3, 4)] == [
        "96 cm", "34 1/2", "274.66", "33.85826772"
    ]  # fmt: skip
    assert cells[1, 0].stored == Decimal(96)
    assert cells[1, 0].number_format == '0" cm"'
    assert cells[3, 0].stored == Decimal("274.66")
    assert cells[4, 0].stored == Decimal("33.8582677165354")


def test_labels_stay_text() -> None:
    book, _ = book_of(["08", "NA", "None", "10-12", True])
    assert rows_of(read(saved(book), "a.xlsx").sheet) == [["08", "NA", "None", "10-12", "TRUE"]]


def test_a_range_that_became_a_date_keeps_the_date_and_its_format() -> None:
    book, sheet = book_of(["Age"], [datetime(2024, 10, 12)], [time(12, 14)])  # noqa: DTZ001 - a workbook's dates have no zone
    sheet["A2"].number_format = "d-mmm"
    sheet["A3"].number_format = "h:mm"
    cells = read(saved(book), "a.xlsx").sheet.cells
    assert cells[1, 0].text == "12-Oct"
    assert cells[1, 0].stored == datetime(2024, 10, 12)  # noqa: DTZ001 - as above
    assert cells[1, 0].number_format == "d-mmm"
    assert cells[2, 0].text == "12:14"
    assert cells[2, 0].stored == time(12, 14)


def test_days_that_count_from_1904_are_the_same_days() -> None:
    book, sheet = book_of(["Age"], [datetime(2024, 10, 12)])  # noqa: DTZ001 - as above
    sheet["A2"].number_format = "d-mmm"
    book.epoch = datetime(1904, 1, 1)  # noqa: DTZ001 - as above
    assert read(saved(book), "a.xlsx").sheet.text(1, 0) == "12-Oct"


def test_a_number_that_is_no_day_is_shown_as_a_number() -> None:
    book, sheet = book_of(["Age"], [-5])
    sheet["A2"].number_format = "d-mmm"
    cell = read(saved(book), "a.xlsx").sheet.cells[1, 0]
    assert (cell.text, cell.stored) == ("-5", Decimal(-5))


def test_a_merged_area_repeats_its_text_and_says_where_it_stands() -> None:
    book, sheet = book_of(["Vest", None, None], ["S", "86-91", "164"], ["M", "92-97", None])
    sheet.merge_cells("A1:C1")
    sheet.merge_cells("C2:C3")
    cells = read(saved(book), "a.xlsx").sheet.cells
    assert cells[0, 0].shared_from is None
    assert (cells[0, 2].text, cells[0, 2].shared_from) == ("Vest", (0, 0))
    assert (cells[2, 2].text, cells[2, 2].shared_from) == ("164", (1, 2))


def test_a_merge_over_the_whole_sheet_reaches_no_further_than_the_cells_in_use() -> None:
    book, _ = book_of(["Vest"], ["S", "86-91"])
    data = with_part(
        saved(book),
        SHEET,
        lambda xml: xml.replace(
            "</sheetData>",
            '</sheetData><mergeCells><mergeCell ref="A1:XFD1048576"/></mergeCells>',
        ),
    )
    assert rows_of(read(data, "a.xlsx").sheet) == [["Vest", "Vest"], ["Vest", "Vest"]]


def test_a_blank_that_is_not_merged_is_not_filled() -> None:
    book, _ = book_of(["S", "86-91"], ["M", None], ["L", "98-103"])
    assert (1, 1) not in read(saved(book), "a.xlsx").sheet.cells


def test_hidden_rows_columns_and_sheets_are_left_out_and_said_once() -> None:
    book, sheet = book_of(["Size", "Old", "Old 2", "Chest"], ["S", 1, 2, "86"], ["M", 3, 4, "92"])
    sheet.column_dimensions["B"].hidden = True
    sheet.column_dimensions["C"].hidden = True
    sheet.row_dimensions[2].hidden = True
    archive = book.create_sheet("2019")
    archive.append(["x"])
    archive.sheet_state = "veryHidden"
    found = read(saved(book), "a.xlsx")
    assert found.rows() == [["Size", "", "", "Chest"], ["M", "", "", "92"]]
    assert found.sheet.place(2, 3) == "Women!D3"
    assert found.sheet.hidden_rows == {1}
    assert found.sheet.hidden_columns == {1, 2}
    assert found.codes == ["hidden-left-out"]
    assert found.findings[0].values["places"] == "Women!2:2, Women!B:C, 2019"


def test_hidden_rows_that_hold_nothing_are_not_worth_a_note() -> None:
    book, sheet = book_of(["Size"], ["S"])
    sheet.row_dimensions[7].hidden = True
    assert read(saved(book), "a.xlsx").findings == ()


def test_comments_are_kept_also_where_the_cell_is_empty() -> None:
    book, sheet = book_of(["Size", "Chest"])
    sheet["B1"].comment = Comment("in inches", "office")
    sheet["C5"].comment = Comment("ask Ada", "office")
    found = read(saved(book), "a.xlsx").sheet
    assert found.cells[0, 1].comment == "in inches"
    assert found.comments == {(0, 1): "in inches", (4, 2): "ask Ada"}


def test_struck_out_text_is_marked_and_a_struck_out_part_left_out() -> None:
    book, sheet = book_of(["Chest"], ["86-91"], [None])
    sheet["A2"].font = Font(strike=True)
    struck = TextBlock(InlineFont(strike=True), "34-36 ")
    sheet["A3"] = CellRichText(struck, TextBlock(InlineFont(), "35-37"))
    cells = read(saved(book), "a.xlsx").sheet.cells
    assert (cells[0, 0].struck, cells[1, 0].struck) == (False, True)
    assert (cells[2, 0].text, cells[2, 0].struck) == ("35-37", True)


def test_raised_figures_are_fractions_behind_figures_and_marks_behind_letters() -> None:
    book, sheet = book_of([None])
    up, down = InlineFont(vertAlign="superscript"), InlineFont(vertAlign="subscript")
    sheet["A1"] = CellRichText("34", TextBlock(up, "1"), "/", TextBlock(down, "2"))
    sheet["B1"] = CellRichText("L", TextBlock(up, "1"))
    assert rows_of(read(saved(book), "a.xlsx").sheet) == [["34 1/2", "L¹"]]


def test_a_formula_that_was_never_calculated_is_an_error_at_its_place() -> None:
    book, _ = book_of(["Chest", "=B1+4", "=B1+8"])
    found = read(saved(book), "a.xlsx")
    assert found.codes == ["formula-without-value"]
    assert found.findings[0].place == "Women!B1"
    assert found.findings[0].values["cells"] == "Women!B1, Women!C1"
    assert found.sheet.cells[0, 1].formula_without_value


def test_a_calculated_formula_gives_its_value() -> None:
    book, _ = book_of(["Chest", "=1+1"])
    data = with_part(saved(book), SHEET, lambda xml: re.sub(r"<v\s*/>|<v></v>", "<v>96</v>", xml))
    found = read(data, "a.xlsx")
    assert (found.sheet.text(0, 1), found.codes) == ("96", [])


def test_a_formula_that_gives_an_empty_text_is_a_blank() -> None:
    book, _ = book_of(["Chest", "=1+1"])
    data = with_part(
        saved(book), SHEET, lambda xml: xml.replace('<c r="B1">', '<c r="B1" t="str">')
    )
    found = read(data, "a.xlsx")
    assert (found.rows(), found.codes) == ([["Chest"]], [])


def test_cells_without_references_stand_one_after_the_other() -> None:
    book, _ = book_of(["Size", None, "Chest"], ["S", 1, 2])
    data = with_part(saved(book), SHEET, lambda xml: re.sub(r' r="[A-Z]*\d+"', "", xml))
    data = with_part(data, SHEET, lambda xml: re.sub("<c[^>]*><v>1</v></c>", "<c/>", xml))
    assert rows_of(read(data, "a.xlsx").sheet)[1] == ["S", "", "2"]


def test_a_sheet_with_prefixed_names_is_the_same_sheet() -> None:
    book, _ = book_of(["Size", "Chest"], ["S", 86])
    data = with_part(
        saved(book),
        SHEET,
        lambda xml: re.sub(r"<(/?)(\w)", r"<\1x:\2", xml).replace("xmlns=", "xmlns:x="),
    )
    assert rows_of(read(data, "a.xlsx").sheet) == [["Size", "Chest"], ["S", "86"]]


def test_a_sheet_of_sixteen_bit_letters_is_the_same_sheet() -> None:
    book, _ = book_of(["Größe"])
    data = with_part(saved(book), SHEET, lambda xml: xml.encode("utf-16"))
    assert rows_of(read(data, "a.xlsx").sheet) == [["Größe"]]


def test_text_boxes_are_notes() -> None:
    drawing = (
        '<xdr:wsDr xmlns:xdr="u:d" xmlns:a="u:a"><a:p><a:r><a:t>All in </a:t></a:r>'
        "<a:r><a:t>inches</a:t></a:r></a:p></xdr:wsDr>"
    )
    links = (
        '<Relationships xmlns="u:r"><Relationship Id="r1" Type="u/drawing" '
        'Target="../drawings/drawing1.xml"/></Relationships>'
    )
    book, _ = book_of(["Size"])
    data = saved(book)
    for part, content in (
        ("xl/drawings/drawing1.xml", drawing),
        ("xl/worksheets/_rels/sheet1.xml.rels", links),
    ):
        data = _with_new_part(data, part, content)
    assert read(data, "a.xlsx").sheet.notes == ("All in inches",)


@pytest.mark.parametrize("column", ["XFD", "E"])
def test_a_stray_cell_far_away_keeps_its_place(column: str) -> None:
    book, sheet = book_of(["Size", "Chest"])
    sheet[f"{column}1048576"] = "x"
    found = read(saved(book), "a.xlsx").sheet
    assert found.filled_rows == (0, 1_048_575)
    assert found.place(*max(found.cells)) == f"Women!{column}1048576"


def _with_new_part(data: bytes, part: str, content: str) -> bytes:
    import io
    import zipfile

    stream = io.BytesIO(data)
    with zipfile.ZipFile(stream, "a") as archive:
        archive.writestr(part, content)
    return stream.getvalue()


def test_formatted_empty_cells_without_end_are_cut_out_before_parsing() -> None:
    book, sheet = book_of(["Size", "Chest"], ["S", "86-91"])
    sheet["C1"].number_format = '0" cm"'
    empty = "".join(
        f'<row r="{row}"><c r="A{row}" s="1"/><c r="B{row}" s="1"></c><c r="C{row}" s="1"/></row>'
        for row in range(3, 90_003)
    )
    last = '<row r="90003"><c r="D90003"><v>86</v></c></row>'
    data = with_part(
        saved(book), SHEET, lambda xml: xml.replace("</sheetData>", f"{empty}{last}</sheetData>")
    )
    found = read(data, "a.xlsx").sheet
    assert found.filled_rows == (0, 1, 90_002)
    assert found.text(90_002, 3) == "86"


def test_broken_letters_in_cells_are_put_right_and_noted_once() -> None:
    book, _ = book_of(["GrÃ¶ÃŸe", "Brust"], ["S", "86â€“91"], ["M", "92â€“97"])
    found = read(saved(book), "a.xlsx")
    assert found.rows()[:2] == [["Größe", "Brust"], ["S", "86–91"]]
    assert found.codes == ["text-repaired"]
    assert found.findings[0].values["before"] == "GrÃ¶ÃŸe"
    assert found.findings[0].values["after"] == "Größe"
