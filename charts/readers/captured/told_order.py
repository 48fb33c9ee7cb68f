"""Figures between strokes whose order is told once: ``chest / waist / hips in cm`` above the sizes.

``S: 82-86 / 66-70 / 90-94`` has as many figures as there are names, in the line itself or within
two lines above. That the words tell the order was only concluded, so a person compares it once.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from typing import Final, NamedTuple

from charts.dimensions import read_heading
from charts.readers.captured.choosing import WORN
from charts.readers.captured.lines import Line, LineCell, LineTable
from charts.readers.captured.said import MONEY, unbulleted
from charts.readers.captured.size_names import may_measure, size_line
from charts.readers.captured.values import is_value

_ROW: Final = re.compile(
    r"(?P<size>[^:=/]{1,24}?)\s*(?:[:=]\s*|\s[–—-]\s+|\s)(?P<figures>[<>≤≥]?\d[^:=()]*/[^:=()]*\d[^:=()]*)"
    r"(?:\((?P<names>[^()]*)\))?"
)
_STROKE: Final = re.compile(r"\s*/\s*")
_BETWEEN_NAMES: Final = (r"\s*/\s*", r"\s*,\s+", r"\s+[x×]\s+", r"\s+[-–—]\s+")
_CM: Final = re.compile(r"(?:\d|\b)(?:cm|centimet(?:re|er)s?)\b", re.IGNORECASE)
_INCHES: Final = re.compile(r"\binch(?:es)?\b|[\"”″]|\bin\b\W*\Z", re.IGNORECASE)
_UNITED: Final = re.compile(r"\d\s?(cm|mm|in|inch(?:es)?|kg|lbs?|[\"”″])", re.IGNORECASE)
_LINES_ABOVE: Final = 2
_MOST_WORDS: Final = 4
_LONGEST: Final = 200
_FEWEST: Final = 2


class _Row(NamedTuple):
    word: str
    size: str
    figures: tuple[str, ...]
    names: str
    line: int


def told_order_table(lines: Sequence[Line]) -> LineTable | None:
    """The table that ``lines`` begin with, with the line that tells the order; None without one."""
    if not lines or len(lines[0].text) > _LONGEST:
        return None
    first = _row(lines[0])
    if first is not None:
        rows, used = _rows(lines)
        said = first.names if len({row.names for row in rows}) == 1 else ""
        return _table(rows, _names(said, len(first.figures)), used, said) if said else None
    for at in range(1, min(_LINES_ABOVE + 1, len(lines))):
        row = _row(lines[at])
        if row is not None and not row.names:
            rows, used = _rows(lines[at:])
            names = _names(lines[0].text, len(row.figures))
            table = _table(rows, names, at + used, lines[0].text)
            if table is None:
                return None
            above = [[LineCell(one.text.strip(), one.number)] for one in lines[:at]]
            filled = [one for one in above if one[0].text]
            return LineTable([*filled, *table.rows], table.used, inferred=True)
    return None


def _rows(lines: Sequence[Line]) -> tuple[list[_Row], int]:
    """The rows of one list, each with as many figures, and how many lines they take."""
    rows: list[_Row] = []
    used = 0
    for at, line in enumerate(lines, start=1):
        if not line.text.strip():
            continue
        row = _row(line)
        if row is None or (rows and len(row.figures) != len(rows[0].figures)):
            break
        rows.append(row)
        used = at
    return rows, used


def _row(line: Line) -> _Row | None:
    """A size and two or more figures between strokes, in one unit; None for anything else."""
    text = unbulleted(line.text).rstrip(" .;,")
    found = _ROW.fullmatch(text) if len(text) <= _LONGEST else None
    size = size_line(found["size"]) if found is not None else None
    if found is None or size is None or MONEY.search(text) or WORN.search(text):
        return None
    figures = tuple(one.strip() for one in _STROKE.split(found["figures"].strip()))
    units = {one.lower() for one in _UNITED.findall(found["figures"])}
    if len(figures) < _FEWEST or len(units) > 1 or not all(map(is_value, figures)):
        return None
    return _Row(size.word, size.size, figures, found["names"] or "", line.number)


def _names(text: str, count: int) -> tuple[str, ...]:
    """The ``count`` measures that a text lists between equal signs, each another; else none."""
    for sign in _BETWEEN_NAMES:
        parts = re.split(sign, text.strip(" .:()"))
        if len(parts) != count:
            continue
        whole = [_named(part, first=not at, last=at + 1 == count) for at, part in enumerate(parts)]
        measured = {name.lower() for name in whole if name}
        if len(measured) == count:
            return tuple(name for name in whole if name)
    return ()


def _named(part: str, *, first: bool, last: bool) -> str | None:
    """The measure that a part is; the first may begin, and the last end, with other words."""
    return next((one for one in _cuts(part.split(), first, last) if _measures(one)), None)


def _cuts(words: Sequence[str], first: bool, last: bool) -> Iterator[str]:
    """All of the words, then fewer: the last ones of a first part, the first ones of a last."""
    yield " ".join(words)
    for count in range(min(_MOST_WORDS, len(words) - 1), 0, -1):
        if first:
            yield " ".join(words[-count:])
        if last:
            yield " ".join(words[:count])


def _measures(name: str) -> bool:
    name = name.strip("(),.:")
    return may_measure(name) and not read_heading(name).rest


def _table(rows: Sequence[_Row], names: Sequence[str], used: int, said: str) -> LineTable | None:
    sizes = {row.size.lower() for row in rows}
    if len(rows) < _FEWEST or len(sizes) < len(rows) or not names:
        return None
    unit = "cm" if _CM.search(said) else "in" if _INCHES.search(said) else ""
    heads = [f"{name.strip('(),.:')} ({unit})" if unit else name.strip("(),.:") for name in names]
    cells = [[LineCell(text, rows[0].line) for text in (rows[0].word, *heads)]]
    cells += [[LineCell(one, row.line) for one in (row.size, *row.figures)] for row in rows]
    return LineTable(cells, used, inferred=True)
