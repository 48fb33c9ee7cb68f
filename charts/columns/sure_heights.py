"""Whether a word for a height, or a length, can only be how tall a child is.

``Height`` over ``75-80`` beside the size 80 is what that size is called by; over ``87-99`` beside
``2-3 years`` it is a child's of that age. A garment is neither so long as its size says nor so long
as its wearer is tall.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal
from typing import Final

from charts.columns.fitting import printed_figures
from charts.columns.small_bodies import median_height, years_of
from charts.columns.words import Surroundings
from charts.dimensions import Role
from charts.layout.fields import Field, FieldKind
from charts.layout.view import At
from charts.quantities import FAMILY, Family, Unit, canonical
from charts.schema import Dimension

_FEWEST: Final = 3
_NUMBER: Final = re.compile(r"\d{2,3}")
_STEP_CM: Final = 8
"""No further below its size does a range of heights begin: sizes step by 6 cm (common practice, no
source)."""
_OF_THE_MEDIAN: Final = (Decimal("0.85"), Decimal("1.2"))
"""Of the height of half the children of an age, how tall nearly all are (common practice)."""


def surely_heights(one: Field, around: Surroundings) -> bool:
    """Whether the sizes, or the ages beside them, leave no other reading of these figures."""
    if (Role.MEASURE, Dimension.HEIGHT) not in one.heading.candidates:
        return False
    fields = around.table.fields
    labels = [field for field in fields if field.kind is FieldKind.LABEL]
    ages = [field for field in fields if field.heading.dimension is Dimension.AGE]
    ages += [field for field in labels if field not in ages]
    if any(_names_them(label, one) for label in labels):
        return True
    tall_first = one.heading.candidates[0] == (Role.MEASURE, Dimension.HEIGHT)
    return tall_first and any(_is_as_tall(age, one) for age in ages)  # a sleepsuit is long as well


def _names_them(label: Field, one: Field) -> bool:
    """Whether each size is a number at the end of its own range, or within it."""
    rows = [
        (int(name[0].text), _figures(one, cell))
        for name, cell in zip(label.cells, one.cells, strict=True)
        if name and cell and _NUMBER.fullmatch(name[0].text.strip())
    ]
    named = [size for size, found in rows if found and _is_called(size, found)]
    return len(set(named)) >= _FEWEST and len(named) == len([row for row in rows if row[1]])


def _is_called(size: int, found: Sequence[Decimal]) -> bool:
    low, high = min(found), max(found)
    return low < high and size - _STEP_CM <= low <= size <= high <= size + _STEP_CM


def _is_as_tall(ages: Field, one: Field) -> bool:
    """Whether each row of a known age is about as tall as half the children are then."""
    rows = [
        (_years(ages, name), _figures(one, cell))
        for name, cell in zip(ages.cells, one.cells, strict=True)
        if name and cell
    ]
    aged = [(years, found) for years, found in rows if years and found]
    if len(aged) < _FEWEST or 2 * len(aged) < len(rows):
        return False
    least, most = _OF_THE_MEDIAN
    return all(
        least * median_height(years[0]) <= min(found)
        and max(found) <= most * median_height(years[-1])
        for years, found in aged
    )


def _years(ages: Field, cell: tuple[At, ...]) -> list[Decimal]:
    """The youngest and the oldest of a line; one middle age where a size is called by its age."""
    named = years_of(cell)
    if named is not None:
        return [named]
    figures = printed_figures(replace(ages, cells=(cell,)))
    return sorted(value for value, own in figures if own in {None, Unit.YEARS})


def _figures(one: Field, cell: tuple[At, ...]) -> list[Decimal]:
    """The figures of a cell in cm; none where no unit of length is printed for them."""
    alone, unit = replace(one, cells=(cell,)), one.heading.unit
    said = [(value, own or unit) for value, own in printed_figures(alone)]
    return [
        canonical(value, unit)
        for value, unit in said
        if unit is not None and FAMILY[unit] is Family.LENGTH
    ]
