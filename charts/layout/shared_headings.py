"""Two measures in one column: ``Chest / Waist (cm)`` over ``84-88 / 70-74``.

Heading and cells are parted alike, so that each part of a cell stands under its own measure.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal
from itertools import pairwise
from typing import Final

from charts.dimensions import HeadingReading, Role
from charts.layout.false_friends import measures_of
from charts.layout.fields import Field, FieldKind
from charts.layout.looks import look
from charts.layout.view import At
from charts.quantities import Unit
from charts.schema import Dimension, Kind

_JOINED: Final = re.compile(
    r"\s*[/|&+\n]\s*|\s+[x×]\s+|\s+[-–]\s+|\s+(?:and|und|et|y|e|en|och|og|oraz|i|a)\s+",
    re.IGNORECASE,
)
_BRACKET: Final = re.compile(r"\s*[(\[][^()\[\]]*[)\]]\s*$")
_PARTED: Final = re.compile(r"\s*[/|;\n]\s*|\s+[x×]\s+")
_MOST: Final = 3
_KINDS: Final = (
    frozenset({Unit.CM, Unit.MM, Unit.IN}),
    frozenset({Unit.KG, Unit.LB}),
)
Parts = tuple[At, ...]


def shared_parted(fields: Sequence[Field]) -> list[Field]:
    """The fields with each column of several measures as one column a measure."""
    return [part for field in fields for part in (_parts(field) or [field])]


def _parts(field: Field) -> list[Field]:
    """One field for each measure that the heading names; none where the cells are not like it."""
    if field.kind not in {FieldKind.VALUES, FieldKind.LABEL} or not field.heads:
        return []
    names = _names(field.heads[-1].text)
    dimensions = {_meant(name).dimension for name in names}
    if not 1 < len(dimensions) == len(names) <= _MOST:
        return []
    cells = [_parted(cell[0]) if cell else () for cell in field.cells]
    if any(cell and len(cell) != len(names) for cell in cells) or _may_be_ranges(cells):
        return []
    if field.kind is FieldKind.LABEL and not all(map(_united, cells)):
        return []  # "Size / age" names sizes; "Größe/Gewicht" over 165 cm / 55 kg measures
    return [_of(field, name, [cell[n : n + 1] for cell in cells]) for n, name in enumerate(names)]


def _names(text: str) -> list[str]:
    names = _JOINED.split(_BRACKET.sub("", text.strip()))
    return names if all(_meant(name).role is Role.MEASURE for name in names) else []


def _meant(name: str) -> HeadingReading:
    """The measure that one of the names is: "Taille" beside a chest is no size."""
    heading = look(name).heading
    meant = [dim for dim in measures_of(heading) if dim is not Dimension.OTHER]
    if not heading.candidates or not meant:
        return heading
    several = tuple((Role.MEASURE, dim) for dim in meant) if len(meant) > 1 else ()
    return replace(heading, role=Role.MEASURE, dimension=meant[0], candidates=several)


def _parted(at: At) -> Parts:
    texts = _PARTED.split(at.text.strip())
    if not all(look(text).value for text in texts) or _is_one_in_two_units(texts):
        return ()
    return tuple(replace(at, cell=replace(at.cell, text=text)) for text in texts)


def _is_one_in_two_units(texts: Sequence[str]) -> bool:
    """Whether the parts print two units of one kind: ``82 cm / 32 in`` is the same once more."""
    quantities = (look(text).reading.quantity for text in texts)
    units = {one.unit for one in quantities if one is not None and one.unit is not None}
    return any(len(units & kind) > 1 for kind in _KINDS)


def _may_be_ranges(cells: Sequence[Parts]) -> bool:
    """Whether nothing is parted, or each cell is single figures that rise: 84/88 is a range too."""
    singles = [found for cell in cells if cell and (found := _figures(cell))]
    filled = sum(map(bool, cells))
    rising = sum(all(a < b for a, b in pairwise(one)) for one in singles)
    return not filled or len(singles) == filled == rising


def _united(cell: Parts) -> bool:
    """Whether a unit of measure stands at each part of a cell."""
    quantities = [look(at.text).reading.quantity for at in cell]
    return all(one is not None and one.unit not in {None, Unit.YEARS} for one in quantities)


def _figures(cell: Parts) -> list[Decimal]:
    """The single figures of the parts of a cell; none where one of them is a range."""
    quantities = [look(at.text).reading.quantity for at in cell]
    values = [one.value for one in quantities if one is not None and one.kind is Kind.SINGLE]
    figures = [one.value for one in values if one is not None]
    return figures if len(figures) == len(cell) else []


def _of(field: Field, name: str, cells: Sequence[Parts]) -> Field:
    head = replace(field.heads[-1], cell=replace(field.heads[-1].cell, text=name))
    heading = _meant(name)
    united = replace(
        heading,
        unit=heading.unit or field.heading.unit,
        second_unit=heading.second_unit or field.heading.second_unit,
        basis=field.heading.basis,
        band=heading.band or field.heading.band,
    )
    heads = (*field.heads[:-1], head)
    return replace(field, kind=FieldKind.VALUES, heads=heads, heading=united, cells=tuple(cells))
