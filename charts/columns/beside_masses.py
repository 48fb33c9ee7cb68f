"""Lengths without a heading beside masses: how tall the riders are who weigh so much.

``165-172 cm`` beside ``55-65 kg`` is a body's height where every figure is a usual one in a unit
that is printed, and no other column gives the height. It is asked about all the same.
"""

from __future__ import annotations

from charts.columns.fitting import all_masses, fits, no_height, printed_figures, telling
from charts.columns.words import Surroundings
from charts.layout.fields import Field, FieldKind, Table
from charts.remembered import remembered
from charts.schema import Dimension


def heights_beside_masses(one: Field, around: Surroundings) -> bool:
    """Whether a nameless column can only be how tall people of the weights beside it are."""
    values = around.table.of(FieldKind.VALUES)
    given = {field.heading.dimension for field in values}
    if one.printed_heading.strip() or Dimension.HEIGHT in given:
        return False
    if not _weighed(around.table) or not _tall(one):
        return False
    alike = [field for field in values if not field.printed_heading.strip() and _tall(field)]
    return alike == [one] and not no_height(one, around)


@remembered
def _weighed(table: Table) -> bool:
    """Whether a column of the table gives masses: asked again for each of its columns."""
    return any(map(_weighs, table.of(FieldKind.VALUES)))


def _weighs(field: Field) -> bool:
    named = field.heading.dimension is Dimension.WEIGHT
    return named or (not field.printed_heading.strip() and all_masses(field))


def _tall(field: Field) -> bool:
    if all_masses(field):
        return False
    united = field.heading.unit is not None or all(unit for _, unit in printed_figures(field))
    return united and fits(field, Dimension.HEIGHT, limits=telling)
