"""Rows in another unit than their headings print: read in the one they fit, asked once."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from typing import Final

from charts.columns.cells import OF_A_CELL, read_at
from charts.columns.values import Filled
from charts.columns.words import Surroundings
from charts.findings import Candidate, listed
from charts.notation import Expected, Reading, read_cell
from charts.quantities import Unit
from charts.schema import Kind, Range, UnitFrom

_OTHER: Final = {
    Unit.CM: Unit.IN,
    Unit.IN: Unit.CM,
    Unit.KG: Unit.LB,
    Unit.LB: Unit.KG,
    Unit.MM: Unit.CM,
}


def rows_in_another_unit(columns: Sequence[Filled], around: Surroundings) -> list[Filled]:
    """The columns with such rows read in the other unit, one question for all of them."""
    found = list(columns)
    lines = sorted({line for one in columns for line in one.ranges})
    for line in lines if len(lines) > 2 else ():
        filled = [n for n, one in enumerate(found) if line in one.ranges]
        if len(filled) > 1 and all(_fits_otherwise(found[n], line) for n in filled):
            _take(found, line, filled, around)
    return found


def _fits_otherwise(one: Filled, line: int) -> bool:
    """Whether a value that its printed unit makes impossible is sound in the other one."""
    column = one.column
    unit = _OTHER.get(column.unit) if column.unit is not None else None
    if one.ranges[line].kind is not Kind.UNREAD or unit is None:
        return False
    cell = column.field.cells[line]
    expected = Expected(column.dimension, unit, basis=column.basis, definition=column.definition)
    return len(cell) == 1 and read_cell(cell[0].text, expected).reading is Reading.READ


def _take(found: list[Filled], line: int, filled: Sequence[int], around: Surroundings) -> None:
    first = found[filled[0]].ranges[line]
    for number in filled:
        one = found[number]
        place = one.ranges[line].place
        own = [f for f in around.log.findings if f.place == place]
        for finding in own:
            if finding.values.get("case") == OF_A_CELL:
                around.log.withdraw(finding.id)
        unit = _OTHER[one.column.unit or Unit.CM]
        column = replace(one.column, unit=unit, unit_from=UnitFrom.INFERRED)
        read = read_at(column.field.cells[line][0], column, around) or one.ranges[line]
        ident = around.log.add(
            "units-swapped",
            first.place,
            key=f"rows {around.table.area}",
            candidates=(_candidate(read, unit),),
            case="row",
            text=first.published,
            heading=first.heading,
        )
        asked = replace(read, findings=listed(*read.findings, ident))
        found[number] = Filled(one.column, {**one.ranges, line: asked})


def _candidate(read: Range, unit: Unit) -> Candidate:
    """The reading taken, to be confirmed."""
    text = f"{read.published} {unit.value}"
    return Candidate(text, read.unit.value, read.low, read.high, read.value, "column-fits")
