"""Columns of blanks under one heading, with lines between the rows that say whose the next are.

``Size  Chest  Waist`` over ``Kids``, its rows, ``Adults`` and its rows. Without the lines between,
the rows are one table of columns; each such line stands alone, and rows as wide as the heading
follow it.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from typing import Final

from charts.dimensions import Role, read_heading
from charts.readers.captured.columns import column_table
from charts.readers.captured.lines import Line, LineCell, LineTable
from charts.readers.captured.value_runs import is_size
from charts.readers.captured.values import is_blank, is_value
from charts.readers.captured.worded_sizes import ends_name

_FIELDS: Final = re.compile(r"\s{2,}|\t+")
_RULE: Final = re.compile(r"[-=_+|\s]{3,}")
_LONGEST_BAND: Final = 40
_MOST_LINES: Final = 400
_FEWEST_HEADS: Final = 3
_SENTENCE_ENDS: Final = (".", "!", "?", ";", ",")


def banded_column_table(lines: Sequence[Line]) -> LineTable | None:
    """The table of columns that ``lines`` begin with, where bands part its rows; else None."""
    if not lines or not _is_head(lines[0].text):
        return None
    kept, bands = _parted(lines[:_MOST_LINES])
    plain = column_table(kept) if bands else None
    if plain is None or plain.used < len(kept):
        return None
    rows = [[LineCell(one.text.strip(), one.number)] for one in bands] + plain.rows
    rows.sort(key=lambda row: row[-1].line)
    last = kept[-1].number
    return LineTable(rows, next(at for at, one in enumerate(lines, start=1) if one.number == last))


def _is_head(text: str) -> bool:
    """Whether a line names columns: of several fields, of which the first is no figure."""
    fields = _fields(text)
    return len(fields) >= _FEWEST_HEADS and not is_value(fields[0])


def _parted(lines: Sequence[Line]) -> tuple[list[Line], list[Line]]:
    """The heading and its rows, up to the last that fits, and the lines that stand alone."""
    kept = [lines[0]]
    bands: list[Line] = []
    width = len(_fields(lines[0].text))
    filled = [one for one in lines[1:] if one.text.strip() and not _RULE.fullmatch(one.text)]
    for at, line in enumerate(filled):
        follows = filled[at + 1] if at + 1 < len(filled) else None
        if _is_row(line.text, width) or (len(kept) > 1 and _may_be_row(line.text, width)):
            if kept[-1].number + 1 < line.number and _is_apart(lines, kept, bands, line):
                break
            kept.append(line)
        elif follows is not None and _is_band_over(line.text, follows.text, width):
            bands.append(line)
        else:
            break
    return kept, [one for one in bands if one.number < kept[-1].number]


def _is_apart(
    lines: Sequence[Line], kept: Sequence[Line], bands: Sequence[Line], line: Line
) -> bool:
    """Whether an empty line stands between a row and the row before it: a table may begin there."""
    last = max(one.number for one in (*kept, *bands) if one.number < line.number)
    between = (one for one in lines if last < one.number < line.number)
    return not (bands and last == bands[-1].number) and any(not one.text.strip() for one in between)


def _is_row(text: str, width: int) -> bool:
    """Whether a line is a name and figures, in no more fields than there are headings."""
    name, *rest = _fields(text) or [""]
    figures = all(is_value(one) or is_blank(one) for one in rest)
    return 1 <= len(rest) < width and figures and any(map(is_value, rest)) and bool(name)


def _may_be_row(text: str, width: int) -> bool:
    """Whether words stand in a cell of a row further down: ``L   on request   66-70``."""
    fields = _fields(text)
    return 1 < len(fields) <= width and any(map(is_value, fields[1:]))


def _is_band_over(text: str, row: str, width: int) -> bool:
    """Whether a band stands above a row, and no first word of its size: ``Extra``, ``Large``."""
    return _is_band(text) and _is_row(row, width) and not ends_name(text.strip(), _fields(row)[0])


def _is_band(text: str) -> bool:
    """Whether a line is a few words that name neither a size nor a measure, and are no sentence."""
    text = text.strip()
    if len(_fields(text)) != 1 or len(text) > _LONGEST_BAND or text.endswith(_SENTENCE_ENDS):
        return False
    if any(map(str.isdigit, text)) or is_size(text):
        return False
    return read_heading(text).role is not Role.MEASURE


def _fields(text: str) -> list[str]:
    return [one for one in _FIELDS.split(text.strip()) if one]
