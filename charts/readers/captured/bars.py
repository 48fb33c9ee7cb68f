"""Cells parted by bars, tabs or semicolons in the middle of a text, and bars on their own lines.

``Size | Chest |`` line by line needs no rule of hyphens where the rows are even. Some copies of a
page put every bar on a line of its own between the cells, some at the end of each cell's line.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from charts.dimensions import Role, read_heading
from charts.readers.captured.lines import Line, LineCell, LineTable
from charts.readers.captured.stream import stream_table
from charts.readers.captured.values import is_blank, is_value
from charts.readers.plain_text import tidy

_BAR: Final = "|"
_SEPARATORS: Final = ("|", "\t", ";")
_FEWEST_BARS: Final = 4
_LINES_OF_A_CELL: Final = 4
_FEWEST_COLUMNS: Final = 3
_FEWEST_ROWS: Final = 3
_RULE: Final = frozenset("-:=+| ")


def barred_table(lines: Sequence[Line]) -> LineTable | None:
    """The table of cells with bars on lines of their own that ``lines`` begin with."""
    if len(lines) < 2 * _FEWEST_BARS or lines[0].text.strip() == _BAR:
        return None
    if lines[1].text.strip() != _BAR:
        return None
    cells, ends = _cells(lines)
    table = stream_table(cells, inferred=False) if len(cells) > _FEWEST_BARS else None
    table = table or _counted(cells)
    if table is None:
        return None
    inferred = table.inferred or table.used < len(cells)
    return LineTable(table.rows, ends[table.used - 1], inferred=inferred)


def _counted(cells: Sequence[Line]) -> LineTable | None:
    """All cells as rows of the one width that keeps words and figures in columns of their own.

    Beside the labels a chart may have columns of words, so that figures alone part no rows.
    """
    widths = [
        width
        for width in range(_FEWEST_COLUMNS, len(cells) // _FEWEST_ROWS + 1)
        if len(cells) % width == 0 and _in_columns([one.text for one in cells], width)
    ]
    if len(widths) != 1:
        return None
    rows = [cells[at : at + widths[0]] for at in range(0, len(cells), widths[0])]
    table = [[LineCell(one.text, one.number) for one in row] for row in rows]
    return LineTable(table, len(cells), inferred=True)


def _in_columns(texts: Sequence[str], width: int) -> bool:
    """Whether labels that differ stand in front, and every column holds figures or words only."""
    heads, columns = texts[:width], [texts[width + at :: width] for at in range(width)]
    if any(map(is_value, heads)) or not all(heads[1:]):
        return False
    labels = columns[0]
    if len(set(labels)) < len(labels) or not all(labels) or any(map(is_value, labels)):
        return False
    figures = [at for at, column in enumerate(columns) if any(map(is_value, column))]
    pure = all(is_value(text) or is_blank(text) for at in figures for text in columns[at] if text)
    return pure and any(read_heading(heads[at]).role is Role.MEASURE for at in figures)


def bar_ended_table(lines: Sequence[Line]) -> LineTable | None:
    """The table of cells each of which ends in a bar; a cell may be broken over lines."""
    if not ends_in_bar(lines[0].text):
        return None
    cells = cells_before_bars(lines)
    table = stream_table(cells, inferred=False) if len(cells) > _FEWEST_BARS else None
    if table is None:
        return None
    last = max(cell.line for cell in table.rows[-1])
    used = next(at for at, line in enumerate(lines, start=1) if line.number == last)
    return LineTable(table.rows, used, inferred=table.inferred)


def cells_before_bars(lines: Sequence[Line]) -> list[Line]:
    """The cells that end in a bar, at the end of their line or on one of its own."""
    cells, _ = _cells([part for line in lines for part in _bar_apart(line)])
    return cells


def ends_in_bar(text: str) -> bool:
    """Whether a text and one bar at its end stand here."""
    bar = text.find(_BAR)
    return bool(text[:bar].strip()) and bar == len(text.rstrip()) - 1


def _bar_apart(line: Line) -> tuple[Line, ...]:
    """The text of a line and the bar at its end, as two lines."""
    if not ends_in_bar(line.text):
        return (line,)
    return Line(line.text.rstrip()[:-1], line.number), Line(_BAR, line.number)


def _cells(lines: Sequence[Line]) -> tuple[list[Line], list[int]]:
    """The cells before each bar, "" where two bars follow each other, and where each ends."""
    cells: list[Line] = []
    ends: list[int] = []
    texts: list[Line] = []
    for at, line in enumerate(lines):
        text = tidy(line.text)
        if text != _BAR:
            texts += [line] if text else []
            if len(texts) > _LINES_OF_A_CELL:
                break
            continue
        joined = " ".join(tidy(one.text) for one in texts)
        cells.append(Line(joined, texts[0].number if texts else line.number))
        ends.append(at + 1)
        texts = []
    return cells, ends


def separated_table(lines: Sequence[Line]) -> LineTable | None:
    """Neighbouring lines of as many fields each, parted by the same sign; some hold figures."""
    for separator in _SEPARATORS:
        if separator not in lines[0].text:
            continue
        rows, used = _rows(lines, separator)
        cells = [cell.text for row in rows[1:] for cell in row[1:] if cell.text]
        parted = sum(sum(bool(cell.text) for cell in row) > 1 for row in rows)
        if parted > 1 and 2 * parted > len(rows) and 3 * sum(map(is_value, cells)) > len(cells) > 1:
            return LineTable(rows, used)
    return None


def is_rule(text: str) -> bool:
    """Whether a line of bars is a rule and no row."""
    return set(text) <= _RULE


def _rows(lines: Sequence[Line], separator: str) -> tuple[list[list[LineCell]], int]:
    rows: list[list[LineCell]] = []
    used = 0
    for line in lines:
        if separator not in line.text:
            break
        used += 1
        if is_rule(line.text):
            continue
        fields = _fields(line.text, separator)
        if rows and abs(len(fields) - len(rows[0])) > 1:
            return rows, used - 1
        rows.append([LineCell(tidy(field), line.number) for field in fields])
    return rows, used


def _fields(text: str, separator: str) -> list[str]:
    """The fields of a line without the empty ones outside its first and last separator."""
    fields = text.strip().split(separator) if separator == _BAR else text.split(separator)
    if separator == _BAR and len(fields) > 1 and not fields[0].strip():
        fields = fields[1:]
    return fields[:-1] if len(fields) > 1 and not fields[-1].strip() else fields
