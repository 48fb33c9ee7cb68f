"""Plain lines on their way to a sheet: each cell remembers the line it came from."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass
from typing import Final

from charts.readers.source import LONGEST_CELL, MOST_LINES, too_many

_WIDEST: Final = 60
"""So many blanks part cells as well as any more do; fewer may stand for a blank cell, whose width
tells the columns of the figures behind it."""
_WIDE_GAP: Final = re.compile(rf"\s{{{_WIDEST + 1},}}")


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
    """Rows of cells found at the beginning of some lines, and how many lines they used up.

    ``inferred`` marks a table whose rows and columns a person should compare with the source,
    ``lost`` lines whose fields ran together for good; ``rivals`` tell the first difference between
    two ways to put its cells in order that are equally without fault: then none of it is read.
    """

    rows: list[list[LineCell]]
    used: int
    inferred: bool = False
    lost: bool = False
    rivals: tuple[str, ...] = ()


def numbered(text: str) -> list[Line]:
    """The lines of ``text``. Raises UnusableSourceError when they are absurdly many or long."""
    if (count := text.count("\n")) > MOST_LINES:
        raise too_many(count)
    lines = [Line(line, number) for number, line in enumerate(text.splitlines(), start=1)]
    longest = max((len(line.text) for line in lines), default=0)
    if longest > LONGEST_CELL:
        raise too_many(longest)
    return lines


def narrowed(lines: Sequence[Line]) -> Sequence[Line]:
    """The lines with wide gaps made narrow; the same lines where there are none.

    For whatever reads words and figures one after another: where the cells of a printed table
    stand far apart, it would look for them in every blank.
    """
    if not any(_WIDE_GAP.search(line.text) for line in lines):
        return lines
    return [Line(_WIDE_GAP.sub(" " * _WIDEST, line.text), line.number) for line in lines]
