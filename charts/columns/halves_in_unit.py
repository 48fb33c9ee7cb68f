"""Girths below any body's in the only unit a table prints: halves laid flat, in that unit.

"In cm" beside waists of 38 to 42 is no chart without a unit. In inches they would be girths, but
no inch is printed; what they are is asked, in the unit that is.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from typing import Final

from charts.columns.fitting import printed_figures
from charts.columns.meaning import Column
from charts.columns.words import Surroundings, Words
from charts.dimensions import find_units
from charts.layout.looks import look
from charts.plausible_ranges import half_of_a_girth
from charts.quantities import FAMILY, Family, Unit
from charts.schema import Basis, Dimension, UnitFrom

_GIRTHS: Final = frozenset({Dimension.CHEST, Dimension.WAIST, Dimension.HIP})
_CONVERTS: Final = re.compile(r"2[.,]54|conver|umrechn", re.IGNORECASE)


def halves_in_unit(column: Column, around: Surroundings) -> tuple[Unit, UnitFrom] | None:
    """The unit of a girth whose figures are halves in the one that stands around, and its place."""
    if column.dimension not in _GIRTHS or column.basis is Basis.BODY:
        return None
    said = list(_lengths_said(around))
    named = {unit for _, unit in said} | set(_in_headings(around))
    nearest = next((words for words, _ in said if _of_all(words, column)), None)
    if named != {Unit.CM} or nearest is None or not _halves(column, Unit.CM):
        return None
    return Unit.CM, nearest.kind


def _lengths_said(around: Surroundings) -> Iterator[tuple[Words, Unit]]:
    for words in (*around.words, *around.far):
        if _CONVERTS.search(words.text) is None:
            yield from ((words, unit) for unit in _lengths(find_units(words.text)))


def _in_headings(around: Surroundings) -> Iterator[Unit]:
    for field in around.table.fields:
        both = (field.heading.unit, field.heading.second_unit)
        yield from _lengths(tuple(unit for unit in both if unit is not None))


def _lengths(units: tuple[Unit, ...]) -> Iterator[Unit]:
    yield from (unit for unit in units if FAMILY[unit] is Family.LENGTH)


def _of_all(words: Words, column: Column) -> bool:
    """Whether a text about units is not about another measure: "inseam in cm"."""
    return look(words.text).heading.dimension in {None, Dimension.OTHER, column.dimension}


def _halves(column: Column, unit: Unit) -> bool:
    limits = half_of_a_girth(column.dimension, unit)
    figures = printed_figures(column.field)
    if limits is None or not figures or any(own is not None for _, own in figures):
        return False
    return all(limits[0] <= value <= limits[1] for value, _ in figures)
