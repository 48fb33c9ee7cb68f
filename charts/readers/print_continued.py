"""Tables that go on over a page: the next page's rows have no headings of their own."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from itertools import pairwise
from typing import Final

from charts.readers.captured.values import is_blank, is_value
from charts.readers.print_grid import GridRow, Span
from charts.readers.print_page import Piece

_HEAD_OF_PAGE: Final = 3
"""Lines that may stand above a table that goes on: the head of the page."""


def with_headings(pages: dict[int, list[Piece]]) -> dict[int, list[Piece]]:
    """The pieces of each page; a table that goes on has the headings of the page before again."""
    found = dict(sorted(pages.items()))
    for before, after in pairwise(list(found)):
        heads = _headings(found[before]) if after == before + 1 else []
        at = _going_on(found[before], found[after]) if heads else None
        if at is not None:
            piece = found[after][at]
            pieces = list(found[after])
            pieces[at] = replace(piece, rows=[*heads, *piece.rows])
            found[after] = pieces
    return found


def _last_table(pieces: Sequence[Piece]) -> Piece | None:
    return next((piece for piece in reversed(pieces) if piece.columns), None)


def _headings(pieces: Sequence[Piece]) -> list[GridRow]:
    """The rows of the last table that hold no values yet."""
    table = _last_table(pieces)
    rows: list[GridRow] = []
    for row in table.rows if table is not None else ():
        if _is_body(row):
            return rows
        rows.append(row)
    return []


def _going_on(before: Sequence[Piece], after: Sequence[Piece]) -> int | None:
    """Which piece of a page goes on with the last table of the page before; None for none."""
    table = _last_table(before)
    at = next((n for n, piece in enumerate(after[: _HEAD_OF_PAGE + 1]) if piece.columns), None)
    if table is None or at is None or not _is_body(after[at].rows[0]):
        return None
    return at if _same_columns(table.columns, after[at].columns) else None


def _is_body(row: GridRow) -> bool:
    values = sum(is_value(cell.text) or is_blank(cell.text) for cell in row.cells if cell.first)
    return values * 2 > sum(1 for cell in row.cells if cell.first)


def _same_columns(one: Sequence[Span], other: Sequence[Span]) -> bool:
    return len(one) == len(other) and all(
        min(first[1], second[1]) > max(first[0], second[0])
        for first, second in zip(one, other, strict=True)
    )
