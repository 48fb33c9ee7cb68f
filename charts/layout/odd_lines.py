"""Rows among the sizes that are no sizes: tolerances, steps, units, footnotes, headings again.

They are taken out of every field at once. A unit goes to the heading, a tolerance to its column.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from enum import StrEnum

from charts.dimensions import Role
from charts.layout.fields import Field, FieldKind
from charts.layout.heads import combined
from charts.layout.like_others import as_others, names_a_size
from charts.layout.looks import Look, look
from charts.layout.view import At
from charts.notation import Reading

_NO_SIZES = frozenset({Role.OTHER, Role.STEP, Role.NOTE, Role.TOLERANCE, Role.UNIT})


class _Odd(StrEnum):
    TOLERANCE = "tolerance"
    UNIT = "unit"
    DROPPED = "dropped"


def sorted_out(fields: Sequence[Field]) -> list[Field]:
    """The fields without the lines that are no sizes."""
    lines = len(fields[0].cells) if fields else 0
    odd = {line: kind for line in range(lines) if (kind := _odd(fields, line)) is not None}
    return [_without(field, odd) for field in fields] if odd else list(fields)


def _odd(fields: Sequence[Field], line: int) -> _Odd | None:
    filled = [field for field in fields if field.cells[line]]
    filled = [field for field in filled if not look(field.cells[line][0].text).blank]
    if not filled:
        return _Odd.DROPPED
    naming = next((field for field in filled if field.kind is FieldKind.LABEL), None)
    named = look(naming.cells[line][0].text) if naming is not None else None
    rest = [look(field.cells[line][0].text) for field in filled if field is not naming]
    if named is not None and named.heading.role is Role.TOLERANCE:
        return _Odd.TOLERANCE
    if rest and all(map(_of_tolerances, rest)) and any(map(_is_tolerance, rest)):
        return _Odd.TOLERANCE
    if rest and all(one.heading.role is Role.UNIT and not one.value for one in rest):
        return _Odd.UNIT
    if named is not None and (_dropped(named, rest) or _limit(named, rest, fields)):
        return _Odd.DROPPED
    if named is not None and _beside_sizes(named, fields):
        return None if names_a_size(named.text) and as_others(fields, line) else _Odd.DROPPED
    return None


def _of_tolerances(one: Look) -> bool:
    """A tolerance, or the word for it over a measure that has none."""
    return _is_tolerance(one) or _names_tolerances(one)


def _names_tolerances(one: Look) -> bool:
    return one.heading.role is Role.TOLERANCE and not _is_tolerance(one) and not one.value


def _is_tolerance(one: Look) -> bool:
    return one.reading.reading is Reading.TOLERANCE


def _name(fields: Sequence[Field], line: int) -> Look | None:
    for field in fields:
        if field.kind is FieldKind.LABEL and field.cells[line]:
            return look(field.cells[line][0].text)
    return None


def _dropped(named: Look, rest: Sequence[Look]) -> bool:
    """A step, a footnote, or headings printed again."""
    known = named.label is not None and named.label.doubtful is None
    if named.heading.role in {Role.STEP, Role.NOTE} and not known:
        return True
    if named.sentence and not rest:
        return True
    return named.heads and bool(rest) and all(one.heads for one in rest)


def _limit(named: Look, rest: Sequence[Look], fields: Sequence[Field]) -> bool:
    """``Max. 110 kg`` alone in its line below S, M and L: a limit of the whole, and no size."""
    quantity = named.reading.quantity
    if rest or named.label is not None or quantity is None or quantity.unit is None:
        return False
    names = [_name(fields, line) for line in range(len(fields[0].cells))]
    sizes = sum(one is not None and one.wordy_label for one in names)
    return named.reading.label is None and 2 * sizes > len(names)


def _beside_sizes(named: Look, fields: Sequence[Field]) -> bool:
    """``Stock`` or ``Price`` behind S, M and L: what a shop counts, where all others are sizes."""
    if named.heading.role is not Role.OTHER or named.label is not None:
        return False
    names = [_name(fields, line) for line in range(len(fields[0].cells))]
    others = [one for one in names if one is not None and one.heading.role not in _NO_SIZES]
    return bool(others) and all(one.label or one.heading.role is Role.LABEL for one in others)


def _without(field: Field, odd: dict[int, _Odd]) -> Field:
    cells = tuple(cell for line, cell in enumerate(field.cells) if line not in odd)
    heads, tolerance = field.heads, field.tolerance
    for line, kind in odd.items():
        cell = field.cells[line]
        if not cell or field.kind is FieldKind.LABEL:
            continue
        if kind is _Odd.UNIT:
            heads = (*heads, cell[0])
        elif kind is _Odd.TOLERANCE and not _names_tolerances(look(cell[0].text)):
            tolerance = cell[0]
    return _renamed(replace(field, cells=cells, tolerance=tolerance), heads)


def _renamed(field: Field, heads: tuple[At, ...]) -> Field:
    if heads == field.heads:
        return field
    return replace(field, heads=heads, heading=combined(heads))
