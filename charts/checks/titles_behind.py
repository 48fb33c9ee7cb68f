"""Names of tables that may stand below them: ``Men`` between two tables names the first one then.

Nothing stands above the first table, every other one has a name right above it, and one is left
over below the last: each name may be that of the table before it. Nobody is told by such a page.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from charts.asked_values import chart_asking
from charts.columns.words import is_sentence
from charts.dimensions import find_units
from charts.findings import FindingLog
from charts.identity import own_words
from charts.layout.fields import Table
from charts.layout.view import At
from charts.schema import Chart
from charts.sheet import Sheet

_MOST_WORDS: Final = 3
"""Words of a name that stands alone; more of them say something (common practice, no source)."""


def titles_behind_asked(
    charts: Sequence[Chart], sheet: Sheet, tables: Sequence[Table], log: FindingLog
) -> list[Chart]:
    """The charts of a sheet, with one question on all where its names may stand below them."""
    told = {one.band for one in charts}
    if len(tables) < 2 or len(told) < 2 or not _of_nobody(charts, tables[0]):
        return list(charts)
    if not all(table.titles for table in tables[1:]) or _first_row(tables[0]) > _start(sheet):
        return list(charts)
    at = tables[1].titles[0]
    if not _name_left_over(sheet, tables[-1]):
        return list(charts)
    ident = log.add(
        "columns-shifted",
        sheet.place(at.row, at.column),
        key=f"below {sheet.name}",
        case="below",
        heading=at.text.strip(),
    )
    return [chart_asking(one, ident) for one in charts]


def _of_nobody(charts: Sequence[Chart], table: Table) -> bool:
    own = [one for one in charts if one.place == table.area]
    return bool(own) and all(one.band is None for one in own)


def _start(sheet: Sheet) -> int:
    """The first row of a sheet with a text; above all rows where a caption stands over it."""
    return -1 if sheet.context else sheet.filled_rows[0]


def _first_row(table: Table) -> int:
    return min(at.row for at in _cells(table))


def _cells(table: Table) -> list[At]:
    heads = [at for field in table.fields for at in field.heads]
    return heads + [at for field in table.fields for cell in field.cells for at in cell]


def _name_left_over(sheet: Sheet, table: Table) -> bool:
    """Whether right below the last table one text stands alone that could be a table's name.

    Its words are those of any chart and name no unit: "All in cm" holds for what is above.
    """
    last = max(at.row for at in _cells(table))
    below = next((row for row in sheet.filled_rows if row > last), None)
    texts = [cell.text.strip() for _, cell in sheet.row(below)] if below is not None else []
    if len(texts) != 1 or is_sentence(texts[0]) or any(map(str.isdigit, texts[0])):
        return False
    words = texts[0].split()
    plain = not find_units(texts[0]) and not own_words(texts[0])
    return 0 < len(words) <= _MOST_WORDS and plain
