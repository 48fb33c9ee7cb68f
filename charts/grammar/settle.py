"""From what was parsed to a quantity: one unit for all its figures, or none at all."""

from __future__ import annotations

from decimal import Decimal
from functools import lru_cache
from typing import Final, NamedTuple

from charts.cell_reading import Quantity
from charts.grammar.numbers import Doubt, Value
from charts.grammar.tokens import Cell
from charts.grammar.values import INCHES_OF_A_FOOT, POUNDS_OF_A_STONE
from charts.plausible_ranges import plausible
from charts.quantities import Figure, Unit, converted
from charts.schema import Dimension, Kind
from charts.unit_words import MONTHS

_MULTIPLES: Final = {
    "ft": (Unit.IN, Decimal(INCHES_OF_A_FOOT), Decimal(1)),
    "st": (Unit.LB, Decimal(POUNDS_OF_A_STONE), Decimal(1)),
    MONTHS: (Unit.YEARS, Decimal(1), Decimal(12)),
}
_UNITS: Final = {unit.value: unit for unit in Unit} | {
    printed: unit for printed, (unit, _, _) in _MULTIPLES.items()
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


class Settled(NamedTuple):
    """A quantity with what must be asked about it."""

    quantity: Quantity
    doubt: Doubt | None
    printed_unit: bool


class _Tally(NamedTuple):
    """What the values of a draft have in common: the unit printed first, whether there are more."""

    printed: str | None
    mixed: bool
    bare: bool
    whole: bool
    fractions: bool
    doubt: Doubt | None


def _tally(draft: Draft) -> _Tally:
    printed = None
    mixed = bare = whole = fractions = False
    doubt = draft.doubt
    for one in (draft.low, draft.high, draft.value, draft.tolerance):
        if one is None:
            continue
        if one.unit is None:
            bare = True
        elif one.unit != printed:
            mixed = printed is not None
            printed = printed or one.unit
        whole = whole or one.whole
        fractions = fractions or one.inch_notation
        doubt = doubt or one.doubt
    return _Tally(printed, mixed, bare, whole, fractions, doubt)


def settle(draft: Draft, cell: Cell, text: str) -> Settled | None:
    """The quantity of a draft, or None when its units cannot be those of one quantity.

    One unit anywhere holds for every figure; two units of one kind are converted to the finer.
    """
    tally = _tally(draft)
    unit = _unit_of(tally, draft, cell)
    if tally.printed is not None and unit is None:
        return None
    lone = None if tally.mixed else tally.printed
    quantity = Quantity(
        draft.kind,
        text,
        draft.low and _in_unit(draft.low, lone, unit),
        draft.high and _in_unit(draft.high, lone, unit),
        draft.value and _in_unit(draft.value, lone, unit),
        unit,
        draft.low_included,
        draft.high_included,
        draft.circa,
        draft.tolerance and _in_unit(draft.tolerance, lone, unit),
    )
    return Settled(quantity, tally.doubt, tally.printed is not None)


def _unit_of(tally: _Tally, draft: Draft, cell: Cell) -> Unit | None:
    """The one unit of a draft; beside two units, or feet with inches, a bare number has none.

    5'4 - 6 is 6 feet or 5 feet 6.
    """
    if tally.bare and tally.printed is not None and (tally.whole or tally.mixed):
        return None
    if tally.mixed:
        return _one_unit(_units(draft))
    if tally.printed is not None:
        return _UNITS[tally.printed]
    if tally.fractions or cell.expected.dimension is Dimension.HEIGHT:
        return _proven(draft, cell)
    return None


def _units(draft: Draft) -> frozenset[str]:
    values = (draft.low, draft.high, draft.value, draft.tolerance)
    return frozenset(one.unit for one in values if one is not None and one.unit)


@lru_cache(maxsize=256)
def _one_unit(printed: frozenset[str]) -> Unit | None:
    """The unit that figures in all of ``printed`` can be given in, None when there is none."""
    units = {_UNITS[one] for one in printed}
    if len(units) == 1:
        return units.pop()
    if units == {Unit.M, Unit.CM}:
        return Unit.CM
    return None


def _in_unit(one: Value, lone: str | None, unit: Unit | None) -> Figure:
    """The figure in the unit of its quantity; ``lone`` is the only unit printed in the cell."""
    printed = one.unit or lone
    figure = one.figure
    if printed in _MULTIPLES:
        _, times, per = _MULTIPLES[printed]
        # 5' is printed to the inch: nobody writes a body height in whole feet.
        step = _WHOLE if printed == "ft" else figure.step * times / per
        return Figure(figure.value * times / per, step)
    if printed == "m" and unit is Unit.CM:
        return Figure(converted(figure.value, Unit.M, unit), converted(figure.step, Unit.M, unit))
    return figure


def _proven(draft: Draft, cell: Cell) -> Unit | None:
    """The unit that the notation proves: inches by fractions, metres by a height of 1 to 2."""
    expected = cell.expected
    ends = [one for one in (draft.low, draft.high, draft.value) if one is not None]
    if expected.dimension is Dimension.HEIGHT and ends and all(map(_metre_like, ends)):
        return Unit.M
    for one in ends:
        if one.inch_notation:
            said = expected.unit is Unit.IN
            return Unit.IN if said or (expected.unit is None and _inch_like(ends, cell)) else None
    return None


def _inch_like(values: list[Value], cell: Cell) -> bool:
    """Whether figures with fractions can be inches of what is measured."""
    dimension = cell.expected.dimension
    if dimension is None or dimension is Dimension.OTHER:
        return True
    limits = plausible(dimension, Unit.IN, cell.expected.definition)
    return limits is not None and all(limits[0] <= one.figure.value <= limits[1] for one in values)


def _metre_like(one: Value) -> bool:
    return one.figure.step < 1 and METRES[0] <= one.figure.value <= METRES[1]
