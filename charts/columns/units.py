"""The unit of a column: heading, title, note, sheet, sibling, and last the values, which is asked.

A unit that stands in the cell beats all of it and is handled where the cell is read.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import replace
from decimal import Decimal
from typing import Final

from charts.columns.at_ages import suits
from charts.columns.fitting import printed_figures
from charts.columns.halves_in_unit import halves_in_unit
from charts.columns.heights_in_feet import inches_of_heights_alone
from charts.columns.lengths_beside import refuted_by_girths
from charts.columns.likely_units import likeliest, too_long_in
from charts.columns.meaning import Column
from charts.columns.scale import said_at_large
from charts.columns.unit_switch import of_system, without_switched_units
from charts.columns.words import Surroundings, family_of, of_family
from charts.dimensions import plausible
from charts.findings import Candidate
from charts.layout.fields import FieldKind
from charts.notation import Expected, read_cell
from charts.quantities import Family, Unit, canonical
from charts.schema import Basis, Dimension, UnitFrom

_TRIED: Final[dict[Family, tuple[Unit, ...]]] = {
    Family.LENGTH: (Unit.CM, Unit.IN, Unit.MM, Unit.M),
    Family.MASS: (Unit.KG, Unit.LB),
    Family.AGE: (Unit.YEARS,),
}
_IMPERIAL: Final = frozenset({Unit.IN, Unit.LB, Unit.FT, Unit.ST})
_RATIOS: Final = tuple(map(Decimal, ("2.54", "2.2", "10", "25.4", "100")))
"""Inches and cm, pounds and kg, mm and cm, mm and inches, cm and metres."""
_ROUGHLY: Final = Decimal("0.3")
_AROUND: Final = frozenset({UnitFrom.TITLE, UnitFrom.NOTE, UnitFrom.SHEET})
_TOLD: Final = frozenset({UnitFrom.PERSON, UnitFrom.HABIT})  # of one column, which was asked


def with_units(columns: Sequence[Column], around: Surroundings) -> list[Column]:
    """The columns with their units resolved and the source of each unit recorded."""
    said = without_switched_units([_said(column, around) for column in columns], around)
    in_cells = {
        family: _units_in_cells(said, family)
        for family in {family_of(column.dimension) for column in said}
    }
    said = _with_units_of_the_page(said, in_cells, around)
    extended = [_extended(column, said, in_cells, around) for column in said]
    return _inferred(extended, around)


def _with_units_of_the_page(
    columns: Sequence[Column], in_cells: Mapping[Family, set[Unit | None]], around: Surroundings
) -> list[Column]:
    """The unit that the notes of the page's other tables agree on, where no nearer one is said.

    All lengths, or all masses, of the table must be possible in it.
    """
    found = list(columns)
    for family in (Family.LENGTH, Family.MASS):
        bare = [one for one in columns if family_of(one.dimension) is family]
        units = {unit for one in around.page for unit in of_family(said_at_large(one.text), family)}
        if len(units) != 1 or not bare or any(one.unit is not None for one in bare):
            continue
        unit = units.pop()
        if in_cells[family] <= {None} and all(suits(one, unit) for one in bare):
            said = {id(one): replace(one, unit=unit, unit_from=UnitFrom.NOTE) for one in bare}
            found = [said.get(id(one), one) for one in found]
    return found


def _said(column: Column, around: Surroundings) -> Column:
    """The unit that the heading or the words around the table print."""
    family = family_of(column.dimension)
    if family is Family.AGE:
        return replace(column, unit=Unit.YEARS, unit_from=UnitFrom.HEADING)
    own = of_family((column.unit,), family) or of_system(column.heading, family)
    if own:
        said = column.field.unit_said or UnitFrom.HEADING
        return replace(column, unit=own[0], unit_from=said)
    column = replace(column, unit=None)
    for words in (*around.words, *around.far):
        units = of_family(said_at_large(words.text), family) or of_system(words.text, family)
        if len(set(units)) == 1 and _can_be(column, units[0]):
            return replace(column, unit=units[0], unit_from=words.kind)
        if len(units) == 2 and _prints_both(column, units):
            return replace(column, unit=units[0], second_unit=units[1], unit_from=words.kind)
    halves = halves_in_unit(column, around)
    if halves is not None:
        return replace(column, unit=halves[0], unit_from=halves[1])
    return _from_the_corner(column, family, around)


def _can_be(column: Column, unit: Unit) -> bool:
    """Whether the figures can be in ``unit``, those of a garment's width as halves too."""
    if too_long_in(column, unit):
        return False
    if suits(column, unit) or _only_unit(column, unit):
        return True
    wide = column.garment_sign or column.basis is Basis.FLAT
    limits = plausible(column.dimension, unit, column.definition) if wide else None
    figures = [value for value, own in printed_figures(column.field) if own is None]
    return limits is not None and all(limits[0] <= 2 * one <= limits[1] for one in figures)


