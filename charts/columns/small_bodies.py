"""Whether a word for a length is how long a child is: beside ages, a small weight, a head.

``Length`` over 33 to 45 cm could be a garment's. Beside a weight of two kilograms, or the girth of
a head, where no other column says how tall the child is, it is rather the child's own.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal
from itertools import pairwise
from typing import Final

from charts.columns.band_words import band_around
from charts.columns.fitting import below_a_girth, fits, printed_figures
from charts.columns.words import Surroundings
from charts.dimensions import Role
from charts.headings.bands import CHILDREN
from charts.layout.fields import Field, FieldKind, Table
from charts.layout.looks import look
from charts.layout.view import At
from charts.quantities import FAMILY, Family, canonical
from charts.schema import Dimension
from charts.size_labels import LabelKind

_HEAD: Final = re.compile(
    r"\bhead\b|kopf|hoofd|\bt[eê]te\b|cr[aâ]n|\btesta\b|\bcabez|\bcabeç|huvud|hoved|hode|głow|hlav"
    r"|голов|头围|頭圍|頭囲|머리",
    re.IGNORECASE,
)
_HEAVIEST_KG: Final = Decimal(25)
_LENGTHS_CM: Final = (Decimal(25), Decimal(130))
"""What children from far too early a birth to school weigh and measure (common practice, no
source)."""


_LONG_GARMENTS_CM: Final = (Decimal(60), Decimal(135))
"""How long shirts, coats and belts are (common practice, no source)."""
_GROWN_HEAD_CM: Final = Decimal(55)
"""Heads of children at school are smaller (common practice, no source)."""
_LEAST_HEIGHT_CM: Final = Decimal(130)
"""So heavy is hardly anyone: weights that are more all through are heights."""
_GROWN_IN: Final = (Decimal(58), Decimal(80))
"""How tall grown-ups are in inches."""
_MEDIANS_CM: Final = tuple(
    (Decimal(age), Decimal(tall))
    for age, tall in (
        *(("0", 50), ("0.5", 66), ("1", 75), ("2", 87), ("3", 95), ("4", 103)),
        *(("6", 116), ("8", 127), ("10", 138), ("12", 150)),
    )
)
"""How tall half the children are at an age in years (WHO Child Growth Standards 2006, WHO
Reference 2007; girls and boys together, rounded; from memory)."""
_GROWN: Final = {
    Dimension.HEIGHT: (Decimal(160), Decimal(186)),
    Dimension.WEIGHT: (Decimal(48), Decimal(90)),
}
"""Cm and kg with which children's charts neither begin nor end (common practice, no source)."""
_SCHOOL: Final = Decimal(6)
_WALKING: Final = Decimal(2)
_SHORT: Final = Decimal("0.8")
"""Times the median below which hardly any child is (common practice, no source)."""


def may_be_a_childs(one: Field, around: Surroundings) -> bool:
    """Whether a word that could mean a height stands where a child is measured."""
    if (Role.MEASURE, Dimension.HEIGHT) not in one.heading.candidates:
        return False
    fields = around.table.fields
    if any(other.heading.dimension is Dimension.AGE for other in fields):
        return fits(one, Dimension.HEIGHT) or _as_tall_as_their_ages(one, fields)
    tall = any(
        other is not one
        and other.heading.dimension is Dimension.HEIGHT
        and not other.heading.candidates
        for other in fields
    )
    if tall:
        return False
    return (_is_long(one) and _small_body(fields)) or _as_tall_as_their_ages(one, fields)


def is_of_grown_ups(table: Table) -> bool:
    """Whether the table gives heights or weights, and the least or the most is no child's."""
    found = [
        min(figures) >= least or max(figures) >= most
        for dimension, (least, most) in _GROWN.items()
        if (figures := _figures_of(table, dimension))
    ]
    return bool(found) and all(found)


def _figures_of(table: Table, dimension: Dimension) -> list[Decimal]:
    fields = [one for one in table.fields if one.heading.dimension is dimension]
    return [value for one in fields for value in _canonical(one)]


def may_be_a_long_garments(one: Field, around: Surroundings) -> bool:
    """Whether a word for a length over 60 to 135 cm may be how long a coat or a belt is.

    So tall are only children: without their ages, their weights or a word for them nearby nobody
    can tell.
    """
    if (Role.MEASURE, Dimension.OTHER) not in one.heading.candidates:
        return False
    if _child_in_sight(one, around):
        return False
    figures = _canonical(one)
    low, high = _LONG_GARMENTS_CM
    return bool(figures) and all(low <= value <= high for value in figures)


def as_tall_as_inches(one: Field, around: Surroundings) -> bool:
    """Whether heights of 58 to 80, printed as cm, are rather the inches of grown-ups.

    So short are only babies, and nothing speaks of children.
    """
    low, high = _GROWN_IN
    figures = _canonical(one)
    lettered = any(
        look(cell[0].text).wordy_label
        for field in around.table.of(FieldKind.LABEL)
        for cell in field.cells
        if cell
    )
    told = bool(figures) and all(low <= value <= high for value in figures) and lettered
    weights = _figures_of(around.table, Dimension.WEIGHT)
    exchanged = bool(weights) and min(weights) >= _LEAST_HEIGHT_CM
    return told and not exchanged and not _child_in_sight(one, around)


