"""Columns behind those of the last band: its own, or everybody's, which nothing printed says.

``| Women | | Girls | |`` over ``Size | Chest | Waist | Chest | Waist | Height``, nothing merged.
"""

from __future__ import annotations

from collections.abc import Sequence

from charts.columns.meaning import Column
from charts.columns.words import Surroundings
from charts.layout.bands import behind_the_bands


def columns_behind_asked(columns: Sequence[Column], around: Surroundings) -> list[Column]:
    """The columns, with one question on those that only their place gives to the last band."""
    behind = behind_the_bands(around.table.fields)
    places = {(at.row, at.column) for field in behind for at in field.heads}
    if not behind or not behind[0].heads:
        return list(columns)
    first = behind[0]
    ident = around.log.add(
        "columns-shifted",
        around.place(first.heads[-1].row, first.heads[-1].column),
        key=f"bands {around.table.area}",
        case="bands",
        heading=first.printed_heading,
    )
    return [
        one.asking(ident) if any((at.row, at.column) in places for at in one.field.heads) else one
        for one in columns
    ]