def _only_unit(column: Column, unit: Unit) -> bool:
    """Whether half the figures or more can be in ``unit``, and none in any other."""
    figures = _bare(column)
    suited = {
        one: sum(limits[0] <= value <= limits[1] for value in figures)
        for one in _TRIED[family_of(column.dimension)]
        if (limits := plausible(column.dimension, one, column.definition)) is not None
    }
    rest = sum(count for one, count in suited.items() if one is not unit)
    return bool(figures) and 2 * suited.get(unit, 0) >= len(figures) and not rest


def _from_the_corner(column: Column, family: Family, around: Surroundings) -> Column:
    """``Body measurements (cm)`` in the corner, over the sizes: it speaks of all the figures."""
    for field in around.table.of(FieldKind.LABEL):
        units = of_family((field.heading.unit, field.heading.second_unit), family)
        if len(units) == 1 and _can_be(column, units[0]):
            return replace(column, unit=units[0], unit_from=UnitFrom.HEADING)
    return column


def _prints_both(column: Column, units: tuple[Unit, ...]) -> bool:
    """Whether most cells hold two figures that are one in the two units a sentence promises."""
    expected = Expected(column.dimension, units[0], units[1])
    cells = [cell[0] for cell in column.field.cells if cell]
    both = sum(read_cell(at.text, expected).also is not None for at in cells)
    return 2 * both > len(cells)


def needs_unit(column: Column) -> bool:
    """Whether any cell of the column has no unit of its own, beside it or in it."""
    if column.field.units and all(column.field.units):
        return False
    return any(unit is None for _, unit in printed_figures(column.field))


def _cell_units(column: Column) -> set[Unit]:
    family = family_of(column.dimension)
    return {
        unit
        for _, unit in printed_figures(column.field)
        if unit is not None and of_family((unit,), family)
    }


def _extended(
    column: Column,
    all_columns: Sequence[Column],
    in_cells: Mapping[Family, set[Unit | None]],
    around: Surroundings,
) -> Column:
    """A unit printed on some cells of the column, or on its siblings, holds for the rest."""
    if column.unit is not None or not needs_unit(column) or _taken(column, all_columns):
        return column
    family = family_of(column.dimension)
    united = [one for one in all_columns if one.unit]
    printed = [one for one in united if one.unit_from not in _TOLD] or united
    sources = (
        _cell_units(column),
        {one.unit for one in printed if one.dimension is column.dimension},
        {one.unit for one in printed if family_of(one.dimension) is family},
        in_cells[family],
    )
    for units in sources:
        if len(units) == 1:
            (unit,) = units
            if unit is Unit.IN and inches_of_heights_alone(all_columns):
                return column
            if unit is not None and suits(column, unit) and not too_long_in(column, unit):
                doubted = refuted_by_girths(column, unit, all_columns, around)
                return doubted or _extend(column, unit, around)
    return column


def _taken(column: Column, all_columns: Sequence[Column]) -> set[Unit]:
    """The units in which other columns give the same measure: this one is not in those again."""
    return {
        one.unit
        for one in all_columns
        if one is not column
        and one.unit is not None
        and _one_measure(one, column)
        and _in_two_units(one, column)
    }


