"""Rows whose sizes have the word for a band before them: ``Ladies S``, ``Ladies M``, ``Gents S``.

The band stood in a column of its own, before every size or before the first of its sizes only. It
is put on a line above its rows. Without a heading of its own it is a part of the sizes' names,
unless the sizes begin again behind each.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from itertools import groupby
from typing import Final

from charts.dimensions import Role, read_band, read_heading
from charts.readers.captured.lines import LineCell, LineTable
from charts.readers.captured.value_runs import is_size, rises

_FEWEST_BANDS: Final = 2
_Split = tuple[str, str]


def with_bands(table: LineTable) -> LineTable:
    """The table with a line for each band that stands before its sizes; else as it is."""
    start = next((at for at, row in enumerate(table.rows) if len(row) > 1), 0)
    head, rows = table.rows[start], table.rows[start + 1 :]
    if not rows or any(len(row) < 2 for row in rows):
        return table  # bands of its own stand between them
    parted = [_parted(row[0].text) for row in rows]
    if sum(bool(band) for band, _ in parted) < _FEWEST_BANDS:
        return table
    word = _word_for_sizes(head[0].text)
    if not _are_columns(parted, headed=word != head[0].text):
        return table
    cells = [[LineCell(word, head[0].line), *head[1:]]]
    before = ""
    for row, (band, size) in zip(rows, parted, strict=True):
        if band and band != before:
            cells.append([LineCell(band, row[0].line)])
            before = band
        cells.append([LineCell(size, row[0].line), *row[1:]])
    return replace(table, rows=[*table.rows[:start], *cells])


def banded_names(names: Sequence[str]) -> list[_Split]:
    """Every name of a size with the band it stands under, which only the first of them may tell."""
    found: list[_Split] = []
    for band, size in map(_parted, names):
        found.append((band or (found[-1][0] if found else ""), size))
    return found


def _parted(name: str) -> _Split:
    """The word for a band before a size, "" for none, and the size."""
    first, _, rest = name.partition(" ")
    banded = rest and read_band(first) is not None and not is_size(first)
    return (first, rest) if banded and is_size(rest) else ("", name)


def _word_for_sizes(head: str) -> str:
    """The heading of the sizes without the one of the bands before it: ``Size`` of ``For Size``."""
    first, _, rest = head.partition(" ")
    other = read_heading(first).role in (Role.BAND, Role.UNKNOWN, Role.OTHER, Role.IDENTITY)
    return rest if rest and other and read_heading(rest).role is Role.LABEL else head


def _are_columns(parted: Sequence[_Split], *, headed: bool) -> bool:
    """Whether the bands stand in a column: before all sizes, or once before those that rise."""
    bands = [band for band, _ in parted]
    if not bands[0]:
        return False
    runs = [band for band, _ in groupby(bands) if band]
    if len(runs) < _FEWEST_BANDS or len(set(runs)) < len(runs):
        return False
    if all(bands):
        return headed
    groups: list[list[str]] = []
    for band, size in parted:
        if band:
            groups.append([])
        groups[-1].append(size)
    again = set(groups[0][:2]) & {size for group in groups[1:] for size in group}
    return all(map(rises, groups)) and (headed or bool(again))
