"""``Women's size | Men's size`` beside the same figures: a chart for each, with its own names.

One of the two would name the sizes, and the other people's names would go beside it unread.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from charts.layout.fields import Field, FieldKind, Table
from charts.layout.looks import look


def for_each_band(table: Table) -> Sequence[Table]:
    """The table once for each band that names its sizes, or as it is."""
    names = table.of(FieldKind.LABEL)
    bands = [field.heading.band for field in names]
    told = len(names) > 1 and None not in bands and len(set(bands)) == len(bands)
    shared = all(
        field.heading.band is None and field.kind is not FieldKind.BAND
        for field in table.fields
        if field not in names
    )
    if not told or not shared or table.gridded:
        return (table,)
    return [_of(own, names, table) for own in names]


def _of(own: Field, names: Sequence[Field], table: Table) -> Table:
    """The rows that one of the names is given for."""
    kept = [n for n, cell in enumerate(own.cells) if cell and not look(cell[0].text).blank]
    fields = [field for field in table.fields if field is own or field not in names]
    return replace(table, fields=tuple(_lines(one, kept) for one in fields), lines=len(kept))


def _lines(field: Field, kept: Sequence[int]) -> Field:
    units = tuple(field.units[n] for n in kept) if field.units else ()
    return replace(field, cells=tuple(field.cells[n] for n in kept), units=units)
