"""What each column of values measures: its dimension, definition, and the question if unsure."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass, replace
from decimal import Decimal

from charts.columns.beside_masses import heights_beside_masses
from charts.columns.fitting import (
    all_masses,
    fits,
    is_back,
    names_more,
    no_height,
    printed_figures,
    telling,
    too_much_said,
)
from charts.columns.named_around import axis_of_heights, named_around, noted
from charts.columns.nameless_ends import between_heights
from charts.columns.scale import bare_unit, title_unit
from charts.columns.small_bodies import may_be_a_childs, may_be_a_long_garments, too_short
from charts.columns.sure_heights import surely_heights
from charts.columns.words import Surroundings, girth_around
from charts.dimensions import HeadingReading, Role, read_heading
from charts.findings import Candidate
from charts.headings.near import near_headings
from charts.layout.cups import CUP_GIRTHS
from charts.layout.false_friends import untold
from charts.layout.fields import Field, FieldKind
from charts.layout.looks import look
from charts.layout.measured_keys import measured_as, nominal
from charts.layout.sizes_with_units import only_names
from charts.quantities import Unit
from charts.schema import Basis, Definition, Dimension, UnitFrom

_GROWN_CM = Decimal(140)
"""Below this nobody is a grown-up (common practice, no source)."""
_ENDS = frozenset({Role.LOW_END, Role.HIGH_END})
_UP_TO = re.compile(
    r"\((?:up to|bis|max\.?|jusqu['’]?[àa]?|hasta|fino a|tot|do|till|upp till|op til|até)\b",
    re.IGNORECASE,
)


@dataclass(frozen=True, slots=True)
class Column:
    """A column of values with its meaning. ``findings`` bear on every value of it.

    ``unit`` is what holds for cells that print none; None until it is resolved. ``laid_flat``
    says that the figures are asked about as halves, ``doubted`` that they are asked about as
    another column's, so that they are not called impossible one by one, ``nameless`` that nobody
    knows yet what they measure: the one question about the heading is all that can be asked.
    ``in_months`` says that ages without a unit of their own count months, ``signs_mean_about`` that
    plus-minus signs stand before figures, ``least_cm`` how little a child measures at the age of
    each line, where ages name the sizes.
    """

    number: int
    field: Field
    heading: str
    place: str
    dimension: Dimension
    role: Role = Role.MEASURE
    definition: Definition = Definition.UNKNOWN
    basis: Basis = Basis.UNKNOWN
    unit: Unit | None = None
    unit_from: UnitFrom = UnitFrom.INFERRED
    second_unit: Unit | None = None
    band: str | None = None
    garment_sign: bool = False
    laid_flat: bool = False
    doubted: bool = False
    nameless: bool = False
    in_months: bool = False
    signs_mean_about: bool = False
    least_cm: tuple[Decimal | None, ...] = ()
    findings: tuple[str, ...] = ()

    def asking(self, *ids: str) -> Column:
        """The same column with more findings on every value of it."""
        new = tuple(one for one in ids if one not in self.findings)
        return replace(self, findings=self.findings + new)


def columns_of(surroundings: Surroundings) -> list[Column]:
    """The columns of values of a table, each with its dimension and the reason recorded."""
    fields = [*_in_labels(surroundings), *surroundings.table.of(FieldKind.VALUES)]
    fields = [field for field in fields if any(field.cells)]
    columns = [_column(number, one, surroundings) for number, one in enumerate(fields)]
    return _overflowing(columns, surroundings)


def _overflowing(columns: list[Column], around: Surroundings) -> list[Column]:
    """Rows longer than their heading: no figure surely stands under its own heading any more.

    Two figures too many are needed, or one beside a heading over nothing.
    """
    headed = [number for number, column in enumerate(columns) if column.heading]
    behind = columns[headed[-1] + 1 :] if headed else []
    empty = [
        field for field in around.table.of(FieldKind.EMPTY) if field.heading.role is Role.MEASURE
    ]
    if len(behind) < (1 if empty else 2):
        return columns
    ident = around.log.add(
        "columns-shifted", behind[0].place, key=around.table.area, case="overflow"
    )
    return [column.asking(ident) for column in columns]


def _in_labels(around: Surroundings) -> list[Field]:
    """Columns of labels with figures and a unit: ``L (bis 60 kg)``, or under ``Height (cm)``."""
    found = []
    for one in around.table.of(FieldKind.LABEL):
        if only_names(one, around.table.fields):
            continue
        readings = [look(cell[0].text).reading for cell in one.cells if cell]
        carried = [reading for reading in readings if reading.quantity]
        united = bool(carried) and all(r.quantity and r.quantity.unit for r in carried)
        united = united and not any(r.quantity and r.quantity.unit is Unit.YEARS for r in carried)
        headed = one.heading.dimension is not None and one.heading.unit is not None
        if united or headed or measured_as(one, around.table.fields):
            found.append(replace(one, kind=FieldKind.VALUES))
    return found


def _in_its_language(one: Field, around: Surroundings) -> HeadingReading:
    """A false friend between languages, read in the one language the other headings speak.

    The band and the unit that stand over its group remain.
    """
    spoken = {other.heading.language for other in around.table.fields} - {None}
    of_words = one.heading.candidates == read_heading(one.printed_heading).candidates
    banded = one.heading.role is Role.BAND
    if not (one.heading.candidates or banded) or not of_words or len(spoken) != 1:
        return one.heading
    settled = read_heading(one.printed_heading, spoken.pop())
    measured = settled.role is Role.MEASURE if banded else not settled.candidates
    if not settled.dimension or not measured:
        return one.heading
    band = settled.band if banded else settled.band or one.heading.band
    return replace(settled, band=band, unit=settled.unit or one.heading.unit)


def _column(number: int, one: Field, around: Surroundings) -> Column:
    reading = _in_its_language(one, around)
    in_labels = _stands_in_labels(one, around)
    one = replace(one, heading=reading)
    first = one.heads[-1] if one.heads else next(cell[0] for cell in one.cells if cell)
    column = Column(
        number=number,
        field=one,
        heading=one.printed_heading,
        place=around.place(first.row, first.column),
        dimension=reading.dimension or Dimension.OTHER,
        role=Role.HIGH_END if _up_to(one, reading) else reading.role,
        definition=reading.definition,
        basis=reading.basis,
        unit=reading.unit,
        second_unit=reading.second_unit,
        band=reading.band,
        garment_sign=reading.garment_sign,
    )
    if in_labels:
        return _with_its_figures(column, around)
    if reading.beside_thing is not None:
        return _asked(column, [reading.beside_thing, Dimension.OTHER], around)
    if reading.candidates:
        return _between_readings(column, around)
    if reading.dimension is not None:
        return column
    if reading.role is Role.LABEL:
        return _size_over_measures(column, around)
    return _unnamed(column, around)


def _up_to(one: Field, reading: HeadingReading) -> bool:
    """``Size (up to height)``: the bracket says which end the figures are."""
    return reading.role is Role.MEASURE and _UP_TO.search(one.printed_heading) is not None


def _stands_in_labels(one: Field, around: Surroundings) -> bool:
    """Whether a column of figures is a column of labels seen for its figures."""
    labels = around.table.of(FieldKind.LABEL)
    return any(replace(field, kind=FieldKind.VALUES) == one for field in labels)


def _with_its_figures(column: Column, around: Surroundings) -> Column:
    """Figures in a column of labels: masses are the rider's weight, lengths mostly the height."""
    if all_masses(column.field):
        return replace(column, dimension=Dimension.WEIGHT, unit=None, role=Role.MEASURE)
    role = column.role if column.role in _ENDS else Role.MEASURE
    if column.unit is None and (said := measured_as(column.field, around.table.fields)):
        measured = replace(column, dimension=said, role=role)
        return _asked(measured, [said], around) if nominal(column.field) else measured
    if column.dimension is not Dimension.OTHER:
        return replace(column, role=role)
    if fits(column.field, Dimension.HEIGHT, limits=telling):
        return replace(column, dimension=Dimension.HEIGHT, role=role)
    return _unnamed(column, around)


