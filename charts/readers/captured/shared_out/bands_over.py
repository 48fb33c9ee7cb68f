"""A line of bands above headings of single blanks: ``Size Women Men`` over ``Chest Hip Chest Hip``.

The bands share the measures evenly, or each has a table of its own beside the other's:
``Men Women`` over ``Size Chest Size Bust``. Where the measures of the bands differ, a person
compares the whole.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import replace
from typing import Final

from charts.dimensions import Role, read_band, read_heading
from charts.readers.captured.lines import Line, LineCell, LineTable

_FEWEST: Final = 2
_LONGEST: Final = 80


def table_below_bands(
    lines: Sequence[Line], below: Callable[[Sequence[Line]], LineTable | None]
) -> LineTable | None:
    """The table ``below`` finds under a line of bands, each over its columns; else None."""
    word, bands = _banded(lines[0].text.strip())
    table = below(lines[1:]) if len(bands) >= _FEWEST and len(lines) > _FEWEST else None
    if table is None or len(table.rows[0]) < _FEWEST * 2:
        return None  # the rows of a title would stand between
    heads = [cell.text for cell in table.rows[0]]
    names = [at for at, head in enumerate(heads) if head and head == heads[0]]
    beside = len(names) == len(bands) and not word and _names_sizes(heads[0])
    known = None not in map(read_band, bands)
    groups = _groups(heads, len(bands), word) if known and not beside else None
    if not beside and groups is None:
        return None
    over = [""] * len(heads)
    for at, band in enumerate(bands):
        columns = [names[at]] if groups is None else groups[at]
        for column in columns:
            over[column] = band
    head = lines[0].number
    alike = groups is None or len({tuple(_measures(heads, one)) for one in groups}) == 1
    first = [LineCell(heads[0] or word, table.rows[0][0].line), *table.rows[0][1:]]
    rows = [[LineCell(text, head) for text in over], first, *table.rows[1:]]
    return replace(table, rows=rows, used=table.used + 1, inferred=table.inferred or not alike)


def _banded(text: str) -> tuple[str, list[str]]:
    """The word for sizes a line begins with, "" for none, and the bands it consists of."""
    words = text.split() if len(text) <= _LONGEST else []
    named = len(words) > _FEWEST and _names_sizes(words[0]) and read_band(words[0]) is None
    bands = words[1:] if named else words
    told = [read_band(band) for band in bands]
    apart = any(told) and len(set(told)) == len(told)
    return (words[0] if named else "", bands) if apart else ("", [])


def _names_sizes(text: str) -> bool:
    return read_heading(text).role is Role.LABEL


def _groups(heads: Sequence[str], count: int, word: str) -> list[list[int]] | None:
    """The columns of each band where they share the measures evenly."""
    if bool(heads[0]) is bool(word) and not _names_sizes(heads[0]):
        return None
    columns = list(range(1, len(heads)))
    if len(columns) % count or any(
        read_heading(heads[at]).role is not Role.MEASURE for at in columns
    ):
        return None
    each = len(columns) // count
    return [columns[at : at + each] for at in range(0, len(columns), each)]


def _measures(heads: Sequence[str], columns: Sequence[int]) -> list[object]:
    return [read_heading(heads[at]).dimension for at in columns]
