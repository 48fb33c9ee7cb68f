"""A table of one size that nothing names: ``Height | 150-160`` and ``Chest | 80-84`` below it.

A page that keeps a table for each size writes its name on a link, in a picture or nowhere, and a
measure that names the sizes of other tables is no name here.
"""

from __future__ import annotations

from charts.columns.words import Surroundings
from charts.dimensions import Role
from charts.layout.fields import Field, FieldKind, Table
from charts.layout.measured_keys import measured_as


def size_unnamed(key: Field | None, table: Table, around: Surroundings) -> tuple[str, ...]:
    """The question on a lone size that a measure of its own names; nothing where a name does."""
    if key is None or table.lines != 1 or key.heading.role is not Role.MEASURE:
        return ()
    if not table.of(FieldKind.VALUES) or measured_as(key, table.fields) is None:
        return ()
    at = key.cells[0][0]
    place = around.place(at.row, at.column)
    key_of_all = f"lone {table.area}"
    return (
        around.log.add("blank-inside", place, key=key_of_all, case="lone", text=at.text.strip()),
    )