def _between_readings(column: Column, around: Surroundings) -> Column:
    """A false friend: the values decide when they fit one reading only, else a person does."""
    dimensions = [
        dim
        for role, dim in column.field.heading.candidates
        if role is Role.MEASURE and dim is not None
    ]
    if column.field.heading.candidates == CUP_GIRTHS and (said := girth_around(around, CUP_GIRTHS)):
        return replace(column, dimension=said)
    if surely_heights(column.field, around):
        return replace(column, dimension=Dimension.HEIGHT)
    short = too_short(column.field, around)
    if short or no_height(column.field, around):
        dimensions = [dim for dim in dimensions if dim is not Dimension.HEIGHT] or dimensions
    fitting = [dim for dim in dimensions if fits(column.field, dim, limits=telling)]
    if len(fitting) > 1 and column.unit is None and (unit := bare_unit(around)):
        fitting = [dim for dim in fitting if fits(column.field, dim, unit, limits=telling)]
    if column.unit is None and (unit := title_unit(around)):
        likely = [dim for dim in dimensions if fits(column.field, dim, unit)]
        fitting = [dim for dim in fitting if dim in likely] or likely
    fitting = fitting or [dim for dim in dimensions if fits(column.field, dim)] or dimensions
    girth = dimensions[:1] in ([Dimension.CHEST], [Dimension.WAIST], [Dimension.HIP])
    half_known = girth and bool(column.field.heading.rest)
    if fitting == [Dimension.OTHER] and not short and may_be_a_childs(column.field, around):
        childs = replace(column, dimension=Dimension.HEIGHT, doubted=True)
        return _asked(childs, [Dimension.HEIGHT, Dimension.OTHER], around)
    if fitting == [Dimension.OTHER] and half_known:
        fitting = dimensions  # an unknown word beside a girth is for a person to judge
    chosen = replace(column, dimension=fitting[0]) if fitting else column
    if _perhaps_the_back(chosen, around):
        return _asked(chosen, [Dimension.OTHER, Dimension.BACK_LENGTH], around)
    if fitting == [Dimension.HEIGHT] and may_be_a_long_garments(column.field, around):
        return _asked(chosen, [Dimension.HEIGHT, Dimension.OTHER], around)
    if too_much_said(column.field, dimensions):
        taken_first = sorted(dimensions, key=lambda dim: dim is not chosen.dimension)
        return _asked(chosen, taken_first, around)
    named = column.role is not Role.LABEL or column.unit is not None
    if len(fitting) == 1 and (named or _beside_sizes(column.field, fitting[0], around)):
        return chosen
    return _asked(chosen, fitting, around)


