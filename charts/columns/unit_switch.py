"""Words around a table that print cm and inches, as a switch between two of its panes does.

``CM | INCHES`` or ``Metric``, ``Imperial``: which of them holds, only the figures can say. Each
column would take the first that its figures can be in; where they take different ones, or can all
be in either, no word says which of them holds for the table.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import replace
from itertools import pairwise
from typing import Final

from charts.columns.at_ages import suits
from charts.columns.meaning import Column
from charts.columns.scale import said_at_large
from charts.columns.words import Surroundings, family_of, of_family
from charts.quantities import Family, Unit
from charts.schema import UnitFrom

_AROUND: Final = frozenset({UnitFrom.TITLE, UnitFrom.NOTE, UnitFrom.SHEET})
_SYSTEMS: Final = (
    (re.compile(r"\bm[eé]tri(?:c|sch|que|co|ca|sk|czn)", re.IGNORECASE), (Unit.CM, Unit.KG)),
    (re.compile(r"\bimp[eé]ri(?:al|ale|aux)\b|\bzöllig", re.IGNORECASE), (Unit.IN, Unit.LB)),
)
_MOST_WORDS: Final = 2
"""A pane of a switch is named by its unit or system and no more: ``Metric (cm)``."""


def of_system(text: str, family: Family) -> tuple[Unit, ...]:
    """The unit that a word for a whole system means: metric, imperial."""
    found = [units for pattern, units in _SYSTEMS if pattern.search(text)]
    return of_family(found[0], family) if len(found) == 1 else ()


def without_switched_units(columns: Sequence[Column], around: Surroundings) -> list[Column]:
    """The columns without units of length from around the table, where those are not one."""
    told = [one for one in columns if _told_around(one)]
    units = {one.unit for one in told if one.unit is not None}
    switch = _switch(around) if len(units) == 1 else frozenset()
    if len(units) < 2 and not (units <= switch and _in_either(told, switch)):
        return list(columns)
    unsaid = {one.number: replace(one, unit=None, unit_from=UnitFrom.INFERRED) for one in told}
    return [unsaid.get(one.number, one) for one in columns]


def _told_around(column: Column) -> bool:
    length = family_of(column.dimension) is Family.LENGTH
    return length and column.unit_from in _AROUND and column.second_unit is None


def _switch(around: Surroundings) -> frozenset[Unit]:
    """The units of two names beside each other that are nothing but units; none without these."""
    named = [_pane(one.text) if one.kind in _AROUND else None for one in around.words]
    for one, other in pairwise(named):
        if one is not None and other is not None and one is not other:
            return frozenset({one, other})
    return frozenset()


def _pane(text: str) -> Unit | None:
    if len(text.split()) > _MOST_WORDS:
        return None
    units = of_system(text, Family.LENGTH) or of_family(said_at_large(text), Family.LENGTH)
    return units[0] if len(set(units)) == 1 else None


def _in_either(columns: Sequence[Column], units: frozenset[Unit]) -> bool:
    """Whether the figures of every column can be in each of two units."""
    return bool(units) and all(suits(one, unit) for one in columns for unit in units)
