"""A sheet's page: landscape A3, all columns on one page's width, heads on every page."""

from __future__ import annotations

from functools import reduce
from typing import TYPE_CHECKING, Final

from charts.writers.printed_table import Margins

if TYPE_CHECKING:
    from openpyxl.worksheet.worksheet import Worksheet

_CODES: Final = (("{today}", "&D"), ("{number}", "&P"), ("{pages}", "&N"))


def set_page(
    sheet: Worksheet, margins: Margins, heads: tuple[int, int], last: tuple[int, int]
) -> None:
    """Print rows 1 to ``last`` (row, column), the rows ``heads`` again on every page.

    The sheet is scaled to the width of whatever paper the printer holds.
    """
    from openpyxl.worksheet.properties import PageSetupProperties

    sheet.page_setup.orientation = "landscape"
    sheet.page_setup.paperSize = 8  # A3, ECMA-376 part 1, 18.3.1.63
    sheet.page_setup.fitToWidth = 1
    sheet.page_setup.fitToHeight = 0
    sheet.sheet_properties.pageSetUpPr = PageSetupProperties(fitToPage=True)
    sheet.print_options.horizontalCentered = True
    sheet.page_margins.left = sheet.page_margins.right = 0.4
    sheet.page_margins.top, sheet.page_margins.bottom = 0.75, 0.6
    sheet.page_margins.header = sheet.page_margins.footer = 0.3
    sheet.print_title_rows = f"{heads[0]}:{heads[1]}"
    sheet.print_area = f"A1:{sheet.cell(*last).coordinate}"
    _write_margins(sheet, margins)


def _write_margins(sheet: Worksheet, margins: Margins) -> None:
    head, foot = sheet.oddHeader, sheet.oddFooter
    if head is None or foot is None:
        return
    parts = (head.left, head.center, head.right, foot.left, foot.right)
    for part, text in zip(parts, (*margins.head, *margins.foot), strict=True):
        part.text = reduce(_put_in, _CODES, text.replace("&", "&&"))


def _put_in(text: str, code: tuple[str, str]) -> str:
    return text.replace(*code)
