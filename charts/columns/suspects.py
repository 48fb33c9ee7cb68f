"""A printed unit that no figure of its column can have: exchanged headings, or a half laid flat.

Nothing is converted silently: the reading taken carries a question on every value of the column.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal
from typing import Final

from charts.columns.exchanged import units_exchanged
from charts.columns.fitting import fits, printed_figures
from charts.columns.meaning import Column
from charts.columns.slipped import slipped
from charts.columns.units import needs_unit
from charts.columns.words import Surroundings, family_of
from charts.dimensions import plausible
from charts.findings import Candidate
from charts.layout.fields import FieldKind
from charts.layout.looks import look
from charts.quantities import FAMILY, Family, Unit, canonical
from charts.schema import Basis, Dimension, UnitFrom
from charts.size_labels import LabelKind

_TRIED: Final = {
    Family.LENGTH: (Unit.CM, Unit.IN, Unit.MM),
    Family.MASS: (Unit.KG, Unit.LB),
    Family.AGE: (),
}
_NOT_PRINTED: Final = frozenset({UnitFrom.INFERRED, UnitFrom.SIBLING, UnitFrom.PERSON})
"""A person who said the unit is not asked again; their cells still are. A habit is asked."""
_AS_PRINTED: Final = "as-printed"
_GIRTHS: Final = frozenset({Dimension.CHEST, Dimension.WAIST, Dimension.HIP})
_FLAT_CM: Final = (Decimal(36), Decimal(67))
"""Chest figures in cm of adults' sizes that are halves laid flat."""
_NO_WHOLE: Final = Decimal("1.4")
"""A whole waist or hip is more than this times half a chest (common practice, no source)."""
_SMALLEST: Final = Decimal(52)
_LARGEST: Final = Decimal(76)
"""From a half no child's girth reaches to one no grown-up's does (common practice, no source)."""
_ADULT_HEIGHT_CM: Final = Decimal(150)
_GROWN: Final = frozenset({"women", "men", "unisex", None})


def suspected(columns: Sequence[Column], around: Surroundings) -> list[Column]:
    """The columns with a question where the printed unit or the basis contradicts the figures."""
    swapped = units_exchanged(columns, around)
    if columns and swapped == list(columns) and slipped(around.table.fields):
        return _slipped_headings(columns, around)
    found = [_unit_doubted(column, around) for column in swapped]
    return _beside_flat(_flat_doubted(found, around), around)


def _slipped_headings(columns: Sequence[Column], around: Surroundings) -> list[Column]:
    ident = around.log.add(
        "columns-shifted", columns[0].place, key=around.table.area, heading=columns[0].heading
    )
    return [replace(column, doubted=True).asking(ident) for column in columns]


def _unit_doubted(column: Column, around: Surroundings) -> Column:
    """A unit printed outside the cells under which most figures are impossible."""
    if _foreign_unit(column):
        return _in_another_family(column, around)
    if column.unit is None or column.unit_from in _NOT_PRINTED:
        return column
    if column.basis is Basis.FLAT or not _mostly_impossible(column, column.unit):
        return column
    for unit in _TRIED[family_of(column.dimension)]:
        if unit is not column.unit and fits(column.field, column.dimension, unit):
            return _exchanged(column, unit, around)
    return column


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


def _flat_doubted(columns: Sequence[Column], around: Surroundings) -> list[Column]:
    """Chests of adults' sizes at half a girth: asked for every girth of the table at once."""
    halves = [one for one in columns if one.dimension is Dimension.CHEST and _half(one)]
    if not halves or not _adults(columns, around):
        return list(columns)
    ident = around.log.add(
        "laid-flat", halves[0].place, key=around.table.area, heading=halves[0].heading
    )
    return [
        replace(column, laid_flat=True).asking(ident) if _half(column) else column
        for column in columns
    ]


def _beside_flat(columns: Sequence[Column], around: Surroundings) -> list[Column]:
    """Girths without a word beside one that is said to lie flat, and no larger: halves as well."""
    flat = [one for one in columns if one.dimension in _GIRTHS and one.basis is Basis.FLAT]
    widest = max((figure for one in flat for figure in _in_cm(one)), default=Decimal(0))
    doubted = [
        one
        for one in columns
        if one.dimension in _GIRTHS
        and one.basis in {Basis.UNKNOWN, Basis.FINISHED}
        and not one.laid_flat
        and 0 < max(_in_cm(one), default=Decimal(0)) < _NO_WHOLE * widest
    ]
    if not doubted:
        return list(columns)
    ident = around.log.add(
        "laid-flat", doubted[0].place, key=around.table.area, heading=doubted[0].heading
    )
    return [
        replace(column, laid_flat=True).asking(ident) if column in doubted else column
        for column in columns
    ]


def _in_cm(column: Column) -> list[Decimal]:
    """Every figure of a column of lengths in cm; none where its unit is not known."""
    return [
        canonical(value, unit)
        for value, own in printed_figures(column.field)
        if (unit := own or column.unit) is not None
    ]


def _half(column: Column) -> bool:
    """A girth without a word for its basis, all of whose figures are at half an adult's."""
    if column.dimension not in _GIRTHS or column.basis is Basis.FLAT:
        return False
    if column.basis is Basis.BODY and not _too_small_for_a_body(column):
        return False
    low, high = _FLAT_CM
    figures = _in_cm(column)
    if not figures or min(figures) < low:
        return False
    return max(figures) <= high or (min(figures) <= _SMALLEST and max(figures) <= _LARGEST)


def _too_small_for_a_body(column: Column) -> bool:
    """Beside a height a girth is the body's, unless one of its figures can be no body's."""
    if column.field.heading.basis is Basis.BODY:
        return False
    for value, own in printed_figures(column.field):
        unit = own or column.unit
        limits = plausible(column.dimension, unit, column.definition) if unit else None
        if limits is not None and value < limits[0]:
            return True
    return False


def _adults(columns: Sequence[Column], around: Surroundings) -> bool:
    """Letters for sizes, no children's band, no heights of children, no ages."""
    table = around.table
    letters = [
        one.label.kind
        for field in table.of(FieldKind.LABEL)
        for cell in field.cells
        if cell and (one := look(cell[0].text)).label is not None
    ]
    if not any(kind is LabelKind.ALPHA for kind in letters) or LabelKind.AGE in letters:
        return False
    bands = {look(words.text).band for words in around.words}
    bands |= {
        look(cell[0].text).band for f in table.of(FieldKind.LABEL) for cell in f.cells if cell
    }
    return bands <= _GROWN and not any(_of_children(column) for column in columns)


def _of_children(column: Column) -> bool:
    if column.dimension is Dimension.AGE:
        return True
    if column.dimension is not Dimension.HEIGHT or column.unit is None:
        return False
    heights = [canonical(value, own or column.unit) for value, own in printed_figures(column.field)]
    return bool(heights) and max(heights) < _ADULT_HEIGHT_CM
