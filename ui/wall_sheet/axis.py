"""One block's rulers: centimetres to points, and the ticks of both edges. No Qt."""

from __future__ import annotations

import math
from collections.abc import Callable, Iterable
from dataclasses import dataclass
from typing import Final

from harmonizer.wall_runs import Span
from ui.drawing.scale import CM_PER_INCH

_LEAST_CM: Final = 12.0
_AIR_CM: Final = 0.5
_STEPS: Final = (1, 2, 5, 10, 20, 50, 100)
_ROOM: Final = 1.75
_OUT: Final = 2.5
_IN: Final = 1.0

Width = Callable[[str], float]


@dataclass(frozen=True, slots=True)
class Tick:
    """A tick at ``x`` points; ``figure`` is None where none is printed."""

    x: float
    figure: int | None
    long: bool


@dataclass(frozen=True, slots=True)
class Axis:
    """A stretch of tape from ``low_cm`` at ``left`` to ``high_cm`` at ``right`` (points)."""

    low_cm: float
    high_cm: float
    left: float
    right: float

    @property
    def points_per_cm(self) -> float:
        """Points for one centimetre."""
        return (self.right - self.left) / (self.high_cm - self.low_cm)

    def x(self, value_cm: float) -> float:
        """Where ``value_cm`` stands."""
        return self.left + (value_cm - self.low_cm) * self.points_per_cm

    def cm_ticks(self, width: Width) -> tuple[Tick, ...]:
        """A tick each centimetre, a figure as often as there is room for it."""
        return self._ticks(1.0, width, least=5)

    def inch_ticks(self, width: Width) -> tuple[Tick, ...]:
        """A tick each inch, a figure as often as there is room for it."""
        return self._ticks(CM_PER_INCH, width, least=1)

    def _ticks(self, unit_cm: float, width: Width, least: int) -> tuple[Tick, ...]:
        first = math.ceil(self.low_cm / unit_cm - 1e-9)
        last = math.floor(self.high_cm / unit_cm + 1e-9)
        pitch, widest = self.points_per_cm * unit_cm, width(str(last))
        every = next(
            (step for step in _STEPS if step >= least and step * pitch >= widest * _ROOM),
            _STEPS[-1],
        )
        ticks = []
        for number in range(first, last + 1):
            x, long = self.x(number * unit_cm), number % every == 0
            half = width(str(number)) / 2
            inside = self.left - _OUT <= x - half and x + half <= self.right - _IN
            ticks.append(Tick(x, number if long and inside else None, long))
        return tuple(ticks)


def extent(spans: Iterable[Span]) -> tuple[float, float] | None:
    """The stretch in cm that holds every printed end, None where there is none."""
    ends = [end for span in spans for end in (span.low_cm, span.high_cm) if end is not None]
    return (min(ends), max(ends)) if ends else None


def axis_for(
    stretch: tuple[float, float] | None, box: tuple[float, float], air: tuple[float, float]
) -> Axis | None:
    """The axis that shows ``stretch`` (cm) as large as ``box`` (points) allows.

    ``air`` points at the left and right end stay free of printed ends, for open bars and signs.
    None where nothing is to be drawn.
    """
    if stretch is None:
        return None
    middle = (stretch[0] + stretch[1]) / 2
    half = max((stretch[1] - stretch[0]) / 2 + _AIR_CM, _LEAST_CM / 2)
    left, right = box[0] + air[0], box[1] - air[1]
    cm_per_point = 2 * half / (right - left)
    return Axis(middle - half - air[0] * cm_per_point, middle + half + air[1] * cm_per_point, *box)
