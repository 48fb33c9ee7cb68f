"""A measure that names the sizes of a table and is stored as a measure too: ``Height`` over 98-104.

Where nothing else names the sizes a measure does, and what it measures is not lost by that.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from charts.dimensions import Role, read_heading
from charts.layout.false_friends import in_proportion, measures_of
from charts.layout.fields import Field
from charts.layout.looks import look
from charts.layout.view import At
from charts.schema import Dimension, Kind

GIRTHS: Final = frozenset({Dimension.CHEST, Dimension.WAIST, Dimension.HIP, Dimension.NECK})
"""None of them is longer in a long size."""
_NO_MEASURE: Final = frozenset({None, Dimension.AGE, Dimension.OTHER})


def measured_as(field: Field, fields: Sequence[Field]) -> Dimension | None:
    """What a column of names measures by its heading and by each of its cells; None for no measure.

    A word for size measures what is in proportion to the measures beside it, over ranges alone.
    """
    kinds = _kinds(field)
    if not kinds or None in kinds:
        return None
    given = {one.heading.dimension for one in fields if one.cells != field.cells}
    own = field.heading.dimension
    if field.heading.role is Role.MEASURE and own not in _NO_MEASURE:
        return own if own not in given else None
    if field.heading.role is not Role.LABEL or Kind.SINGLE in kinds:
        return None
    meant = (dim for dim in measures_of(field.heading) if dim not in given)
    return next((dim for dim in meant if in_proportion(field, dim, fields)), None)


def nominal(field: Field) -> bool:
    """Whether the figures may be names alone: ``Chest size`` over 34, 36."""
    words = (read_heading(word) for word in field.printed_heading.split())
    return Kind.SINGLE in _kinds(field) and any(one.role is Role.LABEL for one in words)


def names_the_side(dimension: Dimension | None, pairs: Sequence[tuple[At, At, At]]) -> bool:
    """Whether a measure in the corner of sizes and lengths names the sizes and not what is inside.

    ``Waist | Short | Long`` over ``28 | 76 | 86``: a girth is the same for every length. ``pairs``
    are size, length and figure.
    """
    sizes: dict[tuple[int, int], set[str]] = {}
    for size, _, figure in pairs:
        sizes.setdefault(size.origin, set()).add(figure.text.strip())
    return dimension in GIRTHS and any(len(texts) > 1 for texts in sizes.values())


def _kinds(field: Field) -> set[Kind | None]:
    """The kinds of the figures of a column; None among them where a cell is no plain figure."""
    looks = [look(at.text) for cell in field.cells for at in cell]
    readings = [one.reading.quantity if one.value else None for one in looks if not one.blank]
    return {one.kind if one is not None else None for one in readings}
