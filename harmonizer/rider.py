"""One rider: readings as they were given, who took them, what is worn and what is asked for."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date
from decimal import Decimal
from enum import StrEnum
from typing import Final

from charts.model_facts import VestKind
from charts.quantities import Family, Unit
from charts.schema import Definition, Dimension


class BodyFigure(StrEnum):
    """Which reference population and which checks apply."""

    WOMAN = "woman"
    MAN = "man"
    CHILD = "child"


class TakenBy(StrEnum):
    """Who took a reading, and how often; ``fitter`` means a fitter who read twice."""

    FITTER = "fitter"
    FITTER_ONCE = "fitter_once"
    HELPER = "helper"
    SELF = "self"


class Measure(StrEnum):
    """What can be read of a rider: the dimensions of the charts, and what only a rider has."""

    CHEST = "chest"
    WAIST = "waist"
    HIP = "hip"
    BACK_LENGTH = "back_length"
    HEIGHT = "height"
    WEIGHT = "weight"
    NECK = "neck"
    SHOULDER_BREADTH = "shoulder_breadth"
    UNDERBUST = "underbust"
    INSEAM = "inseam"
    ARM_LENGTH = "arm_length"
    AGE = "age"
    C7_ABOVE_SEAT = "c7_above_seat"
    CHEST_OVER_LAYERS = "chest_over_layers"
    CHEST_OVER_FOAM = "chest_over_foam"

    @property
    def dimension(self) -> Dimension | None:
        """The dimension of the charts that is compared with this measure, if any."""
        return _DIMENSIONS.get(self.value)

    @property
    def family(self) -> Family:
        """Whether it is a length, a mass or an age."""
        return {Measure.WEIGHT: Family.MASS, Measure.AGE: Family.AGE}.get(self, Family.LENGTH)


_DIMENSIONS: Final = {one.value: one for one in Dimension}


class Observed(StrEnum):
    """The lower edge above the saddle as a fitter saw it, vest on and rider in the saddle."""

    RIGHT = "right"
    CHECK = "check"
    SHORT = "short"
    FAR_TOO_SHORT = "far_too_short"
    STOP = "stop"


@dataclass(frozen=True, slots=True)
class Reading:
    """One reading: ``value`` in cm, kg or years, beside the text and unit as they were given."""

    measure: Measure
    value: Decimal
    text: str = ""
    unit: Unit | None = None
    definition: Definition = Definition.UNKNOWN
    taken_by: TakenBy | None = None
    c7_felt: bool = False
    posture: str | None = None
    over: str | None = None
    on: date | None = None


@dataclass(frozen=True, slots=True)
class Needs:
    """What the vest must be; None where nothing is asked."""

    kind: VestKind | None = None
    level: str | None = None
    in_stock: bool = False


@dataclass(frozen=True, slots=True)
class SeenInSaddle:
    """What was observed of one size of one model on this rider."""

    model: str
    size: str
    observed: Observed
    length: str | None = None


NO_NEEDS: Final = Needs()


@dataclass(frozen=True, slots=True)
class Rider:
    """A rider as the engine takes one.

    ``age`` in years; ``winter_mm`` is the thickness of what is worn in winter. ``earlier`` are
    readings of visits before, which are compared with and never used.
    """

    name: str
    readings: tuple[Reading, ...] = ()
    figure: BodyFigure | None = None
    age: Decimal | None = None
    taken_by: TakenBy = TakenBy.HELPER
    needs: Needs = NO_NEEDS
    winter_mm: Decimal = Decimal(0)
    seen: tuple[SeenInSaddle, ...] = ()
    earlier: tuple[Reading, ...] = ()

    def of(self, measure: Measure) -> tuple[Reading, ...]:
        """Every reading of one measure, in the order they were given."""
        return tuple(reading for reading in self.readings if reading.measure is measure)

    @property
    def all_readings(self) -> tuple[Reading, ...]:
        """The readings, the age among them where it is known."""
        if self.age is None:
            return self.readings
        return (*self.readings, Reading(Measure.AGE, self.age, unit=Unit.YEARS))

    def taker(self, reading: Reading) -> TakenBy:
        """Who took ``reading``: named at the reading, else at the rider, else a helper."""
        return reading.taken_by or self.taken_by
