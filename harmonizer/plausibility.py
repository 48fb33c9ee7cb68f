"""Checks on what was typed. They ask, and correct nothing.

Bounds are shares of the reference population that a true person trips; the unit and digit checks
show both readings.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from datetime import date
from enum import StrEnum
from typing import Final

from charts.quantities import Unit, factor
from charts.reason import Reason
from charts.schema import Definition
from harmonizer.estimates import Estimate, estimates
from harmonizer.repeats import Settled, settled
from harmonizer.rider import BodyFigure, Measure, Rider
from harmonizer.settings import DEFAULTS, Settings
from harmonizer.states import SLACK

GIRTHS: Final = (Measure.CHEST, Measure.WAIST, Measure.HIP)
Z_ASK: Final = 2.5
Z_ALARM: Final = 3.0
CHANGE_LIMITS_CM: Final = {
    Measure.CHEST: 6.0,
    Measure.WAIST: 6.0,
    Measure.HIP: 6.0,
    Measure.BACK_LENGTH: 2.0,
}
"""More than this since last time is asked about."""
GROWTH_DAYS: Final = 90
"""A child that is larger after fewer days did not grow that much. Common practice, no source."""


class Weight(StrEnum):
    """How much a check weighs: an alarm is almost surely a mistake."""

    ASK = "ask"
    ALARM = "alarm"


@dataclass(frozen=True, slots=True)
class Check:
    """One question about what was typed: the measures it is about, and what to ask."""

    weight: Weight
    measures: tuple[Measure, ...]
    reason: Reason


def checks(
    rider: Rider, before: Rider | None = None, settings: Settings = DEFAULTS
) -> tuple[Check, ...]:
    """Everything to ask about ``rider``; ``before`` is the same rider when last measured."""
    known = settled(rider, settings)
    found = [*_units(rider, known), *_equal(known), *_thirds(known)]
    if rider.figure is BodyFigure.CHILD:
        found += [*_back_to_height(known, (0.25, 0.34), None), *_child_waist(known)]
    else:
        found += _back_to_height(known, (0.25, 0.31), (0.23, 0.33))
        found += _drops(known)
        found += _off_estimate(rider, known)
    if before is not None:
        found += _changed(rider, known, settled(before, settings))
    return tuple(found)


def _value(known: Sequence[Settled], measure: Measure) -> float | None:
    return next((one.value for one in known if one.measure is measure), None)


def _in(known: Sequence[Settled], measure: Measure, definition: Definition) -> float | None:
    """A reading in exactly one definition."""
    return next(
        (one.value for one in known if (one.measure, one.definition) == (measure, definition)), None
    )


def _ask(measure: Measure, code: str, /, **values: object) -> Check:
    return Check(Weight.ASK, (measure,), Reason(code, {"dimension": measure, **values}))


def _inch_cm() -> float:
    """An inch in cm. Asked for only where it is needed: behind it stands a heavy library."""
    return float(factor(Unit.IN))


def _units(rider: Rider, known: Sequence[Settled]) -> Iterator[Check]:
    """Inches typed as centimetres, centimetres as inches, millimetres as centimetres."""
    for one in known:
        length = one.measure.family is Measure.CHEST.family
        if length and one.value > 300:
            yield _ask(one.measure, "millimetres", x=one.value, other=one.value / 10)
        elif one.measure in GIRTHS and one.value > 160:
            yield _ask(one.measure, "cm-as-inches", x=one.value, other=one.value / _inch_cm())
        elif one.measure in GIRTHS and one.value < 60 and rider.figure is not BodyFigure.CHILD:
            yield _ask(one.measure, "inches", x=one.value, other=one.value * _inch_cm())


def _equal(known: Sequence[Settled]) -> Iterator[Check]:
    """Two dimensions with the same figure: copied by mistake?"""
    four = [one for one in known if one.measure in (*GIRTHS, Measure.BACK_LENGTH)]
    for place, one in enumerate(four):
        for other in four[place + 1 :]:
            if one.measure is not other.measure and abs(one.value - other.value) <= SLACK:
                values = {"dimension": one.measure, "second": other.measure, "x": one.value}
                yield Check(Weight.ASK, (one.measure, other.measure), Reason("equal", values))


def _thirds(known: Sequence[Settled]) -> Iterator[Check]:
    for one in known:
        if one.third_needed:
            yield _ask(one.measure, "third-reading")


def _back_to_height(
    known: Sequence[Settled], ask: tuple[float, float], alarm: tuple[float, float] | None
) -> Iterator[Check]:
    """A back from C7 to the dimples is a little over a quarter of the height."""
    back = _in(known, Measure.BACK_LENGTH, Definition.BACK_C7_SI)
    height = _value(known, Measure.HEIGHT)
    if back is None or height is None or ask[0] <= back / height <= ask[1]:
        return
    share = back / height
    weight = Weight.ALARM if alarm and not alarm[0] <= share <= alarm[1] else Weight.ASK
    values = {"dimension": Measure.BACK_LENGTH, "x": back, "share": share}
    yield Check(weight, (Measure.BACK_LENGTH, Measure.HEIGHT), Reason("back-to-height", values))


def _drops(known: Sequence[Settled]) -> Iterator[Check]:
    """Chest, waist and hip against each other, for the definitions the bounds are of."""
    waist = _in(known, Measure.WAIST, Definition.WAIST_NAVEL)
    chest = _in(known, Measure.CHEST, Definition.CHEST_WIDEST)
    hip = _in(known, Measure.HIP, Definition.HIP_SEAT)
    if waist is not None and chest is not None and not -5 <= chest - waist <= 25:
        yield _drop(Measure.CHEST, chest, waist)
    if waist is not None and hip is not None and not -8 <= hip - waist <= 30:
        yield _drop(Measure.HIP, hip, waist)


def _drop(measure: Measure, value: float, waist: float) -> Check:
    values = {"dimension": measure, "second": Measure.WAIST, "x": value, "y": waist}
    return Check(Weight.ASK, (measure, Measure.WAIST), Reason("drop", values))


def _child_waist(known: Sequence[Settled]) -> Iterator[Check]:
    waist, chest = _value(known, Measure.WAIST), _value(known, Measure.CHEST)
    if waist is not None and chest is not None and waist > chest + 3:
        yield _drop(Measure.CHEST, chest, waist)


def _off_estimate(rider: Rider, known: Sequence[Settled]) -> Iterator[Check]:
    """A girth that height and weight do not lead one to expect.

    The estimates are for the chest at its widest, the waist at the navel and the hip at its
    widest, which are the largest: a reading by another definition can only be too high.
    """
    expected = {one.measure: one for one in estimates(rider.figure, known)}
    for one in known:
        estimate = expected.get(one.measure)
        if estimate is None or one.measure not in GIRTHS or not 60 <= one.value <= 160:
            continue
        z = estimate.z(one.value)
        if abs(z) <= Z_ASK or (z < 0 and one.definition is not estimate.definition):
            continue
        swapped = _swapped(one.value, estimate)
        values = {"dimension": one.measure, "x": one.value, "expected": estimate.mean}
        if swapped is not None:
            yield _ask(one.measure, "digits-swapped", x=one.value, other=swapped)
            continue
        weight = Weight.ALARM if abs(z) > Z_ALARM else Weight.ASK
        yield Check(weight, (one.measure,), Reason("off-estimate", values))


def _swapped(value: float, estimate: Estimate) -> float | None:
    """The figure with two neighbouring digits exchanged, where that one is to be expected."""
    digits = str(int(value))
    for at in range(len(digits) - 1):
        other = digits[:at] + digits[at + 1] + digits[at] + digits[at + 2 :]
        swapped = float(other) + value - int(value)
        if abs(estimate.z(swapped)) < 1.0:
            return swapped
    return None


def _changed(rider: Rider, known: Sequence[Settled], before: Sequence[Settled]) -> Iterator[Check]:
    """More change since last time than a body usually makes; a child's growth is told apart."""
    last = {(one.measure, one.definition): one for one in before}
    for one in known:
        then = last.get((one.measure, one.definition))
        limit = CHANGE_LIMITS_CM.get(one.measure)
        if then is None or limit is None or abs(one.value - then.value) <= limit + SLACK:
            continue
        values: dict[str, object] = {"x": one.value, "y": then.value, "other": then.value}
        code = "grown" if rider.figure is BodyFigure.CHILD and _grew(one, then) else "changed"
        day = _day(then)
        if day is not None:
            code, values = f"{code}-since", values | {"day": day}
        yield _ask(one.measure, code, **values)


def _grew(now: Settled, then: Settled) -> bool:
    """Whether a difference is what a child's growth gives: upwards, and not within weeks."""
    first, second = _day(then), _day(now)
    apart = (second - first).days if first is not None and second is not None else GROWTH_DAYS
    return now.value > then.value and apart >= GROWTH_DAYS


def _day(one: Settled) -> date | None:
    return max((reading.on for reading in one.readings if reading.on is not None), default=None)
