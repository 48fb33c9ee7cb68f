"""Which lane each size's bar lies on, so that neither bars nor labels meet. No Qt."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from itertools import pairwise
from typing import Final

_APART: Final = 2.0
_TOUCH: Final = 0.05


@dataclass(frozen=True, slots=True)
class Stretch:
    """What one size needs on its lane, in points: its bar, and its label where that is wider."""

    left: float
    right: float
    label_left: float
    label_right: float

    @property
    def outer_left(self) -> float:
        """Where the bar or the label that stands out of it begins."""
        return min(
            self.left, self.label_left - _APART if self.label_left < self.left else self.left
        )

    @property
    def outer_right(self) -> float:
        """Where the bar or the label that stands out of it ends."""
        out = self.label_right > self.right
        return max(self.right, self.label_right + _APART if out else self.right)


def lanes(stretches: Sequence[Stretch]) -> tuple[int, ...]:
    """A lane for each of ``stretches``, which are in the order of their sizes.

    Sizes take turns on as few lanes as serve: one where no two meet, two where neighbours
    overlap, more where the size after next does. Bars on one lane may touch, labels may not.
    """
    count = next(each for each in range(1, len(stretches) + 2) if not _collide(stretches, each))
    return tuple(place % count for place in range(len(stretches)))


def _collide(stretches: Sequence[Stretch], count: int) -> bool:
    least = _APART if count == 1 else -_TOUCH
    for lane in range(count):
        on_lane = sorted(stretches[lane::count], key=lambda each: each.left)
        if any(
            after.outer_left < before.outer_right + least for before, after in pairwise(on_lane)
        ):
            return True
    return False