def _child_in_sight(one: Field, around: Surroundings) -> bool:
    """An age, a small weight, or a word for children in, beside or around a table."""
    fields = around.table.fields
    if any(field.heading.dimension is Dimension.AGE for field in fields) or _small_body(fields):
        return True
    names = [cell for field in around.table.of(FieldKind.LABEL) for cell in field.cells]
    if any(years_of(cell) is not None or _of_a_child(cell) for cell in names):
        return True
    return bool({one.heading.band, band_around(around)} & CHILDREN)


def _as_tall_as_their_ages(one: Field, fields: Sequence[Field]) -> bool:
    """Whether sizes are ages, ``1 a 2 años``, and each figure is about a child's height then.

    What a child wears is far shorter than the child.
    """
    unit = one.heading.unit
    aged = [other for other in fields if other.kind is FieldKind.LABEL and _is_aged(other)]
    united = unit is not None or all(own is not None for _, own in printed_figures(one))
    if not united or not aged:
        return False
    named = [(years_of(name), cell) for name, cell in zip(aged[-1].cells, one.cells, strict=True)]
    pairs = [(years, cell) for years, cell in named if cell and years is not None]
    for years, cell in pairs:
        printed = printed_figures(_alone(one, cell))
        figures = [canonical(v, said) for v, own in printed if (said := own or unit) is not None]
        if not figures or min(figures) < _SHORT * median_height(years):
            return False
    return len(pairs) > max(1, len(named) // 2)  # "Newborn" among ages in months is one as well


def too_short(one: Field, around: Surroundings) -> bool:
    """Whether nobody is as tall as a column says: a girth beside it is larger, or the ages tell.

    A shirt for six years is half as long as a child of six is tall.
    """
    if below_a_girth(one, around):
        return True
    named = [field.cells for field in around.table.of(FieldKind.LABEL)]
    aged = [
        (years, _canonical(_alone(one, cell)))
        for names in named
        for name, cell in zip(names, one.cells, strict=True)
        if (years := years_of(name)) is not None and years >= _WALKING
    ]
    short = [bool(found) and max(found) < _SHORT * median_height(years) for years, found in aged]
    return len(short) > 1 and all(short)


def _is_aged(names: Field) -> bool:
    return any(years_of(cell) is not None for cell in names.cells)


def _alone(one: Field, cell: tuple[At, ...]) -> Field:
    return replace(one, cells=(cell,))


def years_of(cell: tuple[At, ...]) -> Decimal | None:
    """The middle of the age that names a size."""
    label = look(cell[0].text).label if cell else None
    aged = label is not None and label.kind is LabelKind.AGE
    return Decimal(str(label.order[2])) if label is not None and aged else None


def _of_a_child(cell: tuple[At, ...]) -> bool:
    return bool(cell) and look(cell[0].text).band in CHILDREN


def age_at_height(cm: Decimal) -> Decimal | None:
    """The age in years at which half the children are so tall; None for those of school age."""
    tall = [(age, median) for age, median in _MEDIANS_CM if age < _SCHOOL]
    if cm >= tall[-1][1]:
        return None
    ages = [age for age, median in tall if median <= cm]
    return ages[-1] if ages else Decimal(0)


def median_height(years: Decimal) -> Decimal:
    """How tall half the children of an age are, in cm; from 12 years on as at 12."""
    for (young, small), (old, tall) in pairwise(_MEDIANS_CM):
        if years <= old:
            return small + (tall - small) * (years - young) / (old - young)
    return _MEDIANS_CM[-1][1]


def _small_body(fields: Sequence[Field]) -> bool:
    """A weight that no grown-up has, or the girth of a small head, in another column."""
    weights = [one for one in fields if one.heading.dimension in {Dimension.WEIGHT, None}]
    masses = [
        canonical(value, unit)
        for one in weights
        for value, own in printed_figures(one)
        if (unit := own or one.heading.unit) is not None and FAMILY[unit] is Family.MASS
    ]
    light = bool(masses) and max(masses) <= _HEAVIEST_KG
    return light or any(_is_small_head(one) for one in fields)


def _is_small_head(one: Field) -> bool:
    """The girth of a head below a grown-up's, or of which no figure says how large it is."""
    headed = _HEAD.search(one.printed_heading) is not None
    return headed and max(_canonical(one), default=Decimal(0)) < _GROWN_HEAD_CM


def _is_long(one: Field) -> bool:
    """Whether every figure, in cm where no unit is printed, is how long some child is."""
    low, high = _LENGTHS_CM
    found = _canonical(one)
    return bool(found) and all(low <= value <= high for value in found)


def _canonical(one: Field) -> list[Decimal]:
    """Its figures in cm or kg, as printed where no unit is."""
    unit = one.heading.unit
    return [
        canonical(value, said) if (said := own or unit) is not None else value
        for value, own in printed_figures(one)
    ]
