"""Two headings that have changed places: each has figures nobody has, and they fit the other's.

``Chest (cm)`` stands over 152-164 and ``Height (cm)`` over 80-86. Neither a chest nor a height can
be so, each can be the other's. One question is asked of both columns, and nothing is exchanged.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import replace
from decimal import Decimal
from itertools import product
from typing import Final

from charts.columns.fitting import printed_figures
from charts.columns.girths_beside import (
    in_canonical_by_line,
    known_shares,
    like_heights,
    share_of_girth,
)
from charts.columns.meaning import Column
from charts.columns.words import Surroundings, family_of, of_family
from charts.dimensions import read_heading
from charts.notation import Expected, read_cell
from charts.plausible_ranges import Limits, half_of_a_girth, plausible
from charts.quantities import FAMILY, Family, Unit, canonical
from charts.remembered import remembered
from charts.schema import Basis, Dimension, UnitFrom

Figures = Mapping[int, Decimal]
"""The middle of each line's range, in cm or kg."""
_WITH_LIMITS: Final = frozenset(Dimension) - {Dimension.OTHER, Dimension.AGE}
_GIRTHS: Final = frozenset({Dimension.CHEST, Dimension.WAIST, Dimension.HIP})
_IN_CASE: Final = {Family.LENGTH: (Unit.CM, Unit.IN), Family.MASS: (Unit.KG, Unit.LB)}
_FEWEST: Final = 2
"""Figures that nobody has: one alone may be a slip of its own."""
_STRAYS: Final = 5
"""Of so many figures one may be out of all limits without hiding what the others are."""
_TALL_CM: Final = (Decimal(140), Decimal(205))
_HEIGHT_OVER_GIRTH: Final = (Decimal("1.5"), Decimal("2.6"))
"""What is believed of heights whose heading is another's; a baby's is less."""
_NO_METRES: Final = Decimal(3)
_NO_INCHES: Final = Decimal(30)
"""Between these a figure is nobody's height, in whichever unit (as the plausible ranges)."""
_CM_IN_M: Final = Decimal(100)


def headings_exchanged(columns: Sequence[Column], around: Surroundings) -> list[Column]:
    """The columns, those whose headings have changed places with one question on all of them.

    Which of several that would suit has changed places with it, nobody can tell.
    """
    found = list(columns)
    asked: set[int] = set()
    for number, odd in enumerate(columns):
        partners = _partners(odd, columns) if number not in asked else []
        if not partners:
            continue
        asked |= {number, *partners}
        ident = around.log.add(
            "columns-shifted",
            odd.place,
            key=f"{around.table.area} {odd.heading}",
            case="exchanged",
            heading=odd.heading,
            text=columns[partners[0]].heading,
        )
        for one in (number, *partners):
            found[one] = replace(found[one], doubted=True).asking(ident)
    return found


def _whole(column: Column) -> bool:
    flat = column.basis is Basis.FLAT or column.laid_flat or _may_be_halves(column)
    return not flat and not column.nameless and bool(_readings(column))


def _partners(odd: Column, columns: Sequence[Column]) -> list[int]:
    """The columns that may have changed places with one whose figures are nobody's measure."""
    alone = _misfits(odd)
    beside = [
        (number, one)
        for number, one in enumerate(columns)
        if one is not odd and one.band == odd.band and (alone or _too_small_beside(odd, one))
    ]
    if not beside or not _whole(odd):
        return []
    return [number for number, one in beside if _whole(one) and _suit_exchanged(odd, one)]


def _readings(column: Column) -> list[Dimension]:
    """What the heading can name: the reading that was taken, and those that were not."""
    said = (column.field.heading, read_heading(column.field.printed_heading))
    named = [column.dimension, *(one.dimension for one in said)]
    named += [dimension for one in said for _, dimension in one.candidates]
    return [one for one in dict.fromkeys(named) if one in _WITH_LIMITS]


def _unit_said(column: Column) -> tuple[Unit, ...]:
    said = column.unit is not None and column.unit_from is not UnitFrom.INFERRED
    return (column.unit,) if said and column.unit is not None else ()


@remembered
def _by_line(column: Column, dimension: Dimension, unit: Unit) -> dict[int, Decimal]:
    """The figures as ``dimension``; a cell whose own unit measures something else has none."""
    found: dict[int, Decimal] = {}
    for line, cell in enumerate(column.field.cells):
        quantity = read_cell(cell[0].text, Expected(dimension)).quantity if len(cell) == 1 else None
        own = (quantity.unit or unit) if quantity is not None else unit
        if quantity is None or FAMILY[own] is not family_of(dimension):
            continue
        ends = [end.value for end in (quantity.low, quantity.high, quantity.value) if end]
        if ends:  # a tolerance alone has none
            found[line] = canonical(sum(ends, Decimal(0)) / len(ends), own)
    return found


def _as(column: Column, dimension: Dimension, units: tuple[Unit, ...]) -> Iterator[Figures]:
    """The figures as ``dimension``, in the unit that is said or else in each that may be."""
    family = family_of(dimension)
    said = of_family(units, family)
    for unit in said[:1] or _IN_CASE[family]:
        yield _by_line(column, dimension, unit)


