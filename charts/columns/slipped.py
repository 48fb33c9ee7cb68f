"""Headings that all stand one column off their figures: told from the headings and cells together.

A blank first cell, a heading too many or one too few moves a whole table under the wrong words.
It is asked when the figures suit the headings of the next column and not their own.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from charts.columns.fitting import fits
from charts.dimensions import Role, usual
from charts.layout.fields import Field, FieldKind
from charts.layout.kinds import Content
from charts.layout.looks import look
from charts.plausible_ranges import Limits
from charts.quantities import Unit
from charts.schema import Definition, Dimension, Kind

_NAMING: Final = frozenset({Role.LABEL, Role.IDENTITY})
_WITH_LIMITS: Final = frozenset(Dimension) - {Dimension.OTHER, Dimension.AGE}
_FEWEST: Final = 3


def slipped(fields: Sequence[Field]) -> bool:
    """Whether the cells suit the headings only when all of these move by one column.

    The sizes may have moved with them or have stayed where they are. One misfit is enough where a
    measure has no figure at all, as the last one has when the first cell of every row was lost.
    """
    measures = [field for field in fields if _measured(field)]
    named = [field for field in fields if _measured(field) or field.heading.role in _NAMING]
    return any(
        len(known) >= _FEWEST
        and _misfits(known) >= (1 if _empty(known) else 2)
        and any(_all_suit(known, shift) for shift in (1, -1))
        for known in (measures, named)
    )


def _measured(field: Field) -> bool:
    return field.heading.role is Role.MEASURE and field.heading.dimension in _WITH_LIMITS


def _misfits(known: Sequence[Field]) -> int:
    return sum(not _suits(field, field) for field in known)


def _empty(known: Sequence[Field]) -> int:
    return sum(field.kind is FieldKind.EMPTY for field in known)


def _all_suit(known: Sequence[Field], shift: int) -> bool:
    """Every column that holds something suits the heading ``shift`` columns further on.

    The columns go round: the last heading may belong to the first column. An empty column takes
    any heading, and a chart has one at most.
    """
    headings = [*known[shift:], *known[:shift]]
    return _empty(known) < 2 and all(
        _suits(field, heading) for field, heading in zip(known, headings, strict=True)
    )


def _suits(field: Field, heading: Field) -> bool:
    content = Content.of(field.cells)
    if content.filled == 0:
        return True
    if heading.heading.role in _NAMING:
        return not _holds_ranges(field)
    if content.most(content.wordy_labels) or heading.heading.dimension is None:
        return False
    unit = heading.heading.unit
    return fits(field, heading.heading.dimension, unit, limits=_usual)


def _holds_ranges(field: Field) -> bool:
    quantities = (look(cell[0].text).reading.quantity for cell in field.cells if cell)
    kinds = [quantity.kind for quantity in quantities if quantity is not None]
    return 2 * sum(kind is Kind.RANGE for kind in kinds) > len(field.cells)


def _usual(dimension: Dimension, unit: Unit, definition: Definition) -> Limits | None:
    del definition
    return usual(dimension, unit)
