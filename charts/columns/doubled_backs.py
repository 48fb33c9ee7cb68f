"""From the waist over the shoulder to the waist again, under the words for half of that way.

``Waist to shoulder x 2``, or a sentence above the table: "waist-to-shoulder measurement, multiplied
by two". Where nothing says it the figures do, as nobody's shoulder is so far from the waist; then a
person is asked.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal
from typing import Final

from charts.columns.fitting import printed_figures
from charts.columns.long_backs import answered, taken_for_the_first
from charts.columns.meaning import Column
from charts.columns.words import Surroundings
from charts.headings.whose import says_doubled
from charts.layout.looks import look
from charts.quantities import Unit, canonical
from charts.schema import Definition, Dimension

_HALF: Final = Definition.BACK_SHOULDER_WAIST
_LEAST_CM: Final = Decimal(45)
_MOST_CM: Final = Decimal(65)
"""Every figure above the first and one above the second: no shoulder to waist, of a child or a
grown-up (common practice, no source)."""


def doubled_backs(columns: Sequence[Column], around: Surroundings) -> list[Column]:
    """The columns with the way over the shoulder where it is said, or asked where it is not."""
    return [
        _doubled(one, around) if one.definition is _HALF and not answered(one, around) else one
        for one in columns
    ]


def _doubled(column: Column, around: Surroundings) -> Column:
    whole = replace(column, definition=Definition.BACK_WAIST_SHOULDER_WAIST)
    if says_doubled(column.heading) or _said(around):
        return whole
    if not _too_long(column):
        return column
    return taken_for_the_first(whole, (Dimension.BACK_LENGTH, Dimension.OTHER), around)


def _said(around: Surroundings) -> bool:
    """Whether a text around the table, or around one before it, doubles this very measure."""
    return any(
        says_doubled(words.text) and look(words.text).heading.definition is _HALF
        for words in (*around.words, *around.far)
    )


def _too_long(column: Column) -> bool:
    figures = [
        canonical(value, own or column.unit or Unit.CM)
        for value, own in printed_figures(column.field)
    ]
    return bool(figures) and min(figures) > _LEAST_CM and max(figures) > _MOST_CM
