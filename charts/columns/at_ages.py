"""How small a measure can be at the age or the height that is told of its size.

The limits of what is plausible at all are those of bodies from school to old age. A child of some
months is below them; at its age a girth of 43 cm is whole, and none of half a vest laid flat.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace
from decimal import Decimal
from typing import Final

from charts.columns.child_sizes import years_of_sizes
from charts.columns.fitting import fits, printed_figures
from charts.columns.meaning import Column
from charts.columns.small_bodies import age_at_height, years_of
from charts.columns.words import Surroundings
from charts.dimensions import plausible
from charts.layout.fields import FieldKind
from charts.layout.view import At
from charts.plausible_ranges import Limits
from charts.quantities import FAMILY, Family, Unit, canonical, factor
from charts.schema import Dimension

_GIRTH_CM: Final = ((0, 29), (Decimal("0.5"), 35), (1, 37), (2, 39), (3, 41), (4, 43), (5, None))
_BACK_CM: Final = ((0, 11), (Decimal("0.5"), 12), (1, 14), (2, 16), (3, 18), (5, 20), (8, None))
_SHOULDERS_CM: Final = ((0, 13), (1, 15), (3, 17), (5, None))
_LEAST_CM: Final = {
    **dict.fromkeys(
        (Dimension.CHEST, Dimension.UNDERBUST, Dimension.WAIST, Dimension.HIP), _GIRTH_CM
    ),
    Dimension.HEIGHT: ((0, 44), (Decimal("0.25"), 50), (1, 60), (2, None)),
    Dimension.BACK_LENGTH: _BACK_CM,
    Dimension.SHOULDER_BREADTH: _SHOULDERS_CM,
}
"""From each age in years on, the least that is measured of a child: some four fifths of the usual
girth and two thirds of the usual length, until the limits of all bodies hold (common practice, no
source). Half of what a vest for that age measures round is less."""


def with_ages(columns: Sequence[Column], around: Surroundings) -> list[Column]:
    """The columns with the least that each line can measure, where ages or heights are told.

    Ages name the sizes or have a column of their own; a child's height tells its age as well, and
    so does a size that is one.
    """
    years = ages_of_lines(columns, around)
    if not years:
        return list(columns)
    return [
        replace(one, least_cm=tuple(_least(one.dimension, age) for age in years)) for one in columns
    ]


def ages_of_lines(columns: Sequence[Column], around: Surroundings) -> list[Decimal | None]:
    """The age in years that is told of each line, None where none is; empty where of no line."""
    aged = around.table.of(FieldKind.LABEL)
    told = ([years_of(cell) for cell in one.cells] for one in aged)
    sizes = (years_of_sizes(one.cells) for one in aged)
    ways = (*told, *_by_other_columns(columns), *sizes)
    return next((way for way in ways if any(one is not None for one in way)), [])


def _by_other_columns(columns: Sequence[Column]) -> Iterator[list[Decimal | None]]:
    """The age of each line by a column of ages, then by one of heights."""
    for one in columns:
        if one.dimension is Dimension.AGE:
            yield [_middle(one, cell, Unit.YEARS) for cell in one.field.cells]
    for one in columns:
        if one.dimension is Dimension.HEIGHT and not one.doubted:
            heights = (_middle(one, cell, one.field.heading.unit) for cell in one.field.cells)
            yield [age_at_height(tall) if tall is not None else None for tall in heights]


def _middle(one: Column, cell: tuple[At, ...], unit: Unit | None) -> Decimal | None:
    """The middle of a cell's figures in years or cm; None where none is, or none has a unit."""
    printed = printed_figures(replace(one.field, cells=(cell,)))
    figures = [canonical(value, said) for value, own in printed if (said := own or unit)]
    return sum(figures, Decimal(0)) / len(figures) if figures else None


def _least(dimension: Dimension, age: Decimal | None) -> Decimal | None:
    if age is None:
        return None
    passed = (least for begin, least in reversed(_LEAST_CM.get(dimension, ())) if age >= begin)
    least = next(passed, None)
    return Decimal(least) if least is not None else None


def suits(column: Column, unit: Unit) -> bool:
    """Whether every figure can be right in ``unit``, that of a child at its age."""
    if fits(column.field, column.dimension, unit):
        return True
    found = list(figures_with_limits(column, unit))
    return bool(column.least_cm and found) and all(
        limits is None or limits[0] <= value <= limits[1] for value, limits in found
    )


def figures_with_limits(column: Column, unit: Unit) -> Iterator[tuple[Decimal, Limits | None]]:
    """Every figure with the limits at its age, in the unit its cell prints or else in ``unit``."""
    for line, cell in enumerate(column.field.cells):
        for value, own in printed_figures(replace(column.field, cells=(cell,))):
            limits = plausible(column.dimension, own or unit, column.definition)
            least = column.least_cm[line] if line < len(column.least_cm) else None
            if limits is not None and least is not None and FAMILY[own or unit] is Family.LENGTH:
                limits = min(limits[0], least / factor(own or unit)), limits[1]
            yield value, limits
