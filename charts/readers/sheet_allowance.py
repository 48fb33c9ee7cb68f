"""How many cells of a book are read: of a book of very many sheets only the first."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator
from typing import Final, TypeVar

from charts.findings import FindingLog
from charts.sheet import Sheet

T = TypeVar("T")
_MOST_TOGETHER: Final = 25_000
"""Filled cells of all sheets before no further one is begun; forty charts have some thousands."""


def read_in_turn(
    parts: Iterable[T], read: Callable[[T], Sheet | None], name: str, log: FindingLog
) -> Iterator[Sheet]:
    """The sheet that ``read`` gives for each part, until together they hold too many cells.

    ``name`` is the book's, for the one finding that says where reading stopped. A part that
    cannot be read (None) costs the others nothing.
    """
    cells = 0
    for part in parts:
        if cells > _MOST_TOGETHER:
            log.add("too-large", name, name=name, what=str(cells), case="many")
            return
        sheet = read(part)
        if sheet is not None:
            cells += len(sheet.cells)
            yield sheet