def _beside_sizes(one: Field, dimension: Dimension, around: Surroundings) -> bool:
    """Whether a word for size over usual figures in cm is no size: another column names those."""
    sure = fits(one, dimension, Unit.CM, limits=telling)
    sure = sure and not untold(one, dimension, around.table.fields)
    return sure and bool(around.table.of(FieldKind.LABEL))


def _perhaps_the_back(column: Column, around: Surroundings) -> bool:
    """A length of something nobody knows, where no other column gives the length of the back."""
    given = {one.heading.dimension for one in around.table.fields}
    doubtful = names_more(column.field) and column.dimension is Dimension.OTHER
    return doubtful and Dimension.BACK_LENGTH not in given and is_back(column.field)


def _size_over_measures(column: Column, around: Surroundings) -> Column:
    """A word for size over measurements: body height where the figures say so, asked always.

    Under letters for sizes heights below a grown-up's are chests as likely.
    """
    order = (Dimension.HEIGHT, Dimension.CHEST)
    figures = [value for value, own in printed_figures(column.field) if own in {None, Unit.CM}]
    if max(figures, default=_GROWN_CM) < _GROWN_CM and _lettered(around):
        order = (Dimension.CHEST, Dimension.HEIGHT)
    fitting = [d for d in order if fits(column.field, d)]
    chosen = replace(column, dimension=fitting[0] if fitting else Dimension.OTHER)
    return _asked(chosen, fitting, around)


