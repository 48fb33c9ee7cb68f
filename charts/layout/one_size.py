"""A block for one size: ``Size S`` above ``Chest | 84-88 cm`` and ``Waist | 70-74 cm``.

The size stands above the names of the measures and not in a column of its own.
"""

from __future__ import annotations

from dataclasses import replace
from typing import Final

from charts.dimensions import HeadingReading, Role
from charts.layout.fields import Field, FieldKind
from charts.layout.frames import Frame, frame
from charts.layout.looks import look
from charts.layout.measured_keys import measured_as
from charts.layout.view import At, View
from charts.sheet import Cell

_NOTHING: Final = HeadingReading(Role.UNKNOWN)
_NAME_AND_VALUE: Final = 2
"""Columns of such a block, or rows where the names stand side by side."""


def of_one_size(view: View, title: At | None) -> Frame | None:
    """The rows as the measures of the size that stands above them; None when they are none.

    ``title`` is the nearest lone text above; else the words before the sheet's first row count.
    ``Size L | cm`` may stand there too, with the unit of all figures.
    """
    if _NAME_AND_VALUE not in {view.width, view.height}:
        return None
    first, unit, *more = view.row(0)
    united = not more and first is not None and _is_size(first.text) and _is_unit(unit)
    beside = first if united else None
    size = beside or title or _before(view)
    if size is None or not _is_size(size.text) or (beside and view.height == 1):
        return None
    found = _plain(view.with_rows(view.rows[1:]) if beside else view)
    if found is None:
        return None
    measured = list(found.fields)
    label = Field(FieldKind.LABEL, (), _NOTHING, ((_named(size),),))
    if beside:
        measured = [replace(one, units=(unit,)) for one in measured]
    return replace(found, fields=(label, *measured), score=found.score + 1)


def _plain(view: View) -> Frame | None:
    """The view as one line of measures, each under its name; None where it is anything else.

    A height that would name sizes of its own is a measure here, as the size stands above.
    """
    turned = (view.turn(),) if view.width == _NAME_AND_VALUE else ()
    straight = (view,) if view.height == _NAME_AND_VALUE else ()
    for found in map(frame, (*turned, *straight)):
        fields = tuple(_measure(one) for one in found.fields)
        if found.lines == 1 and all(map(_is_measured, fields)):
            return replace(found, fields=fields)
    return None


def _measure(one: Field) -> Field:
    named = one.kind is FieldKind.LABEL and measured_as(one, ()) is not None
    return replace(one, kind=FieldKind.VALUES) if named else one


def _is_measured(one: Field) -> bool:
    return one.kind is FieldKind.VALUES and one.heading.role is Role.MEASURE


def _is_unit(at: At | None) -> bool:
    return at is not None and look(at.text).heading.role is Role.UNIT and not look(at.text).value


def _before(view: View) -> At | None:
    """The words before the table, as a cell at its first row."""
    context = view.sheet.context
    if not context or view.rows[0] != view.sheet.filled_rows[0]:
        return None
    return At(Cell(context[-1]), view.rows[0], view.columns[0])


def _named(size: At) -> At:
    """The size without the word for it: S of ``Size S``."""
    first, _, rest = size.text.strip().partition(" ")
    worded = bool(rest) and look(first).heading.role is Role.LABEL
    return replace(size, cell=replace(size.cell, text=rest.strip())) if worded else size


def _is_size(text: str) -> bool:
    one = look(text)
    return one.sure_label and one.band is None and not one.sentence
