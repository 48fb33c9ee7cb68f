"""A length of the back that no back has: the garment's own, printed under the word for the body's.

Where the words around say that a body was measured it stays the back's, and is asked about too.

The figures are kept and asked about once; as a back's they would be called impossible one by one
or, worse, some of them be believed.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal
from typing import Final

from charts.answers import Meaning
from charts.columns.fitting import printed_figures
from charts.columns.loose_backs import says_too_little
from charts.columns.meaning import Column
from charts.columns.words import Surroundings
from charts.findings import Candidate
from charts.headings.whose import whose
from charts.quantities import Unit, canonical
from charts.schema import Basis, Definition, Dimension

_LEAST_CM: Final = Decimal(58)
_MOST_CM: Final = Decimal(70)
"""Every figure above the first and one above the second: no nape to waist (common practice)."""


def backs_doubted(columns: Sequence[Column], around: Surroundings) -> list[Column]:
    """The columns with back lengths as long as a shirt taken for the garment's, and asked.

    Asked as well: a word for the back that may mean its width.
    """
    doubtful = [_too_long(one) or says_too_little(one, columns, around) for one in columns]
    return [
        _asked(one, around) if doubt and not answered(one, around) else one
        for one, doubt in zip(columns, doubtful, strict=True)
    ]


def _too_long(column: Column) -> bool:
    if column.dimension is not Dimension.BACK_LENGTH:
        return False
    if column.definition is not Definition.UNKNOWN:
        return False
    figures = [
        canonical(value, own or column.unit or Unit.CM)
        for value, own in printed_figures(column.field)
    ]
    return bool(figures) and min(figures) > _LEAST_CM and _MOST_CM < max(figures) < 3 * _LEAST_CM


def answered(column: Column, around: Surroundings) -> bool:
    """Whether a person has said what the column measures, or from where to where."""
    return any(
        column.heading in act.headings and (act.dimension is not None or act.definition is not None)
        for _, act in around.answers.of(Meaning)
    )


def _asked(column: Column, around: Surroundings) -> Column:
    readings = (Dimension.OTHER, Dimension.BACK_LENGTH)
    of_body = next(
        (
            basis
            for words in around.words
            if (basis := whose(words.text).basis) is not Basis.UNKNOWN
        ),
        None,
    )
    if of_body is Basis.BODY:
        readings = (Dimension.BACK_LENGTH, Dimension.OTHER)
    return taken_for_the_first(column, readings, around)


def taken_for_the_first(
    column: Column, readings: Sequence[Dimension], around: Surroundings
) -> Column:
    """The column as the first of several measures, with the question which of them it is."""
    ident = around.log.add(
        "heading-two-readings",
        column.place,
        candidates=tuple(Candidate(one.value, why="heading-fits-values") for one in readings),
        heading=column.heading,
        first=readings[0].value,
    )
    return replace(column, dimension=readings[0], doubted=True).asking(ident)
