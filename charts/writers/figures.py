"""A chart's value in print: in cm and inches, or kg and lb, and which of the two is the maker's.

The printed figure is shown exactly; the other one is converted, rounded for display and marked by
whoever prints it. Nothing here is ever compared.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
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
class _Shown:
    """One figure in the unit it is shown in, with its printed step (None: it is converted)."""

    value: Decimal
    unit: Unit
    step: Decimal | None


@dataclass(frozen=True, slots=True)
class _Ends:
    """The figures of one value in one unit; None where an end is open."""

    low: _Shown | None
    high: _Shown | None
    value: _Shown | None


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
    def shown(figure: Decimal | None, step: Decimal | None) -> _Shown | None:
        return _shown(figure, step if published else None, value.unit, unit)

    return _Ends(
        shown(value.low, value.low_step or value.high_step),
        shown(value.high, value.high_step or value.low_step),
        shown(value.value, value.low_step),
    )


def _also_ends(also: PrintedBothWays, unit: Unit) -> _Ends:
    def shown(figure: Decimal | None, step: Decimal | None) -> _Shown | None:
        return _shown(figure, step or Decimal(1), also.unit, unit)

    return _Ends(
        shown(also.low, also.low_step or also.high_step),
        shown(also.high, also.high_step or also.low_step),
        shown(also.value, also.low_step),
    )


def _shown(figure: Decimal | None, step: Decimal | None, given: Unit, unit: Unit) -> _Shown | None:
    if figure is None:
        return None
    printed_step = None if step is None else converted(step, given, unit)
    return _Shown(converted(figure, given, unit), unit, printed_step)


def _text(value: Range, ends: _Ends, wording: Wording) -> str:
    figures = {
        name: _figure(shown, wording)
        for name, shown in (("low", ends.low), ("high", ends.high), ("value", ends.value))
        if shown is not None
    }
    text = wording.say("combined", _pattern(value, ends), **figures)
    if value.tolerance is not None and ends.value is not None:
        shown = converted(value.tolerance, value.unit, ends.value.unit)
        tolerance = _figure(replace(ends.value, value=shown), wording)
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


def _figure(shown: _Shown, wording: Wording) -> str:
    if shown.step is None:
        if shown.unit is Unit.IN:
            return wording.inches(converted(shown.value, Unit.IN, Unit.CM))
        return wording.number(shown.value, _SHOWN_STEP[shown.unit])
    if shown.unit is Unit.IN and shown.step in _BINARY_STEPS:
        return _with_fraction(shown.value)
    return wording.number(shown.value, "0.001")


def _with_fraction(figure: Decimal) -> str:
    """34.375 as "34 3/8", as a maker who prints eighths does."""
    exact = Fraction(figure)
    whole, rest = divmod(exact, 1)
    if not rest:
        return str(whole)
    return f"{whole} {rest}" if whole else str(rest)
