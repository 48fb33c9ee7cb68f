"""Girths that no child has at the age told of its size: halves of a garment laid flat.

A chest of 45 cm is within what bodies measure, and no twelve-year-old's. In a table that goes on
from ages to letters the larger sizes of such a column are halves as well, and look like children's.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace
from decimal import Decimal
from typing import Final

from charts.columns.at_ages import ages_of_lines
from charts.columns.fitting import printed_figures
from charts.columns.halves import asked_as_halves
from charts.columns.meaning import Column
from charts.columns.words import Surroundings
from charts.quantities import FAMILY, Family, canonical
from charts.schema import Basis, Dimension

_ROUND_CM: Final = ((4, 43), (6, 46), (8, 49), (10, 52), (12, 56), (14, 60))
_WAIST_CM: Final = ((4, 41), (6, 42), (8, 44), (10, 46), (12, 48), (14, 50))
_LEAST_CM: Final = {
    Dimension.CHEST: _ROUND_CM,
    Dimension.HIP: _ROUND_CM,
    Dimension.WAIST: _WAIST_CM,
}
"""From each age in years on, what a child's girth is at the very least: some four fifths of the
usual one (common practice, no source). Half of a vest for that age is less."""


def halves_at_ages(columns: Sequence[Column], around: Surroundings) -> list[Column]:
    """The columns with one question on girths that are too small for most ages beside them."""
    girths = [one for one in columns if _may_be_halves(one)]
    years = ages_of_lines(columns, around) if girths else []
    small = {one.number for one in girths if _too_small(one, years)}
    if not small:
        return list(columns)
    return asked_as_halves(columns, lambda one: one.number in small, around)


def _may_be_halves(column: Column) -> bool:
    whole = column.basis is not Basis.FLAT and not column.laid_flat
    return whole and not column.doubted and column.dimension in _LEAST_CM


def _too_small(column: Column, years: Sequence[Decimal | None]) -> bool:
    below = list(_below(column, years))
    return bool(below) and 2 * sum(below) > len(below)


def _below(column: Column, years: Sequence[Decimal | None]) -> Iterator[bool]:
    """Whether the figures of each line with an age are less than a child's of that age."""
    steps = _LEAST_CM[column.dimension]
    for age, cell in zip(years, column.field.cells, strict=False):
        least = next(
            (cm for begin, cm in reversed(steps) if age is not None and age >= begin), None
        )
        figures = [
            canonical(value, unit)
            for value, own in printed_figures(replace(column.field, cells=(cell,)))
            if (unit := own or column.unit) is not None and FAMILY[unit] is Family.LENGTH
        ]
        if least is not None and figures:
            yield max(figures) < least
