"""Heights in feet and inches beside figures without a unit: how tall people are is told so anyway.

``5'6" - 5'8"`` stands beside chests in cm as well, and beside halves laid flat: it is no unit of
theirs, as inches over or behind any other measure would be.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from typing import Final

from charts.cell_text import clean
from charts.columns.fitting import printed_figures
from charts.columns.meaning import Column
from charts.columns.words import family_of
from charts.quantities import Family, Unit
from charts.schema import Dimension

_FEET: Final = re.compile(r"\d\s?(?:'|ft\b|feet\b|foot\b|pieds?\b|fuß\b|pies?\b)", re.IGNORECASE)


def inches_of_heights_alone(columns: Sequence[Column]) -> bool:
    """Whether nothing but heights in feet prints inches in a table."""
    lengths = [one for one in columns if family_of(one.dimension) is Family.LENGTH]
    printing = [one for one in lengths if Unit.IN in _printed(one)]
    return bool(printing) and all(_tall_in_feet(one) for one in printing)


def _printed(column: Column) -> set[Unit | None]:
    return {column.unit, *(unit for _, unit in printed_figures(column.field))}


def _tall_in_feet(column: Column) -> bool:
    texts = [clean(at.text) for cell in column.field.cells for at in cell]
    return (
        column.dimension is Dimension.HEIGHT
        and column.unit is not Unit.IN
        and any(_FEET.search(text) for text in texts)
    )
