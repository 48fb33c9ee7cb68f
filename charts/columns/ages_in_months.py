"""Ages that a heading gives in months: they become years, as a cell's own months do.

Where no heading says months, children too small for so many years tell, and it is asked.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal
from functools import lru_cache
from typing import Final

from charts.cell_reading import CellReading, Quantity
from charts.columns.fitting import printed_figures
from charts.columns.girths_beside import in_canonical_by_line
from charts.columns.meaning import Column
from charts.columns.words import Surroundings
from charts.findings import Candidate
from charts.quantities import Figure, Unit
from charts.schema import Dimension
from charts.unit_words import MONTHS, figure_units
from charts.vocabulary import unaccented

_WORD: Final = re.compile(r"[^\W\d_]+")
_IN_A_YEAR: Final = 12
_AS_PRINTED: Final = "as-printed"
_SMALLEST_CM: Final = (Decimal(60), Decimal("5.5"))
"""A child of so many years is at least this tall, and this much more a year, up to 14 (common
practice, no source: well below the smallest of a hundred)."""
_GROWING_YEARS: Final = Decimal(14)
_TALLEST_CM: Final = Decimal(125)
"""Whoever is taller is of no age that is counted in months (common practice, no source)."""

_WIDEST_CM: Final = Decimal(62)
"""Nor has such a child a larger chest (common practice, no source)."""


def with_months(columns: Sequence[Column], around: Surroundings) -> list[Column]:
    """The columns of ages with what their figures count."""
    return [
        _told(column, columns, around) if column.dimension is Dimension.AGE else column
        for column in columns
    ]


def _told(column: Column, columns: Sequence[Column], around: Surroundings) -> Column:
    said = _counted(column.heading)
    if said == {MONTHS}:
        return replace(column, in_months=True)
    if not any(own is None for _, own in printed_figures(column.field)):
        return column
    both = len(said) > 1
    if both or (not said and _too_small(column, columns)):
        return _asked(column, around)
    return column


@lru_cache(maxsize=512)
def _counted(heading: str) -> frozenset[str]:
    """Months, years or both, as far as a heading names them."""
    units = figure_units()
    said = {units.get(word) for word in _WORD.findall(unaccented(heading))}
    return frozenset(one for one in said if one in {MONTHS, Unit.YEARS.value} and one)


def _too_small(column: Column, columns: Sequence[Column]) -> bool:
    """Whether the heights beside are those of children much younger than that in years."""
    heights = next((one for one in columns if one.dimension is Dimension.HEIGHT), None)
    if heights is None or any(map(_no_babys, columns)):
        return False
    tall, ages = in_canonical_by_line(heights), in_canonical_by_line(column)
    lines = [line for line in ages if line in tall]
    base, each = _SMALLEST_CM
    small = [
        line
        for line in lines
        if tall[line] < min(_TALLEST_CM, base + each * min(ages[line], _GROWING_YEARS))
    ]
    return len(lines) > 1 and 2 * len(small) > len(lines)


def _no_babys(column: Column) -> bool:
    """A chest that nobody has whose age is counted in months."""
    girths = in_canonical_by_line(column) if column.dimension is Dimension.CHEST else {}
    return bool(girths) and min(girths.values()) > _WIDEST_CM


def _asked(column: Column, around: Surroundings) -> Column:
    """The column read in months, or in years where a person said so."""
    figure = next(value for value, own in printed_figures(column.field) if own is None)
    year = Unit.YEARS.value
    candidates = (
        Candidate(f"{figure:f} {MONTHS}", year, value=figure / _IN_A_YEAR, why="column-fits"),
        Candidate(f"{figure:f} {year}", year, value=figure, why=_AS_PRINTED),
    )
    ident = around.log.add(
        "units-swapped",
        column.place,
        key=f"{MONTHS} {column.place}",
        candidates=candidates,
        case=MONTHS,
        heading=column.heading,
        unit=MONTHS,
    )
    years = around.answers.chosen.get(ident) == _AS_PRINTED
    return replace(column, in_months=not years).asking(ident)


def as_months(reading: CellReading) -> CellReading:
    """The reading of a cell without a unit of its own, its figures divided by twelve."""
    quantity = reading.quantity
    candidates = tuple((_years(one), why) for one, why in reading.candidates)
    return reading._replace(quantity=quantity and _years(quantity), candidates=candidates)


def _years(quantity: Quantity) -> Quantity:
    if quantity.unit is not None:
        return quantity
    return quantity._replace(
        low=_year(quantity.low),
        high=_year(quantity.high),
        value=_year(quantity.value),
        tolerance=_year(quantity.tolerance),
    )


def _year(figure: Figure | None) -> Figure | None:
    return figure and Figure(figure.value / _IN_A_YEAR, figure.step / _IN_A_YEAR)
