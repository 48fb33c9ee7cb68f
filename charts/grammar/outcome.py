"""From a settled quantity to the reading of its cell: what is vouched for and what is asked."""

from __future__ import annotations

import re
from decimal import Decimal
from functools import lru_cache
from typing import Final

from charts.cell_reading import CellReading, Expected, Quantity, Reading
from charts.grammar.numbers import Doubt
from charts.grammar.settle import METRES, METRES_STEP, Settled
from charts.grammar.values import INCHES_OF_A_FOOT, POUNDS_OF_A_STONE
from charts.plausible_ranges import half_of_a_girth, plausible
from charts.quantities import FAMILY, Family, Figure, Unit, factor
from charts.schema import Basis, Dimension, Kind

Candidates = tuple[tuple[Quantity, str], ...]
# Asked of every cell, and an enum looks its members up anew at each mention.
_READ: Final = Reading.READ
_UNREAD: Final = Kind.UNREAD
_STONES: Final = Unit.ST
_POINTED: Final = frozenset({Unit.ST, Unit.FT})
_TEN: Final = Decimal(10)
_TWO_NUMBERS: Final = re.compile(r"(\d+),(\d+)")
_KINDRED: Final = (
    {Unit.FT, Unit.IN},
    {Unit.ST, Unit.LB},
    {Unit.M, Unit.CM},
)
_FAMILIES: Final = {Dimension.WEIGHT: Family.MASS, Dimension.AGE: Family.AGE}
"""What is measured otherwise than in lengths."""
_OF_SOMETHING_ELSE: Final = (Decimal(1), Decimal(0))
"""The limits in a unit that does not measure the dimension: no figure is between them."""
_GARMENT_ROOM: Final = Decimal("1.25")
_OTHER_UNITS: Final = {
    Family.LENGTH: (Unit.CM, Unit.IN, Unit.MM, Unit.M),
    Family.MASS: (Unit.KG, Unit.LB),
    Family.AGE: (),
}
_UNDECIDED: Final = frozenset({"thousands", "comma-between", "decimal-feet"})


def outcome(settled: Settled, expected: Expected) -> CellReading:
    """The reading of a cell that is one quantity."""
    quantity = settled.quantity
    if quantity.kind is _UNREAD:
        return CellReading(Reading.TOLERANCE, quantity)
    doubt = settled.doubt
    if doubt is not None or expected.unit in _POINTED:
        pointed = _pointed_stones(settled, expected) or _pointed_feet(settled, expected)
        if pointed is not None:
            return pointed
    if doubt is not None:
        return _asked(settled, doubt)
    if quantity.low and quantity.high and quantity.low.value > quantity.high.value:
        turned = quantity._replace(low=quantity.high, high=quantity.low)
        return asked("order-broken", None, ((turned, "ends-turned"),))
    unknown = expected.dimension is None
    doubted = (_like_metres if unknown else in_doubt)(quantity, expected)
    if doubted is not None:
        return doubted
    notes = _notes(settled, expected) if settled.printed_unit else ()
    return CellReading(_READ, quantity, notes=notes)


def asked(code: str, quantity: Quantity | None, candidates: Candidates = ()) -> CellReading:
    """A cell that a person must decide."""
    return CellReading(Reading.ASK, quantity, code=code, candidates=candidates)


def _like_metres(quantity: Quantity, expected: Expected) -> CellReading | None:
    """1,70 where neither dimension nor unit is known may be a height in metres."""
    value = quantity.value
    if value is None or expected.dimension or expected.unit or quantity.unit:
        return None
    if value.step != METRES_STEP or not METRES[0] <= value.value <= METRES[1]:
        return None
    return asked("unit-missing", quantity, ((quantity._replace(unit=Unit.M), "other-unit"),))


def _notes(settled: Settled, expected: Expected) -> tuple[str, ...]:
    unit = settled.quantity.unit
    if expected.unit is None or unit in {None, expected.unit}:
        return ()
    said = {expected.unit, expected.second_unit}
    kindred = any(unit in pair and expected.unit in pair for pair in _KINDRED)
    return () if unit in said or kindred else ("cell-unit-beats-heading",)


