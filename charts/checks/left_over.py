"""Figures of a text that came into none of its tables: a part of the chart may be missing.

Only texts are looked through: a workbook or a page says itself where its cells stand.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Sequence
from typing import Final

from charts.findings import FindingLog
from charts.layout.fields import FieldKind, Table
from charts.layout.looks import look
from charts.readers.value_runs import figures_among, named_values
from charts.schema import Chart
from charts.sheet import Addressing, Sheet

_FEWEST: Final = 4
"""Figures that could be a row of a chart; fewer stand in any letter (common practice)."""
_FEWEST_CELLS: Final = 3
_FEWEST_AMONG: Final = 2
"""Figures of a line that begins with a size or holds words between: ``2T 1-2 33-35``."""
_LONG_NUMBER: Final = re.compile(r"\d{4}|\d[.:/]\d+[.:/]\d")
"""Years, telephone numbers, dates: no girths."""


def say_left_over(
    sheet: Sheet, tables: Sequence[Table], charts: Sequence[Chart], log: FindingLog
) -> None:
    """Ask once a text about figures that came into none of its charts, at the first of them."""
    if sheet.addressing is not Addressing.LINE:
        return
    used = set(_cells_of(tables))
    left = [
        (at, count)
        for at, cell in sorted(sheet.cells.items())
        if at not in used and cell.shared_from is None and (count := _figures(cell.text))
    ]
    left = _without_marks(sheet, left)
    if len(left) < _FEWEST_CELLS and sum(count for _, count in left) < _FEWEST:
        left = [(at, 1) for at in sorted(_dropped(sheet, tables, charts))]
    if len(left) >= _FEWEST_CELLS or sum(count for _, count in left) >= _FEWEST:
        place = sheet.place(*left[0][0])
        log.add("text-order", place, case="left", text=sheet.text(*left[0][0]).strip())


def _without_marks(
    sheet: Sheet, left: Sequence[tuple[tuple[int, int], int]]
) -> list[tuple[tuple[int, int], int]]:
    """Without 1, 2, 3 alone on their lines: the numbers of a drawing, told off in its legend."""
    lone = [at for at, _ in left if sheet.text(*at).strip().isdigit()]
    counted = [int(sheet.text(*at)) for at in lone] == [*range(1, len(lone) + 1)]
    return [one for one in left if not counted or one[0] not in lone]


def _cells_of(tables: Iterable[Table]) -> Iterable[tuple[int, int]]:
    for table in tables:
        for field in table.fields:
            for cell in (field.heads, *field.cells):
                yield from ((at.row, at.column) for at in cell)


def _dropped(
    sheet: Sheet, tables: Sequence[Table], charts: Sequence[Chart]
) -> Iterable[tuple[int, int]]:
    """Figures under a measure of a table that no value of a chart of that line repeats."""
    said = {
        (one.place, text)
        for chart in charts
        for size in chart.sizes
        for one in size.ranges
        for text in one.published.split()
    }
    for table in tables:
        for field in table.of(FieldKind.VALUES):
            for at in (at for cell in field.cells for at in cell):
                place = sheet.place(at.row, at.column)
                words = at.text.split()
                if look(at.text).value and not any((place, one) in said for one in words):
                    yield at.row, at.column


def _figures(text: str) -> int:
    """How many values a text consists of, behind a name or between few words; 0 for a sentence."""
    if _LONG_NUMBER.search(text):
        return 0
    found = named_values(text.strip().rstrip("|"))  # a bar at the end parts cells
    if found is not None and (not found.name or len(found.parts) > 1):
        return len(found.parts)
    among = figures_among(text)
    return among if among >= _FEWEST_AMONG else 0
