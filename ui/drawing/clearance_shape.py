"""The clearance above the saddle as numbers, heights to scale. No Qt.

Drawn in the same box of 100 by 100 as the plain check, y downwards. What is to scale is every
height between the bone at the neck and the seat: the vest's lower edge, the rise of the saddle,
the hand. The figure of the rider is only its ground.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

from ui.drawing.length_check import EDGE_Y, FINGERS, HAND_X, NECK_BONE, SEAT_Y, VEST, Curve, Finger

_VEST_TOP: Final = 27.4
_LOWEST_EDGE: Final = 95.0


@dataclass(frozen=True, slots=True)
class ClearanceShape:
    """Where things lie in the box: y of the vest's edge and of the saddle below it; the hand.

    ``per_cm`` is the scale in units of the box; the hand stands on the saddle.
    """

    per_cm: float
    edge_y: float
    saddle_y: float
    vest: Curve
    fingers: tuple[Finger, ...]


def clearance_shape(
    c7_above_seat: float, vest_back: float, rise: float, hand: float
) -> ClearanceShape:
    """The drawing of a vest ``vest_back`` cm long from C7 on a rider; all in cm."""
    per_cm = (SEAT_Y - NECK_BONE[1]) / c7_above_seat
    edge = min(NECK_BONE[1] + vest_back * per_cm, _LOWEST_EDGE)
    saddle = SEAT_Y - rise * per_cm
    return ClearanceShape(per_cm, edge, saddle, _vest(edge), _fingers(saddle, hand * per_cm))


def _vest(edge: float) -> Curve:
    """The vest of the plain check drawn out, or drawn in, to another lower edge."""
    stretch = (edge - _VEST_TOP) / (EDGE_Y - _VEST_TOP)

    def moved(point: tuple[float, float]) -> tuple[float, float]:
        return point[0], _VEST_TOP + (point[1] - _VEST_TOP) * stretch

    pieces = tuple((moved(a), moved(b), moved(c)) for a, b, c in VEST.pieces)
    return Curve(moved(VEST.start), pieces, closed=True)


def _fingers(saddle: float, hand: float) -> tuple[Finger, ...]:
    each = hand / FINGERS
    left, right = HAND_X
    return tuple(
        Finger(left, saddle - each * (number + 1), right - left, each) for number in range(FINGERS)
    )
