"""Bars on lines of their own, two between the cells of a row and more of them between rows.

Copies of some pages put a bar behind and a bar before every cell. Rows are parted by the longer
runs of bars, so that nothing is counted out; they have to come out as wide as each other.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field
from typing import Final

from charts.dimensions import Role, read_heading
from charts.readers.captured.lines import Line, LineCell, LineTable
from charts.readers.captured.values import is_blank, is_value
from charts.readers.plain_text import tidy

_BAR: Final = "|"
_WITHIN_A_ROW: Final = 2
_LINES_OF_A_CELL: Final = 4
_LONGEST: Final = 60
_FEWEST_COLUMNS: Final = 3
_FEWEST_ROWS: Final = 3


@dataclass(slots=True)
class _Piece:
    """The lines of one cell, how many bars stand behind it, and how many lines that took."""

    lines: list[Line] = field(default_factory=list)
    bars: int = 0
    end: int = 0

    @property
    def cell(self) -> LineCell:
        return LineCell(" ".join(tidy(one.text) for one in self.lines), self.lines[0].number)


def bar_run_table(lines: Sequence[Line]) -> LineTable | None:
    """The table of cells between runs of bars that ``lines`` begin with; else None."""
    if not lines or not _text(lines[0]) or _text(lines[0]) == _BAR:
        return None
    pieces = _pieces(lines)
    rows: list[list[_Piece]] = [[]]
    for piece in pieces:
        rows[-1].append(piece)
        if piece.bars > _WITHIN_A_ROW:
            rows.append([])
    rows = [row for row in rows if row]
    width = len(rows[0]) if rows else 0
    even = [row for row in rows if len(row) == width]
    if width < _FEWEST_COLUMNS or len(even) < _FEWEST_ROWS or len(even) < len(rows):
        return None
    cells = [[piece.cell for piece in row] for row in rows]
    if not _is_chart([[cell.text for cell in row] for row in cells]):
        return None
    return LineTable(cells, pieces[-1].end, inferred=True)


def _pieces(lines: Sequence[Line]) -> list[_Piece]:
    """The cells that follow each other, up to one that is no cell."""
    found = [_Piece()]
    for at, line in enumerate(lines, start=1):
        text = _text(line)
        here = found[-1]
        if text == _BAR:
            here.bars += 1
        elif text:
            if here.bars:
                here = _Piece()
                found.append(here)
            here.lines.append(Line(text.removesuffix(_BAR), line.number))
            here.bars += text.endswith(_BAR)
            if len(here.lines) > _LINES_OF_A_CELL or len(text) > _LONGEST or _BAR in text[:-1]:
                return found[:-1]
        here.end = at
    return [one for one in found if one.lines]


def _text(line: Line) -> str:
    return line.text.strip()


def _is_chart(rows: Sequence[Sequence[str]]) -> bool:
    """Whether words head columns of figures, one of which is a measure, behind labels that differ.

    Every cell below the headings is a figure or blank, so that no text has slipped among them.
    """
    heads, body = rows[0], rows[1:]
    labels = {row[0] for row in body}
    figures = all(is_value(text) or is_blank(text) for row in body for text in row[1:])
    measures = any(read_heading(text).role is Role.MEASURE for text in heads[1:])
    return figures and measures and len(labels) == len(body) and not any(map(is_value, heads))
