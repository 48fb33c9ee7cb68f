"""Sentences of a printed page that are rows of a table: ``Size S: chest 84-88 cm, waist ...``."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import Final

from charts.readers.captured.lines import Line, LineTable
from charts.readers.captured.prose import prose_table
from charts.readers.print_grid import GridCell, GridRow
from charts.readers.print_page import Piece

_LINES_AHEAD: Final = 60


def with_prose(pieces: Sequence[Piece]) -> Iterator[Piece]:
    """The pieces with runs of sentences put into rows and columns where they are a table."""
    at = 0
    while at < len(pieces):
        run = _sentences(pieces, at)
        table = prose_table([Line(one.rows[0].cells[0].text, at) for one in run]) if run else None
        if table is None:
            yield pieces[at]
            at += 1
        else:
            yield _piece(table, run[: table.used])
            at += table.used


def _sentences(pieces: Sequence[Piece], start: int) -> list[Piece]:
    """The pieces of one line with one text that follow each other."""
    run: list[Piece] = []
    for piece in pieces[start : start + _LINES_AHEAD]:
        if piece.columns or len(piece.rows) != 1 or len(piece.rows[0].cells) != 1:
            break
        run.append(piece)
    return run


def _piece(table: LineTable, used: Sequence[Piece]) -> Piece:
    rows = [
        GridRow([GridCell(cell.text, at, at) for at, cell in enumerate(row) if cell.text])
        for row in table.rows
    ]
    return Piece(rows, used[0].top, used[-1].bottom, used[0].size)
