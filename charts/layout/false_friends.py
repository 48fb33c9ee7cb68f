"""A word for size that is a measure in another sense, told by the measures beside it.

"Taille" over 66, 70, 74 beside chests of 84, 88, 92 is a waist, where another column names the
sizes; over 36, 38, 40 it is a size. Single figures say nothing of it alone: 46 is both.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal
from typing import Final

from charts.dimensions import HeadingReading, Role
from charts.layout.fields import Field, FieldKind
from charts.layout.kinds import Content
from charts.layout.looks import look
from charts.plausible_ranges import usual
from charts.quantities import FAMILY, Family, Unit, factor
from charts.schema import Dimension, Kind

_SHARE: Final = {
    (Dimension.WAIST, Dimension.CHEST): (Decimal("0.62"), Decimal("1.05")),
    (Dimension.WAIST, Dimension.HIP): (Decimal("0.58"), Decimal("1.1")),
    (Dimension.WAIST, Dimension.HEIGHT): (Decimal("0.3"), Decimal("0.8")),
    (Dimension.HEIGHT, Dimension.CHEST): (Decimal("1.25"), Decimal("2.4")),
    (Dimension.HEIGHT, Dimension.WAIST): (Decimal("1.25"), Decimal("3.2")),
    (Dimension.HEIGHT, Dimension.HIP): (Decimal("1.2"), Decimal("2.4")),
}
"""How large the first is beside the second, on one body or one garment (common practice, no
source). Sizes in numbers lie outside: 36 beside 84, 46 beside 92, 34 beside 168."""

_GROWN_CM: Final = Decimal(140)
"""Below this nobody is a grown-up (common practice, no source)."""
_LARGEST_SIZE: Final = Decimal(64)
"""The largest size in numbers that is no measure (common practice, no source)."""


def friends_told(fields: Sequence[Field]) -> list[Field]:
    """The fields with each false friend as a measure that is in proportion to those beside it.

    Only where another column names the sizes: the word stands twice, or another word for it.
    """
    found = list(fields)
    for number, field in enumerate(found):
        if field.kind is FieldKind.LABEL and field.heading.role is Role.LABEL:
            meant = _meant(found, number)
            if meant is not None:
                found[number] = replace(field, kind=FieldKind.VALUES, heading=meant)
    return found


def _meant(fields: Sequence[Field], number: int) -> HeadingReading | None:
    field = fields[number]
    given = {one.heading.dimension for one in fields if one.kind is FieldKind.VALUES}
    for dimension in measures_of(field.heading):
        if dimension in given or not any(
            _names_instead(one, at < number, field, dimension)
            for at, one in enumerate(fields)
            if at != number and one.kind is FieldKind.LABEL
        ):
            continue
        told = in_proportion(field, dimension, fields)
        if told:
            return replace(field.heading, role=Role.MEASURE, dimension=dimension, candidates=())
        if told is None and _all_usual(field, dimension):
            return field.heading  # a person has to say which it is
    return None


def only_a_friend(fields: Sequence[Field]) -> bool:
    """Whether nothing names the sizes but figures under a word that is a measure as well.

    ``Taille | 70-76 | 76-82`` below a row of chests: the sizes stand further up. What stands first
    names the sizes, as ``Größe | 98-104`` does those of the children below a table of letters.
    """
    naming = [one for one in fields if one.kind in {FieldKind.LABEL, FieldKind.LENGTH}]
    first = next((one for one in fields if any(one.cells)), None)
    return (
        len(naming) == 1
        and naming[0] is not first
        and any(
            in_proportion(naming[0], dimension, fields) and not _of_children(naming[0], dimension)
            for dimension in measures_of(naming[0].heading)
        )
    )


def _of_children(field: Field, dimension: Dimension) -> bool:
    """Whether figures are heights of children, by which their sizes are called."""
    heights = [one for one in _lengths(field) if one is not None]
    return dimension is Dimension.HEIGHT and any(one < _GROWN_CM for one in heights)


def untold(field: Field, dimension: Dimension, fields: Sequence[Field]) -> bool:
    """Whether single figures may be sizes as well as the waist, and nothing beside them tells.

    No size is above 64, so that beside letters larger figures are measured.
    """
    figures = _lengths(field)
    content = Content.of(field.cells)
    if dimension is not Dimension.WAIST or content.filled != _singles(field):
        return False
    lettered = any(
        one.kind is FieldKind.LABEL and Content.of(one.cells).wordy_labels for one in fields
    )
    large = any(figure is not None and figure > _LARGEST_SIZE for figure in figures)
    return not (lettered and large) and in_proportion(field, dimension, fields) is not True


def _singles(field: Field) -> int:
    readings = [look(cell[0].text).reading.quantity for cell in field.cells if cell]
    return sum(one is not None and one.kind is Kind.SINGLE for one in readings)


def _all_usual(field: Field, dimension: Dimension) -> bool:
    limits = usual(dimension, Unit.CM)
    figures = [figure for figure in _lengths(field) if figure is not None]
    inside = limits is not None and all(limits[0] <= one <= limits[1] for one in figures)
    return inside and len(figures) > 1


def measures_of(heading: HeadingReading) -> list[Dimension]:
    """What a word for size measures in its other senses."""
    return [dim for role, dim in heading.candidates if role is Role.MEASURE and dim is not None]


def _names_instead(one: Field, before: bool, field: Field, dimension: Dimension) -> bool:
    """Whether a column names the sizes where ``field`` is a measure.

    It stands before it, or a system of sizes behind it; sizes of children are heights, so that
    the height before a system is their name. What repeats the same names is a second system.
    """
    names, others = _texts(one), _texts(field)
    if names & others or len(names) < len(one.cells):
        return False
    clear = one.heading.role is Role.LABEL and not one.heading.candidates
    if before:
        headed = one.heading.role is Role.LABEL or not one.heads
        return headed or Content.of(one.cells).all_sure
    return clear and dimension is not Dimension.HEIGHT


def _texts(field: Field) -> set[str]:
    return {cell[0].text.strip() for cell in field.cells if cell}


def in_proportion(field: Field, dimension: Dimension, fields: Sequence[Field]) -> bool | None:
    """Whether a column can be ``dimension`` beside the measures of ``fields``.

    None where nothing beside it tells, or where it only repeats a girth.
    """
    own, told = _lengths(field), []
    for one in fields:
        limits = _SHARE.get((dimension, one.heading.dimension or dimension))
        if one is field or limits is None:
            continue
        beside = _lengths(one)
        pairs = [(a, b) for a, b in zip(own, beside, strict=True) if a and b]
        if len(pairs) < 2 or all(a == b for a, b in pairs):
            continue
        within = [limits[0] <= a / b <= limits[1] for a, b in pairs]
        told.append(True if all(within) else None if any(within) else False)
    if False in told:
        return False
    return True if told and all(told) else None


def _lengths(field: Field) -> list[Decimal | None]:
    """The middle of each cell in one unit; None where it is blank or no length."""
    return [_middle(cell[0].text, field.heading) if cell else None for cell in field.cells]


def _middle(text: str, heading: HeadingReading) -> Decimal | None:
    quantity = look(text).reading.quantity
    if quantity is None:
        return None
    ends = [end.value for end in (quantity.low, quantity.high, quantity.value) if end is not None]
    unit = quantity.unit or heading.unit
    if not ends or (unit is not None and FAMILY[unit] is not Family.LENGTH):
        return None
    middle = sum(ends, Decimal(0)) / len(ends)
    return middle if unit is None else middle * factor(unit)
