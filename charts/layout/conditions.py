"""Sizes inside a table of several girths down the side and one more measure across in the heads.

``Chest | Hip | Height below 165 cm | Height from 165 to 172 cm`` over ``75-78 | 85-88 | 16 | 32``:
a grid whose one axis has more than one column.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from typing import Final, NamedTuple

from charts.dimensions import HeadingReading, Role
from charts.layout.fields import Field, FieldKind
from charts.layout.frames import Frame
from charts.layout.heads import combined
from charts.layout.looks import look
from charts.layout.view import At, View

_SCORE: Final = 12.0
_NO_HEADING: Final = HeadingReading(Role.UNKNOWN)


class _Condition(NamedTuple):
    """A head that names a measure and its figures: as printed, by name, and as a value."""

    said: At
    name: HeadingReading
    value: At


def by_conditions(view: View) -> Frame | None:
    """The view with one line for each size inside it; None when it is no such table."""
    heads = list(view.row(0))
    conditions = {
        column: condition
        for column, at in enumerate(heads)
        if at is not None and (condition := _condition(at)) is not None
    }
    measures = [
        column for column, at in enumerate(heads) if at is not None and look(at.text).measures
    ]
    measures = [column for column in measures if column not in conditions]
    if len(conditions) < 2 or not measures or len(conditions) + len(measures) < view.width:
        return None
    if len({one.name.dimension for one in conditions.values()}) > 1:
        return None
    rows = [row for row in range(1, view.height) if _valued(view, row, measures)]
    inner = _inner(view, rows, conditions)
    if not inner or not _names_sizes(view, rows, conditions, inner):
        return None
    return _framed(view, measures, conditions, inner)


def _condition(at: At) -> _Condition | None:
    """``Height below 165 cm``; words of the shop may stand between the name and the figures."""
    words = at.text.split()
    for start in range(1, len(words)):
        figures = " ".join(words[start:])
        if not look(figures).value:
            continue
        names = [" ".join(words[:end]) for end in range(start, 0, -1)]
        name = next((look(one).heading for one in names if look(one).measures), None)
        if name is None or name.dimension is None:
            return None
        return _Condition(at, name, replace(at, cell=replace(at.cell, text=figures)))
    return None


def _valued(view: View, row: int, measures: Sequence[int]) -> bool:
    cells = [view.at(row, column) for column in measures]
    return all(at is not None and look(at.text).value for at in cells)


def _inner(view: View, rows: Sequence[int], columns: dict[int, _Condition]) -> dict[At, int]:
    """The sizes inside, with the row each stands in."""
    return {
        at: row
        for row in rows
        for column in columns
        if (at := view.at(row, column)) is not None and not look(at.text).blank
    }


def _names_sizes(
    view: View, rows: Sequence[int], conditions: dict[int, _Condition], inner: dict[At, int]
) -> bool:
    """Whether the cells inside can be no figures, or stand below a word for size."""
    looks = [look(at.text) for at in inner]
    if all(one.sure_label for one in looks):
        return True
    above = [view.at(row, column) for row in range(1, rows[0]) for column in conditions]
    said = any(at is not None and look(at.text).heading.role is Role.LABEL for at in above)
    return said and all(one.label is not None for one in looks)


def _framed(
    view: View,
    measures: Sequence[int],
    conditions: dict[int, _Condition],
    inner: dict[At, int],
) -> Frame:
    sizes: dict[str, list[tuple[At, int]]] = {}
    for at, row in inner.items():
        sizes.setdefault(look(at.text).text.upper(), []).append((at, row))
    columns = {view.columns[column]: one for column, one in conditions.items()}
    if view.turned:
        columns = {view.rows[column]: one for column, one in conditions.items()}
    labels = tuple((places[0][0],) for places in sizes.values())
    fields = [Field(FieldKind.LABEL, (), _NO_HEADING, labels)]
    fields += [_down(view, column, list(sizes.values())) for column in measures]
    across = [
        tuple(dict.fromkeys(columns[_across(at, view)].value for at, _ in places))
        for places in sizes.values()
    ]
    first = next(iter(conditions.values()))
    fields.append(Field(FieldKind.VALUES, (first.said,), first.name, tuple(across)))
    uneven = {number for number, places in enumerate(sizes.values()) if len(places) > 1}
    return Frame(view, 1, tuple(fields), _SCORE, len(sizes), frozenset(uneven), gridded=True)


def _down(view: View, column: int, sizes: Sequence[Sequence[tuple[At, int]]]) -> Field:
    """One girth down the side: of each size the cells of the rows it stands in."""
    cells = [
        [view.at(row, column) for row in sorted({row for _, row in places})] for places in sizes
    ]
    filled = tuple(tuple(at for at in cell if at is not None) for cell in cells)
    heads = tuple(at for at in (view.at(0, column),) if at is not None)
    return Field(FieldKind.VALUES, heads, combined(heads), filled)


def _across(at: At, view: View) -> int:
    return at.row if view.turned else at.column
