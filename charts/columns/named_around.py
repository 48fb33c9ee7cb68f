"""What is measured under no heading: told by the words around a table, or by the axis it is."""

from __future__ import annotations

from charts.columns.fitting import fits, telling
from charts.columns.words import Surroundings, dimension_in
from charts.dimensions import Role
from charts.layout.fields import Field, FieldKind
from charts.schema import Dimension, UnitFrom


def named_around(around: Surroundings) -> Dimension | None:
    """The dimension that the titles name, else the notes; not the one of a grid's other axis.

    "Size by chest and height" over a grid whose corner is the chest: the title names it again.
    """
    if _named_beside(around):
        return None
    other = {one.heading.dimension for one in around.table.of(FieldKind.VALUES)}
    taken = other if around.table.gridded else set()
    named = (dimension_in(around), noted(around))
    return next((one for one in named if one is not None and one not in taken), None)


def noted(around: Surroundings) -> Dimension | None:
    """The one dimension that the notes below name with nothing beside it: ``Back length in cm``."""
    named = {
        reading.dimension
        for words, reading in around.readings()
        if words.kind is UnitFrom.NOTE and reading.role is Role.MEASURE and not reading.candidates
    }
    return next(iter(named)) if len(named) == 1 else None


def axis_of_heights(one: Field, around: Surroundings) -> bool:
    """A nameless axis of a grid whose bands are usual for a body's height."""
    return around.table.gridded and fits(one, Dimension.HEIGHT, limits=telling)


def _named_beside(around: Surroundings) -> bool:
    """Whether another column names its measure: what the title names need not be the nameless one.

    "Short sleeve jersey" over ``Chest | | Waist`` says of the column between them nothing.
    """
    values = around.table.of(FieldKind.VALUES)
    headed = (one.heading for one in values if one.heads)
    return not around.table.gridded and any(one.dimension is not None for one in headed)
