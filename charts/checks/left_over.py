"""Figures of a text that came into none of its tables: a part of the chart may be missing.

Only texts are looked through: a workbook or a page says itself where its cells stand.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Sequence
from typing import Final

from charts.findings import FindingLog
from charts.layout.fields import Table
from charts.readers.value_runs import named_values
from charts.sheet import Addressing, Sheet

_FEWEST: Final = 4
"""Figures that could be a row of a chart; fewer stand in any letter (common practice)."""
_FEWEST_CELLS: Final = 3
_LONG_NUMBER: Final = re.compile(r"\d{4}|\d[.:/]\d+[.:/]\d")
"""Years, telephone numbers, dates: no girths."""


def say_left_over(sheet: Sheet, tables: Sequence[Table], log: FindingLog) -> None:
    """Ask once a text about figures that were put into no table, at the first of them."""
    if sheet.addressing is not Addressing.LINE:
        return
    used = set(_cells_of(tables))
    left = [
        (at, count)
        for at, cell in sorted(sheet.cells.items())
        if at not in used and cell.shared_from is None and (count := _figures(cell.text))
    ]
    if len(left) >= _FEWEST_CELLS or sum(count for _, count in left) >= _FEWEST:
        place = sheet.place(*left[0][0])
        log.add("text-order", place, case="left", text=sheet.text(*left[0][0]).strip())


def _cells_of(tables: Iterable[Table]) -> Iterable[tuple[int, int]]:
    for table in tables:
        for field in table.fields:
            for cell in (field.heads, *field.cells):
                yield from ((at.row, at.column) for at in cell)


def _figures(text: str) -> int:
    """How many values a text consists of, behind a name or without one; 0 for anything else."""
    if _LONG_NUMBER.search(text):
        return 0
    found = named_values(text.strip().rstrip("|"))  # a bar at the end parts cells
    if found is None or (found.name and len(found.parts) < 2):
        return 0
    return len(found.parts)
