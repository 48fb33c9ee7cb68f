"""The rider's shape against the cut of a size: where a vest of the right size still sits oddly."""

from __future__ import annotations

from dataclasses import dataclass

from charts.schema import Dimension
from harmonizer.fit_row import FitRow


@dataclass(frozen=True, slots=True)
class Shape:
    """How much the rider's drop differs from the cut's, in cm; None where it cannot be said.

    ``waist`` above 0: the waist is loose where the chest fits. ``hip`` above 0: the hip is tight.
    """

    waist: float | None
    hip: float | None


def shape_of(row: FitRow) -> Shape:
    """Chest minus waist and hip minus chest of the rider, each minus that of the cut.

    The cut's are taken from the middles of the published ranges.
    """
    chest = _off_middle(row, Dimension.CHEST)
    waist, hip = _off_middle(row, Dimension.WAIST), _off_middle(row, Dimension.HIP)
    return Shape(
        waist=None if chest is None or waist is None else chest - waist,
        hip=None if chest is None or hip is None else hip - chest,
    )


def _off_middle(row: FitRow, dimension: Dimension) -> float | None:
    """How far the reading lies above the middle of the published range."""
    one = row.dimensions[dimension]
    if one.margin is None or one.reading is None:
        return None
    if one.published_low is None or one.published_high is None:
        return None
    return one.reading - (one.published_low + one.published_high) / 2
