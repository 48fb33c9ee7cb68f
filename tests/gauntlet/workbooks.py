"""The gauntlet's workbooks, built in memory, as a supplier's office would have left them.

``WORKBOOKS`` holds a builder for each name of a ``NAME.expected.json`` whose source is
``NAME.xlsx``. To look at them in a spreadsheet program:
``python tests/gauntlet/workbooks.py FOLDER``.
"""

from __future__ import annotations

import io
import sys
from collections.abc import Callable, Sequence
from datetime import datetime
from pathlib import Path
from typing import Final

from openpyxl import Workbook
from openpyxl.comments import Comment
from openpyxl.worksheet.worksheet import Worksheet

Value = str | int | float | datetime | None
Rows = Sequence[Sequence[Value]]
Builder = Callable[[], Workbook]
WORKBOOKS: Final[dict[str, Builder]] = {}


def workbook_bytes(name: str) -> bytes:
    """The bytes of one workbook. Raises KeyError for a name without a builder."""
    stream = io.BytesIO()
    WORKBOOKS[name]().save(stream)
    return stream.getvalue()


def _named(name: str) -> Callable[[Builder], Builder]:
    def keep(builder: Builder) -> Builder:
        WORKBOOKS[name] = builder
        return builder

    return keep


def _sheet(book: Workbook, title: str, rows: Rows = ()) -> Worksheet:
    sheet: Worksheet = book.create_sheet(title)
    for row in rows:
        sheet.append(list(row))
    return sheet


def _book() -> Workbook:
    book = Workbook()
    book.remove(book.worksheets[0])
    return book


def _day(month: int, day: int) -> datetime:
    return datetime(2026, month, day)  # noqa: DTZ001 - a workbook's dates have no time zone


def _format(sheet: Worksheet, area: str, number_format: str) -> None:
    for row in sheet[area]:
        for cell in row:
            cell.number_format = number_format


def _comment(sheet: Worksheet, reference: str, text: str) -> None:
    sheet[reference].comment = Comment(text, "office")


@_named("06_number_format")
def _number_format() -> Workbook:
    book = _book()
    rows: Rows = [
        ["Airvests - body measures"],
        [],
        ["Size", "Chest", "Waist", "Back length"],
        ["XS", 84, 68, 43],
        ["S", 88, 72, 44.5],
        ["M", 92, 76, 46],
        ["L", 97, 81, 47.5],
        ["XL", 103, 87, 49],
    ]
    sheet = _sheet(book, "Vests", rows)
    sheet.merge_cells("A1:D1")
    _format(sheet, "B4:C8", '0" cm"')
    _format(sheet, "D4:D8", '0.0" cm"')
    return book


@_named("15_sheet_bands")
def _sheet_bands() -> Workbook:
    book = _book()
    heading = ["Size", "Chest (cm)", "Waist (cm)"]
    men = [["S", "92-97", "78-83"], ["M", "98-103", "84-89"], ["L", "104-110", "90-96"]]
    women = [["S", "82-86", "64-68"], ["M", "87-91", "69-73"], ["L", "92-97", "74-79"]]
    _sheet(book, "Men", [heading, *men])
    _sheet(book, "Women", [heading, *women])
    return book


@_named("24_dates")
def _dates() -> Workbook:
    book = _book()
    rows: Rows = [
        ["Size", "Age (years)", "Height (cm)", "Chest (cm)"],
        ["XXS", _day(6, 4), "104-116", "56-60"],
        ["XS", _day(8, 6), "116-128", "60-66"],
        ["S", _day(10, 8), "128-140", "66-72"],
        ["M", _day(12, 10), "140-152", "72-78"],
    ]
    sheet = _sheet(book, "Kids", rows)
    _format(sheet, "B2:B5", "d-mmm")
    return book


@_named("49_merged_values")
def _merged_values() -> Workbook:
    book = _book()
    rows: Rows = [
        ["Vest Fernside, body measures in cm"],
        ["Size", "Chest", "Waist", "Height"],
        ["S", "84-90", "68-74", "160-172"],
        ["M", "90-96", "74-80", None],
        ["L", "96-102", "80-86", "172-184"],
        ["XL", "102-108", "86-92", None],
    ]
    sheet = _sheet(book, "Sizes", rows)
    for area in ("A1:D1", "D3:D4", "D5:D6"):
        sheet.merge_cells(area)
    return book


@_named("50_hidden")
def _hidden() -> Workbook:
    book = _book()
    rows: Rows = [
        ["Valid from March 2027"],
        ["Size", "Chest (cm)", "Old waist (cm)", "Waist (cm)"],
        ["S", "84-90", "66-72", "68-74"],
        ["M", "90-96", "72-78", "74-80"],
        ["M/L", "93-99", "75-81", "77-83"],
        ["L", "96-104", "78-86", "80-88"],
    ]
    sheet = _sheet(book, "Current", rows)
    sheet.row_dimensions[5].hidden = True
    sheet.column_dimensions["C"].hidden = True
    old = _sheet(book, "2024", [["Size", "Chest (cm)"], ["S", "80-88"], ["M", "88-96"]])
    old.sheet_state = "hidden"
    return book


