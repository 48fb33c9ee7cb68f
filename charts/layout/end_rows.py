"""Two lines of one size, one with the lower and one with the upper ends: joined to one line.

``S | | M |`` over ``min | max | min | max``: where the sizes run across, or down the rows with
the words in a column beside them.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal
from typing import Final

from charts.dimensions import Role
from charts.layout.fields import Field, FieldKind
from charts.layout.looks import look
from charts.layout.view import At

_ENDS: Final = frozenset({Role.LOW_END, Role.HIGH_END})
_OPEN: Final = {Role.LOW_END: "≥", Role.HIGH_END: "≤"}
_NAMES: Final = frozenset({FieldKind.LABEL, FieldKind.LENGTH, FieldKind.BAND, FieldKind.IDENTITY})
Ends = dict[Role, int]


def ends_joined(fields: Sequence[Field]) -> list[Field]:
    """The fields without their column of ends, each pair of its lines one line."""
    column = next((field for field in fields if _says_ends(field)), None)
    rest = [field for field in fields if field is not column]
    if column is None or not any(field.kind in _NAMES for field in rest):
        return list(fields)
    pairs = _pairs(_roles(column), rest)
    return [_joined(field, pairs) for field in rest]


def _says_ends(field: Field) -> bool:
    """Whether a column holds nothing but words for the two ends of a range."""
    roles = _roles(field)
    return None not in roles and set(roles) == _ENDS


def _roles(field: Field) -> list[Role | None]:
    return [_role(cell) for cell in field.cells]


def _role(cell: tuple[At, ...]) -> Role | None:
    one = look(cell[0].text) if cell else None
    ends = one is not None and one.heading.role in _ENDS and not one.value
    return one.heading.role if one is not None and ends else None


def _pairs(roles: Sequence[Role | None], fields: Sequence[Field]) -> list[Ends]:
    """The lines of each size by their ends: the second bears the same name, or none."""
    found: list[Ends] = []
    for line, role in enumerate(roles):
        if role is None:
            continue
        last = found[-1] if found else {}
        first = next(iter(last.values()), None)
        if first is not None and len(last) == 1 and role not in last and _one(fields, first, line):
            last[role] = line
        else:
            found.append({role: line})
    return found


def _one(fields: Sequence[Field], first: int, line: int) -> bool:
    """Whether a line names the same size as the one before it."""
    names = [field for field in fields if field.kind in _NAMES]
    return all(
        not field.cells[line] or _text(field.cells[line]) == _text(field.cells[first])
        for field in names
    )


def _text(cell: tuple[At, ...]) -> str:
    return cell[0].text.strip() if cell else ""


def _joined(field: Field, pairs: Sequence[Ends]) -> Field:
    cells = tuple(_cell(field, ends) for ends in pairs)
    units = tuple(field.units[next(iter(ends.values()))] for ends in pairs) if field.units else ()
    return replace(field, cells=cells, units=units)


def _cell(field: Field, ends: Ends) -> tuple[At, ...]:
    """Both figures side by side; one alone as an open end; fallen ends as they are printed."""
    given = {role: field.cells[line][0] for role, line in ends.items() if field.cells[line]}
    cells = [given[role] for role in (Role.LOW_END, Role.HIGH_END) if role in given]
    figures = [_figure(at) for at in cells]
    if field.kind in _NAMES or not cells or None in figures:
        return tuple(cells[:1])
    if len(cells) == 1:
        (role,) = given
        return (_with_text(cells[0], f"{_OPEN[role]} {cells[0].text.strip()}"),)
    if cells[0].origin == cells[1].origin:
        return tuple(cells[:1])
    low, high = figures
    if low is not None and high is not None and low > high:
        return (_with_text(cells[0], f"{cells[0].text.strip()} - {cells[1].text.strip()}"),)
    return tuple(cells)


def _figure(at: At) -> Decimal | None:
    """The single figure of a cell; None where it holds anything else."""
    quantity = look(at.text).reading.quantity
    return quantity.value.value if quantity is not None and quantity.value is not None else None


def _with_text(at: At, text: str) -> At:
    return replace(at, cell=replace(at.cell, text=text))
