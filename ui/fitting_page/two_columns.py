"""How sentences are shared between two columns, so that the higher one is low. No Qt."""

from __future__ import annotations

import math
from collections.abc import Sequence
from typing import Final, NamedTuple

_SHARES: Final = tuple(share / 100 for share in range(38, 67, 4))
_EITHER_WAY: Final = 2


class Split(NamedTuple):
    """How many sentences stand in the left column, and how wide it is."""

    first: int
    left: float


def shared(advances: Sequence[float], room: float, least: int, indent: float) -> Split:
    """The split of sentences as long as ``advances`` (pixels on one line) over ``room`` pixels.

    At least ``least`` stand left; every column gives ``indent`` to its marks. Of splits of one
    height that with the more even columns is taken.
    """
    middle = max(least, -(-len(advances) // 2))
    counts = range(max(least, middle - _EITHER_WAY), min(len(advances), middle + _EITHER_WAY) + 1)
    found = [
        (
            *_heights(advances, count, share * room - indent, (1 - share) * room - indent),
            count,
            share,
        )
        for count in counts
        for share in _SHARES
    ]
    *_, count, share = min(found)
    return Split(count, share * room)


def _heights(advances: Sequence[float], count: int, left: float, right: float) -> tuple[int, int]:
    """How many lines the higher column has, and how uneven the two are."""
    first = sum(max(1, math.ceil(one / left)) for one in advances[:count])
    second = sum(max(1, math.ceil(one / right)) for one in advances[count:])
    return max(first, second), abs(first - second)