def _asked(settled: Settled, doubt: Doubt) -> CellReading:
    quantity = settled.quantity
    candidates = [(quantity, doubt.evidence)]
    if doubt.evidence in _UNDECIDED:
        candidates = [(quantity, "as-printed"), *_otherwise(quantity, doubt.evidence)]
        return asked(doubt.code, None, tuple(candidates))
    return asked(doubt.code, quantity, tuple(candidates))


def _otherwise(quantity: Quantity, evidence: str) -> Candidates:
    """The second reading of a notation that is never decided here."""
    if evidence == "thousands":
        return ((scaled(quantity, _TEN**3), evidence),)
    if evidence == "comma-between":
        return _comma_between(quantity)
    return _joined(quantity)


def _comma_between(quantity: Quantity) -> Candidates:
    """34,36 where a comma is no decimal mark: two whole numbers."""
    halves = _TWO_NUMBERS.search(quantity.text)
    if quantity.kind is not Kind.SINGLE or halves is None:
        return ()
    low, high = (Figure(Decimal(half), Decimal(1)) for half in halves.groups())
    if low.value > high.value:
        return ()
    span = quantity._replace(kind=Kind.RANGE, low=low, high=high, value=None)
    return ((span, "comma-between"),)


def _joined(quantity: Quantity) -> Candidates:
    """5.4 ft as 5 ft 4 in; from a figure already in inches."""
    if quantity.value is None:
        return ()
    big = quantity.value.value / INCHES_OF_A_FOOT
    whole = int(big)
    digits = str(big.normalize()).partition(".")[2]
    if not digits or int(digits) >= INCHES_OF_A_FOOT:
        return ()
    figure = Figure(Decimal(whole * INCHES_OF_A_FOOT + int(digits)), Decimal(1))
    return ((quantity._replace(value=figure), "feet-inches"),)


def _pointed_stones(settled: Settled, expected: Expected) -> CellReading | None:
    """9.7 in stones: nine stone seven far oftener than nine and seven tenths, never decided here.

    Behind the point of 9.75 no pounds can stand; it is asked about as it is, with its column.
    """
    quantity = settled.quantity
    in_cell = settled.doubt is not None and settled.doubt.evidence == "decimal-stones"
    if not in_cell and (quantity.unit is not None or expected.unit is not _STONES):
        return None
    stones = scaled(quantity, 1 / Decimal(POUNDS_OF_A_STONE)) if in_cell else quantity
    pounds = [_behind_point(one) for one in _figures(stones) if one.step < 1]
    if not pounds or "/" in quantity.text:
        return None
    plain = stones._replace(unit=Unit.ST)
    ends = [_in_pounds(one) for one in (stones.low, stones.high, stones.value)]
    if max(pounds) >= POUNDS_OF_A_STONE:
        return asked("feet-or-range", plain, ((plain, "as-printed"),))
    low, high, value = ends
    joined = stones._replace(low=low, high=high, value=value, unit=Unit.LB)
    return asked("feet-or-range", joined, ((joined, "stones-pounds"), (plain, "as-printed")))


def _pointed_feet(settled: Settled, expected: Expected) -> CellReading | None:
    """5.2 - 5.5 in feet: inches behind the point as often as tenths, never decided here.

    Behind the point of 5.75 no inches can stand; it is asked about as it is, with its column.
    """
    quantity = settled.quantity
    if quantity.unit is not None or expected.unit is not Unit.FT or "/" in quantity.text:
        return None
    inches = [_behind_point(one) for one in _figures(quantity) if one.step < 1]
    if not inches:
        return None
    plain = quantity._replace(unit=Unit.FT)
    if max(inches) >= INCHES_OF_A_FOOT:
        return asked("feet-or-range", plain, ((plain, "as-printed"),))
    low, high, value = (_in_inches(one) for one in (quantity.low, quantity.high, quantity.value))
    joined = quantity._replace(low=low, high=high, value=value, unit=Unit.IN)
    return asked("feet-or-range", joined, ((joined, "feet-inches"), (plain, "as-printed")))


def _in_inches(figure: Figure | None) -> Figure | None:
    if figure is None:
        return None
    inches = int(figure.value) * INCHES_OF_A_FOOT + _behind_point(figure)
    return Figure(Decimal(inches), Decimal(1))


