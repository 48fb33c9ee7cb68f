"""A word for sizes at the end of headings that leave the corner blank: two ways to read the rows.

``Chest girth Waist girth Hip girth Size`` over ``84 72 88 42``: 84 is a chest where the size has a
heading of its own, and a size where ``Hip girth Size`` is one. Only a person can tell.
"""

from __future__ import annotations

from dataclasses import replace

from charts.dimensions import Role, read_heading
from charts.readers.captured.lines import LineCell, LineTable
from charts.readers.captured.values import is_value


def or_sizes_last(table: LineTable) -> LineTable:
    """The table; with both ways to read it, and no cell, where its sizes may stand behind."""
    first, *rows = table.rows
    heads = [cell.text for cell in first]
    rows = [row for row in rows if len(row) == len(first)]
    figures = bool(rows) and all(is_value(row[0].text) for row in rows)
    if not figures or heads[0] or not _sizes_perhaps_last(heads[1:]):
        return table
    whole = LineCell(" ".join(cell.text for row in table.rows for cell in row), first[0].line)
    ways = tuple(f"{heads[1]}: {cell.text}" for cell in (rows[0][1], rows[0][0]))
    return replace(table, rows=[[whole]], rivals=ways)


def _sizes_perhaps_last(heads: list[str]) -> bool:
    """Whether the last heading alone ends in a word for sizes behind a measure.

    ``Chest size | Waist size`` are measures, with the same word behind each.
    """
    ends = [read_heading(head.split()[-1]).role is Role.LABEL for head in heads if head]
    return bool(ends) and " " in heads[-1] and ends[-1] and not any(ends[:-1])
