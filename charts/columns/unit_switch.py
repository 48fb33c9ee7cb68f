"""Words around a table that print cm and inches, as a switch between two of its panes does.

Each column would take the one its figures can be in; where they take different ones, no word says
which of them holds for the table.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from typing import Final

from charts.columns.meaning import Column
from charts.columns.words import family_of
from charts.quantities import Family
from charts.schema import UnitFrom

_AROUND: Final = frozenset({UnitFrom.TITLE, UnitFrom.NOTE, UnitFrom.SHEET})


def without_switched_units(columns: Sequence[Column]) -> list[Column]:
    """The columns without units of length from around the table, where those are not one."""
    told = [one for one in columns if _told_around(one)]
    if len({one.unit for one in told}) < 2:
        return list(columns)
    unsaid = {one.number: replace(one, unit=None, unit_from=UnitFrom.INFERRED) for one in told}
    return [unsaid.get(one.number, one) for one in columns]


def _told_around(column: Column) -> bool:
    length = family_of(column.dimension) is Family.LENGTH
    return length and column.unit_from in _AROUND and column.second_unit is None
