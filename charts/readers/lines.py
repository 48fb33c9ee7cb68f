"""Plain lines on their way to a sheet: each cell remembers the line it came from."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Line:
    """One line of a text; numbers count from 1."""

    text: str
    number: int


@dataclass(frozen=True, slots=True)
class LineCell:
    """A piece of a line."""

    text: str
    line: int


@dataclass(frozen=True, slots=True)
class LineTable:
    """Rows of cells found at the beginning of some lines, and how many lines they used up."""

    rows: list[list[LineCell]]
    used: int


def numbered(text: str) -> list[Line]:
    """The lines of ``text``."""
    return [Line(line, number) for number, line in enumerate(text.splitlines(), start=1)]
