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


def main(folder: Path) -> None:
    """Write every workbook into ``folder``."""
    folder.mkdir(parents=True, exist_ok=True)
    for name in WORKBOOKS:
        (folder / f"{name}.xlsx").write_bytes(workbook_bytes(name))


if __name__ == "__main__":
    main(Path(sys.argv[1]))
