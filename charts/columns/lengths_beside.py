"""Lengths in the wrong one of cm and inches: the girths of the same sizes tell, and it is asked.

``Inseam 30, 31, 32`` beside a waist of 76 to 90 cm is in inches, whatever a note or a neighbour
says of the unit: a leg of 30 cm can be a child's, but not of that girth.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import replace
from decimal import Decimal
from typing import Final

from charts.columns.fitting import fits, printed_figures
from charts.columns.girths_beside import (
    girths_beside,
    in_canonical_by_line,
    like_heights,
    share_of_girth,
)
from charts.columns.meaning import Column
from charts.columns.measure_kinds import ends_early, kind_of
from charts.columns.weights_beside import other_mass
from charts.columns.words import Surroundings, family_of
from charts.findings import Candidate
from charts.quantities import CANONICAL, FAMILY, Unit, canonical
from charts.schema import UnitFrom

_OTHER: Final = {Unit.CM: Unit.IN, Unit.IN: Unit.CM}
_SHORT_OF_SOME: Final = frozenset({"inseam", "arm_length", "outseam", "garment_length"})
"""Of shorts, of a T-shirt, they are as short in cm as whole ones are in inches."""
_VOUCH: Final = {
    "inseam": frozenset({"rise", "outseam", "garment_length"}),
    "outseam": frozenset({"rise", "inseam"}),
    "arm_length": frozenset({"garment_length"}),
}
"""Measures of the garment that would be in inches as well: a length of 72 beside short sleeves."""


def other_scale(column: Column, columns: Sequence[Column], around: Surroundings) -> Unit | None:
    """The unit in which the figures suit the girths beside them, where theirs suits none.

    Most lines must be outside in the one and inside in the other. A cell with a unit of its own
    is believed.
    """
    unit = _OTHER.get(column.unit) if column.unit is not None else None
    kind = kind_of(column)
    if unit is None or kind is None or column.second_unit is not None or not _all_bare(column):
        return None
    if kind == "height" and any(like_heights(one) for one in columns):
        return None
    if not _misfits(column, unit, kind, columns) or not fits(column.field, column.dimension, unit):
        return None
    if kind in _SHORT_OF_SOME and column.unit is Unit.CM:
        short = any(ends_early(text) for text in (column.heading, *_said(around)))
        if short or any(_vouches(one, kind, column, columns) for one in columns):
            return None
    return unit


def refuted_by_girths(
    column: Column, unit: Unit, columns: Sequence[Column], around: Surroundings
) -> Column | None:
    """The column asked about, where the unit of its neighbours suits none of its figures.

    None where ``unit`` suits them, or nothing tells.
    """
    extended = replace(column, unit=unit, unit_from=UnitFrom.SIBLING)
    other = other_mass(extended, columns) or other_scale(extended, columns, around)
    return _asked_in_both(extended, other, around) if other is not None else None


def _asked_in_both(column: Column, unit: Unit, around: Surroundings) -> Column:
    """The column in ``unit``, asked with the unit of its neighbours as the other reading."""
    ident = around.log.add(
        "unit-missing",
        column.place,
        key=f"{around.table.sheet.name} {family_of(column.dimension)} {unit}",
        candidates=tuple(_candidate(column, one) for one in (unit, column.unit or unit)),
        heading=column.heading,
        unit=unit.value,
        other=(column.unit or unit).value,
    )
    return replace(column, unit=unit, unit_from=UnitFrom.INFERRED).asking(ident)


def _candidate(column: Column, unit: Unit) -> Candidate:
    figures = [value for value, _ in printed_figures(column.field)][:2]
    low, high = (canonical(value, unit) for value in (figures[0], figures[-1]))
    text = " - ".join(f"{value:f}" for value in dict.fromkeys(figures))
    canon = CANONICAL[FAMILY[unit]].value
    return Candidate(f"{text} {unit.value}", canon, low, high, why="column-fits")


def _misfits(column: Column, unit: Unit, kind: str, columns: Sequence[Column]) -> bool:
    girths = girths_beside(column, columns)
    now = _shares(column, girths)
    then = _shares(replace(column, unit=unit), girths)
    low, high = share_of_girth(kind)
    wrong = [line for line, share in now.items() if not low <= share <= high]
    right = [line for line in wrong if low <= then[line] <= high]
    return bool(now) and 2 * len(right) > len(now) and right == wrong


def _shares(column: Column, girths: Mapping[int, Decimal]) -> dict[int, Decimal]:
    figures = in_canonical_by_line(column)
    return {line: value / girths[line] for line, value in figures.items() if line in girths}


def _vouches(one: Column, kind: str, column: Column, columns: Sequence[Column]) -> bool:
    """Whether another length of the garment, in the same unit, is right for the girths."""
    beside = kind_of(one)
    if one is column or beside is None or beside not in _VOUCH.get(kind, frozenset()):
        return False
    shares = _shares(one, girths_beside(one, columns)).values()
    low, high = share_of_girth(beside)
    return one.unit is column.unit and bool(shares) and all(low <= each <= high for each in shares)


def _all_bare(column: Column) -> bool:
    figures = printed_figures(column.field)
    return bool(figures) and all(own is None for _, own in figures) and not any(column.field.units)


def _said(around: Surroundings) -> tuple[str, ...]:
    return tuple(words.text for words in around.words)
