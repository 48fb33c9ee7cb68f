"""Cells that hold several measures, each with its name: parted into one field per name.

Every part keeps the place of the cell it came from.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import replace
from typing import Final

from charts.layout.fields import Field, FieldKind
from charts.layout.lists import named_value
from charts.layout.looks import look
from charts.layout.view import At

_UNREADABLE = frozenset({FieldKind.NOTE, FieldKind.VALUES, FieldKind.SKIPPED, FieldKind.NAMES})
_PARTS: Final = re.compile(r"[;|\n]|,\s+(?=[^\W\d_])")
Items = dict[str, At]


def parted_lists(fields: Sequence[Field]) -> list[Field]:
    """The fields with every column of lists parted: ``Chest: 84-88 cm / Waist: 68-72 cm``."""
    found: list[Field] = []
    for field in fields:
        parts = [_items(cell) for cell in field.cells]
        filled = sum(bool(cell) for cell in field.cells)
        listed = sum(len(one) > 0 for one in parts)
        if field.kind in _UNREADABLE and filled and listed * 2 > filled and _several(parts):
            found += _per_name(field, parts)
        else:
            found.append(field)
    return found


def _several(parts: Sequence[Items]) -> bool:
    return any(len(one) > 1 for one in parts)


def _items(cell: tuple[At, ...]) -> Items:
    """The named figures of one cell, by name; empty when any part of it is something else."""
    if not cell or look(cell[0].text).value:
        return {}
    found: Items = {}
    for line in _PARTS.split(cell[0].text):
        if not line.strip():
            continue
        item = named_value(line)
        if item is None or not item[0]:
            return {}
        found[item[0]] = replace(cell[0], cell=replace(cell[0].cell, text=item[1]))
    return found


def _per_name(field: Field, parts: Sequence[Items]) -> list[Field]:
    names = list(dict.fromkeys(name for one in parts for name in one))
    first = next(cell[0] for cell in field.cells if cell)
    found = []
    for name in names:
        head = replace(first, cell=replace(first.cell, text=name))
        cells = tuple((one[name],) if name in one else () for one in parts)
        found.append(Field(FieldKind.VALUES, (head,), look(name).heading, cells))
    return found