def _misfits(column: Column) -> bool:
    """Whether figures are too large for a measure of anybody, or weights are like heights.

    So are cells that print a unit of something else.
    """
    if like_heights(column):
        return len(column.field.cells) >= _FEWEST
    if _of_another_family(column):
        return True
    figures = in_canonical_by_line(column)
    limits = _limits(column.dimension, column)
    if limits is None or not figures:
        return False
    beyond = sum(one > limits[1] for one in figures.values())
    tall = all(_within(one, _TALL_CM) for one in figures.values())
    return beyond >= (1 if tall else _FEWEST)


def _too_small_beside(column: Column, other: Column) -> bool:
    """Whether heights are less than a girth beside them, or beside weights nobody's in any unit."""
    if other.dimension is not Dimension.WEIGHT:
        return _too_short(column, other)
    if Dimension.HEIGHT not in _readings(column):
        return False
    figures = [value for value, own in printed_figures(column.field) if own is not Unit.FT]
    return sum(_NO_METRES < value < _NO_INCHES for value in figures) >= _FEWEST


def _of_another_family(column: Column) -> bool:
    """Whether every cell prints a unit that measures no ``Sleeve``: ``47-52 kg``."""
    if column.dimension not in _WITH_LIMITS:
        return False
    units = [own for _, own in printed_figures(column.field)]
    other = [own is not None and FAMILY[own] is not family_of(column.dimension) for own in units]
    return len(other) >= _FEWEST and all(other)


def _too_short(column: Column, girth: Column) -> bool:
    """Whether heights are less than a girth beside them, in the units that are printed."""
    if column.dimension is not Dimension.HEIGHT or girth.dimension not in _GIRTHS:
        return False
    beside = in_canonical_by_line(girth)
    figures = in_canonical_by_line(column)
    both = figures.keys() & beside.keys()
    return len(both) >= _FEWEST and all(figures[line] < beside[line] for line in both)


def _may_be_halves(column: Column) -> bool:
    limits = half_of_a_girth(column.dimension, Unit.CM)
    figures = in_canonical_by_line(column).values()
    return limits is not None and bool(figures) and all(_within(one, limits) for one in figures)


def _suit_exchanged(one: Column, other: Column) -> bool:
    """Whether the figures of each are what the heading of the other names, of the same bodies."""
    for a, b in product(_readings(one), _readings(other)):
        if a is b:
            continue
        units = (*_unit_said(other), *_unit_said(one))
        for as_b in _as(one, b, units):
            if not _all_within(as_b, _limits(b, other)):
                continue
            for as_a in _as(other, a, (*_unit_said(one), *_unit_said(other))):
                if _all_within(as_a, _limits(a, one)) and _of_one_body(a, as_a, b, as_b):
                    return True
    return False


def _limits(dimension: Dimension, column: Column) -> Limits | None:
    unit = _IN_CASE[family_of(dimension)][0] if dimension in _WITH_LIMITS else Unit.CM
    return plausible(dimension, unit, column.field.heading.definition)


def _all_within(figures: Figures, limits: Limits | None) -> bool:
    if limits is None or len(figures) < _FEWEST:
        return False
    outside = sum(not _within(one, limits) for one in figures.values())
    return outside <= (1 if len(figures) >= _STRAYS else 0)


def _of_one_body(a: Dimension, as_a: Figures, b: Dimension, as_b: Figures) -> bool:
    """Whether most lines can be one body's, as far as the two measures are known together."""
    known = _proportion(a, b)
    if known is None:
        swapped = _proportion(b, a)
        return swapped is None or _mostly(as_b, as_a, *swapped)
    return _mostly(as_a, as_b, *known)


def _mostly(upper: Figures, lower: Figures, limits: Limits, power: int) -> bool:
    both = upper.keys() & lower.keys()
    scale = _CM_IN_M if power > 1 else Decimal(1)
    right = sum(_within(upper[at] / (lower[at] / scale) ** power, limits) for at in both)
    return bool(both) and 2 * right > len(both)


def _proportion(measure: Dimension, beside: Dimension) -> tuple[Limits, int] | None:
    """What a measure is over a power of the one beside it; None where nothing is known."""
    shares, weights = known_shares()["share"], known_shares()["weight"]
    if measure is Dimension.WEIGHT and beside is Dimension.HEIGHT:
        low, high = weights["over_height"]
        return (Decimal(low), Decimal(high)), 2
    if measure is Dimension.WEIGHT and beside in _GIRTHS:
        low, high = weights["over_girth"]
        return (Decimal(low), Decimal(high)), 3
    if measure is Dimension.HEIGHT and beside in _GIRTHS:
        return _HEIGHT_OVER_GIRTH, 1
    if beside in _GIRTHS and measure.value in shares:
        return share_of_girth(measure.value), 1
    return None


def _within(value: Decimal, limits: Limits) -> bool:
    return limits[0] <= value <= limits[1]
