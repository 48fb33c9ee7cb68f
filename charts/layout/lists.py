"""Texts that are a table without looking like one: a cell a line, or a sentence a size.

They are laid out again as rows and columns; every cell keeps the line it came from as its place.
Glued cells are left alone: they cannot be parted safely.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass, replace
from itertools import pairwise
from typing import Final

from charts.dimensions import Role
from charts.layout.blank_columns import heads_spread
from charts.layout.looks import look
from charts.layout.named_value import named_value
from charts.sheet import Addressing, Cell, Sheet

_FEWEST_SIZES: Final = 2
_MOST_COLUMNS: Final = 8
_BULLET: Final = re.compile(r"^\s*(?:[*•·‣▪-]|\d+[.)])\s+")
_PARTED: Final = re.compile(r"\s*(?:[:=]|\s[-–—]\s)\s*|(?<=[A-Za-z])\s*[-–—]\s+")
_ITEMS: Final = re.compile(r"\s*[|;•·]\s*|,\s+|\s/\s")
_SENTENCES: Final = re.compile(r"(?<=[a-z])\.\s*(?=[A-Z])")


@dataclass(frozen=True, slots=True)
class _Line:
    """One text of the source and the row it stands in."""

    text: str
    row: int
    column: int


@dataclass(frozen=True, slots=True)
class _Sentence:
    """A size and what is said of it: (name of the dimension, figures) pairs."""

    line: _Line
    label: str
    items: tuple[tuple[str, str], ...]


def laid_out(sheet: Sheet) -> Sheet:
    """The sheet as a table when it is a list of cells or of sentences; else as it is."""
    lines = _single_texts(sheet)
    if lines is None:
        return heads_spread(sheet)
    return _cell_a_line(sheet, lines) or _sentence_a_size(sheet, lines) or sheet


def _single_texts(sheet: Sheet) -> list[_Line] | None:
    """The texts of a sheet that has one filled cell in almost every row; else None."""
    lines = []
    several = 0
    for row in sheet.filled_rows:
        cells = list(sheet.row(row))
        several += len(cells) > 1
        lines.append(_Line(cells[0][1].text.strip(), row, cells[0][0]))
    return lines if several == 0 and len(lines) > _FEWEST_SIZES else None


def _cell_a_line(sheet: Sheet, lines: Sequence[_Line]) -> Sheet | None:
    """Headings one under the other, then a size and its values one under the other, again."""
    for start, line in enumerate(lines):
        if not look(line.text).heads:
            continue
        heads = 0
        while start + heads < len(lines) and look(lines[start + heads].text).heads:
            heads += 1
        for width in (heads, heads + 1):
            rows = _chunks(lines[start + heads :], width)
            if len(rows) >= _FEWEST_SIZES and 1 < width <= _MOST_COLUMNS:
                head = [None] * (width - heads) + list(lines[start : start + heads])
                rest = lines[start + heads + len(rows) * width :]
                if _mixed([row[0] for row in rows]) or any(look(one.text).value for one in rest):
                    return None  # another way of putting the lines together is as good
                return _sheet(sheet, lines[:start], [head, *rows], rest)
        return None
    return None


def _mixed(labels: Sequence[_Line | None]) -> bool:
    """Whether figures and words take turns as labels: rows were cut at the wrong lines."""
    values = [look(one.text).value for one in labels if one is not None]
    return sum(a != b for a, b in pairwise(values)) > 1


def _chunks(lines: Sequence[_Line], width: int) -> list[list[_Line | None]]:
    """Runs of ``width`` texts that are a size and its values, from the start as far as they go."""
    rows: list[list[_Line | None]] = []
    for start in range(0, len(lines) - width + 1, width):
        chunk = list(lines[start : start + width])
        looks = [look(line.text) for line in chunk]
        values = all(one.value or one.blank for one in looks[1:])
        if looks[0].label is None or looks[0].sentence or not values:
            break
        rows.append([*chunk])
    return rows


def _sentence_a_size(sheet: Sheet, lines: Sequence[_Line]) -> Sheet | None:
    """``Talla S: Pecho 84-90 cm | Peso 50-60 kg``, ``Small - 36"-38"``."""
    parted = [part for line in lines for part in _parted(line)]
    said = [sentence for part in parted if (sentence := _sentence(part)) is not None]
    figures = [part for part in parted if any(c.isdigit() for c in part.text)]
    if len(said) < _FEWEST_SIZES or len(said) * 2 < len(figures):
        return None
    names = list(dict.fromkeys(name for sentence in said for name, _ in sentence.items))
    first, last = said[0].line.row, said[-1].line.row
    rows: list[list[_Line | None]] = [[None, *(replace(said[0].line, text=n) for n in names)]]
    for sentence in said:
        given = dict(sentence.items)
        cells = [replace(sentence.line, text=given.get(name, "")) for name in names]
        rows.append([replace(sentence.line, text=sentence.label), *cells])
    before = [line for line in lines if line.row < first]
    after = [line for line in lines if line.row > last]
    return _sheet(sheet, before, rows, after)


def _parted(line: _Line) -> list[_Line]:
    return [replace(line, text=part) for part in _SENTENCES.split(line.text) if part.strip()]


def _sentence(line: _Line) -> _Sentence | None:
    text = _BULLET.sub("", line.text).strip().rstrip(".")
    parts = _PARTED.split(text, maxsplit=1)
    if len(parts) != 2:
        return None
    label = _label(parts[0])
    items = tuple(
        item for part in _ITEMS.split(parts[1]) if (item := named_value(part)) is not None
    )
    return _Sentence(line, label, items) if label and items else None


def _label(text: str) -> str | None:
    """The size at the start of a sentence, without a word for size before it."""
    words = text.strip().split(" ", 1)
    if len(words) == 2 and look(words[0]).heading.role is Role.LABEL:
        text = words[1]
    one = look(text)
    return text.strip() if one.sure_label or (one.label is not None and text != words[0]) else None


def _sheet(
    sheet: Sheet,
    before: Sequence[_Line],
    rows: Sequence[Sequence[_Line | None]],
    after: Sequence[_Line],
) -> Sheet:
    """The texts laid out as a table, with titles above and notes below."""
    cells: dict[tuple[int, int], Cell] = {}
    lines: dict[tuple[int, int], int] = {}
    table = [[line] for line in before] + [[]] + [list(row) for row in rows] + [[]]
    for number, row in enumerate([*table, *([line] for line in after)]):
        for column, line in enumerate(row):
            if line is None or not line.text:
                continue
            at = (line.row, line.column)
            cells[number, column] = replace(sheet.cells[at], text=line.text)
            lines[number, column] = sheet.line_of_row.get(line.row, line.row + 1)
    return replace(
        sheet,
        addressing=Addressing.LINE,
        cells=cells,
        rows=len(table) + len(after),
        columns=max(len(row) for row in rows),
        line_of_row={row: line for (row, _), line in lines.items()},
        line_of_cell=lines,
    )
