"""The tape of a column: centimetres to pixels, and the ticks of its two edges. No Qt."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Final, NamedTuple

CM_PER_INCH: Final = 2.54
GIRTH_HALF_SPAN_CM: Final = 12.0
BACK_HALF_SPAN_CM: Final = 6.0
_LABEL_STEPS: Final = (1, 2, 5, 10)
_HALO_OF_A_LABEL: Final = 1.7


class Tick(NamedTuple):
    """One tick: where it stands in pixels, and the figure beside it, if it carries one."""

    x: float
    figure: int | None = None


@dataclass(frozen=True, slots=True)
class Scale:
    """A stretch of tape centred on the rider.

    ``centre_cm`` and ``half_span_cm`` are in cm, ``left`` and ``right`` in pixels.
    """

    centre_cm: float
    half_span_cm: float
    left: float
    right: float

    @property
    def pixels_per_cm(self) -> float:
        """Pixels for one centimetre."""
        return (self.right - self.left) / (2 * self.half_span_cm)

    @property
    def centre(self) -> float:
        """Where the rider's line stands, in pixels."""
        return (self.left + self.right) / 2

    @property
    def low_cm(self) -> float:
        """The tape's left end in cm."""
        return self.centre_cm - self.half_span_cm

    @property
    def high_cm(self) -> float:
        """The tape's right end in cm."""
        return self.centre_cm + self.half_span_cm

    def x(self, value_cm: float) -> float:
        """Where ``value_cm`` stands in pixels, also beyond the tape."""
        return self.centre + (value_cm - self.centre_cm) * self.pixels_per_cm

    def on_tape(self, value_cm: float) -> float:
        """The same, at the tape's end for what lies beyond it: nothing is painted beside a tape."""
        return min(max(self.x(value_cm), self.left), self.right)

    def cm_at(self, x: float) -> float:
        """What the tape reads at pixel ``x``, in cm."""
        return self.centre_cm + (x - self.centre) / self.pixels_per_cm

    def cm_ticks(self, figure_width: float) -> tuple[Tick, ...]:
        """One tick each cm; figures as often as ``figure_width`` pixels each allow."""
        return self._ticks(1.0, figure_width)

    def inch_ticks(self, figure_width: float) -> tuple[Tick, ...]:
        """One tick each inch; figures as often as ``figure_width`` pixels each allow."""
        return self._ticks(CM_PER_INCH, figure_width)

    def _ticks(self, step_cm: float, figure_width: float) -> tuple[Tick, ...]:
        every = figure_step(self.pixels_per_cm * step_cm, figure_width)
        first = math.ceil(self.low_cm / step_cm - 1e-9)
        last = math.floor(self.high_cm / step_cm + 1e-9)
        half = figure_width / 2
        return tuple(
            Tick(x, number if number % every == 0 and self._holds(x, half) else None)
            for number in range(first, last + 1)
            for x in (self.x(number * step_cm),)
        )

    def _holds(self, x: float, half_width: float) -> bool:
        return self.left <= x - half_width and x + half_width <= self.right


def figure_step(pixels_per_step: float, figure_width: float) -> int:
    """How many ticks apart figures must stand so that they do not touch: 1, 2, 5 or 10."""
    for every in _LABEL_STEPS:
        if every * pixels_per_step >= figure_width * _HALO_OF_A_LABEL:
            return every
    return _LABEL_STEPS[-1]
