"""A value that is tried: what was measured stays, what is shown is about another figure. No Qt."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field, replace
from decimal import Decimal
from types import MappingProxyType
from typing import Final

from charts.quantities import Unit
from charts.schema import Dimension
from harmonizer.rider import Measure, Rider
from ui.fitting_page.rows import TAPES
from ui.words import Words

STEP_CM: Final = 0.5


@dataclass(frozen=True, slots=True)
class Trial:
    """The figures tried, in cm, by dimension; empty while nothing is tried."""

    figures: Mapping[Dimension, float] = field(default_factory=dict)

    def with_figure(self, dimension: Dimension, value_cm: float) -> Trial:
        """The same trial with one figure changed, to the half centimetre."""
        stepped = round(value_cm / STEP_CM) * STEP_CM
        return Trial(MappingProxyType({**self.figures, dimension: stepped}))

    def on(self, rider: Rider) -> Rider:
        """``rider`` as if the tried figures had been read."""
        return replace(
            rider,
            readings=tuple(
                replace(reading, value=Decimal(str(tried)), text="", unit=Unit.CM)
                if (tried := self._tried(reading.measure)) is not None
                else reading
                for reading in rider.readings
            ),
        )

    def _tried(self, measure: Measure) -> float | None:
        dimension = measure.dimension
        return self.figures.get(dimension) if dimension is not None else None

    def sentence(self, measured: Mapping[Dimension, float | None], words: Words) -> str:
        """What is tried and what was measured; "" while nothing is tried."""
        told = [dimension for dimension in TAPES if dimension in self.figures]
        if not told:
            return ""
        last = told[-1]
        return words(
            "trying" if len(told) == 1 else "trying-several",
            dimension=words(f"dimension-{last.value}"),
            tried=words.cm(self.figures[last]),
            measured=words.cm(measured.get(last) or 0.0),
            others=len(told) - 1,
        )

    def __bool__(self) -> bool:
        return bool(self.figures)
