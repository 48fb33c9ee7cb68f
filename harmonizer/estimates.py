"""What is not measured, estimated from what is: drawn in grey, in no state, verdict or penalty.

Conditional mean and standard deviation of a multivariate normal with the figures of a reference
population (ANSUR II). Adults only: for children nothing is estimated.
"""

from __future__ import annotations

import math
import tomllib
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from functools import cache
from typing import Final

import numpy as np
import numpy.typing as npt

from charts.resource_files import resources
from charts.schema import Definition
from harmonizer.repeats import Z_95, Settled
from harmonizer.rider import BodyFigure, Measure

Floats = npt.NDArray[np.float64]
Key = tuple[Measure, Definition]

COLUMNS: Final[Mapping[str, Key]] = {
    "height": (Measure.HEIGHT, Definition.UNKNOWN),
    "weight": (Measure.WEIGHT, Definition.UNKNOWN),
    "chest": (Measure.CHEST, Definition.CHEST_WIDEST),
    "waist": (Measure.WAIST, Definition.WAIST_NAVEL),
    "hip": (Measure.HIP, Definition.HIP_SEAT),
    "back_c7_si": (Measure.BACK_LENGTH, Definition.BACK_C7_SI),
    "back_c7_waist": (Measure.BACK_LENGTH, Definition.BACK_C7_WAIST),
    "c7_above_seat": (Measure.C7_ABOVE_SEAT, Definition.UNKNOWN),
}
"""What the population's columns measure, and between which points."""


@dataclass(frozen=True, slots=True, eq=False)
class Population:
    """Means and standard deviations in cm and kg, correlations in the order of ``keys``."""

    keys: tuple[Key, ...]
    mean: Floats
    sd: Floats
    correlation: Floats


@dataclass(frozen=True, slots=True)
class Estimate:
    """An estimated measure in cm or kg; it carries its definition and is never a reading."""

    measure: Measure
    definition: Definition
    mean: float
    sd: float

    @property
    def low(self) -> float:
        """The lower end of the 95 % interval."""
        return self.mean - Z_95 * self.sd

    @property
    def high(self) -> float:
        """The upper end of the 95 % interval."""
        return self.mean + Z_95 * self.sd

    def z(self, value: float) -> float:
        """How many standard deviations ``value`` lies above the estimate."""
        return (value - self.mean) / self.sd


@cache
def population(figure: BodyFigure) -> Population | None:
    """The reference population of a figure; None for children."""
    if figure is BodyFigure.CHILD:
        return None
    source = resources() / "reference" / "population.toml"
    table = tomllib.loads(source.read_text(encoding="utf-8"))
    entry = table["women" if figure is BodyFigure.WOMAN else "men"]
    places = [place for place, name in enumerate(table["dimensions"]) if name in COLUMNS]
    return Population(
        keys=tuple(COLUMNS[table["dimensions"][place]] for place in places),
        mean=np.array(entry["mean"])[places],
        sd=np.array(entry["sd"])[places],
        correlation=np.array(entry["correlation"])[np.ix_(places, places)],
    )


def conditional(
    people: Population, known: Mapping[Key, float]
) -> Mapping[Key, tuple[float, float]]:
    """Mean and standard deviation of every unknown measure, given the ``known`` ones.

    Source: the conditional distribution of a multivariate normal, as in textbooks.
    """
    given = [place for place, key in enumerate(people.keys) if key in known]
    asked = [place for place, key in enumerate(people.keys) if key not in known]
    spread = people.correlation * np.outer(people.sd, people.sd)
    off = np.array([known[people.keys[place]] for place in given]) - people.mean[given]
    weights = np.linalg.solve(spread[np.ix_(given, given)], spread[np.ix_(given, asked)]).T
    means = people.mean[asked] + weights @ off
    left = np.diag(spread)[asked] - np.sum(weights * spread[np.ix_(asked, given)], axis=1)
    return {
        people.keys[place]: (float(mean), math.sqrt(variance))
        for place, mean, variance in zip(asked, means, left, strict=True)
    }


def estimates(figure: BodyFigure | None, known: Sequence[Settled]) -> tuple[Estimate, ...]:
    """Estimates of what was not read, from height and weight; none without both, or for a child."""
    people = population(figure) if figure else None
    if people is None:
        return ()
    found = {(one.measure, Definition.UNKNOWN): one.value for one in known}
    wanted = (COLUMNS["height"], COLUMNS["weight"])
    if any(key not in found for key in wanted):
        return ()
    given = {key: found[key] for key in wanted}
    return tuple(
        Estimate(measure, definition, mean, sd)
        for (measure, definition), (mean, sd) in conditional(people, given).items()
    )
