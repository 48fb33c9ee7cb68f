"""The rider as far as the call has come: what a file gave, and what was typed over it. No Qt."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field, replace
from decimal import Decimal
from types import MappingProxyType
from typing import Final

from charts.quantities import METRIC, Family, Unit
from charts.schema import Definition
from harmonizer.rider import BodyFigure, Measure, Reading, Rider, TakenBy
from harmonizer.settings import DEFAULTS, Settings
from ui.fitting_page.pair_choice import PairChoice
from ui.fitting_page.typed import Standing, Typed, tidy

ASKED: Final = (
    Measure.CHEST,
    Measure.WAIST,
    Measure.HIP,
    Measure.BACK_LENGTH,
    Measure.HEIGHT,
    Measure.WEIGHT,
    Measure.C7_ABOVE_SEAT,
)
"""The readings in the order in which a fitter asks for them."""

NOBODY: Final = Rider("", figure=BodyFigure.WOMAN)


@dataclass(frozen=True, slots=True)
class Draft:
    """One call. ``given`` is the rider as a file had it; ``typed`` goes before it, by measure.

    An empty field takes back what the file had. ``c7_felt``: the helper felt for the neck bone as
    told, which is what makes a helper's back length worth more. ``confirmed`` are the doubts about
    readings that were answered with "it is right".
    ``pair`` is the foam and the inflatable tried together. ``takers`` are those who hold the tape
    for one reading alone; None for whoever holds it for all. ``asked`` says where the client was
    told to measure when a reading was typed: a reading keeps that when the shop asks otherwise.
    """

    given: Rider = NOBODY
    typed: Mapping[Measure, Typed] = field(default_factory=dict)
    c7_felt: bool = False
    confirmed: frozenset[str] = frozenset()
    pair: PairChoice | None = None
    takers: Mapping[Measure, TakenBy | None] = field(default_factory=dict)
    asked: Mapping[Measure, Definition] = field(default_factory=dict)

    def typing(self, measure: Measure, typed: Typed, definition: Definition | None = None) -> Draft:
        """The draft with ``measure`` as it was typed now, and where it was asked to be taken."""
        asked = definition or asked_definition(measure)
        return replace(
            self,
            typed=MappingProxyType({**self.typed, measure: typed}),
            asked=MappingProxyType({**self.asked, measure: asked}),
        )

    def taking_again(self, readings: Sequence[Reading]) -> Draft:
        """The draft with readings of an earlier day in the place of what was read of them now.

        They keep their day, who took them and where: nothing was measured today.
        """
        again = {one.measure for one in readings}
        kept = [one for one in self.given.readings if one.measure not in again]
        rest = {key: value for key, value in self.typed.items() if key not in again}
        takers = {key: value for key, value in self.takers.items() if key not in again}
        draft = self.with_given(readings=(*kept, *readings))
        return replace(draft, typed=MappingProxyType(rest), takers=MappingProxyType(takers))

    def confirming(self, key: str) -> Draft:
        """The draft with a doubt answered: the reading is right."""
        return replace(self, confirmed=self.confirmed | {key})

    def with_given(self, **changes: object) -> Draft:
        """The draft with another name, figure, taker or layers."""
        return replace(self, given=replace(self.given, **changes))  # type: ignore[arg-type]  # dataclasses.replace checks the names when it runs

    def own_taker(self, measure: Measure) -> TakenBy | None:
        """Who holds the tape for ``measure`` alone; None where it is whoever holds it for all."""
        if measure in self.takers:
            return self.takers[measure]
        if measure in self.typed:
            return None  # typed now: what the file said of its own reading is over
        return next((one.taken_by for one in self.given.of(measure)), None)

    def turning_taker(self, measure: Measure) -> Draft:
        """The draft with the next one in turn holding the tape for ``measure``."""
        turns = (None, *(one for one in TakenBy if one is not self.given.taken_by))
        own = self.own_taker(measure)
        following = turns[(turns.index(own) + 1) % len(turns)] if own in turns else None
        return replace(self, takers=MappingProxyType({**self.takers, measure: following}))

    @property
    def is_child(self) -> bool:
        """Whether a child's figures are to be expected."""
        return self.given.figure is BodyFigure.CHILD

    @property
    def spoken(self) -> Unit | None:
        """A unit of the system in which this rider's lengths have been given so far."""
        for measure in ASKED:
            unit = self._unit_of(measure)
            if unit is not None and measure.family is Family.LENGTH:
                return unit
        return None

    @property
    def has_readings(self) -> bool:
        """Whether there is anything to compare."""
        return any(reading.measure.dimension for reading in self.rider().readings)

    def reading(self, measure: Measure) -> Reading | None:
        """The first reading of ``measure``, as typed or as given."""
        return next(iter(self.rider().of(measure)), None)

    def rider(self) -> Rider:
        """The rider as the engine takes one."""
        kept = [one for one in self.given.readings if one.measure not in self.typed]
        made = [
            self._reading(measure, typed)
            for measure, typed in self.typed.items()
            if typed.standing is Standing.PLAIN
        ]
        readings = (*kept, *made)
        if self.takers:
            takers = [self.own_taker(one.measure) for one in readings]
            pairs = zip(readings, takers, strict=True)
            readings = tuple(replace(one, taken_by=taker) for one, taker in pairs)
        return replace(self.given, readings=readings)

    def _reading(self, measure: Measure, typed: Typed) -> Reading:
        return Reading(
            measure=measure,
            value=typed.value if typed.value is not None else Decimal(0),
            text=typed.text,
            unit=typed.unit,
            definition=self.asked.get(measure, asked_definition(measure)),
            c7_felt=self._felt(measure),
        )

    def _felt(self, measure: Measure) -> bool:
        helper = (self.own_taker(measure) or self.given.taken_by) is TakenBy.HELPER
        return self.c7_felt and helper and measure is Measure.BACK_LENGTH

    def _unit_of(self, measure: Measure) -> Unit | None:
        typed = self.typed.get(measure)
        if typed is not None:
            return typed.unit if typed.standing is Standing.PLAIN else None
        return next((reading.unit for reading in self.given.of(measure)), None)


def asked_definition(measure: Measure, settings: Settings = DEFAULTS) -> Definition:
    """Where the line under the field tells the client to measure: as the shop's settings say."""
    dimension = measure.dimension
    return settings.default_definition(dimension) if dimension else Definition.UNKNOWN


def text_of(reading: Reading) -> str:
    """What stands in the field for a reading that a file gave."""
    text = reading.text.strip()
    if not text:
        return (
            f"{reading.value.normalize():f} {'kg' if reading.measure is Measure.WEIGHT else 'cm'}"
        )
    return tidy(text, reading.unit)


def other_system(reading: Reading) -> Unit:
    """The unit in which a reading is shown besides: inches for cm, kilograms for pounds."""
    metric = reading.unit is None or reading.unit in METRIC
    if reading.measure.family is Family.MASS:
        return Unit.LB if metric else Unit.KG
    return Unit.IN if metric else Unit.CM
