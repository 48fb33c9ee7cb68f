"""Columns of one measure, each for another second name of a size: a line for each size and name.

Cups and lengths stand so: ``Bust A-C | Bust D-F``, ``Back length short | regular | long``.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import replace

from charts.dimensions import HeadingReading
from charts.layout.fields import Field, FieldKind
from charts.layout.looks import look
from charts.layout.view import At

Pair = tuple[int, str]
"""The line of a size, and a second name; "" for a size that has figures under none."""
Group = dict[str, Field]
"""The columns of one measure by their second names."""


def pairs_of(lines: int, names: Sequence[str], groups: Sequence[Group]) -> list[Pair]:
    """The sizes with the names they have a figure under; a size without any stands alone."""
    found: list[Pair] = []
    for line in range(lines):
        given = [
            (line, name)
            for name in names
            if any(name in group and _given(group[name].cells[line]) for group in groups)
        ]
        found += given or [(line, "")]
    return found


def _given(cell: tuple[At, ...]) -> bool:
    """A dash is no figure: the size is not made in that length."""
    return any(not look(at.text).blank for at in cell)


def repeated(
    field: Field, pairs: Sequence[Pair], named: Callable[[At, str], At] | None = None
) -> Field:
    """A column that knows no second names: its cells again for each; sizes named with it too."""
    cells = []
    for line, name in pairs:
        cell = field.cells[line]
        renamed = named is not None and field.kind is FieldKind.LABEL and name and cell
        cells.append((named(cell[0], name),) if named is not None and renamed else cell)
    units = tuple(field.units[line] for line, _ in pairs) if field.units else ()
    return replace(field, cells=tuple(cells), units=units)


def joined(group: Group, pairs: Sequence[Pair], heading: HeadingReading) -> Field:
    """The columns of one measure as one column, under ``heading``."""
    cells = tuple(group[name].cells[line] if name in group else () for line, name in pairs)
    first = next(iter(group.values()))
    return replace(first, kind=FieldKind.VALUES, heading=heading, cells=cells)
