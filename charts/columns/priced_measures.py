"""Columns that are headed like a price or a colour over ranges with a unit of length.

``Price`` over ``82-86 cm``: the heading was exchanged, or means a measure in another language. The
figures are not used, and what is not used is asked about.
"""

from __future__ import annotations

from collections.abc import Iterator
from typing import Final

from charts.columns.leftovers import say_unused
from charts.columns.words import Surroundings
from charts.dimensions import Role
from charts.layout.fields import Field, FieldKind
from charts.layout.looks import look
from charts.quantities import FAMILY, Family
from charts.schema import Kind

_FEWEST: Final = 2


def say_priced_measures(around: Surroundings) -> None:
    """Ask about each column of a table that is headed as no measure over ranges of lengths."""
    for field in around.table.of(FieldKind.SKIPPED):
        if field.heading.role is Role.OTHER and _measures(field):
            say_unused(field, around, "lengths")


def _measures(field: Field) -> bool:
    """Whether most of the filled cells are ranges with a unit of length of their own."""
    ranges = [*_ranges(field)]
    return len(ranges) >= _FEWEST and 2 * sum(ranges) > len(ranges)


def _ranges(field: Field) -> Iterator[bool]:
    for at in (at for cell in field.cells for at in cell):
        quantity = look(at.text).reading.quantity
        unit = quantity.unit if quantity is not None else None
        ranged = quantity is not None and quantity.kind is Kind.RANGE
        yield ranged and unit is not None and FAMILY[unit] is Family.LENGTH
