"""A printed page as one sheet: its tables and sentences below each other, as they stand.

A row is a line of the page or of a table; columns are counted anew in every table.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, field
from typing import Final

from charts.readers.captured.values import is_value
from charts.readers.print_fields import compared
from charts.readers.print_grid import (
    GridCell,
    GridRow,
    Span,
    columns_of,
    fits,
    is_heading,
    row_of,
)
from charts.readers.print_rows import whole_rows
from charts.readers.print_ruled import RuledTable
from charts.readers.print_words import Field, PrintLine, Word, lines_of
from charts.readers.source import LONGEST_CELL, MOST_CELLS, too_many
from charts.sheet import Addressing, Cell, Sheet

_WIDE_GAP: Final = 2.5
_BLANK_ROW: Final = 0.8
_NEAR_TABLE: Final = 3.0
_CLOSE: Final = 0.15
"""Letters' sizes: a gap that ends a table, one that leaves a row blank, how near a title stands,
and how near to each other lines never stand in print."""


@dataclass(slots=True)
class Piece:
    """Rows that belong together. ``columns`` are set where they make a table."""

    rows: list[GridRow]
    top: float
    bottom: float
    size: float
    columns: list[Span] = field(default_factory=list)


def pieces_of(
    words: Sequence[Word], ruled: Sequence[RuledTable], rules: Sequence[tuple[float, Span]]
) -> list[Piece]:
    """The tables and sentences of a page from top to bottom.

    ``rules`` are lines across the page: their height, and where they begin and end.
    """
    taken = {id(word) for table in ruled for word in table.words}
    lines = lines_of(word for word in words if id(word) not in taken)
    pieces, lines = _ruled_pieces(ruled, lines)
    columns: list[Span] = []
    for part in _parts(lines, [table.box[1] for table in ruled]):
        piece = _piece(part, columns, rules)
        columns = piece.columns or columns
        pieces.append(piece)
    return sorted(pieces, key=lambda one: one.top)


def sheet_of(pieces: Iterable[Piece], number: int) -> Sheet:
    """The pieces as the sheet of page ``number``: ``page 3!C4``."""
    cells: dict[tuple[int, int], Cell] = {}
    row = 0
    before: Piece | None = None
    for piece in pieces:
        if before is not None and piece.top - before.bottom > _BLANK_ROW * piece.size:
            row += 1
        for grid_row in piece.rows:
            cells.update(_cells(grid_row, row))
            row += 1
        if len(cells) > MOST_CELLS:
            raise too_many(len(cells))
        before = piece
    columns = max((column for _, column in cells), default=-1) + 1
    return Sheet(f"page {number}", Addressing.PAGE, cells, row, columns)


def _cells(grid_row: GridRow, row: int) -> Iterator[tuple[tuple[int, int], Cell]]:
    for one in grid_row.cells:
        if len(one.text) > LONGEST_CELL:
            raise too_many(len(one.text))
        for column in range(one.first, one.last + 1):
            origin = (row - one.rows_above, one.first)
            shared = origin if origin != (row, column) else None
            yield (row, column), Cell(one.text, shared_from=shared)


def _ruled_pieces(
    ruled: Sequence[RuledTable], lines: Sequence[PrintLine]
) -> tuple[list[Piece], list[PrintLine]]:
    """The ruled tables, each with its own title where several stand side by side."""
    pieces: list[Piece] = []
    kept = list(lines)
    for table in ruled:
        beside = [one for one in ruled if one is not table and _level(one, table)]
        title, line = _own_title(table, beside, kept) if beside else (None, None)
        rows = [GridRow([GridCell(title.text, 0, 0)]), *table.rows] if title else table.rows
        size = max(word.size for word in table.words)
        order = sum(one.box[0] < table.box[0] for one in beside) / 1000
        pieces.append(Piece(rows, table.box[1] + order, table.box[3], size, table.columns))
        if line is not None and title is not None:
            kept = [_without(one, title) if one is line else one for one in kept]
    return pieces, [line for line in kept if line.fields]


def _level(one: RuledTable, other: RuledTable) -> bool:
    return one.box[1] < other.box[3] and other.box[1] < one.box[3]


def _own_title(
    table: RuledTable, beside: Sequence[RuledTable], lines: Sequence[PrintLine]
) -> tuple[Field | None, PrintLine | None]:
    left, top, right, _ = table.box
    for line in lines:
        near = 0 <= top - line.bottom < _NEAR_TABLE * line.size
        for one in line.fields if near else ():
            over = left - one.size < one.centre < right + one.size
            others = any(other.box[0] < one.centre < other.box[2] for other in beside)
            if over and not others:
                return one, line
    return None, None


def _without(line: PrintLine, gone: Field) -> PrintLine:
    return PrintLine(tuple(one for one in line.fields if one is not gone))


def _parts(lines: Sequence[PrintLine], breaks: Sequence[float]) -> Iterator[list[PrintLine]]:
    """Runs of lines with several fields, and lines that stand alone."""
    run: list[PrintLine] = []
    for at, line in enumerate(lines):
        after = lines[at + 1] if at + 1 < len(lines) else None
        if run and (_apart(run[-1], line, breaks) or not _continues(run, line, after)):
            yield run
            run = []
        run.append(line)
    if run:
        yield run


def _apart(above: PrintLine, below: PrintLine, breaks: Sequence[float]) -> bool:
    gap = below.top - above.bottom
    parted = any(above.top < at < below.bottom for at in breaks)
    return parted or gap > _WIDE_GAP * max(above.size, below.size)


def _continues(run: Sequence[PrintLine], line: PrintLine, after: PrintLine | None) -> bool:
    """Whether a line goes on with a run: both have several fields, or it fills a gap in them."""
    wide = any(len(one.fields) > 1 for one in run)
    if wide and (len(line.fields) > 1 or _goes_on(line, run)):
        return True
    return _fills_gap(line, run[-1]) and (after is None or not wide or _fills_gap(line, after))


def _goes_on(line: PrintLine, run: Sequence[PrintLine]) -> bool:
    """Whether a line with one value stands in a column of the run other than its first."""
    (only,) = line.fields
    return is_value(only.text) and any(
        only.x0 < other.x1 and other.x0 < only.x1 for above in run for other in above.fields[1:]
    )


def _fills_gap(line: PrintLine, other: PrintLine) -> bool:
    """Whether two lines stand closer than lines do and have no column in common."""
    gap = max(line.top - other.bottom, other.top - line.bottom)
    shared = any(one.x0 < two.x1 and two.x0 < one.x1 for one in line.fields for two in other.fields)
    return gap < _CLOSE * min(line.size, other.size) and not shared


def _columns(lines: Sequence[PrintLine], before: list[Span]) -> list[Span]:
    """Those of the table above where the lines stand in them, else their own."""
    if all(len(line.fields) == 1 for line in lines):
        return []
    return before if fits(lines, before) else columns_of(lines)


def _piece(
    lines: Sequence[PrintLine], before: list[Span], rules: Sequence[tuple[float, Span]]
) -> Piece:
    lines = compared(lines)
    top, bottom = lines[0].top, max(line.bottom for line in lines)
    size = max(line.size for line in lines)
    columns = _columns(lines, before)
    if not columns:
        rows = [GridRow([GridCell(line.text, 0, 0)], line.top, line.bottom) for line in lines]
        return Piece(rows, top, bottom, size)
    rows = []
    heading = True
    for line in lines:
        heading = heading and is_heading(line)
        rows.append(row_of(line, columns, heading=heading))
    width = columns[-1][1] - columns[0][0]
    across = [at for at, (left, right) in rules if right - left > 0.6 * width]
    return Piece(whole_rows(rows, sorted(across)), top, bottom, size, columns)
