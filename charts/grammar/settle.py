"""From what was parsed to a quantity: one unit for all its figures, or none at all."""

from __future__ import annotations

from decimal import Decimal
from functools import lru_cache
from typing import Final, NamedTuple

from charts.cell_reading import Expected, Quantity
from charts.grammar.numbers import Doubt, Value
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
_HEIGHT: Final = Dimension.HEIGHT
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
        _, unit, is_whole, inch_notation, doubted = one
        if unit is None:
            bare = True
        elif unit != printed:
            mixed = printed is not None
            printed = printed or unit
        whole = whole or is_whole
        fractions = fractions or inch_notation
        doubt = doubt or doubted
    return _Tally(printed, mixed, bare, whole, fractions, doubt)


def settle(draft: Draft, expected: Expected, text: str) -> Settled | None:
    """The quantity of a draft, or None when its units cannot be those of one quantity.

    One unit anywhere holds for every figure; two units of one kind are converted to the finer.
    """
    tally = _tally(draft)
    unit = _unit_of(tally, draft, expected)
    if tally.printed is not None and unit is None:
        return None
    if tally.mixed or tally.printed in _MULTIPLES:
        draft = _in_one_unit(draft, None if tally.mixed else tally.printed, unit)
    low, high, value, tolerance = draft.low, draft.high, draft.value, draft.tolerance
    quantity = Quantity(
        draft.kind,
        text,
        low and low.figure,
        high and high.figure,
        value and value.figure,
        unit,
        draft.low_included,
        draft.high_included,
        draft.circa,
        tolerance and tolerance.figure,
    )
    return Settled(quantity, tally.doubt, tally.printed is not None)


def _unit_of(tally: _Tally, draft: Draft, expected: Expected) -> Unit | None:
    """The one unit of a draft; beside two units, or feet with inches, a bare number has none.

    5'4 - 6 is 6 feet or 5 feet 6.
    """
    if tally.bare and tally.printed is not None and (tally.whole or tally.mixed):
        return None
    if tally.mixed:
        return _one_unit(_units(draft))
    if tally.printed is not None:
        return _UNITS[tally.printed]
    if tally.fractions or expected.dimension is _HEIGHT:
        return _proven(draft, expected)
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


def _in_one_unit(draft: Draft, lone: str | None, unit: Unit | None) -> Draft:
    """The same draft, its figures in the unit of its quantity."""

    def settled(one: Value | None) -> Value | None:
        return one and one._replace(figure=_in_unit(one, lone, unit))

    return draft._replace(
        low=settled(draft.low),
        high=settled(draft.high),
        value=settled(draft.value),
        tolerance=settled(draft.tolerance),
    )


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


def _proven(draft: Draft, expected: Expected) -> Unit | None:
    """The unit that the notation proves: inches by fractions, metres by a height of 1 to 2."""
    ends = [one for one in (draft.low, draft.high, draft.value) if one is not None]
    if expected.dimension is _HEIGHT and ends and all(map(_metre_like, ends)):
        return Unit.M
    for one in ends:
        if one.inch_notation:
            unsaid = expected.unit is None and _inch_like(ends, expected)
            return Unit.IN if unsaid or expected.unit is Unit.IN else None
    return None


def _inch_like(values: list[Value], expected: Expected) -> bool:
    """Whether figures with fractions can be inches of what is measured."""
    dimension = expected.dimension
    if dimension is None or dimension is Dimension.OTHER:
        return True
    limits = plausible(dimension, Unit.IN, expected.definition)
    return limits is not None and all(limits[0] <= one.figure.value <= limits[1] for one in values)


def _metre_like(one: Value) -> bool:
    return one.figure.step < 1 and METRES[0] <= one.figure.value <= METRES[1]
