"""From what was parsed to a quantity: one unit for all its figures, or none at all."""

from __future__ import annotations

from decimal import Decimal
from typing import Final, NamedTuple

from charts.cell_reading import Quantity
from charts.grammar.numbers import Cell, Doubt
from charts.grammar.values import INCHES_OF_A_FOOT, POUNDS_OF_A_STONE, Value
from charts.plausible_ranges import plausible
from charts.quantities import Figure, Unit, converted
from charts.schema import Dimension, Kind
from charts.unit_words import MONTHS

_MULTIPLES: Final = {
    "ft": (Unit.IN, Decimal(INCHES_OF_A_FOOT), Decimal(1)),
    "st": (Unit.LB, Decimal(POUNDS_OF_A_STONE), Decimal(1)),
    MONTHS: (Unit.YEARS, Decimal(1), Decimal(12)),
}
METRES: Final = (Decimal("1.2"), Decimal("2.2"))
"""Body heights in metres, as they are told from other figures by their value."""
METRES_STEP: Final = Decimal("0.01")
_WHOLE: Final = Decimal(1)


class Draft(NamedTuple):
    """A quantity as parsed, its values still in the units they were printed in."""

    kind: Kind
    low: Value | None = None
    high: Value | None = None
    value: Value | None = None
    low_included: bool = True
    high_included: bool = True
    circa: bool = False
    tolerance: Value | None = None
    doubt: Doubt | None = None

    def values(self) -> list[Value]:
        """The values that are given, the tolerance last."""
        all_four = (self.low, self.high, self.value, self.tolerance)
        return [one for one in all_four if one is not None]


class Settled(NamedTuple):
    """A quantity with what must be asked about it."""

    quantity: Quantity
    doubt: Doubt | None
    printed_unit: bool


def settle(draft: Draft, cell: Cell, text: str) -> Settled | None:
    """The quantity of a draft, or None when its units cannot be those of one quantity.

    One unit anywhere holds for every figure; two units of one kind are converted to the finer.
    """
    values = draft.values()
    printed = {one.unit for one in values if one.unit is not None}
    unit = _one_unit(printed)
    if unit is None and printed:
        return None
    if printed and any(one.whole for one in values) and any(one.unit is None for one in values):
        return None
    if unit is None:
        unit = _proven([one for one in values if one is not draft.tolerance], cell)
    column = next(iter(printed)) if len(printed) == 1 else None

    def figure(one: Value | None) -> Figure | None:
        return None if one is None else _in_unit(one.figure, one.unit or column, unit)

    quantity = Quantity(
        draft.kind,
        text,
        figure(draft.low),
        figure(draft.high),
        figure(draft.value),
        unit,
        draft.low_included,
        draft.high_included,
        draft.circa,
        figure(draft.tolerance),
    )
    doubt = draft.doubt or next((one.doubt for one in values if one.doubt), None)
    return Settled(quantity, doubt, bool(printed))


def _one_unit(printed: set[str]) -> Unit | None:
    """The unit that figures in all of ``printed`` can be given in, None when there is none."""
    units = {_MULTIPLES[one][0] if one in _MULTIPLES else Unit(one) for one in printed}
    if len(units) == 1:
        return units.pop()
    if units == {Unit.M, Unit.CM}:
        return Unit.CM
    return None


def _in_unit(figure: Figure, printed: str | None, unit: Unit | None) -> Figure:
    if printed in _MULTIPLES:
        _, times, per = _MULTIPLES[printed]
        # 5' is printed to the inch: nobody writes a body height in whole feet.
        step = _WHOLE if printed == "ft" else figure.step * times / per
        return Figure(figure.value * times / per, step)
    if printed == "m" and unit is Unit.CM:
        return Figure(converted(figure.value, Unit.M, unit), converted(figure.step, Unit.M, unit))
    return figure


def _proven(values: list[Value], cell: Cell) -> Unit | None:
    """The unit that the notation proves: inches by fractions, metres by a height of 1 to 2."""
    expected = cell.expected
    if expected.dimension is Dimension.HEIGHT and values and all(map(_metre_like, values)):
        return Unit.M
    if not any(one.inch_notation for one in values):
        return None
    if expected.unit is Unit.IN:
        return Unit.IN
    return Unit.IN if expected.unit is None and _inch_like(values, cell) else None


def _inch_like(values: list[Value], cell: Cell) -> bool:
    """Whether figures with fractions can be inches of what is measured."""
    dimension = cell.expected.dimension
    if dimension is None or dimension is Dimension.OTHER:
        return True
    limits = plausible(dimension, Unit.IN, cell.expected.definition)
    return limits is not None and all(limits[0] <= one.figure.value <= limits[1] for one in values)


def _metre_like(one: Value) -> bool:
    return one.figure.step < 1 and METRES[0] <= one.figure.value <= METRES[1]
