"""One heading over two columns that can mean two measures: the taller figures are the height.

French ``Taille`` heads a height and a waist alike. Where it stands twice, line by line one of the
columns is larger than any waist of that height: both are asked about at once.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal
from typing import Final

from charts.columns.fitting import fits, printed_figures, telling
from charts.columns.meaning import Column
from charts.columns.words import Surroundings
from charts.dimensions import Role
from charts.findings import Candidate
from charts.schema import Dimension

_TALLER: Final = Decimal("1.2")
"""A person is more than this times as tall as round the waist or hip (common practice, no
source)."""


def told_by_height(columns: Sequence[Column], around: Surroundings) -> list[Column]:
    """The columns with the taller one of two under one heading as the height, and one question."""
    for first, second in _pairs(columns):
        small, tall = sorted((first, second), key=lambda one: _figures(one)[:1])
        if not _is_taller(tall, small):
            continue
        others = [one for one in columns if one not in (first, second)]
        if any(one.dimension in _readings(first) for one in others):
            continue
        told = _asked(small, tall, around)
        return [told.get(one.number, one) for one in columns]
    return list(columns)


def _pairs(columns: Sequence[Column]) -> list[tuple[Column, Column]]:
    """Columns under the same words, which mean a height or one girth."""
    doubtful = [one for one in columns if Dimension.HEIGHT in _readings(one)]
    alike: dict[tuple[str, str | None], list[Column]] = {}
    for one in doubtful:
        alike.setdefault((one.heading.casefold(), one.band), []).append(one)
    return [(two[0], two[1]) for two in alike.values() if len(two) == 2]


def _readings(column: Column) -> list[Dimension]:
    said = column.field.heading.candidates
    measured = [dim for role, dim in said if role is Role.MEASURE and dim is not None]
    return measured if len(measured) == 2 else []


def _is_taller(tall: Column, small: Column) -> bool:
    """Whether every figure can be a height and is far more than the other of its line."""
    high, low = _figures(tall), _figures(small)
    alike = len(high) == len(low) > 1 and tall.unit is small.unit
    return (
        alike
        and all(one > _TALLER * other for one, other in zip(high, low, strict=True))
        and fits(tall.field, Dimension.HEIGHT)
        and not fits(small.field, Dimension.HEIGHT, limits=telling)
    )


def _figures(column: Column) -> list[Decimal]:
    return [value for value, _ in printed_figures(column.field)]


def _asked(small: Column, tall: Column, around: Surroundings) -> dict[int, Column]:
    girth = next(one for one in _readings(small) if one is not Dimension.HEIGHT)
    own = {one.id for one in around.log.findings if one.code == "heading-two-readings"}
    for ident in own.intersection((*small.findings, *tall.findings)):
        around.log.withdraw(ident)
    ident = around.log.add(
        "heading-two-readings",
        tall.place,
        candidates=tuple(
            Candidate(one.value, why="heading-fits-values") for one in (Dimension.HEIGHT, girth)
        ),
        heading=tall.heading,
        first=Dimension.HEIGHT.value,
    )
    return {
        one.number: replace(
            one,
            dimension=meant,
            findings=tuple(each for each in one.findings if each not in own),
        ).asking(ident)
        for one, meant in ((tall, Dimension.HEIGHT), (small, girth))
    }
