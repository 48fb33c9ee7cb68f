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

_LOOKED_AT: Final = 2
_ROLES: Final = (Role.IDENTITY, Role.OTHER, Role.UNKNOWN, Role.NOTE)


def with_two_names(table: LineTable) -> LineTable:
    """The table with two names that stand in its first or second column apart; else as it is."""
    start = next((at for at, row in enumerate(table.rows) if len(row) > 1), 0)
    rows = [row for row in table.rows[start + 1 :] if len(row) > 1]
    for column in range(min(_LOOKED_AT, *(len(row) for row in (table.rows[start], *rows)))):
        names = [row[column].text for row in rows]
        cuts = _cuts(table.rows[start][column].text)
        cut = next((one for one in cuts if names and _all_part(names, *one)), None)
        if cut is not None:
            parted = [_with_two(row, column, None) for row in table.rows[start + 1 :]]
            head = _with_two(table.rows[start], column, cut)
            return replace(table, rows=[*table.rows[:start], head, *parted])
    return table


def _with_two(row: list[LineCell], column: int, cut: tuple[str, str] | None) -> list[LineCell]:
    """A row with one of its cells as two: as ``cut``, or its last word apart."""
    if len(row) < _LOOKED_AT:
        return row
    texts = cut or _parted(row[column].text)
    cells = [LineCell(text, row[column].line) for text in texts]
    return [*row[:column], *cells, *row[column + 1 :]]


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
