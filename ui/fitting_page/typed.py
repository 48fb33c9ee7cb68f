"""What was typed into a reading's field: a value with its unit, a question, or not yet anything.

No Qt. The grammar is the importer's own; here a body's plausible range decides whether a unit that
was not typed is plain. Where it is not, the fitter is asked in place; nothing is guessed.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from decimal import Decimal
from enum import StrEnum
from typing import Final

from charts.notation import Expected, Reading, read_cell
from charts.quantities import FAMILY, METRIC, Family, Unit, canonical
from harmonizer.rider import Measure


class Standing(StrEnum):
    """How far a field has come."""

    EMPTY = "empty"
    PLAIN = "plain"  # a value that counts
    ASK = "ask"  # one of two or more units
    REFUSED = "refused"  # nothing that a body measures


@dataclass(frozen=True, slots=True)
class Typed:
    """``value`` in cm or kg where it is plain; ``choices`` are the units to ask about.

    ``figure`` is the number as typed, before conversion. ``code`` says why it is asked about or
    refused.
    """

    standing: Standing
    text: str = ""
    value: Decimal | None = None
    unit: Unit | None = None
    figure: Decimal | None = None
    choices: tuple[Unit, ...] = ()
    code: str = ""


_LENGTHS: Final = (Unit.CM, Unit.IN, Unit.MM, Unit.M)
_MASSES: Final = (Unit.KG, Unit.LB, Unit.ST)

# From the smallest child to the largest adult who may ask for a vest, in cm and kg; the first pair
# is for grown riders, the second for children. Common practice, no source: only used to tell
# units apart and to catch what no body measures.
_BODIES: Final[Mapping[Measure, tuple[tuple[int, int], tuple[int, int]]]] = {
    Measure.CHEST: ((66, 160), (46, 120)),
    Measure.WAIST: ((52, 160), (42, 120)),
    Measure.HIP: ((66, 170), (48, 130)),
    Measure.BACK_LENGTH: ((33, 65), (22, 55)),
    Measure.HEIGHT: ((130, 220), (85, 200)),
    Measure.WEIGHT: ((32, 180), (12, 110)),
    Measure.C7_ABOVE_SEAT: ((48, 85), (32, 75)),
    Measure.CHEST_OVER_FOAM: ((66, 180), (46, 140)),
    Measure.CHEST_OVER_LAYERS: ((66, 180), (46, 140)),
}


def interpret(
    text: str, measure: Measure, *, child: bool = False, spoken: Unit | None = None
) -> Typed:
    """What ``text`` says of ``measure``.

    ``spoken`` is a unit of the system this rider's other readings were given in; it settles a
    figure that could be either, and stands for inches where nothing else is possible.
    """
    plain = text.strip()
    if not plain:
        return Typed(Standing.EMPTY)
    reading = read_cell(plain, Expected(unit=None))
    quantity = reading.quantity
    if reading.reading is not Reading.READ or quantity is None or quantity.value is None:
        return Typed(Standing.REFUSED, plain, code="typed-not-one-value")
    figure = quantity.value.value
    if quantity.unit is not None:
        return _with_unit(plain, measure, figure, quantity.unit, child)
    return _without_unit(plain, measure, figure, child, spoken)


def with_unit(typed: Typed, unit: Unit) -> Typed:
    """The answer to a question: the typed figure is in ``unit``."""
    if typed.figure is None:
        return typed
    value = canonical(typed.figure, unit)
    return Typed(Standing.PLAIN, f"{_bare(typed.text)} {unit.value}", value, unit, typed.figure)


def _bare(text: str) -> str:
    """``text`` without a unit behind it, so that the answer can take its place."""
    return text.rstrip("abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ.\"' ")


def is_possible(measure: Measure, value: Decimal, *, child: bool) -> bool:
    """Whether a body may measure ``value`` (cm or kg)."""
    bodies = _BODIES.get(measure)
    if bodies is None:
        return value > 0
    low, high = bodies[1 if child else 0]
    return low <= value <= high


def _with_unit(text: str, measure: Measure, figure: Decimal, unit: Unit, child: bool) -> Typed:
    if FAMILY[unit] is not measure.family:
        return Typed(Standing.REFUSED, text, code="typed-wrong-unit")
    value = canonical(figure, unit)
    if is_possible(measure, value, child=child):
        return Typed(Standing.PLAIN, text, value, unit, figure)
    others = [other for other in _possible(measure, figure, child) if other is not unit]
    choices = (*others, unit)
    return Typed(Standing.ASK, text, figure=figure, choices=choices, code="typed-impossible")


def _without_unit(
    text: str, measure: Measure, figure: Decimal, child: bool, spoken: Unit | None
) -> Typed:
    possible = _possible(measure, figure, child)
    if not possible:
        usual = _usual(measure)
        return Typed(Standing.ASK, text, figure=figure, choices=usual, code="typed-impossible")
    settled = _settled(possible, spoken)
    if settled is None:
        choices = tuple(dict.fromkeys((*possible, *_usual(measure))))
        return Typed(Standing.ASK, text, figure=figure, choices=choices, code="typed-unit")
    return Typed(Standing.PLAIN, text, canonical(figure, settled), settled, figure)


def _usual(measure: Measure) -> tuple[Unit, Unit]:
    return (Unit.KG, Unit.LB) if measure.family is Family.MASS else (Unit.CM, Unit.IN)


def tidy(text: str, unit: Unit | None) -> str:
    """``text`` with its unit behind it, unless it says one itself."""
    if unit is None or any(mark.isalpha() or mark in "'\"" for mark in text):
        return text
    return f"{text} {unit.value}"


def _possible(measure: Measure, figure: Decimal, child: bool) -> list[Unit]:
    """The units in which a body may measure ``figure``."""
    return [
        unit
        for unit in (_MASSES if measure.family is Family.MASS else _LENGTHS)
        if is_possible(measure, canonical(figure, unit), child=child)
    ]


def _settled(possible: list[Unit], spoken: Unit | None) -> Unit | None:
    """The one unit that is plain: the only possible metric one, or the one spoken so far."""
    if spoken is not None:
        same = [unit for unit in possible if (unit in METRIC) is (spoken in METRIC)]
        if len(same) == 1:
            return same[0]
    if possible in ([Unit.CM], [Unit.KG]):
        return possible[0]
    return None
