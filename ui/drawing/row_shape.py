"""Where things stand inside one row, in pixels from the height of a line of text. No Qt."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum
from typing import Final


class Density(StrEnum):
    """How tall the rows are."""

    LOW = "low"  # 32 at a line of 16
    MIDDLE = "middle"  # 48
    TALL = "tall"  # 64, for fingers


_LINE: Final = 16.0  # all measures below are for a line of text this high
_ROWS: Final = {
    #              row, lane of the best, others, others, bar, thin, number from, number high
    Density.LOW: (32.0, 12.5, 3.6, 6.6, 7.0, 1.8, 16.6, 13.0),
    Density.MIDDLE: (48.0, 20.0, 7.0, 11.0, 9.0, 2.2, 27.5, 15.0),
    Density.TALL: (64.0, 31.0, 17.5, 21.5, 11.0, 2.6, 41.5, 16.0),
}


@dataclass(frozen=True, slots=True)
class RowShape:
    """The measures of one density, in pixels.

    ``lanes`` are the middles of the best size's bar and of the two lanes of the other sizes.
    ``names`` says whether there is room for the other sizes' labels above their bars.
    """

    height: float
    lanes: tuple[float, float, float]
    bar: float
    thin: float
    number_top: float
    number_height: float
    unit: float
    names: bool


def row_shape(line_height: float, density: Density) -> RowShape:
    """The measures for text of ``line_height`` pixels."""
    unit = line_height / _LINE
    height, best, first, second, bar, thin, top, number = (part * unit for part in _ROWS[density])
    return RowShape(
        height=float(round(height)),
        lanes=(best, first, second),
        bar=bar,
        thin=thin,
        number_top=top,
        number_height=number,
        unit=unit,
        names=density is Density.TALL,
    )
