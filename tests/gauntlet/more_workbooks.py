"""Workbooks of the second set of tables; they join those of ``workbooks``."""

from __future__ import annotations

from datetime import datetime

from openpyxl import Workbook
from workbooks import WORKBOOKS, Builder, Rows


def _sheet(book: Workbook, title: str, rows: Rows) -> None:
    sheet = book.create_sheet(title)
    for row in rows:
        sheet.append(list(row))


def _book() -> Workbook:
    book = Workbook()
    book.remove(book.worksheets[0])
    return book


def _logo_rows() -> Workbook:
    book = _book()
    rows: Rows = [
        [],
        [None, "HILLTOP RIDING SUPPLY"],
        [None, "14 Mill Lane, tel. 555 0136, open 9-17"],
        [None, "Revised", datetime(2026, 1, 12)],  # noqa: DTZ001 - a workbook's dates have no zone
        [],
        [None, "SIZE CHART - ADULT AIR VEST (inches / pounds)"],
        [],
        [None, "Size", "Chest (in)", "Waist (in)", "Back length (in)", "Weight (lb)"],
        [None, "XS", "32-34", "26-28", 15, "90-115"],
        [None, "S", "34-36", "28-30", "15 1/2", "110-135"],
        [None, "M", "37-39", "31-33", "16 1/4", "130-165"],
        [None, "L", "40-42", "34-36", 17, "160-195"],
        [None, "XL", "43-45", "37-39", "17 3/4", "190-230"],
        [],
        [None, "Prices on request. Min. order 6 pcs."],
    ]
    _sheet(book, "Size chart", rows)
    sheet = book["Size chart"]
    for area in ("B2:F2", "B3:F3", "B6:F6", "B15:F15"):
        sheet.merge_cells(area)
    return book


def _formats_and_hidden() -> Workbook:
    book = _book()
    rows: Rows = [
        ["Body protector, adults"],
        ["Size", "Chest", "Chest 2025", "Waist", "Stock"],
        ["Small", 90, 88, 30, 14],
        ["Medium", 96, 94, 32.5, 22],
        ["Large", 102, 100, 35, 9],
        ["X-Large", 109, 107, 38, 3],
    ]
    _sheet(book, "2026", rows)
    sheet = book["2026"]
    for number in range(3, 7):
        sheet[f"B{number}"].number_format = '0" cm"'
        sheet[f"C{number}"].number_format = '0" cm"'
        sheet[f"D{number}"].number_format = '0.0"\u2033"'
        sheet[f"E{number}"].number_format = '0" pcs"'
    sheet.column_dimensions["C"].hidden = True
    return book


def _notes_and_finished() -> Workbook:
    book = _book()
    notes: Rows = [
        ["Please read first"],
        ["Chest is measured 2 cm below the armpit over a T-shirt."],
        ["Sizes 36-44 are kept in stock, 46-50 take 3-4 weeks."],
        ["Questions: ext. 112"],
    ]
    body: Rows = [
        ["Ladies - body measurements in cm"],
        ["Size", "Chest", "Hip"],
        [36, "82-85", "89-92"],
        [38, "86-89", "93-96"],
        [40, "90-93", "97-100"],
        [42, "94-97", "101-104"],
        [44, "98-102", "105-109"],
    ]
    finished: Rows = [
        ["Ladies - finished vest, measured in cm"],
        ["Size", "Chest", "Back length"],
        [36, 92, 40],
        [38, 96, 41],
        [40, 100, 42],
        [42, 104, 43],
        [44, 109, 44],
    ]
    for title, rows in (("Notes", notes), ("Body", body), ("Finished vest", finished)):
        _sheet(book, title, rows)
    return book


def _lengths_merged() -> Workbook:
    book = _book()
    rows: Rows = [
        ["Riding vest - measurements in cm"],
        ["Size", "Length", "Chest", "Back length"],
        ["S", "Short", "86-92", "38-40"],
        [None, "Regular", None, "40-42"],
        [None, "Long", None, "42-44"],
        ["M", "Short", "92-98", "39-41"],
        [None, "Regular", None, "41-43"],
        [None, "Long", None, "43-45"],
        ["L", "Short", "98-105", "40-42"],
        [None, "Regular", None, "42-44"],
        [None, "Long", None, "44-46"],
    ]
    _sheet(book, "Vest", rows)
    sheet = book["Vest"]
    sheet.merge_cells("A1:D1")
    for top in (3, 6, 9):
        sheet.merge_cells(f"A{top}:A{top + 2}")
        sheet.merge_cells(f"C{top}:C{top + 2}")
    return book


BUILDERS: dict[str, Builder] = {
    "r23_logo_rows": _logo_rows,
    "q23_formats_and_hidden": _formats_and_hidden,
    "r24_notes_and_finished": _notes_and_finished,
    "q24_lengths_merged": _lengths_merged,
}
WORKBOOKS.update(BUILDERS)
