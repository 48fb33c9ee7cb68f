"""Rows of single blanks by the simplest form that takes them whole, from their headings down.

A form that ends at a row with a blank cell gives way to the one that shares cells out, and where
none takes the rows that follow, or two columns have one heading, a person compares the whole.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from typing import Final

from charts.dimensions import Role, read_heading
from charts.readers.captured.columns import column_table
from charts.readers.captured.headed import headed_table
from charts.readers.captured.lines import Line, LineTable
from charts.readers.captured.rows import row_table
from charts.readers.captured.shared_out.bands_over import table_below_bands
from charts.readers.captured.shared_out.table import is_shared_row, shared_table

LINES_OF_TITLES: Final = 4
"""So many lines may stand above the headings."""


def single_row_table(lines: Sequence[Line]) -> LineTable | None:
    """Sizes with their values behind them, or rows told by their headings."""
    found = _with_cut_rows(lines, _even_rows(lines))
    return replace(found, inferred=True) if found is not None and _names_twice(found) else found


def single_column_table(lines: Sequence[Line]) -> LineTable | None:
    """Fields that stand under each other, or words of as many as the headings."""
    return _with_cut_rows(lines, column_table(lines))


def below_bands_table(lines: Sequence[Line]) -> LineTable | None:
    """A table of single blanks with a line of bands above its headings."""
    return table_below_bands(
        lines, lambda below: _with_cut_rows(below, _even_rows(below)) or shared_table(below)
    )


def _with_cut_rows(lines: Sequence[Line], found: LineTable | None) -> LineTable | None:
    """Rows of single blanks with all that follow at once, of which some may have blank cells."""
    if found is None:
        return None
    if not _is_cut(lines, found):
        surer = _longer_table(lines, found) if found.inferred else None
        return surer if surer is not None and not surer.inferred else found
    longer = _longer_table(lines, found)
    if longer is None or longer.used <= found.used:
        return replace(found, inferred=True)
    return longer


def _even_rows(lines: Sequence[Line]) -> LineTable | None:
    """Rows of single blanks: broken over lines, or told by headings; the more lines the better."""
    plain = row_table(lines)
    if plain is None:
        return headed_table(lines)
    for at in range(LINES_OF_TITLES):
        told = headed_table(lines[at:])
        if told is not None:
            return plain if at + told.used <= plain.used else told if at == 0 else None
    return plain


def _names_twice(table: LineTable) -> bool:
    """Whether a measure heads two columns with nothing above that tells them apart."""
    first = next(iter(row for row in table.rows if len(row) > 1), [])
    heads = [cell.text for cell in first[1:]]
    again = {head for head in heads if heads.count(head) > 1 and head != first[0].text}
    return any(read_heading(head).role is Role.MEASURE for head in again)


def _is_cut(lines: Sequence[Line], table: LineTable) -> bool:
    """Whether a line of a name and figures follows the rows at once: it may be the next row."""
    follows = lines[table.used : table.used + 1]
    return any(is_shared_row(line) for line in follows)


def _longer_table(lines: Sequence[Line], plain: LineTable) -> LineTable | None:
    """The table by its columns, with as many rows or more; the titles of the other above it."""
    heads = next((at for at, row in enumerate(plain.rows) if len(row) > 1), 0)
    whole = shared_table(lines[heads:])
    if whole is None or heads + whole.used < plain.used:
        return None
    return replace(whole, rows=[*plain.rows[:heads], *whole.rows], used=heads + whole.used)
