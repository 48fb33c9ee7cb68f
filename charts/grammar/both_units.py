"""One quantity in two units: 34-36 in (86-91 cm), 33 lb/15 kg, each end in both units."""

from __future__ import annotations

from typing import Final, NamedTuple

from charts.cell_reading import Expected, Quantity
from charts.grammar.agreement import Agreement, agreement, alike
from charts.grammar.numbers import Doubt, Value
from charts.grammar.ranges import quantity
from charts.grammar.senses import (
    AND,
    AT_LEAST,
    BELOW,
    BREAK,
    CLOSE,
    COMMA,
    END,
    FROM,
    LEAST,
    MOST,
    OPEN,
    RANGE_MARK,
    SLASH,
)
from charts.grammar.settle import Draft, Settled, settle
from charts.grammar.tokens import Cell
from charts.grammar.values import value
from charts.quantities import FAMILY, METRIC, Family, Unit
from charts.schema import Dimension, Kind

_OTHER_SYSTEM: Final = {
    Unit.CM: (Unit.IN,),
    Unit.MM: (Unit.IN, Unit.CM),
    Unit.M: (Unit.IN, Unit.CM),
    Unit.IN: (Unit.CM,),
    Unit.FT: (Unit.CM,),
    Unit.KG: (Unit.LB,),
    Unit.G: (Unit.KG,),
    Unit.LB: (Unit.KG,),
    Unit.ST: (Unit.KG,),
    Unit.YEARS: (),
}
_UNSAID: Final = ((Unit.IN, Unit.CM), (Unit.CM, Unit.IN), (Unit.LB, Unit.KG), (Unit.KG, Unit.LB))

_LEAST_FOR_A_RATIO: Final = 4
"""A whole figure below is known to no better than an eighth (common practice, no source)."""


class Both(NamedTuple):
    """The metric quantity, the other one, and what must be asked or noted."""

    quantity: Quantity
    also: Quantity | None
    doubt: Doubt | None = None
    note: str | None = None
    other_reading: Quantity | None = None


def both_units(cell: Cell) -> Both | None:
    """The whole cell as one quantity in two units, or None."""
    halves = _halves(cell) or _ends_in_both(cell)
    if halves is None:
        return None
    first, second = halves
    if first.quantity.unit is not None and first.quantity.unit is second.quantity.unit:
        # 5'4" / 64 in is one length; 84 cm, 88 cm are two and no quantity in two units.
        return Both(first.quantity, None, first.doubt) if _same(first, second) else None
    return _assigned(first, second, cell)


def _same(first: Settled, second: Settled) -> bool:
    one, other = first.quantity, second.quantity
    return (one.low, one.high, one.value) == (other.low, other.high, other.value)


def _halves(cell: Cell) -> tuple[Settled, Settled] | None:
    """Read "quantity sep quantity" and "quantity (quantity)"."""
    read = quantity(cell, 0)
    if read is None:
        return None
    left, at = read
    sense = cell.senses[at]
    bracket = bool(sense & OPEN)
    start = at + bool(sense & (OPEN | SLASH | BREAK | COMMA))
    if start == at and cell.units[at - 1] is None:
        return None
    read = quantity(cell, start)
    if read is None:
        return None
    right, after = read
    past = after + (bracket and bool(cell.senses[after] & CLOSE))
    if cell.senses[past] != END or (bracket and past == after):
        return None
    return _settled_pair(cell, left, (0, at), _like(left, right), (start, after))


def _like(left: Draft, right: Draft) -> Draft:
    """A comparator in front holds for both halves."""
    if right.kind is not Kind.SINGLE or left.kind not in {Kind.AT_MOST, Kind.AT_LEAST}:
        return right
    if left.kind is Kind.AT_MOST:
        return left._replace(high=right.value)
    return left._replace(low=right.value)


def _settled_pair(
    cell: Cell, left: Draft, one: tuple[int, int], right: Draft, other: tuple[int, int]
) -> tuple[Settled, Settled] | None:
    first = settle(left, cell.expected, cell.text(*one))
    second = settle(right, cell.expected, cell.text(*other))
    return None if first is None or second is None else (first, second)


class _End(NamedTuple):
    first: Value
    second: Value | None


def _end(cell: Cell, at: int) -> tuple[_End, int] | None:
    """A value with the same value in another unit: 117 cm (46 in), 33 lb/15 kg."""
    read = value(cell, at)
    if read is None:
        return None
    first, after = read
    bracket = bool(cell.senses[after] & OPEN)
    if not bracket and not cell.senses[after] & SLASH:
        return _End(first, None), after
    read = value(cell, after + 1)
    if read is None or read[0].unit in {None, first.unit}:
        return _End(first, None), after
    second, past = read
    if bracket and not cell.senses[past] & CLOSE:
        return None
    return _End(first, second), past + bracket


