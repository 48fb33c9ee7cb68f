"""Two columns of one measure whose units have changed places in the headings: an export's slip.

Under ``Chest (in)`` stands 86-91 and under ``Chest (cm)`` 34-36. The figures of the two prove it
together; nothing is converted silently.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from decimal import Decimal
from typing import Final

from charts.columns.fitting import printed_figures
from charts.columns.meaning import Column
from charts.columns.words import Surroundings
from charts.findings import Candidate
from charts.quantities import Unit
from charts.schema import UnitFrom

_INCH_CM: Final = Decimal("2.54")
_ROUNDING_CM: Final = Decimal("1.27")
"""Half an inch: what rounding to whole inches moves a figure by at most."""
_FEWEST: Final = 3
AS_PRINTED: Final = "as-printed"


def units_exchanged(columns: Sequence[Column], around: Surroundings) -> list[Column]:
    """The columns with the units of such pairs put right, and one question on all of them."""
    found = list(columns)
    for number, inches in enumerate(columns):
        partner = next((n for n, one in enumerate(columns) if _exchanged(inches, one)), None)
        if partner is not None:
            found[number] = _asked(inches, Unit.CM, columns[partner], around)
            found[partner] = _asked(columns[partner], Unit.IN, inches, around)
    return found


def _exchanged(inches: Column, metric: Column) -> bool:
    """Whether what is headed in inches is 2.54 times what is headed in cm, figure by figure."""
    if (inches.unit, metric.unit) != (Unit.IN, Unit.CM):
        return False
    if (inches.dimension, inches.band, inches.role) != (
        metric.dimension,
        metric.band,
        metric.role,
    ):
        return False
    pairs = list(zip(_bare(inches), _bare(metric), strict=False))
    alike = len(_bare(inches)) == len(_bare(metric)) >= _FEWEST
    return alike and all(abs(large - small * _INCH_CM) <= _ROUNDING_CM for large, small in pairs)


def _bare(column: Column) -> list[Decimal]:
    return [value for value, own in printed_figures(column.field) if own is None]


def _asked(column: Column, unit: Unit, partner: Column, around: Surroundings) -> Column:
    """The column in the unit that its figures and those of its partner prove."""
    figure = _bare(column)[0] if unit is Unit.CM else _bare(partner)[0]
    small = _bare(partner)[0] if unit is Unit.CM else _bare(column)[0]
    candidates = (
        Candidate(f"{figure:f} cm", "cm", value=figure, why="column-fits"),
        Candidate(f"{small:f} cm", "cm", value=small, why=AS_PRINTED),
    )
    heads = (column, partner) if unit is Unit.CM else (partner, column)
    ident = around.log.add(
        "units-swapped",
        heads[0].place,
        key=around.table.area,
        candidates=candidates,
        heading=heads[0].heading,
        unit=Unit.CM.value,
    )
    if around.answers.chosen.get(ident) == AS_PRINTED:
        return column.asking(ident)
    source = UnitFrom.PERSON if around.log.settled(ident) else UnitFrom.INFERRED
    return replace(column, unit=unit, unit_from=source, second_unit=None).asking(ident)
