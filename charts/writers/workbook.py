"""The combined chart as a workbook a shop can print and hang up, or sort and filter on screen."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from io import BytesIO
from itertools import groupby
from typing import TYPE_CHECKING, Final

from charts.in_house import InHouseChart
from charts.wording import Wording
from charts.writers import workbook_look as looks
from charts.writers.in_house_table import laid_out
from charts.writers.own_files import MARK
from charts.writers.printed_table import InHouseTable, QuestionList, TableColumn, TableRow
from charts.writers.workbook_cells import height, put, put_across
from charts.writers.workbook_page import set_page

if TYPE_CHECKING:
    from openpyxl import Workbook
    from openpyxl.worksheet.worksheet import Worksheet

HEAD_ROW: Final = 5
UNIT_ROW: Final = 6
FIRST_ROW: Final = 7
_ROW_AIR: Final = 3.0


def workbook_bytes(chart: InHouseChart, wording: Wording) -> bytes:
    """The finished .xlsx: the chart on the first sheet, its open questions on the second."""
    from openpyxl import Workbook

    table = laid_out(chart, wording)
    book = Workbook()
    book.properties.title = table.title
    book.properties.subject = table.subtitle
    book.properties.category = MARK
    book.properties.creator = "harmonizer"
    _chart_sheet(book.worksheets[0], table)
    if table.questions is not None:
        _question_sheet(book, table, table.questions)
    done = BytesIO()
    book.save(done)
    return done.getvalue()


def _chart_sheet(sheet: Worksheet, table: InHouseTable) -> None:
    sheet.title = table.sheet
    sheet.sheet_view.showGridLines = False
    sheet.sheet_view.zoomScale = 90
    for row, (text, look) in enumerate(
        ((table.title, looks.TITLE), (table.subtitle, looks.SUBTITLE), (table.key, looks.KEY)), 1
    ):
        put(sheet, row, 1, text, look)
    _heads(sheet, table.columns)
    for row, each in enumerate(table.rows, FIRST_ROW):
        _body_row(sheet, row, each, table.columns)
    after = FIRST_ROW + len(table.rows)
    if table.rows:
        sheet.auto_filter.ref = (
            f"A{UNIT_ROW}:{sheet.cell(after - 1, len(table.columns)).coordinate}"
        )
    put_across(sheet, (after, after), (1, len(table.columns)), "", looks.LAST_LINE)
    last = _foot(sheet, table, after + 1)
    sheet.freeze_panes = sheet.cell(FIRST_ROW, table.frozen + 1).coordinate
    set_page(sheet, table.margins, (HEAD_ROW, UNIT_ROW), (last, len(table.columns)))


def _heads(sheet: Worksheet, columns: Sequence[TableColumn]) -> None:
    from openpyxl.utils import get_column_letter

    for first, last in _groups(columns):
        column = columns[first - 1]
        rows = (HEAD_ROW, HEAD_ROW if column.unit else UNIT_ROW)
        put_across(sheet, rows, (first, last), column.head, looks.HEAD)
    for number, column in enumerate(columns, 1):
        sheet.column_dimensions[get_column_letter(number)].width = column.width
        if column.unit:
            put(sheet, UNIT_ROW, number, column.unit, looks.HEAD)


def _body_row(
    sheet: Worksheet, row: int, printed: TableRow, columns: Sequence[TableColumn]
) -> None:
    starts = {first for first, _ in _groups(columns)}
    highest = 0.0
    for number, cell in enumerate(printed.cells, 1):
        look = looks.of_cell(cell, starts_model=printed.starts_model, starts_group=number in starts)
        put(sheet, row, number, cell.text, look)
        highest = max(highest, height(cell.text, columns[number - 1].width, look))
    sheet.row_dimensions[row].height = highest + _ROW_AIR


def _groups(columns: Sequence[TableColumn]) -> Iterator[tuple[int, int]]:
    """First and last number, from 1, of the columns that share a head."""
    first = 1
    for (_, shared), group in groupby(columns, key=lambda column: (column.head, bool(column.unit))):
        last = first + len(list(group)) - 1
        if shared:
            yield first, last
        else:
            yield from ((number, number) for number in range(first, last + 1))
        first = last + 1


def _foot(sheet: Worksheet, table: InHouseTable, row: int) -> int:
    """Footnotes and cautions, each over the whole width; the last row written."""
    width = sum(column.width for column in table.columns)
    said = [(text, looks.FOOTNOTE) for text in table.footnotes]
    said += [(text, looks.CAUTION) for text in table.cautions]
    for text, look in said:
        put_across(sheet, (row, row), (1, len(table.columns)), text, look)
        sheet.row_dimensions[row].height = height(text, width, look) + _ROW_AIR
        row += 1
    return row - 1


def _question_sheet(book: Workbook, table: InHouseTable, questions: QuestionList) -> None:
    from openpyxl.utils import get_column_letter

    sheet = book.create_sheet(questions.title)
    sheet.sheet_view.showGridLines = False
    put(sheet, 1, 1, questions.title, looks.TITLE)
    put(sheet, 2, 1, table.subtitle, looks.SUBTITLE)
    for number, (head, width) in enumerate(zip(questions.heads, questions.widths, strict=True), 1):
        put(sheet, 4, number, head, looks.HEAD)
        sheet.column_dimensions[get_column_letter(number)].width = width
    for row, cells in enumerate(questions.rows, 5):
        for number, text in enumerate(cells, 1):
            put(sheet, row, number, text, looks.LISTED)
        heights = zip(cells, questions.widths, strict=True)
        highest = max(height(text, width, looks.LISTED) for text, width in heights)
        sheet.row_dimensions[row].height = highest + _ROW_AIR
    sheet.freeze_panes = "A5"
    set_page(sheet, table.margins, (4, 4), (4 + len(questions.rows), len(questions.heads)))
