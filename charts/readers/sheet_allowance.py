"""How many cells of a book are read: of a book of very many sheets only the first."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator
from typing import TypeVar

from charts.findings import FindingLog
from charts.readers.source import MOST_CELLS
from charts.sheet import Sheet

T = TypeVar("T")


def read_in_turn(
    parts: Iterable[T], read: Callable[[T], Sheet | None], name: str, log: FindingLog
) -> Iterator[Sheet]:
    """The sheet that ``read`` gives for each part, until together they hold too many cells.

    ``name`` is the book's, for the one finding that says where reading stopped. A part that
    cannot be read (None) costs the others nothing.
    """
    cells = 0
    for part in parts:
        if cells > MOST_CELLS:
            log.add("too-large", name, name=name, what=str(cells), case="many")
            return
        sheet = read(part)
        if sheet is not None:
            cells += len(sheet.cells)
            yield sheet