def _ends_in_both(cell: Cell) -> tuple[Settled, Settled] | None:
    """Read "pair to pair" and "over pair, up to pair"."""
    sense = cell.senses[0]
    start = 1 if sense & (LEAST | FROM) else 0
    low = _end(cell, start)
    if low is None:
        return None
    lower, at = low
    included, strict = not start or bool(sense & (AT_LEAST | FROM)), False
    if start and cell.senses[at] & (COMMA | AND):
        at += 1
    if start and cell.senses[at] & MOST:
        strict = bool(cell.senses[at] & BELOW)
    elif not cell.senses[at] & RANGE_MARK:
        return None
    high = _end(cell, at + 1)
    if high is None or cell.senses[high[1]] != END:
        return None
    return _two_ranges(cell, lower, high[0], low_included=included, high_included=not strict)


def _two_ranges(
    cell: Cell, low: _End, high: _End, *, low_included: bool, high_included: bool
) -> tuple[Settled, Settled] | None:
    if low.second is None or high.second is None:
        return None
    draft = Draft(
        Kind.RANGE,
        low.first,
        high.first,
        low_included=low_included,
        high_included=high_included,
    )
    other = draft._replace(low=low.second, high=high.second)
    whole = (0, cell.count)
    return _settled_pair(cell, draft, whole, other, whole)


def _assigned(first: Settled, second: Settled, cell: Cell) -> Both | None:
    """Give each half its unit: printed, the heading's in its order, or proven by the ratio."""
    one, other = first.quantity.unit, second.quantity.unit
    if one is not None and other is not None:
        return _compared(first, one, second, other)
    expected = cell.expected
    if one is None and other is None:
        if expected.unit is not None and expected.second_unit is not None:
            return _in_heading_order(first, second, expected.unit, expected.second_unit)
        return _by_ratio(first, second, expected.unit, expected.dimension)
    if one is not None:
        return _with_partner(first, one, second, expected, flipped=False)
    return _with_partner(second, other, first, expected, flipped=True) if other else None


def _with_partner(
    said: Settled, unit: Unit, unsaid: Settled, expected: Expected, *, flipped: bool
) -> Both | None:
    """One half prints its unit; the ratio or the heading gives that of the other."""
    from_heading = [one for one in (expected.unit, expected.second_unit) if one not in {None, unit}]
    fitting = [
        one
        for one in (*_OTHER_SYSTEM[unit], *from_heading)
        if one and _agree(said, unit, unsaid, one)
    ]
    near = [one for one in _OTHER_SYSTEM[unit] if alike(said.quantity, unit, unsaid.quantity, one)]
    partner = next(iter(fitting or from_heading or near), None)
    if partner is None or FAMILY[partner] is not FAMILY[unit]:
        return None
    if flipped:
        return _compared(unsaid, partner, said, unit)
    return _compared(said, unit, unsaid, partner)


def _agree(first: Settled, unit: Unit, second: Settled, other: Unit) -> bool:
    found = agreement(first.quantity, unit, second.quantity, other)
    return found in {Agreement.EXACT, Agreement.ROUNDED}


def _in_heading_order(first: Settled, second: Settled, unit: Unit, other: Unit) -> Both | None:
    if not _agree(first, unit, second, other) and _agree(first, other, second, unit):
        swapped = _compared(first, other, second, unit)
        return swapped and swapped._replace(doubt=Doubt("units-swapped", "other-unit"))
    return _compared(first, unit, second, other)


def _by_ratio(
    first: Settled, second: Settled, unit: Unit | None, dimension: Dimension | None
) -> Both | None:
    """34-36 / 86-91 with no unit or with one only: the ratio tells which is which.

    Of ages, and of bare figures as small as 2/3, a ratio tells nothing.
    """
    if dimension is Dimension.AGE or (unit is None and _small(first.quantity)):
        return None
    fitting = [
        pair
        for pair in _UNSAID
        if (unit is None or unit in pair)
        and (dimension is None or (dimension is Dimension.WEIGHT) is (Unit.KG in pair))
        and _agree(first, pair[0], second, pair[1])
    ]
    if len(fitting) != 1:
        return None
    found = _compared(first, fitting[0][0], second, fitting[0][1])
    if found is None or unit is not None:
        return found
    return found._replace(doubt=found.doubt or Doubt("unit-missing", "both-units"))


def _small(quantity: Quantity) -> bool:
    """Whether a figure is so small that rounding to a whole hides every ratio."""
    figures = (quantity.low, quantity.high, quantity.value)
    return any(one is not None and one.value < _LEAST_FOR_A_RATIO for one in figures)


def _compared(first: Settled, unit: Unit, second: Settled, other: Unit) -> Both | None:
    """The metric half as the reading, the other beside it; asked when they contradict."""
    if FAMILY[unit] is not FAMILY[other] or FAMILY[unit] is Family.AGE:
        return None
    how = agreement(first.quantity, unit, second.quantity, other)
    one, two = first.quantity._replace(unit=unit), second.quantity._replace(unit=other)
    if unit not in METRIC and other in METRIC:
        one, two = two, one
    doubt = first.doubt or second.doubt
    if doubt is not None and doubt.evidence == "hyphen-fraction" and how is not Agreement.APART:
        doubt = None
    if how in {Agreement.APART, Agreement.OTHER_SHAPE}:
        doubt = Doubt("units-disagree", "as-printed")
        return Both(one, two, doubt, other_reading=two)
    note = "rounding-between-units" if how is Agreement.ROUNDED else None
    return Both(one, two, doubt, note)