def _in_two_units(one: Column, other: Column) -> bool:
    """Whether the figures of two columns can be one measure in two units, by their ratio."""
    middles = [sorted(value for value, _ in printed_figures(each.field)) for each in (one, other)]
    if not all(middles):
        return True
    first, second = (figures[len(figures) // 2] for figures in middles)
    large, small = max(first, second), max(min(first, second), Decimal("0.01"))
    return any(abs(large / small / ratio - 1) < _ROUGHLY for ratio in _RATIOS)


def _one_measure(one: Column, other: Column) -> bool:
    known = one.dimension is not Dimension.OTHER and one.dimension is other.dimension
    same = (one.definition, one.basis, one.band, one.role) == (
        other.definition,
        other.basis,
        other.band,
        other.role,
    )
    return known and same


def _units_in_cells(columns: Sequence[Column], family: Family) -> set[Unit | None]:
    found: set[Unit | None] = set()
    for one in columns:
        if family_of(one.dimension) is family:
            found |= _cell_units(one)
    return found


def _extend(column: Column, unit: Unit, around: Surroundings) -> Column:
    ident = around.log.add(
        "unit-extended",
        column.place,
        key=f"{around.table.area} {unit}",
        unit=unit.value,
        heading=column.heading,
    )
    return replace(column, unit=unit, unit_from=UnitFrom.SIBLING).asking(ident)


def _inferred(columns: list[Column], around: Surroundings) -> list[Column]:
    """Units that stand nowhere are taken from the values of all columns together, and asked."""
    for family in (Family.LENGTH, Family.MASS):
        bare = [
            column
            for column in columns
            if column.unit is None and family_of(column.dimension) is family and needs_unit(column)
        ]
        if not bare:
            continue
        told = _told(bare, family, around) or _guessed(bare, columns, family, around)
        by_number = {one.number: one for one in told}
        columns = [by_number.get(one.number, one) for one in columns]
    return columns


def _told(bare: list[Column], family: Family, around: Surroundings) -> list[Column]:
    """The columns in the unit that a person gave for the whole file; none where nobody did."""
    answer, unit = around.answers.unit(family)
    if answer is None:
        return []
    return [replace(one, unit=unit, unit_from=answer.source) for one in bare]


def _guessed(
    bare: list[Column], columns: list[Column], family: Family, around: Surroundings
) -> list[Column]:
    numbers = {one.number for one in bare}
    imperial = any(
        one.unit in _IMPERIAL or _cell_units(one) & _IMPERIAL
        for one in columns
        if one.number not in numbers
    )
    taken = {one.number: _taken(one, columns) for one in bare}
    unit, others = likeliest(
        bare, _TRIED[family], taken, imperial=imperial, said=_said_beside(bare, columns, family)
    )
    ident = _ask(bare[0], unit, others, around)
    return [replace(one, unit=unit, unit_from=UnitFrom.INFERRED).asking(ident) for one in bare]


def _said_beside(bare: Sequence[Column], columns: Sequence[Column], family: Family) -> Unit | None:
    """The one unit that titles or notes print for most columns of a table."""
    beside = [
        one.unit
        for one in columns
        if one.unit_from in _AROUND and family_of(one.dimension) is family
    ]
    return beside[0] if len(set(beside)) == 1 and len(beside) > len(bare) else None


def _bare(column: Column) -> list[Decimal]:
    return [value for value, own in printed_figures(column.field) if own is None]


def _ask(column: Column, unit: Unit, others: Sequence[Unit], around: Surroundings) -> str:
    figures = _bare(column)
    sample = figures[:2] if len(figures) > 1 else figures
    return around.log.add(
        "unit-missing",
        column.place,
        key=f"{around.table.sheet.name} {family_of(column.dimension)} {unit}",
        candidates=tuple(_candidate(sample, one) for one in (unit, *others)),
        heading=column.heading,
        unit=unit.value,
        other=others[0].value if others else unit.value,
    )


def _candidate(sample: Sequence[Decimal], unit: Unit) -> Candidate:
    low, high = (canonical(value, unit) for value in (sample[0], sample[-1]))
    text = " - ".join(f"{value:f}" for value in dict.fromkeys(sample))
    return Candidate(f"{text} {unit.value}", _canonical_name(unit), low, high, why="column-fits")


def _canonical_name(unit: Unit) -> str:
    return "kg" if of_family((unit,), Family.MASS) else "cm"
