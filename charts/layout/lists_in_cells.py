"""Cells that hold measures, each with its name: parted into one field per name.

One measure a cell does as well where the column has no heading of its own that names it. Every
part keeps the place of the cell it came from.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from typing import Final

from charts.dimensions import Role
from charts.layout.fields import Field, FieldKind
from charts.layout.heads import combined
from charts.layout.looks import look
from charts.layout.named_value import named_parts
from charts.layout.view import At
from charts.schema import Dimension

_UNREADABLE = frozenset({FieldKind.NOTE, FieldKind.VALUES, FieldKind.SKIPPED, FieldKind.NAMES})
_FEWEST: Final = 2
Items = dict[str, At]


def parted_lists(fields: Sequence[Field]) -> list[Field]:
    """The fields with every column of lists parted: ``Chest: 84-88 cm / Waist: 68-72 cm``."""
    found: list[Field] = []
    for field in fields:
        parts = [_items(cell) for cell in field.cells]
        filled = sum(bool(cell) for cell in field.cells)
        listed = sum(len(one) > 0 for one in parts)
        if field.kind in _UNREADABLE and filled and listed * 2 > filled and _parted(field, parts):
            found += _per_name(field, parts)
        else:
            found.append(field)
    return found


def _parted(field: Field, parts: Sequence[Items]) -> bool:
    """Whether a cell names several measures, or each cell one that the heading does not refute."""
    if any(len(one) > 1 for one in parts):
        return True
    named = {name.lower() for one in parts for name in one}
    if len(named) != 1 or sum(map(bool, parts)) < _FEWEST or field.heading.role is Role.LABEL:
        return False
    said = look(named.pop()).heading.dimension
    return field.heading.dimension in {None, Dimension.OTHER, said}


def _items(cell: tuple[At, ...]) -> Items:
    """The named figures of one cell, by name; empty when any part of it is something else."""
    if not cell or look(cell[0].text).value:
        return {}
    return {
        name: replace(cell[0], cell=replace(cell[0].cell, text=text))
        for name, text in named_parts(cell[0].text).items()
    }


def _per_name(field: Field, parts: Sequence[Items]) -> list[Field]:
    """A column for each name, however its letters are written from row to row."""
    spelt = {name.lower(): name for one in reversed(parts) for name in reversed(one)}
    given = [{name.lower(): at for name, at in one.items()} for one in parts]
    first = next(cell[0] for cell in field.cells if cell)
    kept = field.heads if len(spelt) == 1 else ()
    found = []
    for key in dict.fromkeys(name for one in given for name in one):
        heads = (*kept, replace(first, cell=replace(first.cell, text=spelt[key])))
        cells = tuple((one[key],) if key in one else () for one in given)
        found.append(Field(FieldKind.VALUES, heads, combined(heads), cells))
    return found
