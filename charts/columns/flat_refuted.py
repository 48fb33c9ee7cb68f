"""Words that say "taken flat" over figures that can only be whole girths.

Half of a vest laid flat is never as wide as a girth of the largest bodies. The words and the
figures contradict each other, so that neither is believed: the figures are kept as printed, and
one question bears on every value of every girth that the words speak of.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace
from decimal import Decimal
from typing import Final

from charts.columns.fitting import printed_figures
from charts.columns.meaning import Column
from charts.columns.words import Surroundings
from charts.dimensions import plausible
from charts.findings import Candidate
from charts.quantities import canonical
from charts.schema import Basis, Dimension

_GIRTHS: Final = frozenset({Dimension.CHEST, Dimension.WAIST, Dimension.HIP})
_HALVED: Final = _GIRTHS | {Dimension.SHOULDER_BREADTH}
_ROOM: Final = Decimal("1.25")
"""How much more than the largest body the largest vest measures (common practice, no source)."""
_Figures = list[tuple[Decimal, Decimal, Decimal]]


def flat_refuted(columns: Sequence[Column], said: str, around: Surroundings) -> list[Column]:
    """The columns with one question where ``said`` makes halves of figures that are none.

    A column whose own heading says that it lies flat is not meant: it may be the one that does.
    """
    told = [one for one in columns if _flat_by_words(one)]
    return _asked(columns, told, said, around) if _refuted(told) else list(columns)


def headings_refuted(
    columns: Sequence[Column], open_to_doubt: Sequence[Column], around: Surroundings
) -> list[Column]:
    """The same for columns headed ``Half chest`` over what can only be whole, each by its own.

    ``open_to_doubt`` are those of which no person has said whose measures they give.
    """
    told = [
        one
        for one in open_to_doubt
        if one.field.heading.basis is Basis.FLAT is one.basis
        and one.dimension in _HALVED
        and _refuted([one])
    ]
    return _asked(columns, told, told[0].heading, around) if told else list(columns)


def _refuted(told: Sequence[Column]) -> bool:
    """Whether most figures are too wide for halves, and all of them can be whole."""
    figures = [figure for one in told for figure in _figures(one)]
    wide = sum(2 * value > high for value, _, high in figures)
    whole = sum(low <= value <= high * _ROOM for value, low, high in figures)
    return 2 * wide > len(figures) == whole


def _asked(
    columns: Sequence[Column], told: Sequence[Column], said: str, around: Surroundings
) -> list[Column]:
    ident = around.log.add(
        "basis-doubtful",
        told[0].place,
        key=around.table.area,
        candidates=tuple(_readings(told)),
        case="refuted",
        heading=told[0].heading,
        text=said,
    )
    return [
        replace(one, basis=Basis.UNKNOWN, doubted=True).asking(ident) if one in told else one
        for one in columns
    ]


def _flat_by_words(column: Column) -> bool:
    own = column.field.heading.basis
    return column.dimension in _GIRTHS and column.basis is Basis.FLAT and own is not Basis.FLAT


def _figures(column: Column) -> _Figures:
    """Each figure of a girth in cm with the least and the most that a body measures there."""
    found = []
    for value, own in printed_figures(column.field):
        unit = own or column.unit
        limits = plausible(column.dimension, unit, column.definition) if unit else None
        if unit is not None and limits is not None:
            found.append((value, limits[0], limits[1]))
    return found


def _readings(columns: Sequence[Column]) -> Iterator[Candidate]:
    """The first figure as it is printed, and as the half of what goes round."""
    printed = (
        (value, own or column.unit)
        for column in columns
        for value, own in printed_figures(column.field)
    )
    value, unit = next(printed, (Decimal(0), None))
    if unit is None:
        return
    text = f"{value:f} {unit.value}"
    yield Candidate(text, "cm", value=canonical(value, unit), why="as-printed")
    yield Candidate(text, "cm", value=canonical(value, unit), why="half-girth")
