"""Rows that begin with two names: ``32B 70B 68-72`` under ``Size EU size Underbust (cm)``.

Either both are sizes under a word for sizes each, or the last word is the size and what stands
before it, the name of a model, under a heading of its own.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from typing import Final

from charts.dimensions import Role, read_band, read_heading
from charts.readers.captured.lines import LineCell, LineTable
from charts.readers.captured.value_runs import is_size

_ROLES: Final = (Role.IDENTITY, Role.OTHER, Role.UNKNOWN, Role.NOTE)


def with_two_names(table: LineTable) -> LineTable:
    """The table with the two names of its rows in a column each; else as it is."""
    start = next((at for at, row in enumerate(table.rows) if len(row) > 1), 0)
    head, rows = table.rows[start], table.rows[start + 1 :]
    names = [row[0].text for row in rows if len(row) > 1]
    cut = next((one for one in _cuts(head[0].text) if _all_part(names, *one)), None)
    if cut is None or not names:
        return table
    parted = [
        [*(LineCell(text, row[0].line) for text in _parted(row[0].text)), *row[1:]]
        if len(row) > 1
        else row
        for row in rows
    ]
    heads = [*(LineCell(text, head[0].line) for text in cut), *head[1:]]
    return replace(table, rows=[*table.rows[:start], heads, *parted])


def _cuts(head: str) -> list[tuple[str, str]]:
    """The ways to part a heading into one of something else or of sizes, and one of sizes."""
    words = head.split()
    ways = [(" ".join(words[:at]), " ".join(words[at:])) for at in range(1, len(words))]
    return [one for one in ways if read_heading(one[1]).role is Role.LABEL]


def _all_part(names: Sequence[str], first: str, second: str) -> bool:
    """Whether all names have two parts of which those under ``second`` are sizes."""
    role = read_heading(first).role
    parts = [_parted(name) for name in names]
    if any(not rest or not last or read_band(rest) for rest, last in parts):
        return False
    if role is Role.LABEL:
        return all(is_size(rest) for rest, _ in parts) and first.lower() != second.lower()
    sized = all(is_size(last) and not is_size(rest) for rest, last in parts)
    return role in _ROLES and sized and not any(map(is_size, names))


def _parted(name: str) -> tuple[str, str]:
    rest, _, last = name.rpartition(" ")
    return rest, last
