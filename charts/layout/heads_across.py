"""Headings across over rows that they name: ``Size | Waist | Hip`` over ``S | M | L``.

Below stand a row of waists and a row of hips: the first heading names the first row, the second
one the second. Nobody can know it for certain, so the lines of such a table are asked about.
"""

from __future__ import annotations

from typing import Final

from charts.dimensions import Role
from charts.layout.fields import Field, FieldKind
from charts.layout.frames import Frame
from charts.layout.heads import combined
from charts.layout.looks import Look, look
from charts.layout.view import At, View

_SCORE: Final = 12.0
_FEWEST_SIZES: Final = 2


def heads_across(view: View) -> Frame | None:
    """The rows of the view under the headings of its first row, in order; None for other tables.

    Only where every cell below the headings is the name of a size, so that no column can hold
    what stands over it.
    """
    if view.turned or view.height < 3:
        return None
    heads, sizes, *rows = ([at for at in view.row(row) if at] for row in range(view.height))
    if not _headed(heads, len(rows)) or not _are_sizes(sizes):
        return None
    places = [at.column for at in sizes]
    for row in rows:
        if [at.column for at in row] != places or not all(look(at.text).value for at in row):
            return None
    names: list[tuple[At, ...]] = [(head,) for head in heads]
    fields = [
        Field(kind, head, combined(head), _cells(view, row))
        for row, head in zip(range(1, view.height), [*names, *[()] * len(rows)], strict=False)
        for kind in [FieldKind.VALUES if row > 1 else FieldKind.LABEL]
    ]
    nothing = Field(FieldKind.EMPTY, (), combined(()), ((),) * view.width)
    return Frame(view.turn(), 1, (nothing, *fields), _SCORE, view.width)


def _headed(heads: list[At], rows: int) -> bool:
    """A word for size and measures; a row of figures too many has no name."""
    looks: list[Look] = [look(at.text) for at in heads]
    if not rows or len(looks) < 2 or looks[0].heading.role is not Role.LABEL:
        return False
    return not looks[0].value and all(one.measures for one in looks[1:])


def _are_sizes(cells: list[At]) -> bool:
    names = [look(at.text) for at in cells]
    return len(names) >= _FEWEST_SIZES and all(one.wordy_label for one in names)


def _cells(view: View, row: int) -> tuple[tuple[At, ...], ...]:
    return tuple((at,) if at is not None else () for at in view.row(row))
