"""``Women`` below its rows and not above them: then the next rows are not hers.

A word for whom that has no rows below it, at the end of a sheet, shows which way the others point.
"""

from __future__ import annotations

from collections.abc import Sequence
from itertools import takewhile

from charts.columns.meaning import Column
from charts.columns.words import Surroundings
from charts.headings.bands import names_adults
from charts.layout.fields import Table
from charts.layout.looks import look
from charts.sheet import Sheet


def bands_below_asked(columns: Sequence[Column], around: Surroundings) -> list[Column]:
    """The columns, with one question of the sheet where such words stand below their rows."""
    sheet = around.table.sheet
    below = _last_row(around.table) + 1
    text = _people_alone(sheet, below)
    if text is None or not _ends_with_people(around.table, below):
        return list(columns)
    column, _ = next(iter(sheet.row(below)))
    ident = around.log.add(
        "columns-shifted",
        sheet.place(below, column),
        key=f"below {sheet.name}",
        case="below",
        heading=text,
    )
    return [one.asking(ident) for one in columns]


def _last_row(table: Table) -> int:
    return max((at.row for field in table.fields for cell in field.cells for at in cell), default=0)


def _people_alone(sheet: Sheet, row: int) -> str | None:
    """The word for whom that stands alone in a row."""
    texts = {cell.text.strip() for _, cell in sheet.row(row)} - {""}
    text = texts.pop() if len(texts) == 1 else ""
    return text if text and (look(text).bare_band or _grown_ups(text)) else None


def _grown_ups(text: str) -> bool:
    label = look(text).label
    return names_adults(text) and label is not None and not label.also


def _ends_with_people(table: Table, below: int) -> bool:
    """Whether such a word stands right below the last figures of the sheet, and none above all.

    One alone may be the title of what was lost, or the name of the one table above it.
    """
    sheet, rows = table.sheet, table.sheet.filled_rows
    last = next((row for row in reversed(rows) if _holds_figures(sheet, row)), below)
    between = last > below or any(_people_alone(sheet, at.row) for at in table.titles)
    if not between or _people_alone(sheet, last + 1) is None:
        return False
    above = takewhile(lambda row: not _holds_figures(sheet, row), rows)
    return all(_people_alone(sheet, row) is None for row in above)


def _holds_figures(sheet: Sheet, row: int) -> bool:
    return any(look(cell.text).value for _, cell in sheet.row(row))
