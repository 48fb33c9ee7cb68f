"""Write the two workbooks of the demo scenario, the same bytes on every run.

Not needed at run time: the workbooks are kept beside the other demo files. Run it after a change
with ``python resources/demo/build_workbooks.py``. Everything in them is invented.
"""

from __future__ import annotations

import io
import zipfile
from collections.abc import Iterable, Sequence
from datetime import datetime
from decimal import Decimal
from pathlib import Path
from typing import Final

from openpyxl import Workbook  # noqa: TID253 - a script that only writes workbooks
from openpyxl.styles import Alignment, Font, PatternFill  # noqa: TID253 - as above
from openpyxl.worksheet.worksheet import Worksheet  # noqa: TID253 - as above

HERE: Final = Path(__file__).resolve().parent
WRITTEN: Final = datetime(2026, 11, 9, 8, 30)  # noqa: DTZ001 - a workbook's stamp has no zone
CmRange = tuple[int | float, int | float]
LADIES: Final[Sequence[tuple[str, str, CmRange, str, CmRange, CmRange, CmRange, int]]] = (
    # size, UK, chest, chest of 2025 (hidden), waist, hip, back C7 to sacrum, tallest
    ("XS", "6", (76, 84), "74-82", (60, 70), (82, 92), (39, 42), 164),
    ("S", "8-10", (82, 90), "80-88", (66, 76), (88, 98), (40.5, 43.5), 168),
    ("M", "12-14", (88, 96), "86-94", (72, 82), (94, 104), (42, 45), 174),
    ("L", "16-18", (94, 102), "92-100", (78, 90), (100, 110), (43.5, 46.5), 178),
    ("XL", "20", (100, 110), "98-108", (86, 100), (106, 118), (45, 48), 182),
)
GENTS: Final[Sequence[tuple[str, CmRange, CmRange, CmRange, CmRange]]] = (
    ("S", (88, 96), (74, 84), (86, 96), (45, 49)),
    ("M", (94, 102), (80, 92), (92, 102), (46.5, 50.5)),
    ("L", (100, 110), (88, 100), (98, 108), (48, 52)),
    ("XL", (108, 118), (96, 110), (104, 116), (49.5, 53.5)),
    ("XXL", (116, 128), (106, 122), (112, 124), (51, 55)),
)
# size, then chest, waist, hip (from, to) in inches, weight (from, to) in pounds
ADULT: Final[Sequence[tuple[str | float, ...]]] = (
    ("XS", 31, 34, 25, 29, 32, 36, 95, 125),
    ("S", 33.5, 36.5, 27.5, 32, 34.5, 38.5, 110, 145),
    ("M", 36, 39, 30, 35, 37, 41, 130, 170),
    ("L", 38.5, 42, 33, 38.5, 39.5, 43.5, 150, 200),
    ("XL", 41.5, 45.5, 36.5, 42.5, 42.5, 46.5, 180, 235),
    ("XXL", 45, 50, 41, 48, 46, 51, 215, 265),
)
BACKS: Final[Sequence[tuple[str, str, str, str]]] = (
    ("XS", "14 1/2 - 16", "15 1/2 - 17", "16 1/2 - 18"),
    ("S", "15 - 16 1/2", "16 - 17 1/2", "17 - 18 1/2"),
    ("M", "15 1/2 - 17", "16 1/2 - 18", "17 1/2 - 19 1/2"),
    ("L", "16 - 17 1/2", "17 - 19", "18 1/2 - 20 1/2"),
    ("XL", "16 1/2 - 18", "17 1/2 - 19 1/2", "19 - 21"),
    ("XXL", "17 - 18 1/2", "18 - 20", "19 1/2 - 21 1/2"),
)
# size, age, chest, waist, hip, back, tallest rider, least weight in pounds
YOUTH: Final[Sequence[tuple[str | datetime | int, ...]]] = (
    ("S", "8-9", "24 1/2-27 1/2", "22-25", "25 1/2-29", "12-14", "4'6\"", 70),
    # A spreadsheet made a date of 10-12 when it was typed: planted. Cells hold days without a zone.
    ("M", datetime(2026, 10, 12), "27-30", "24-27", "28-32", "13 1/4-15 1/4", "4'11\"", 75),  # noqa: DTZ001
    ("L", "13-14", "29 1/2-33", "26-29 1/2", "31-35", "14 1/2-16 1/2", "5'4\"", 90),
    ("XL", "15-16", "32 1/2-36", "28 1/2-32", "34-38", "15 3/4-18", "5'8\"", 110),
)
BOLD: Final = Font(bold=True)
CENTRED: Final = Alignment(horizontal="center", wrap_text=True, vertical="center")
SHADED: Final = PatternFill("solid", fgColor="DDE6EA")


