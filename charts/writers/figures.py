"""A chart's value in print: in cm and inches, or kg and lb, and which of the two is the maker's.

The printed figure is shown exactly; the other one is converted, rounded for display and marked by
whoever prints it. Nothing here is ever compared.
"""

from __future__ import annotations

from dataclasses import dataclass
from decimal import Decimal
from fractions import Fraction
from typing import Final

from charts.notation import read_cell
from charts.quantities import FAMILY, METRIC, Family, Unit, canonical, converted
from charts.schema import Kind, PrintedBothWays, Range
from charts.wording import Wording

METRIC_UNIT: Final = {Family.LENGTH: Unit.CM, Family.MASS: Unit.KG, Family.AGE: Unit.YEARS}
OTHER_UNIT: Final = {Family.LENGTH: Unit.IN, Family.MASS: Unit.LB}

_SHOWN_STEP: Final = {Unit.CM: "0.5", Unit.KG: "0.5", Unit.LB: "1", Unit.YEARS: "0.5"}
_BINARY_STEPS: Final = frozenset(Decimal(1) / 2**power for power in range(1, 7))


@dataclass(frozen=True, slots=True)
class Printed:
    """One value in one unit. ``published``: the maker's own figure, else converted and rounded."""

    text: str
    published: bool


@dataclass(frozen=True, slots=True)
class _Ends:
    """Figures in one unit with the step they were printed to (None: converted)."""

    unit: Unit
    low: Decimal | None
    high: Decimal | None
    value: Decimal | None
    step: Decimal | None


def metric(value: Range, wording: Wording) -> Printed:
    """``value`` in cm, kg or years; what could not be read, as it is printed."""
    if value.kind is Kind.UNREAD:
        return Printed(wording.say("combined", "unread", text=value.published), published=True)
    return _in_unit(value, METRIC_UNIT[FAMILY[value.unit]], wording)


def other(value: Range, wording: Wording) -> Printed | None:
    """``value`` in inches or pounds; None where there is no such unit or no figure."""
    family = FAMILY[value.unit]
    if value.kind is Kind.UNREAD or family not in OTHER_UNIT:
        return None
    return _in_unit(value, OTHER_UNIT[family], wording)


def printed_unit(value: Range) -> Unit | None:
    """The unit the maker's figure is in: as printed, or as its digits prove; None if neither."""
    if value.published_unit is not None:
        return value.published_unit
    quantity = read_cell(value.published).quantity
    if quantity is None:
        return None
    figures = [
        (figure.value, stored)
        for figure, stored in (
            (quantity.low, value.low),
            (quantity.high, value.high),
            (quantity.value, value.value),
        )
        if figure is not None and stored is not None
    ]
    family = FAMILY[value.unit]
    for unit in (unit for unit in Unit if FAMILY[unit] is family):
        if figures and all(canonical(printed, unit) == stored for printed, stored in figures):
            return unit
    return None


def _in_unit(value: Range, unit: Unit, wording: Wording) -> Printed:
    also = value.also_published
    if also is not None and _same_system(also.unit, unit):
        return Printed(_text(value, _also_ends(also, unit), wording), published=True)
    own = printed_unit(value)
    published = own is not None and _same_system(own, unit)
    return Printed(_text(value, _own_ends(value, unit, published), wording), published)


def _same_system(one: Unit, other_unit: Unit) -> bool:
    if FAMILY[one] is Family.AGE:
        return True
    return (one in METRIC) is (other_unit in METRIC)


def _own_ends(value: Range, unit: Unit, published: bool) -> _Ends:
    def shown(figure: Decimal | None) -> Decimal | None:
        return None if figure is None else converted(figure, value.unit, unit)

    step = value.low_step if value.low_step is not None else value.high_step
    return _Ends(
        unit,
        shown(value.low),
        shown(value.high),
        shown(value.value),
        shown(step) if published else None,
    )


def _also_ends(also: PrintedBothWays, unit: Unit) -> _Ends:
    def shown(figure: Decimal | None) -> Decimal | None:
        return None if figure is None else converted(figure, also.unit, unit)

    step = also.low_step if also.low_step is not None else also.high_step
    return _Ends(
        unit, shown(also.low), shown(also.high), shown(also.value), shown(step or Decimal(1))
    )


def _text(value: Range, ends: _Ends, wording: Wording) -> str:
    figures = {
        name: _figure(figure, ends, wording)
        for name, figure in (("low", ends.low), ("high", ends.high), ("value", ends.value))
        if figure is not None
    }
    text = wording.say("combined", _pattern(value, ends), **figures)
    if value.tolerance is not None and ends.value is not None:
        tolerance = _figure(converted(value.tolerance, value.unit, ends.unit), ends, wording)
        text = wording.say("combined", "with-tolerance", value=text, tolerance=tolerance)
    return wording.say("combined", "circa", value=text) if value.circa else text


def _pattern(value: Range, ends: _Ends) -> str:
    """The key of the sentence for this kind of value and these ends."""
    if ends.value is not None:
        return "single"
    if ends.low is None:
        return "at-most" if value.high_included else "under"
    if ends.high is None:
        return "at-least" if value.low_included else "over"
    if not value.high_included:
        return "range-under" if value.low_included else "range-between"
    return "range" if value.low_included else "range-over"


def _figure(figure: Decimal, ends: _Ends, wording: Wording) -> str:
    if ends.step is None:
        if ends.unit is Unit.IN:
            return wording.inches(converted(figure, Unit.IN, Unit.CM))
        return wording.number(figure, _SHOWN_STEP[ends.unit])
    if ends.unit is Unit.IN and ends.step in _BINARY_STEPS:
        return _with_fraction(figure)
    return wording.number(figure, "0.001")


def _with_fraction(figure: Decimal) -> str:
    """34.375 as "34 3/8", as a maker who prints eighths does."""
    exact = Fraction(figure)
    whole, rest = divmod(exact, 1)
    if not rest:
        return str(whole)
    return f"{whole} {rest}" if whole else str(rest)
