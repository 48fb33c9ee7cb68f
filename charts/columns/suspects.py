"""A printed unit that no figure of its column can have: exchanged headings, or a half laid flat.

Nothing is converted silently: the reading taken carries a question on every value of the column.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import replace
from typing import Final

from charts.columns.exchanged import units_exchanged
from charts.columns.exchanged_headings import headings_exchanged
from charts.columns.fitting import fits, printed_figures
from charts.columns.grown_letters import too_small_for_letters
from charts.columns.halves import (
    among_halves,
    asked_as_half,
    halves_doubted,
    worn_by_children,
)
from charts.columns.halves_at_ages import halves_at_ages
from charts.columns.lengths_beside import other_scale
from charts.columns.longer_rows import longer_rows_asked
from charts.columns.meaning import Column
from charts.columns.names_of_their_own import own_names_asked
from charts.columns.slipped import slipped
from charts.columns.small_bodies import as_tall_as_inches
from charts.columns.too_long_for_garments import too_long_asked
from charts.columns.units import needs_unit
from charts.columns.weights_beside import other_mass
from charts.columns.words import Surroundings, family_of
from charts.dimensions import plausible
from charts.findings import Candidate
from charts.quantities import FAMILY, Family, Unit, canonical
from charts.schema import Basis, Dimension, UnitFrom

_TRIED: Final = {
    Family.LENGTH: (Unit.CM, Unit.IN, Unit.MM),
    Family.MASS: (Unit.KG, Unit.LB),
    Family.AGE: (),
}
_NOT_PRINTED: Final = frozenset({UnitFrom.INFERRED, UnitFrom.SIBLING, UnitFrom.PERSON})
"""A person who said the unit is not asked again; their cells still are. A habit is asked."""
_AS_PRINTED: Final = "as-printed"


def suspected(columns: Sequence[Column], around: Surroundings) -> list[Column]:
    """The columns with a question where the printed unit or the basis contradicts the figures."""
    columns = own_names_asked(longer_rows_asked(columns, around), around)
    swapped = units_exchanged(columns, around)
    if columns and swapped == columns and slipped(around.table.fields):
        return _slipped_headings(columns, around)
    swapped = too_long_asked(headings_exchanged(swapped, around), around)
    found = [
        column
        if column.doubted or _half_beside_halves(column, swapped)
        else _unit_doubted(column, swapped, around)
        for column in swapped
    ]
    found = halves_at_ages(halves_doubted(found, around), around)
    found = too_small_for_letters(found, around)
    return _asked_as_halves(found, around)


def _half_beside_halves(column: Column, columns: Sequence[Column]) -> bool:
    """Whether a girth too small for its printed unit is a half, as a girth beside it may be."""
    return among_halves(column) and any(
        one is not column
        and one.unit is column.unit is not None
        and among_halves(one)
        and not _mostly_impossible(one, column.unit)
        for one in columns
    )


def _asked_as_halves(columns: Sequence[Column], around: Surroundings) -> list[Column]:
    """Whose measure a half is, is asked with the half: who says what it is says both."""
    asked = {one.id: one.code for one in around.log.findings if one.settled is None}
    found = [_of_halves(column, asked) for column in columns]
    borne = {ident for column in found for ident in column.findings}
    for ident in {ident for column in columns for ident in column.findings} - borne:
        around.log.withdraw(ident)
    return found


def _of_halves(column: Column, asked: Mapping[str, str]) -> Column:
    if "laid-flat" not in {asked.get(ident) for ident in column.findings}:
        return column
    kept = (one for one in column.findings if asked.get(one) != "basis-doubtful")
    return replace(column, findings=tuple(kept))


def _slipped_headings(columns: Sequence[Column], around: Surroundings) -> list[Column]:
    ident = around.log.add(
        "columns-shifted", columns[0].place, key=around.table.area, heading=columns[0].heading
    )
    return [replace(column, doubted=True).asking(ident) for column in columns]


def _unit_doubted(column: Column, columns: Sequence[Column], around: Surroundings) -> Column:
    """A unit printed outside the cells under which most figures are impossible."""
    if _foreign_unit(column):
        return _in_another_family(column, around)
    beside = other_mass(column, columns) or other_scale(column, columns, around)
    if column.unit is None or column.unit_from in _NOT_PRINTED:
        return column
    if beside is None and _inches_of_grown_ups(column, around):
        beside = Unit.IN
    if beside is not None:
        return _exchanged(column, beside, around)
    if column.basis is Basis.FLAT or not _mostly_impossible(column, column.unit):
        return column
    if _half_of_a_childs(column, columns, around):
        return asked_as_half(column, around)
    for unit in _TRIED[family_of(column.dimension)]:
        if unit is not column.unit and fits(column.field, column.dimension, unit):
            return _exchanged(column, unit, around)
    return column


def _inches_of_grown_ups(column: Column, around: Surroundings) -> bool:
    """Heights whose one unit is cm, where a baby or a rider in inches is as tall."""
    metric = column.dimension is Dimension.HEIGHT and column.unit is Unit.CM
    bare = metric and column.second_unit is None and needs_unit(column)
    return bare and as_tall_as_inches(column.field, around)


def _half_of_a_childs(column: Column, columns: Sequence[Column], around: Surroundings) -> bool:
    """Whether a girth printed in cm is half of a child's: in inches it would be a grown-up's."""
    metric = column.unit is Unit.CM and among_halves(column)
    return metric and worn_by_children(columns, around)


def _foreign_unit(column: Column) -> bool:
    """The heading prints a unit that measures something else, ``Height (kg)``."""
    printed = column.field.heading.unit
    if printed is None or column.dimension is Dimension.OTHER or not needs_unit(column):
        return False
    return family_of(column.dimension) is not FAMILY[printed]


def _in_another_family(column: Column, around: Surroundings) -> Column:
    if column.unit is None:
        return column
    figure = next(value for value, own in printed_figures(column.field) if own is None)
    text = f"{figure:f} {column.unit.value}"
    near = Candidate(
        text, _plain(column.unit), value=canonical(figure, column.unit), why="column-fits"
    )
    ident = around.log.add(
        "units-swapped",
        column.place,
        key=f"{around.table.area} family",
        candidates=(near,),
        case="family",
        heading=column.heading,
        unit=column.unit.value,
    )
    return column.asking(ident)


def _mostly_impossible(column: Column, unit: Unit) -> bool:
    bare = [value for value, own in printed_figures(column.field) if own is None]
    limits = plausible(column.dimension, unit, column.definition)
    if not bare or limits is None:
        return False
    return 2 * sum(not limits[0] <= value <= limits[1] for value in bare) > len(bare)


def _exchanged(column: Column, unit: Unit, around: Surroundings) -> Column:
    figure = next(value for value, own in printed_figures(column.field) if own is None)
    candidates = tuple(
        Candidate(f"{figure:f} {one.value}", _plain(one), value=canonical(figure, one), why=why)
        for one, why in ((unit, "column-fits"), (column.unit, _AS_PRINTED))
        if one is not None
    )
    ident = around.log.add(
        "units-swapped",
        column.place,
        key=around.table.area,
        candidates=candidates,
        heading=column.heading,
        unit=unit.value,
    )
    if around.answers.chosen.get(ident) == _AS_PRINTED:
        return column.asking(ident)
    source = UnitFrom.PERSON if around.log.settled(ident) else UnitFrom.INFERRED
    return replace(column, unit=unit, unit_from=source).asking(ident)


def _plain(unit: Unit) -> str:
    return "kg" if unit in {Unit.KG, Unit.LB, Unit.ST} else "cm"
