"""Names of sizes in a column for each length: ``Chest | Back short | Back long``.

Below stand ``84-88 | S-S | S-L``: two sizes for one chest, named apart. Each of them has a line.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from typing import Final

from charts.dimensions import HeadingReading, Role
from charts.layout.fields import Field, FieldKind
from charts.layout.heads import combined
from charts.layout.lengths import parted
from charts.layout.looks import look
from charts.layout.view import At

_NAMES: Final = frozenset({FieldKind.LABEL, FieldKind.NOTE})
_LONGEST: Final = 12
"""Characters of the name of a size and a length; a sentence names neither."""


def with_labels_by_length(fields: Sequence[Field]) -> list[Field]:
    """The fields with one line for each name, where columns for lengths hold nothing but names."""
    columns = {n: at for n, field in enumerate(fields) if (at := _length_of(field)) is not None}
    labels = {n for n, field in enumerate(fields) if field.kind is FieldKind.LABEL}
    lengths = any(field.kind is FieldKind.LENGTH for field in fields)
    if len(columns) < 2 or not labels <= columns.keys() or lengths or not _apart(fields, columns):
        return list(fields)
    places = [
        (line, n)
        for line in range(len(fields[0].cells))
        for n in columns
        if fields[n].cells[line] and not look(fields[n].cells[line][0].text).blank
    ]
    nothing = HeadingReading(Role.UNKNOWN)
    names = tuple(fields[n].cells[line] for line, n in places)
    said = tuple((columns[n],) for _, n in places)
    kept = [_again(field, places) for n, field in enumerate(fields) if n not in columns]
    return [
        Field(FieldKind.LABEL, (), nothing, names),
        Field(FieldKind.LENGTH, (), nothing, said),
        *kept,
    ]


def _length_of(field: Field) -> At | None:
    """The word for a length in the heading of a column of names; None for any other column."""
    if field.kind not in _NAMES or field.heading.role is not Role.MEASURE:
        return None
    texts = [look(cell[0].text) for cell in field.cells if cell]
    named = bool(texts) and not any(one.value or len(one.text) > _LONGEST for one in texts)
    column = parted(field.heads) if named else None
    known = column is not None and combined(column.names).dimension is field.heading.dimension
    return column.said if column is not None and known else None


def _apart(fields: Sequence[Field], columns: dict[int, At]) -> bool:
    """Whether the columns are of one measure and no name stands in two places."""
    texts = [cell[0].text.strip() for n in columns for cell in fields[n].cells if cell]
    measures = {fields[n].heading.dimension for n in columns}
    return len(measures) == 1 and len(set(texts)) == len(texts)


def _again(field: Field, places: Sequence[tuple[int, int]]) -> Field:
    units = tuple(field.units[line] for line, _ in places) if field.units else ()
    return replace(field, cells=tuple(field.cells[line] for line, _ in places), units=units)
