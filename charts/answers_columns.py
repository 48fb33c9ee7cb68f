"""Answers that say what columns mean: dimension, definition, basis, unit, or nothing at all.

They are put where the printed heading was read, so that every check runs as for printed words.
"""

from __future__ import annotations

from dataclasses import replace
from typing import Final

from charts.answering import Answering
from charts.answers import Answer, LeftOut, Meaning, Part, Scope
from charts.columns.words import family_of, of_family
from charts.headings.reading import HeadingReading, Role
from charts.layout.fields import Field, FieldKind, Table
from charts.model_facts import definitions_of
from charts.places import rectangle_in
from charts.schema import Basis, Definition, Dimension

_OF_THE_BODY: Final = frozenset({Dimension.HEIGHT, Dimension.WEIGHT, Dimension.AGE})
_KEEPING: Final = frozenset({Role.MEASURE, Role.LOW_END, Role.HIGH_END})
JOINT: Final = " | "
"""Between the headings of two columns that give one value."""


def answered_columns(table: Table, answering: Answering) -> Table:
    """``table`` with the meanings and left-out columns of the answers."""
    fields = list(table.fields)
    for answer in answering.answers:
        for number, one in enumerate(fields):
            new = _answered(one, table, answer)
            if new is not None:
                answering.use(answer)
                fields[number] = new
    return replace(table, fields=tuple(fields))


def _answered(one: Field, table: Table, answer: Answer) -> Field | None:
    """The column as one answer has it; None when the answer does not speak of it."""
    match answer.act:
        case LeftOut(Part.COLUMN, place, text) if one.kind is not FieldKind.EMPTY:
            here = _at_place(one, table, place) and text in ("", one.printed_heading)
            return replace(one, kind=FieldKind.SKIPPED) if here else None
        case Meaning(Scope.COLUMN) as meaning:
            return _said_of_column(one, meaning, answer) if _meant(one, table, meaning) else None
        case Meaning(scope, place) as meaning if one.kind is FieldKind.VALUES:
            if scope is Scope.FILE or _same_table(table, place):
                return _said_around(one, meaning, answer)
    return None


def _meant(one: Field, table: Table, meaning: Meaning) -> bool:
    named = one.printed_heading in meaning.headings
    return named and (_same_table(table, meaning.place) or _at_place(one, table, meaning.place))


def _same_table(table: Table, place: str) -> bool:
    """Whether a place lies in the table, whose edges may have been moved since."""
    if not place or place == table.area:
        return True
    area, where = rectangle_in(table.sheet, table.area), rectangle_in(table.sheet, place)
    return area is not None and where is not None and area.meets(where)


def _at_place(one: Field, table: Table, place: str) -> bool:
    """Whether a place is the column's heading or covers its cells."""
    cells = (*one.heads, *(at for cell in one.cells for at in cell))
    area = rectangle_in(table.sheet, place)
    if area is None:
        return any(table.sheet.place(at.row, at.column) == place for at in one.heads)
    inside = [at for at in cells if area.holds(at.row, at.column)]
    heads = {(at.row, at.column) for at in one.heads}
    heading_only = bool(inside) and {(at.row, at.column) for at in inside} <= heads
    return heading_only or len(inside) * 2 > len(cells)


def _said_of_column(one: Field, meaning: Meaning, answer: Answer) -> Field:
    """Everything a person said of this very column; it goes before the print."""
    heading = one.heading
    kind = one.kind
    if meaning.dimension is not None:
        role = heading.role if heading.role in _KEEPING else Role.MEASURE
        same = heading.dimension is meaning.dimension
        definition = heading.definition if same else Definition.UNKNOWN
        heading = replace(
            heading,
            role=role,
            dimension=meaning.dimension,
            definition=definition,
            candidates=(),
            slips=(),
            strange="",
        )
        kind = FieldKind.VALUES
    if meaning.definition is not None:
        heading = replace(heading, definition=meaning.definition)
    if meaning.basis is not None:
        heading = replace(heading, basis=meaning.basis, garment_sign=False)
    return _with_unit(replace(one, heading=heading, kind=kind), meaning, answer)


def _with_unit(one: Field, meaning: Meaning, answer: Answer) -> Field:
    unit = meaning.unit
    if unit is None or not of_family((unit,), family_of(one.heading.dimension)):
        return one
    heading = replace(one.heading, unit=unit, second_unit=None)
    return replace(one, heading=heading, unit_said=answer.source)


def _said_around(one: Field, meaning: Meaning, answer: Answer) -> Field | None:
    """What was said of a table or a file, where the column's own heading says nothing."""
    heading = one.heading
    if meaning.dimension not in (None, heading.dimension):
        return None
    new = _defined(heading, meaning)
    if meaning.scope is Scope.TABLE and _basis_unsaid(heading) and meaning.basis is not None:
        new = replace(new, basis=meaning.basis, garment_sign=False)
    found = replace(one, heading=new)
    if meaning.scope is Scope.TABLE and heading.unit is None:
        found = _with_unit(found, meaning, answer)
    return found if found != one else None


def _basis_unsaid(heading: HeadingReading) -> bool:
    return heading.basis is Basis.UNKNOWN and heading.dimension not in _OF_THE_BODY


def _defined(heading: HeadingReading, meaning: Meaning) -> HeadingReading:
    dimension, definition = heading.dimension, meaning.definition
    unsaid = heading.definition is Definition.UNKNOWN
    if dimension is None or definition is None or not unsaid:
        return heading
    if definition not in definitions_of(dimension):
        return heading
    return replace(heading, definition=definition)
