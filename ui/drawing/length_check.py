"""The plain length check as numbers: a seated rider, the vest's lower edge, one hand, the saddle.

Not to scale and the same for every model: the maker's body range says nothing of the vest's own
length. All points lie in a box 100 wide and 100 high, x to the right, y downwards. No Qt.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

Point = tuple[float, float]


@dataclass(frozen=True, slots=True)
class Curve:
    """A path of cubic curves: a start, then (control, control, end) again and again."""

    start: Point
    pieces: tuple[tuple[Point, Point, Point], ...]
    closed: bool = False


EDGE_Y: Final = 67.6
"""Where the vest's lower edge lies at the back."""

SEAT_Y: Final = 86.4
"""Where the saddle carries the rider."""

HAND_X: Final = (60.5, 86.0)
FINGERS: Final = 4

BODY: Final = Curve(
    (46.0, 23.3),
    (
        ((51.9, 24.1), (55.2, 27.4), (56.9, 32.3)),
        ((60.3, 41.3), (60.3, 49.5), (57.8, 58.5)),
        ((56.1, 65.1), (59.4, 72.5), (61.1, 78.2)),
        ((62.0, 84.8), (56.1, 88.1), (47.7, 88.1)),
        ((37.6, 88.1), (27.5, 87.2), (14.1, 98.7)),
        ((11.6, 95.4), (9.9, 92.2), (9.0, 88.9)),
        ((19.1, 77.4), (29.2, 74.1), (37.6, 73.3)),
        ((36.8, 64.3), (31.7, 54.4), (33.4, 44.6)),
        ((34.2, 36.4), (36.8, 29.8), (39.3, 23.3)),
    ),
    closed=True,
)
VEST: Final = Curve(
    (43.5, 27.4),
    (
        ((50.2, 27.4), (56.1, 29.8), (59.0, 36.4)),
        ((62.4, 44.6), (62.0, 52.8), (59.9, 60.2)),
        ((59.0, 62.6), (59.0, 65.1), (59.4, EDGE_Y)),
        ((52.7, 68.8), (42.6, 68.8), (35.1, 66.7)),
        ((32.6, 59.4), (30.0, 52.0), (31.7, 43.8)),
        ((33.0, 36.4), (36.8, 29.8), (43.5, 27.4)),
    ),
    closed=True,
)
SADDLE: Final = Curve(
    (25.8, 88.1),
    (
        ((32.6, 91.3), (44.3, 90.5), (54.4, 88.9)),
        ((62.8, 88.1), (70.4, 85.6), (76.2, 81.5)),
        ((77.9, 80.7), (79.6, 82.3), (78.8, 84.0)),
        ((74.6, 92.2), (66.2, 95.4), (54.4, 96.3)),
        ((42.6, 97.1), (32.6, 95.4), (25.8, 88.1)),
    ),
    closed=True,
)
HEAD: Final = ((44.5, 12.5), 9.0)
"""The head as a circle: its middle and its radius."""

NECK_BONE: Final = (55.7, 30.2)


@dataclass(frozen=True, slots=True)
class Finger:
    """One finger of the hand laid flat: a rounded bar."""

    left: float
    top: float
    width: float
    height: float


def hand() -> tuple[Finger, ...]:
    """Four fingers that fill the space between the vest's edge and the saddle."""
    each = (SEAT_Y - EDGE_Y) / FINGERS
    left, right = HAND_X
    shifts = (3.4, 0.0, 1.3, 5.0)
    return tuple(
        Finger(left + shift, EDGE_Y + each * number + 0.3, right - left - shift, each - 0.6)
        for number, shift in enumerate(shifts)
    )


def palm() -> Finger:
    """The flat of the hand behind the fingers."""
    return Finger(HAND_X[1] - 5.0, EDGE_Y + 0.3, 14.0, SEAT_Y - EDGE_Y - 0.6)
