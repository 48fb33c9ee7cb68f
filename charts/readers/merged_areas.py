"""Merged areas: the text of the first cell stands in every cell that the area covers."""

from __future__ import annotations

from collections.abc import Iterable

from charts.readers.source import MOST_CELLS
from charts.sheet import Cell

Area = tuple[int, int, int, int]
"""First row, first column, last row, last column; from 0, all inside."""
Cells = dict[tuple[int, int], Cell]


def expand_merged(cells: Cells, merged: Iterable[Area]) -> None:
    """Repeat a merged area's text in every cell it covers, within the part of the sheet in use."""
    last_row = max((row for row, _ in cells), default=0)
    last_column = max((column for _, column in cells), default=0)
    room = MOST_CELLS
    for top, left, bottom, right in merged:
        shown = cells.get((top, left))
        rows = range(top, min(bottom, last_row) + 1)
        columns = range(left, min(right, last_column) + 1)
        room -= len(rows) * len(columns)
        if shown is None or room < 0:
            continue
        shared = _shared(shown, (top, left))
        cells.update(
            {
                (row, column): shared
                for row in rows
                for column in columns
                if (row, column) != (top, left)
            }
        )


def _shared(shown: Cell, first: tuple[int, int]) -> Cell:
    return Cell(
        text=shown.text,
        stored=shown.stored,
        number_format=shown.number_format,
        shared_from=first,
        struck=shown.struck,
        formula_without_value=shown.formula_without_value,
    )
