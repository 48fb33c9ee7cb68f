"""Single figures beside a column without a heading: perhaps the two halves of one range."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from charts.columns.fitting import printed_figures
from charts.columns.meaning import Column
from charts.columns.words import Surroundings


def beside_nameless(columns: Sequence[Column], around: Surroundings) -> list[Column]:
    """The columns with the question about a nameless neighbour on those it may complete.

    ``Chest | | Waist`` over 84 and 88: the 84 is no chest by itself if the 88 is its other end.
    """
    asked = {one.id for one in around.log.findings if one.code == "heading-unknown"}
    found = list(columns)
    for number in range(1, len(found)):
        left, column = found[number - 1], found[number]
        ids = [ident for ident in column.findings if ident in asked]
        if ids and not column.heading and left.heading and _single(left) and _single(column):
            found[number - 1] = left.asking(*ids)
    return found


def _single(column: Column) -> bool:
    """Whether a column holds one figure a cell."""
    cells = (replace(column.field, cells=(cell,)) for cell in column.field.cells)
    return max((len(printed_figures(one)) for one in cells), default=0) == 1
