"""Chests that no grown-up of size S or larger has, beside letters and no word of children.

Words for a girth, ``contorno``, ``Umfang``, stand over half widths and over other columns copied
by mistake; the letters tell that the figures are no girths of whom they are for.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import replace
from decimal import Decimal
from typing import Final

from charts.columns.at_ages import ages_of_lines
from charts.columns.fitting import printed_figures
from charts.columns.halves import may_be_grown
from charts.columns.meaning import Column
from charts.columns.words import Surroundings
from charts.labels.reading import ADULT
from charts.layout.fields import FieldKind
from charts.layout.looks import look
from charts.quantities import FAMILY, Family, canonical
from charts.schema import Basis, Dimension
from charts.size_labels import LabelKind

_LEAST_CM: Final = {-1.0: Decimal(58), 0.0: Decimal(62)}
"""What a grown-up's chest of size S and of size M is at the very least (common practice, no
source)."""
_FEWEST: Final = 2
"""Sizes that are too small together: one alone is a slip."""


def too_small_for_letters(columns: Sequence[Column], around: Surroundings) -> list[Column]:
    """The columns with one question on chests too small for the letters of their sizes."""
    lines = dict(_least(around))
    ages = ages_of_lines(columns, around) if lines else []
    if ages:  # children's sizes that go on to those of grown-ups: the lines without an age
        lines = {line: least for line, least in lines.items() if ages[line] is None}
    chests = [one for one in columns if one.dimension is Dimension.CHEST]
    doubted = [one for one in chests if _too_small(one, lines)]
    # beside a sound chest the figures are the same in another unit, or are compared with it
    if (
        not doubted
        or len(doubted) < len(chests)
        or not may_be_grown(columns, around, beside_ages=len(lines) >= _FEWEST)
    ):
        return list(columns)
    first = doubted[0]
    key = f"{around.table.area} letters"
    ident = around.log.add("laid-flat", first.place, key=key, case="letters", heading=first.heading)
    return [
        replace(one, laid_flat=True).asking(ident) if one in doubted else one for one in columns
    ]


def _least(around: Surroundings) -> Iterator[tuple[int, Decimal]]:
    """The lines whose size is a letter of grown-ups, S or larger, and the least chest there."""
    for field in around.table.of(FieldKind.LABEL)[:1]:
        for number, cell in enumerate(field.cells):
            label = look(cell[0].text).label if cell else None
            if label is None or label.kind is not LabelKind.ALPHA or label.order[0] != ADULT:
                continue
            place = min(label.order[2], 0.0)
            if place in _LEAST_CM:
                yield number, _LEAST_CM[place]


def _too_small(column: Column, lines: Mapping[int, Decimal]) -> bool:
    """Whether a chest not known to lie flat begins below any grown-up's; rows between are slips."""
    if column.basis is Basis.FLAT or column.laid_flat:
        return False
    small = [_below(column, line, least) for line, least in lines.items()]
    return sum(small) >= _FEWEST and small in (sorted(small), sorted(small, reverse=True))


def _below(column: Column, line: int, least: Decimal) -> bool:
    figures = printed_figures(replace(column.field, cells=(column.field.cells[line],)))
    in_cm = [
        canonical(value, unit)
        for value, own in figures
        if (unit := own or column.unit) is not None and FAMILY[unit] is Family.LENGTH
    ]
    return bool(in_cm) and max(in_cm) < least
