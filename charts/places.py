"""Places as a person writes them, back to the cells of a sheet: ``Women!C4:D9``, ``line 12``."""

from __future__ import annotations

import re
from dataclasses import dataclass
from typing import Final

from charts.sheet import Addressing, Sheet

_CELLS: Final = re.compile(r"([A-Z]{1,4})([1-9]\d{0,7})(?::([A-Z]{1,4})([1-9]\d{0,7}))?")
_LINE: Final = re.compile(r"line \d+")
_LETTERS: Final = 26


@dataclass(frozen=True, slots=True)
class Rectangle:
    """Rows and columns of a sheet from ``first`` to ``last``, both inside, counted from 0."""

    top: int
    left: int
    bottom: int
    right: int

    def holds(self, row: int, column: int) -> bool:
        """Whether a cell lies in it."""
        return self.top <= row <= self.bottom and self.left <= column <= self.right

    def meets(self, other: Rectangle) -> bool:
        """Whether the two share a cell."""
        rows = self.top <= other.bottom and other.top <= self.bottom
        return rows and self.left <= other.right and other.left <= self.right


def sheet_of(place: str) -> str:
    """The name of the sheet a place lies in, "" where the source has only one."""
    return place.rpartition("!")[0]


def rectangle_in(sheet: Sheet, place: str) -> Rectangle | None:
    """The cells of ``sheet`` that ``place`` names; None when it lies elsewhere or names none."""
    if sheet.addressing is Addressing.LINE:
        return _lines(sheet, place)
    name, _, cells = place.rpartition("!")
    if name != ("" if sheet.addressing is Addressing.PLAIN else sheet.name):
        return None
    return rectangle_of(cells)


def rectangle_of(cells: str) -> Rectangle | None:
    """The rectangle of ``C4`` or ``C4:D9``; None when it is neither."""
    match = _CELLS.fullmatch(cells)
    if match is None:
        return None
    first = (int(match[2]) - 1, _column(match[1]))
    last = (int(match[4]) - 1, _column(match[3])) if match[3] else first
    if last < first or last[1] < first[1]:
        return None
    return Rectangle(*first, *last)


def cells_at(sheet: Sheet, place: str) -> tuple[tuple[int, int], ...]:
    """The filled cells of ``sheet`` at ``place``, from top to bottom."""
    if sheet.addressing is Addressing.LINE:
        return tuple(at for at in sorted(sheet.cells) if sheet.place(*at) == place)
    area = rectangle_in(sheet, place)
    return () if area is None else tuple(at for at in sorted(sheet.cells) if area.holds(*at))


def _lines(sheet: Sheet, place: str) -> Rectangle | None:
    cells = cells_at(sheet, place) if _LINE.fullmatch(place) else ()
    if not cells:
        return None
    rows, columns = [row for row, _ in cells], [column for _, column in cells]
    return Rectangle(min(rows), min(columns), max(rows), max(columns))


def _column(letters: str) -> int:
    number = 0
    for letter in letters:
        number = number * _LETTERS + ord(letter) - ord("A") + 1
    return number - 1
