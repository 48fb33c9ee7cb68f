"""Lines whose fields stand under each other: columns of blanks, or single blanks where sure."""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Sequence
from dataclasses import dataclass
from itertools import pairwise
from typing import Final

from charts.dimensions import Role, read_band, read_heading
from charts.readers.captured.lines import Line, LineCell, LineTable
from charts.readers.captured.value_runs import labels_in
from charts.readers.captured.values import is_blank, is_value
from charts.readers.captured.worded_sizes import ends_name, worded_row

_FIELD: Final = re.compile(r"\S+(?: \S+)*")
_WORD: Final = re.compile(r"\S+(?:\s*\([^)]*\))?")
_RULE: Final = re.compile(r"[-=_+|\s]{3,}")
_TAB: Final = 8
_LINES_TO_A_FIGURE: Final = 5
_ROWS_TO_DOUBT: Final = 12
_FEWEST_WITH_BANDS: Final = 3


@dataclass(frozen=True, slots=True)
class _Row:
    fields: tuple[tuple[int, int, str], ...]
    line: int

    @property
    def label(self) -> str:
        return self.fields[0][2] if self.fields else ""


def column_table(lines: Sequence[Line]) -> LineTable | None:
    """The table of columns that ``lines`` begin with; None when they begin with none."""
    near = " ".join(line.text for line in lines[:_LINES_TO_A_FIGURE])
    if not any(sign.isdigit() for sign in near):
        return None
    return _aligned(lines) or _single_blanks(lines)


def _aligned(lines: Sequence[Line]) -> LineTable | None:
    rows, used = _rows(lines)
    columns = _columns(rows) if len(rows) > 1 and _holds_figures(rows) else None
    if columns is None:
        return None
    placed = _all_placed(rows, columns)
    if len(placed) < len(rows):
        return None
    for line in lines[used:]:
        parts = worded_row(line.text, len(columns) - 1)
        if parts is None:
            break  # the blanks between the fields of a last row may be single ones
        placed.append([LineCell(text, line.number) for text in parts])
        used += 1
    return LineTable(placed, used)


def _rows(lines: Sequence[Line]) -> tuple[list[_Row], int]:
    """The lines of several fields at the beginning, and how many lines they take up."""
    rows: list[_Row] = []
    used = 0
    while used < len(lines):
        row, taken = _row_at(lines, used, rows)
        if row is not None and len(row.fields) < 2:
            break
        rows += [row] if row is not None else []
        used += taken
        if len(rows) == _ROWS_TO_DOUBT and not _holds_figures(rows):
            break
    return rows, used


def _row_at(lines: Sequence[Line], at: int, rows: list[_Row]) -> tuple[_Row | None, int]:
    """The row that begins at a line, and its number of lines; None where it adds none.

    A size may go on in the next line: its other word stands there alone, or before the figures.
    """
    row = _row(lines[at])
    if rows and _RULE.fullmatch(lines[at].text):
        return None, 1
    if not rows or len(row.fields) != 1:
        return row, 1
    if ends_name(rows[-1].label, row.label):
        rows[-1] = _renamed(rows[-1], f"{rows[-1].label} {row.label}")
        return None, 1
    after = _row(lines[at + 1]) if at + 1 < len(lines) else row
    if len(after.fields) > 1 and ends_name(row.label, after.label):
        return _renamed(after, f"{row.label} {after.label}"), 2
    return row, 1


def _row(line: Line) -> _Row:
    found = _FIELD.finditer(line.text.expandtabs(_TAB))
    return _Row(tuple((one.start(), one.end(), one[0]) for one in found), line.number)


def _renamed(row: _Row, label: str) -> _Row:
    (start, end, _), *others = row.fields
    return _Row(((start, end, label), *others), row.line)


def _holds_figures(rows: Sequence[_Row]) -> bool:
    """Whether a third of the fields are figures; a row of bands above the headings apart."""
    lead = _bands_over_parts(rows)
    texts = [text for row in rows[1 if lead else 0 :] for _, _, text in row.fields]
    return sum(is_value(text) for text in texts) * 3 >= len(texts)


def _bands_over_parts(rows: Sequence[_Row]) -> list[int]:
    """Where the parts begin over which the first row has a band each; none where it has not.

    ``Women      Men`` over ``Size  Chest  Size  Chest``: two tables side by side.
    """
    if len(rows) < _FEWEST_WITH_BANDS or not all(read_band(one[2]) for one in rows[0].fields):
        return []
    heads = [text.lower() for _, _, text in rows[1].fields]
    parts = [at for at, head in enumerate(heads) if head == heads[0]]
    named = read_heading(heads[0]).role is Role.LABEL
    return parts if named and len(parts) == len(rows[0].fields) > 1 else []


def _columns(rows: Sequence[_Row]) -> list[tuple[int, int]] | None:
    """Where columns begin and end, from the rows of the usual width; None where they overlap."""
    width = Counter(len(row.fields) for row in rows).most_common(1)[0][0]
    usual = [row for row in rows if len(row.fields) == width]
    columns = []
    for at in range(width):
        starts = [row.fields[at][0] for row in usual]
        ends = [row.fields[at][1] for row in usual]
        columns.append((min(starts), max(ends)))
    # Fields need not line up where every row has one for each column.
    apart = all(left[1] <= right[0] for left, right in pairwise(columns))
    return columns if apart or len(usual) == len(rows) else None


def _all_placed(rows: Sequence[_Row], columns: Sequence[tuple[int, int]]) -> list[list[LineCell]]:
    """The rows that fit the columns; bands over tables side by side stand over their first ones."""
    parts = _bands_over_parts(rows)
    bands: list[list[LineCell]] = []
    if parts and len(rows[1].fields) == len(columns):
        over = dict(zip(parts, (text for _, _, text in rows[0].fields), strict=True))
        texts = [over.get(at, "") for at in range(len(columns))]
        bands = [[LineCell(text, rows[0].line) for text in texts]]
    plain = (_placed(row, columns) for row in rows[len(bands) :])
    return [*bands, *(cells for cells in plain if cells is not None)]


def _placed(row: _Row, columns: Sequence[tuple[int, int]]) -> list[LineCell] | None:
    if len(row.fields) == len(columns):
        return [LineCell(text, row.line) for _, _, text in row.fields]
    cells = [""] * len(columns)
    for start, end, text in row.fields:
        shared = [min(end, right) - max(start, left) for left, right in columns]
        at = shared.index(max(shared))
        if cells[at]:
            return None
        cells[at] = text
    return [LineCell(text, row.line) for text in cells]


def _single_blanks(lines: Sequence[Line]) -> LineTable | None:
    """``Size Chest Waist`` over ``S 84-90 68-74``: only where every row comes out even."""
    if len(lines) < 3:
        return None
    heading = [found[0] for found in _WORD.finditer(lines[0].text)]
    if len(heading) < 2 or any(is_value(word) for word in heading):
        return None
    if labels_in(lines[1].text) is not None:
        return None  # sizes stand below a title of as many words
    rows = [[LineCell(word, lines[0].number) for word in heading]]
    for line in lines[1:]:
        words = line.text.split()
        if len(words) != len(heading) or not all(is_value(w) or is_blank(w) for w in words[1:]):
            words = worded_row(line.text, len(heading) - 1) or []
        if not words:
            break
        rows.append([LineCell(word, line.number) for word in words])
    return LineTable(rows, len(rows)) if len(rows) > 2 else None