def cm_text(ends: CmRange) -> str:
    """A range in centimetres with an en dash, as the first supplier prints it."""
    return f"{ends[0]:g}–{ends[1]:g}"


def inch_text(ends: CmRange) -> str:
    """The same range to the nearest half inch, halves as a vulgar character."""
    return "–".join(_half_inches(end) for end in ends)


def _half_inches(end_cm: float) -> str:
    whole, half = divmod(round(Decimal(str(end_cm)) / Decimal("2.54") * 2), 2)
    return f"{whole}½" if half else f"{whole}"


def heading(sheet: Worksheet, place: str, text: str) -> None:
    """Write a heading over ``place``, merged when it is an area."""
    first = place.split(":", maxsplit=1)[0]
    sheet[first] = text
    sheet[first].font, sheet[first].alignment, sheet[first].fill = BOLD, CENTRED, SHADED
    if ":" in place:
        sheet.merge_cells(place)


def headings(sheet: Worksheet, row: int, texts: Iterable[str]) -> None:
    """Write one row of headings from column A on; an empty text leaves its cell alone."""
    for column, text in enumerate(texts, start=1):
        if text:
            heading(sheet, sheet.cell(row, column).coordinate, text)


def tarnwhistle() -> Workbook:
    """Both units in two columns under merged headings, a hidden column, a swapped pair."""
    book = Workbook()
    cover = book.worksheets[0]
    cover.title = "Read me"
    cover["A1"] = "Tarnwhistle trade size guide, spring 2027"
    cover["A3"] = (
        "Fellgarrow foam body protectors. Let the foam warm for five minutes before judging."
    )
    cover["A4"] = "Questions to your area agent. Older guides are no longer valid."
    _tarnwhistle_ladies(book.create_sheet("Ladies"))
    _tarnwhistle_gents(book.create_sheet("Gents"))
    return book


def _tarnwhistle_ladies(sheet: Worksheet) -> None:
    heading(sheet, "A1:L1", "Fellgarrow W, ladies: to fit body measurements")
    sheet["A2"] = "Back length is taken from the nape (C7) to the dimples of the sacrum."
    for place, text in (
        ("A3:A4", "Size"),
        ("B3:B4", "UK size"),
        ("C3:D3", "Chest"),
        ("E3:E4", "Chest 2025 (cm)"),
        ("F3:G3", "Waist"),
        ("H3:I3", "Hip"),
        ("J3:K3", "Back length C7 to sacrum"),
        ("L3:L4", "Height up to (cm)"),
    ):
        heading(sheet, place, text)
    headings(sheet, 4, ("", "", "cm", "in", "", "cm", "in", "cm", "in", "cm", "in"))
    for row in LADIES:
        size, uk, chest, old, waist, hip, back, tallest = row
        pairs = [text for ends in (waist, hip, back) for text in (cm_text(ends), inch_text(ends))]
        sheet.append([size, uk, cm_text(chest), inch_text(chest), old, *pairs, tallest])
    sheet.column_dimensions["E"].hidden = True
    sheet.freeze_panes = "C5"


def _tarnwhistle_gents(sheet: Worksheet) -> None:
    heading(sheet, "A1:I1", "Fellgarrow M, gents: to fit body measurements")
    sheet["A2"] = "Back length is taken from the nape (C7) to the dimples of the sacrum."
    for place, text in (
        ("A3:A4", "Size"),
        ("B3:C3", "Chest"),
        ("D3:E3", "Waist"),
        ("F3:G3", "Hip"),
        ("H3:I3", "Back length C7 to sacrum"),
    ):
        heading(sheet, place, text)
    # The waist stands under its headings the wrong way round: planted.
    headings(sheet, 4, ("", "cm", "in", "in", "cm", "cm", "in", "cm", "in"))
    for size, *ranges in GENTS:
        sheet.append(
            [size, *(text for ends in ranges for text in (cm_text(ends), inch_text(ends)))]
        )