def _behind_point(figure: Figure) -> int:
    """The digits behind the point as a number: 7 of 9.7, 10 of 9.10, 0 of a whole figure."""
    return int(figure.value % 1 / figure.step) if figure.step < 1 else 0


def _in_pounds(figure: Figure | None) -> Figure | None:
    if figure is None:
        return None
    pounds = int(figure.value) * POUNDS_OF_A_STONE + _behind_point(figure)
    return Figure(Decimal(pounds), Decimal(1))


def in_doubt(quantity: Quantity, expected: Expected) -> CellReading | None:
    """The question about a quantity that its column makes impossible, or None."""
    unit = quantity.unit or expected.unit
    if expected.dimension is None or unit is None:
        return None
    limits = _limits(unit, expected)
    if limits is _OF_SOMETHING_ELSE:
        return asked("units-disagree", quantity, ((quantity, "as-printed"),))
    if _within(limits, quantity):
        return None
    candidates = _instead(quantity, unit, expected)
    code = "impossible"
    if [why for _, why in candidates] == ["half-girth"]:
        code = "laid-flat"
    return asked(code, quantity, candidates)


def _figures(quantity: Quantity) -> list[Figure]:
    ends = (quantity.low, quantity.high, quantity.value)
    return [end for end in ends if end is not None]


def _fits(quantity: Quantity, unit: Unit, expected: Expected) -> bool:
    return _within(_limits(unit, expected), quantity)


def _within(limits: tuple[Decimal, Decimal] | None, quantity: Quantity) -> bool:
    if limits is None:
        return True
    low, high = limits
    for figure in (quantity.low, quantity.high, quantity.value):
        if figure is not None and not low <= figure.value <= high:
            return False
    return True


@lru_cache(maxsize=1024)
def _limits(unit: Unit, expected: Expected) -> tuple[Decimal, Decimal] | None:
    """Plausible for a body; half of it for what lies flat, more for a finished vest."""
    dimension = expected.dimension
    if dimension is None or dimension is Dimension.OTHER:
        return None
    if FAMILY[unit] is not _FAMILIES.get(dimension, Family.LENGTH):
        return _OF_SOMETHING_ELSE
    limits = plausible(dimension, unit, expected.definition)
    if limits is None:
        return None
    if expected.basis is Basis.FLAT:
        return limits[0] / 2, limits[1] / 2
    low = limits[0]
    if expected.least_cm is not None and FAMILY[unit] is Family.LENGTH:
        low = min(low, expected.least_cm / factor(unit))
    return low, limits[1] * (_GARMENT_ROOM if expected.basis is Basis.FINISHED else 1)


def _instead(quantity: Quantity, unit: Unit, expected: Expected) -> Candidates:
    """What an impossible figure may stand for, each with its evidence."""
    found: list[tuple[Quantity, str]] = []
    if all(figure.step == 1 and figure.value >= 100 for figure in _figures(quantity)):
        tenth = scaled(quantity, 1 / _TEN)
        if _fits(tenth, unit, expected):
            found.append((tenth, "decimal-lost"))
    if all(figure.step == Decimal("0.001") for figure in _figures(quantity)):
        thousand = scaled(quantity, _TEN**3)
        if _fits(thousand, unit, expected):
            found.append((thousand, "thousands"))
    if quantity.unit is None or quantity.unit is expected.unit:
        found += [
            (quantity._replace(unit=other), "other-unit")
            for other in _OTHER_UNITS[FAMILY[unit]]
            if other is not unit and _fits(quantity, other, expected)
        ]
    half = expected.dimension and half_of_a_girth(expected.dimension, unit)
    if half and expected.basis is not Basis.FLAT:
        figures = _figures(quantity)
        if all(half[0] <= figure.value <= half[1] for figure in figures):
            found.append((quantity, "half-girth"))
    return tuple(found)


def scaled(quantity: Quantity, times: Decimal) -> Quantity:
    """The same quantity with every figure and step times ``times``."""

    def one(figure: Figure | None) -> Figure | None:
        return figure and Figure(figure.value * times, figure.step * times)

    return quantity._replace(
        low=one(quantity.low),
        high=one(quantity.high),
        value=one(quantity.value),
        tolerance=one(quantity.tolerance),
    )
