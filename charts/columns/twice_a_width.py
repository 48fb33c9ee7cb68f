"""A girth that is in every size exactly twice a width beside it is as wide as what is made.

``Width 46, 51, 56`` beside ``Chest 92, 102, 112``: the width was doubled, no body was measured. So
where the width stands unread in a cell of several figures: ``60cm, wide: 46cm``.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from dataclasses import replace
from decimal import Decimal
from typing import Final

from charts.columns.fitting import printed_figures
from charts.columns.meaning import Column
from charts.layout.looks import look
from charts.layout.view import At
from charts.quantities import Unit, canonical
from charts.schema import Basis, Dimension

_GIRTHS: Final = frozenset({Dimension.CHEST, Dimension.WAIST, Dimension.HIP})
_OF_THE_VEST: Final = frozenset({Basis.FINISHED, Basis.FLAT})
_FIGURE: Final = re.compile(
    r"(?<![\d.,])(\d{2,3}(?:[.,]\d{1,2})?)\s*(?:(cm)|in\b|[\"”″])", re.IGNORECASE
)
_FEWEST: Final = 3
"""Sizes that agree: two may by chance."""


def twice_a_width(columns: Sequence[Column]) -> frozenset[int]:
    """The numbers of the girths that are twice a width in every size that gives them."""
    girths = [one for one in columns if one.dimension in _GIRTHS]
    beside = [one for one in columns if _may_hold_widths(one)] if girths else []
    return frozenset(
        girth.number
        for girth in girths
        if any(_doubles(girth, one) for one in beside if one is not girth)
    )


def _may_hold_widths(column: Column) -> bool:
    """A width of the garment by its heading, or cells of several figures that nobody has read."""
    made = column.garment_sign or column.basis in _OF_THE_VEST
    return (made and column.dimension in {Dimension.OTHER, *_GIRTHS}) or any(
        map(_unread, _cells(column))
    )


def _doubles(girth: Column, other: Column) -> bool:
    found = []
    for line, beside in zip(girth.field.cells, other.field.cells, strict=True):
        whole = _in_cm(girth, line)
        if whole:
            halves = {*_in_cm(other, beside), *_named_in(beside)}
            found.append((whole, all(figure / 2 in halves for figure in whole)))
    several = len({whole for whole, _ in found}) >= _FEWEST
    return several and all(doubled for _, doubled in found)


def _in_cm(column: Column, line: Sequence[At]) -> tuple[Decimal, ...]:
    """The figures of one cell of a column in cm, in the order of print."""
    figures = printed_figures(replace(column.field, cells=(tuple(line),)))
    return tuple(
        canonical(value, unit) for value, own in figures if (unit := own or column.unit) is not None
    )


def _named_in(line: Sequence[At]) -> Iterator[Decimal]:
    """The figures with a unit of length in a cell that is not read, in cm."""
    for at in line:
        for found in _FIGURE.finditer(at.text) if _unread(at) else ():
            unit = Unit.CM if found[2] else Unit.IN
            yield canonical(Decimal(found[1].replace(",", ".")), unit)


def _unread(at: At) -> bool:
    return look(at.text).reading.quantity is None and len(_FIGURE.findall(at.text)) > 1


def _cells(column: Column) -> Iterator[At]:
    return (at for line in column.field.cells for at in line)