def pinderlow() -> Workbook:
    """Units in sheet name and number formats, a date that was a range, a matrix of backs."""
    book = Workbook()
    _pinderlow_youth(book.worksheets[0])
    _pinderlow_adult(book.create_sheet("Adult"))
    _pinderlow_backs(book.create_sheet("Adult back length"))
    old = book.create_sheet("2025")
    old.append(["Size", "Chest (in)"])
    old.append(["S", "33-35"])
    old.sheet_state = "hidden"
    return book


def _pinderlow_youth(sheet: Worksheet) -> None:
    sheet.title = "Youth (in)"
    heading(
        sheet, "A1:H1", "Pinderlow Pipwhirr youth inflatable vest, spring 2027, body measurements"
    )
    sheet.append([])
    headings(
        sheet,
        3,
        ("Size", "Age", "Chest", "Waist", "Hip", "Back length", "Height", "Minimum weight"),
    )
    for row in YOUTH:
        sheet.append(row)
        sheet.cell(sheet.max_row, 8).number_format = '0" lb"'
        if isinstance(row[1], datetime):
            sheet.cell(sheet.max_row, 2).number_format = "d-mmm"
    sheet["A9"] = "Height: if your height is equal or below the number, take that size."
    sheet["A10"] = "Not for riders under 70 lb: the vest may not fire."


def _pinderlow_adult(sheet: Worksheet) -> None:
    heading(
        sheet, "A1:I1", "Pinderlow Gustwhirr adult inflatable vest, spring 2027, body measurements"
    )
    heading(sheet, "A3:A4", "Size")
    for place, text in (
        ("B3:C3", "Chest"),
        ("D3:E3", "Waist"),
        ("F3:G3", "Hip (in)"),
        ("H3:I3", "Weight"),
    ):
        heading(sheet, place, text)
    headings(sheet, 4, ("", *("from", "to") * 4))
    formats = ('0.0" in"', '# ?/?" in"', "0.0", '0" lb"')
    for row in ADULT:
        sheet.append(row)
        for column in range(2, 10):
            sheet.cell(sheet.max_row, column).number_format = formats[(column - 2) // 2]
    sheet["A12"] = "Worn outermost. Between two sizes take the larger, unless its back is too long."


def _pinderlow_backs(sheet: Worksheet) -> None:
    heading(sheet, "A1:D1", "Gustwhirr adult: back length (in), C7 to sacral dimples")
    headings(sheet, 3, ("Size", "Short", "Regular", "Long"))
    for row in BACKS:
        sheet.append(row)


def save(book: Workbook, path: Path) -> None:
    """Write ``book`` with fixed stamps, so that the same content is the same file."""
    book.properties.creator = "invented"
    book.properties.created = book.properties.modified = WRITTEN
    first = io.BytesIO()
    book.save(first)
    with (
        zipfile.ZipFile(first) as source,
        zipfile.ZipFile(path, "w", zipfile.ZIP_DEFLATED) as target,
    ):
        for name in sorted(source.namelist()):
            entry = zipfile.ZipInfo(name, date_time=WRITTEN.timetuple()[:6])
            entry.compress_type = zipfile.ZIP_DEFLATED
            target.writestr(entry, _with_fixed_stamp(name, source.read(name)))


def _with_fixed_stamp(name: str, content: bytes) -> bytes:
    """The workbook library stamps the moment of saving over the one it was given."""
    if name != "docProps/core.xml":
        return content
    head, mark, rest = content.partition(b'xsi:type="dcterms:W3CDTF">')
    parts = [head]
    while mark:
        _, closing, rest = rest.partition(b"<")
        parts += [mark, WRITTEN.isoformat().encode() + b"Z", closing]
        head, mark, rest = rest.partition(b'xsi:type="dcterms:W3CDTF">')
        parts.append(head)
    return b"".join(parts)


def main() -> None:
    """Write both workbooks into their suppliers' folders."""
    save(tarnwhistle(), HERE / "charts" / "tarnwhistle" / "Tarnwhistle size guide SS27.xlsx")
    save(pinderlow(), HERE / "charts" / "pinderlow" / "pinderlow_2027.xlsx")


if __name__ == "__main__":
    main()
