"""Rows with a cell more or less than their headings: the headings may stand over the wrong columns.

Where it is told which way they slipped, the table is read so and asked about once. Where it is
not, a word or the number of a size under a measure and a nameless column of figures behind the
last heading throw the same doubt on every figure of the table.
"""

from __future__ import annotations

from collections.abc import Sequence

from charts.columns.meaning import Column
from charts.columns.words import Surroundings
from charts.dimensions import Role
from charts.layout.fields import Field, FieldKind
from charts.layout.front_cells import headed_elsewhere, size_numbers
from charts.layout.looks import look
from charts.notation import read_cell
from charts.schema import Dimension, Kind

_OVER_NAMES = frozenset({None, Dimension.AGE, Dimension.OTHER})


def longer_rows_asked(columns: Sequence[Column], around: Surroundings) -> list[Column]:
    """The columns with one question on each where the rows are longer than their headings."""
    case = {1: "front", -1: "behind"}.get(headed_elsewhere(around.table), "")
    if not case and _nameless_behind(columns):
        words = any(map(_sizes_for_figures, around.table.fields))
        case = "overflow" if words or _number_of_a_size(columns) else ""
    if not case or not columns:
        return list(columns)
    first = next((one for one in columns if one.heading), columns[0])
    ident = around.log.add(
        "columns-shifted", first.place, key=around.table.area, case=case, heading=first.heading
    )
    return [column.asking(ident) for column in columns]


def _nameless_behind(columns: Sequence[Column]) -> bool:
    """Whether the last column has no heading at all and the others have."""
    named = [bool(column.field.heads) for column in columns]
    return len(named) > 1 and not named[-1] and any(named)


def _number_of_a_size(columns: Sequence[Column]) -> bool:
    """``34``, ``36`` where all other columns hold ranges: a size's number, maybe, and no girth."""
    texts = [[cell[0].text for cell in one.field.cells if cell] for one in columns]
    first, *others = texts
    ranged = (read_cell(text).quantity for column in others for text in column)
    return size_numbers(first) and all(one is not None and one.kind is Kind.RANGE for one in ranged)


def _sizes_for_figures(field: Field) -> bool:
    """``S``, ``M`` under ``Chest``: words stand where a heading promises figures of a body."""
    heading = field.heading
    if not field.heads or field.kind is FieldKind.EMPTY:
        return False
    if heading.role is not Role.MEASURE or heading.dimension in _OVER_NAMES or heading.candidates:
        return False
    looks = [look(cell[0].text) for cell in field.cells if cell]
    return len(looks) > 1 and all(one.sure_label or one.length is not None for one in looks)
