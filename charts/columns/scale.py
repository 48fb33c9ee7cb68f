"""The unit that the bare figures of a table must be in, before any unit is looked for.

A chest of 96 and an arm span of 150 are centimetres; the length of 70 beside them is then no
height in inches.
"""

from __future__ import annotations

import re
from decimal import Decimal
from itertools import islice
from typing import Final

from charts.columns.fitting import printed_figures
from charts.columns.words import Surroundings, family_of, of_family
from charts.dimensions import Role, find_units, plausible
from charts.layout.fields import Field, FieldKind
from charts.quantities import Family, Unit
from charts.schema import Dimension

_LOOKED_AT: Final = 12
"""Columns that are enough: a hostile sheet has thousands, and each may ask."""
LONGEST_CM: Final = Decimal(250)
"""No length of a body or a garment is more (common practice, no source)."""
_LONGEST_IN: Final = Decimal(100)
_FIGURE_WITH_UNIT: Final = re.compile(
    r"\d[\d.,/ –-]*(?:[\"'”’″′]|[^\W\d_]{1,6}\b|[cz]ent[ií]m\w+|millim\w+|kilogr\w+)?",
    re.IGNORECASE,
)


def said_at_large(text: str) -> tuple[Unit, ...]:
    """The units a text names for all figures; "to the nearest 1/2 in" names one for its own."""
    return find_units(_FIGURE_WITH_UNIT.sub(" ", text))


def title_unit(around: Surroundings) -> Unit | None:
    """The one unit of length that the titles of the table print, ``(all in cm)``."""
    titles = (at.text for at in around.table.titles)
    found = {unit for text in titles for unit in of_family(said_at_large(text), Family.LENGTH)}
    return found.pop() if len(found) == 1 else None


def bare_unit(around: Surroundings) -> Unit | None:
    """Centimetres, where named lengths of the table without a unit can be in nothing else.

    One figure alone may be a slip.
    """
    bare = (one for one in around.table.of(FieldKind.VALUES) if _bare_length(one))
    found = list(islice(bare, _LOOKED_AT))
    figures = [(one, value) for one in found for value, own in printed_figures(one) if own is None]
    if any(value > LONGEST_CM for _, value in figures):
        return None
    return Unit.CM if sum(value > _most_inches(one) for one, value in figures) > 1 else None


def _bare_length(one: Field) -> bool:
    heading = one.heading
    named = heading.role is Role.MEASURE and heading.dimension is not None
    plain = heading.unit is None and not one.units
    return named and plain and not heading.candidates and _is_length(heading.dimension)


def _is_length(dimension: Dimension | None) -> bool:
    return family_of(dimension) is Family.LENGTH


def _most_inches(one: Field) -> Decimal:
    limits = plausible(one.heading.dimension or Dimension.OTHER, Unit.IN, one.heading.definition)
    return limits[1] if limits is not None else _LONGEST_IN