@_named("c08_band_in_comment")
def _band_in_comment() -> Workbook:
    book = _book()
    heading = ["Size", "Chest (cm)", "Waist (cm)"]
    men = [["36", "86-90", "76-80"], ["38", "91-95", "81-85"], ["40", "96-101", "86-91"]]
    women = [["36", "82-86", "64-68"], ["38", "87-91", "69-73"], ["40", "92-97", "74-79"]]
    _comment(_sheet(book, "Tabelle1", [heading, *men]), "A1", "Men's sizes")
    _comment(_sheet(book, "Tabelle2", [heading, *women]), "A1", "Women's sizes")
    return book


@_named("c14_height_dates")
def _height_dates() -> Workbook:
    book = _book()
    rows: Rows = [
        ["Size", "Height", "Chest (in)", "Weight (lb)", "Hip (in)"],
        ["S", _day(5, 4), "34-36", "110-135", "=30+6"],
        ["M", _day(5, 8), "37-39", "135-160", "=32+7"],
        ["L", _day(6, 1), "40-42", "160-190", "=34+8"],
    ]
    _format(_sheet(book, "Sheet1", rows), "B2:B4", "d-mmm")
    return book


@_named("c27_far_corner")
def _far_corner() -> Workbook:
    book = _book()
    sheet = _sheet(book, "Size chart 2027")
    sheet["C1"] = "Alder Lane Outfitters, trade price list"
    sheet["C2"] = "Valid: March 2027 to February 2028"
    rows: Rows = [
        ["Size", "Chest girth", "Waist girth", "Back length (C7 to SI)"],
        [None, "cm", "cm", "cm"],
        [1, "78-86", "62-70", "38-40"],
        [2, "86-94", "70-78", "40-43"],
        [3, "94-102", "78-86", "43-46"],
        [4, "102-112", "86-96", "46-49"],
    ]
    for number, row in enumerate(rows):
        for column, value in enumerate(row):
            sheet.cell(6 + number, 3 + column, value)
    return book


@_named("w10_fractions_format")
def _fractions_format() -> Workbook:
    book = _book()
    rows: Rows = [
        ["Size", "Chest", "Waist", "Back length"],
        ["S", 34.5, 28.25, 16],
        ["M", 36.5, 30.25, 16.5],
        ["L", 39, 32.75, 17.25],
    ]
    sheet = _sheet(book, "Sheet", rows)
    _format(sheet, "B2:B4", '# ?/?"""')
    _format(sheet, "C2:C4", '0.00"""')
    _format(sheet, "D2:D4", '# ?/?" in"')
    return book


@_named("cw08_basis_on_sheets")
def _basis_on_sheets() -> Workbook:
    book = _book()
    heading = ["Size", "Chest (cm)", "Waist (cm)"]
    body = [["S", "84-90", "68-74"], ["M", "90-96", "74-80"], ["L", "96-104", "80-88"]]
    _sheet(book, "Body", [heading, *body])
    _sheet(book, "Finished vest", [heading, ["S", 98, 84], ["M", 104, 90], ["L", 112, 98]])
    return book


@_named("x02_gender_merged")
def _gender_merged() -> Workbook:
    book = _book()
    rows: Rows = [
        ["Gender", "Size", "Chest (cm)", "Hip (cm)"],
        ["Women", "S", "84-88", "90-94"],
        [None, "M", "88-92", "94-98"],
        [None, "L", "92-97", "98-103"],
        ["Men", "S", "92-96", "92-96"],
        [None, "M", "96-100", "96-100"],
        [None, "L", "100-106", "100-106"],
    ]
    sheet = _sheet(book, "Sheet1", rows)
    sheet.merge_cells("A2:A4")
    sheet.merge_cells("A5:A7")
    return book


@_named("cx04_labels_became_dates")
def _labels_became_dates() -> Workbook:
    book = _book()
    rows: Rows = [
        ["School riding vests"],
        ["Age", "Height", "Chest"],
        [_day(3, 2), "36-39", "20-21"],
        [_day(5, 4), "40-43", "22-23"],
        [_day(7, 6), "44-48", "24-25"],
        [_day(10, 11), "53-57", "27-29"],
    ]
    sheet = _sheet(book, "Kids (in)", rows)
    _format(sheet, "A3:A5", "d-mmm")
    _format(sheet, "A6:A6", "mmm-d")
    return book


def main(folder: Path) -> None:
    """Write every workbook into ``folder``."""
    folder.mkdir(parents=True, exist_ok=True)
    for name in WORKBOOKS:
        (folder / f"{name}.xlsx").write_bytes(workbook_bytes(name))


if __name__ == "__main__":
    main(Path(sys.argv[1]))
