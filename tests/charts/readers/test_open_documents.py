"""Open spreadsheets: repetitions, spans, hidden parts, values behind the text, comments."""

from __future__ import annotations

from datetime import datetime
from decimal import Decimal

from tests.charts.hostile.making import OPEN, open_cell, open_row, open_sheet, zipped
from tests.charts.readers.reading import Read, read


def ods(rows: str) -> Read:
    return read(zipped(open_sheet(rows)), "a.ods")


def styled(rows: str, styles: str) -> Read:
    parts = open_sheet(rows)
    content = str(parts["content.xml"])
    spaces = (
        f'xmlns:style="{OPEN}style:1.0" xmlns:number="{OPEN}datastyle:1.0" '
        f'xmlns:fo="{OPEN}xsl-fo-compatible:1.0"'
    )
    made = f"<office:automatic-styles {spaces}>{styles}</office:automatic-styles><office:body>"
    return read(zipped({**parts, "content.xml": content.replace("<office:body>", made)}), "a.ods")


def test_repeated_cells_and_rows_stand_where_they_are_repeated() -> None:
    again = 'table:number-columns-repeated="2"'
    twice = 'table:number-rows-repeated="2"'
    found = ods(
        open_row(open_cell("S"), open_cell("84", again), more=twice) + open_row(open_cell("M"))
    )
    assert found.rows() == [["S", "84", "84"], ["S", "84", "84"], ["M", "", ""]]


def test_a_million_blank_rows_cost_nothing_and_shift_places() -> None:
    blank = "<table:table-cell table:number-columns-repeated='16384'/>"
    rows = open_row(blank, more='table:number-rows-repeated="1000000"') + open_row(open_cell("S"))
    assert list(ods(rows).sheet.cells) == [(1_000_000, 0)]


def test_spans_repeat_their_text_within_the_sheet() -> None:
    span = 'table:number-columns-spanned="2" table:number-rows-spanned="2"'
    covered = "<table:covered-table-cell/>"
    found = ods(
        open_row(open_cell("Chest", span), covered, open_cell("x"))
        + open_row(covered, covered, open_cell("y"))
    )
    assert found.rows() == [["Chest", "Chest", "x"], ["Chest", "Chest", "y"]]
    assert found.sheet.cells[1, 1].shared_from == (0, 0)


def test_hidden_rows_and_columns_are_left_out_and_said() -> None:
    column = "<table:table-column/><table:table-column table:visibility='collapse'/>"
    gone = "table:visibility='filter'"
    found = ods(
        column
        + open_row(open_cell("S"), open_cell("80"), open_cell("84"))
        + open_row(open_cell("M"), open_cell("81"), open_cell("88"), more=gone)
    )
    assert found.rows() == [["S", "", "84"]]
    assert [one.values["places"] for one in found.findings] == ["A!2:2, A!B:B"]


def test_the_displayed_text_is_kept_beside_the_exact_value() -> None:
    number = 'office:value-type="float" office:value="274.65999999999997"'
    found = ods(open_row(open_cell("274,7", number)))
    assert (found.sheet.cells[0, 0].text, found.sheet.cells[0, 0].stored) == (
        "274,7",
        Decimal("274.66"),
    )


def test_a_day_comes_with_the_code_of_its_format() -> None:
    styles = (
        '<number:date-style style:name="N1"><number:day/><number:text>-</number:text>'
        '<number:month number:textual="true"/></number:date-style>'
        '<style:style style:name="c1" style:family="table-cell" style:data-style-name="N1"/>'
    )
    day = 'table:style-name="c1" office:value-type="date" office:date-value="2026-06-04"'
    cell = styled(open_row(open_cell("4-Jun", day)), styles).sheet.cells[0, 0]
    assert cell.text == "4-Jun"
    assert cell.stored == datetime(2026, 6, 4)  # noqa: DTZ001 - a workbook's days have no zone
    assert cell.number_format == 'd"-"mmm'


def test_raised_and_struck_pieces_are_read_as_a_person_does() -> None:
    styles = (
        '<style:style style:name="T1"><style:text-properties style:text-position="super 58%"/>'
        '</style:style><style:style style:name="T2">'
        '<style:text-properties style:text-line-through-style="solid"/></style:style>'
    )
    up = '<text:span text:style-name="T1">1/2</text:span>'
    gone = '<text:span text:style-name="T2">80</text:span>'
    found = styled(open_row(open_cell(f"34{up}"), open_cell(f"{gone}84")), styles)
    assert found.rows() == [["34 1/2", "84"]]
    assert found.sheet.cells[0, 1].struck


def test_a_comment_is_no_part_of_the_text() -> None:
    note = "<office:annotation><text:p>under the arms</text:p></office:annotation>"
    cell = f"<table:table-cell>{note}<text:p>Chest</text:p></table:table-cell>"
    found = ods(open_row(cell))
    assert found.rows() == [["Chest"]]
    assert dict(found.sheet.comments) == {(0, 0): "under the arms"}


def test_a_formula_without_a_value_is_said() -> None:
    lost = '<table:table-cell table:formula="of:=1+1"/>'
    found = ods(open_row(open_cell("S"), lost))
    assert found.codes == ["formula-without-value"]
