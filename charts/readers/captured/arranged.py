"""One cell a line, whose order is not that of rows: put back where one way alone is without fault.

Headings and sizes may stand apart from the figures, names behind what they name, and cells may be
lost. What comes size by size or heading by heading is read elsewhere.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass
from functools import lru_cache
from typing import Final

from charts.dimensions import Role, read_heading
from charts.readers.captured.arranging.arrangement import Order
from charts.readers.captured.arranging.cell_ways import cells_of, ways
from charts.readers.captured.arranging.search import Found, best_way
from charts.readers.captured.arranging.spans import span_of
from charts.readers.captured.lines import Line, LineCell, LineTable
from charts.readers.captured.value_runs import is_cell_value, labels_in, named_values
from charts.size_labels import read_label

_LONGEST: Final = 40
_MOST_CELLS: Final = 240
_FEWEST_HEADINGS: Final = 2
_FEWEST_CELLS: Final = 9
_FEWEST_LINES: Final = 4
_SEVERAL: Final = 2
_PLAIN: Final = frozenset({Order.ROWS, Order.COLUMNS})
_DASHES: Final = frozenset("-–—~")
_UNIT: Final = re.compile(r"[(\[]?\s*(?:in\s+)?[^\W\d_]{1,11}\.?\s*[)\]]?")


def arranged_table(lines: Sequence[Line]) -> LineTable | None:
    """The table whose cells ``lines`` begin with; None where rows or columns follow each other.

    Where two ways are equally without fault the cells are kept as they came, and are lost.
    """
    return _best_table(lines, plain=False)


def arranged_rows(lines: Sequence[Line]) -> LineTable | None:
    """The same where rows or columns do follow each other, for lines that hold several cells."""
    return _best_table(lines, plain=True)


def _best_table(lines: Sequence[Line], *, plain: bool) -> LineTable | None:
    if not _names_measures(lines):
        return None
    filled = _filled(lines)
    if len(filled) < _FEWEST_LINES or not _may_begin(filled):
        return None
    if sum(_names_measure(one.text) for one in filled) < _FEWEST_HEADINGS:
        return None  # no way could be told from another, and long texts would be tried in vain
    for reading in _readings(filled):
        best = best_way(ways(cells_of(reading.cells)))
        if best is not None:
            told = best.best.order not in _PLAIN or best.rivals or reading.joined
            return _table(lines, reading, best) if plain or told else None
    return None


def _readings(filled: tuple[Line, ...]) -> Iterator[_Reading]:
    """The lines as cells: with what stands apart joined, before they are taken as they are."""
    whole = _Reading(filled, tuple(one.number for one in filled))
    parted = _parted(whole)
    for start in (whole, parted):
        if start is None or len(start.cells) < _FEWEST_CELLS:
            continue
        united = _joined(start, _unit_behind)
        both = _joined(united or start, _range_across)
        yield from (one for one in (both, united, start) if one is not None)


def _table(lines: Sequence[Line], reading: _Reading, best: Found) -> LineTable:
    way = best.best
    last = reading.ends[way.used - 1]
    used = next(at for at, line in enumerate(lines, start=1) if line.number == last)
    if best.rivals:
        whole = " ".join(one.text for one in reading.cells[: way.used])
        row = [LineCell(whole, reading.cells[0].number)]
        return LineTable([row], used, rivals=best.differing)
    return LineTable(way.rows(reading.cells[: way.start]), used, inferred=True)


def _names_measures(lines: Sequence[Line]) -> bool:
    """Whether enough names stand among what can be cells: told before any line is copied."""
    found = 0
    for line in lines:
        names = _names_in(line.text)
        if names is None:
            return False
        found += names
        if found == _FEWEST_HEADINGS:
            return True
    return False


@lru_cache(maxsize=8192)
def _names_in(text: str) -> int | None:
    """1 for the name of a measure, 0 for another cell or a blank, None for what can be no cell."""
    text = text.strip()
    return int(_names_measure(text)) if _may_be_cells(text) else None


def _may_begin(cells: Sequence[Line]) -> bool:
    """Whether a table may begin here; one that begins with a figure has its headings behind."""
    if not is_cell_value(cells[0].text):
        return True
    sizes = read_label(cells[0].text) is not None and not is_cell_value(cells[-1].text)
    return sizes and any(_names_measure(one.text) for one in cells)


@dataclass(frozen=True, slots=True)
class _Reading:
    """Cells of a text, and the number of the last line of each."""

    cells: tuple[Line, ...]
    ends: tuple[int, ...]
    joined: bool = False


def _filled(lines: Sequence[Line]) -> tuple[Line, ...]:
    """The lines that can be one cell each, up to one that cannot."""
    found: list[Line] = []
    for line in lines:
        text = line.text.strip()
        if len(found) == _MOST_CELLS or not _may_be_cells(text):
            break
        if text:
            found.append(Line(text, line.number))
    return tuple(found)


@lru_cache(maxsize=4096)
def _cells_in(text: str) -> tuple[str, ...]:
    """The cells of a line: several sizes, or a name and several figures; else the whole."""
    named = labels_in(text) or named_values(text)
    if named is None or len(named.parts) < _SEVERAL:
        return (text,)
    return tuple(one for one in (named.name, *named.parts) if one)


@lru_cache(maxsize=4096)
def _may_be_cells(text: str) -> bool:
    """Whether a line can be a cell, several of them, or nothing between cells."""
    if "\t" in text or "|" in text:
        return False
    return len(text) <= _LONGEST or len(_cells_in(text)) > 1


def _names_measure(text: str) -> bool:
    return read_heading(text).role is Role.MEASURE


def _parted(reading: _Reading) -> _Reading | None:
    """Lines of several sizes, or of a name and several figures, as cells; None where none is."""
    cells: list[Line] = []
    for line in reading.cells:
        cells += [Line(text, line.number) for text in _cells_in(line.text)]
    whole = len(cells) == len(reading.cells)
    return None if whole else _Reading(tuple(cells), tuple(one.number for one in cells))


def _joined(reading: _Reading, length: Callable[[Sequence[str]], int]) -> _Reading | None:
    texts = [one.text for one in reading.cells]
    cells: list[Line] = []
    ends: list[int] = []
    at = 0
    while at < len(texts):
        count = length(texts[at : at + 3])
        cells.append(Line(" ".join(texts[at : at + count]), reading.cells[at].number))
        at += count
        ends.append(reading.ends[at - 1])
    fewer = len(cells) < len(texts)
    return _Reading(tuple(cells), tuple(ends), joined=True) if fewer else None


def _unit_behind(texts: Sequence[str]) -> int:
    if len(texts) < 2 or read_heading(texts[0]).role is not Role.MEASURE:
        return 1
    return 1 + (_UNIT.fullmatch(texts[1]) is not None and read_heading(texts[1]).role is Role.UNIT)


def _range_across(texts: Sequence[str]) -> int:
    if len(texts) < 3 or texts[1] not in _DASHES:
        return 1
    low, high = span_of(texts[0]), span_of(texts[2])
    if low is None or high is None or not low.single or not high.single:
        return 1
    return 3 if low.low < high.low else 1