def _lettered(around: Surroundings) -> bool:
    texts = (cell[0].text for one in around.table.of(FieldKind.LABEL) for cell in one.cells if cell)
    return all(look(text).wordy_label for text in texts)


def _asked(
    column: Column, fitting: Sequence[Dimension], around: Surroundings, key: str | None = None
) -> Column:
    ident = around.log.add(
        "heading-two-readings",
        column.place,
        key=key,
        candidates=tuple(Candidate(dim.value, why="heading-fits-values") for dim in fitting),
        heading=column.heading,
        first=fitting[0].value if fitting else Dimension.OTHER.value,
    )
    return column.asking(ident)


def _unnamed(column: Column, around: Surroundings) -> Column:
    """No dimension in the heading: the title may name it for a lone column; else it is asked.

    A mass can only be the rider's weight.
    """
    lone = len(around.table.of(FieldKind.VALUES)) == 1 or _silent(column)
    united = column.role is Role.UNIT and column.unit in {Unit.KG, Unit.LB, Unit.ST}
    if united or (not column.heading and all_masses(column.field)):
        return replace(column, dimension=Dimension.WEIGHT)
    if between_heights(column.field, around):
        heights = replace(column, dimension=Dimension.HEIGHT)
        return _asked(heights, [Dimension.HEIGHT, Dimension.OTHER], around, around.table.area)
    if heights_beside_masses(column.field, around):
        heights = replace(column, dimension=Dimension.HEIGHT)
        return _asked(heights, [Dimension.HEIGHT, Dimension.OTHER], around)
    titled = named_around(around) if lone and _silent(column) else None
    alone = len(around.table.of(FieldKind.VALUES)) == 1
    other = noted(around) or (alone and titled)
    if not column.heading and not other and axis_of_heights(column.field, around):
        heights = replace(column, dimension=Dimension.HEIGHT)
        return _asked(heights, [Dimension.HEIGHT, Dimension.OTHER], around)
    if titled is not None:
        return replace(column, dimension=titled)
    return _unknown(column, around)


def _unknown(column: Column, around: Surroundings) -> Column:
    """A heading that names nothing known: asked, with the known ones it resembles."""
    near = near_headings(column.field.heading)
    ident = around.log.add(
        "heading-unknown",
        column.place,
        key=column.place if column.heading else around.table.area,
        candidates=tuple(Candidate(name, why="heading-near") for name in near),
        case="none" if not column.heading else "near" if near else "",
        heading=column.heading,
        near=", ".join(near),
    )
    role = column.role if _may_be_an_end(column, around) else Role.MEASURE
    return replace(column, nameless=True, role=role).asking(ident)


def _may_be_an_end(column: Column, around: Surroundings) -> bool:
    """``Pocket from side seam`` says where something is measured from, where no column says to."""
    other = _ENDS - {column.role}
    return column.role in _ENDS and (
        not column.field.heading.rest
        or any(field.heading.role in other for field in around.table.of(FieldKind.VALUES))
    )


def _silent(column: Column) -> bool:
    """The heading holds nothing but units, ends of a range, or words for a value or a size."""
    silent = {Role.UNIT, Role.LOW_END, Role.HIGH_END, Role.BAND}
    return column.role in silent or not column.heading
