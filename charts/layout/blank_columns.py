"""Headings of several lines over columns that only blanks part, as text dumps of pages have them.

``Chest   Waist`` / ``Size   girth   girth`` / ``(cm)   (cm)``: each line is laid out over the
columns of the rows below, from the right where it is one short: what lacks there is the word for
the sizes. ``Size   S   M   XL`` over four figures lacks a size, and nobody can say which: the
sizes stand as they are printed, and the rows that are longer are asked about.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from dataclasses import replace
from typing import Final

from charts.layout.looks import look
from charts.sheet import Addressing, Cell, Sheet

_WIDE: Final = re.compile(r" {2,}")
_FEWEST: Final = 3
Place = tuple[int, int]


def heads_spread(sheet: Sheet) -> Sheet:
    """The sheet with such lines spread over the columns of the table they head."""
    if sheet.addressing is not Addressing.LINE:
        return sheet
    cells: dict[Place, Cell] = dict(sheet.cells)
    lines: dict[Place, int] = dict(sheet.line_of_cell)
    for row, columns in _heads(sheet):
        at = next(iter(sheet.row(row)))
        parts = _parts(sheet, row)
        lacks = len(parts) < len(columns) and _lacks_a_size(parts)
        del cells[row, at[0]]
        under = columns[: len(parts)] if lacks else columns[-len(parts) :]
        for column, part in zip(under, parts, strict=True):
            cells[row, column] = replace(at[1], text=part)
            lines[row, column] = sheet.line_of_row.get(row, row + 1)
    return replace(sheet, cells=cells, line_of_cell=lines) if cells != sheet.cells else sheet


def _lacks_a_size(parts: Sequence[str]) -> bool:
    """Whether sizes stand behind a word that is none: the word is no size, whatever lacks."""
    word, *sizes = map(look, parts)
    return word.label is None and bool(sizes) and all(one.label is not None for one in sizes)


def _heads(sheet: Sheet) -> Iterator[tuple[int, list[int]]]:
    """The lines above the first wide row, with its columns, when all of them fit it."""
    rows = sheet.filled_rows
    first = next((n for n, row in enumerate(rows) if len(list(sheet.row(row))) >= _FEWEST), 0)
    columns = [column for column, _ in sheet.row(rows[first])] if rows else []
    heads = []
    for row in reversed(rows[:first]):
        parts = _parts(sheet, row)
        if not len(columns) - 1 <= len(parts) <= len(columns):
            break
        heads.append(row)
    named = any(look(part).heads for row in heads for part in _parts(sheet, row))
    if named and len(columns) >= _FEWEST:
        yield from ((row, columns) for row in heads)


def _parts(sheet: Sheet, row: int) -> list[str]:
    return _WIDE.split(next(iter(sheet.row(row)))[1].text.strip())
