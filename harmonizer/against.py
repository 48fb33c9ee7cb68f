"""One size held against another, whichever two: the order, then what each of them gives."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from typing import Final

import numpy as np

from charts.reason import Reason
from charts.schema import Dimension
from harmonizer.choice_reasons import why_not
from harmonizer.dimension_fit import DimensionFit
from harmonizer.fit_row import FitRow
from harmonizer.lanes import MAIN
from harmonizer.states import SLACK, GirthState, LengthState
from harmonizer.verdict_words import BACK, girth_words, length_words, side_of, size_name

JUST_CM: Final = 0.1
"""What is over by less is said to be just over."""

_SHORT: Final = (LengthState.SHORT, LengthState.TOO_SHORT)
_NOTHING: Final = (GirthState.NOT_CHECKED, LengthState.NOT_KNOWN)


@dataclass(frozen=True, slots=True)
class Against:
    """What is said of one size beside another.

    ``why`` is the weightiest difference, told of the one that stands behind; ``ahead`` names the
    other one where that is the one which stands before. ``dimensions`` holds what each gives, by
    dimension, where at least one of the two was compared.
    """

    why: Reason
    ahead: Reason | None
    verdicts: tuple[Reason, Reason]
    dimensions: tuple[tuple[Dimension, Reason], ...]
    chance: Reason | None

    @property
    def order(self) -> Reason:
        """Which of the two stands before the other, and why."""
        if self.ahead is None:
            return self.why
        return Reason("against-ahead", {"why": self.why, "size": self.ahead})


def against(one: FitRow, other: FitRow) -> Against:
    """``one`` held against ``other``; both are rows of one sheet."""
    leads = place_in_order(one) <= place_in_order(other)
    return Against(
        why=why_not(one, other) if leads else why_not(other, one),
        ahead=None if leads else size_name(other, one),
        verdicts=(_verdict(one, other), _verdict(other, one)),
        dimensions=tuple(_dimensions(one, other)),
        chance=_chance(one, other),
    )


def place_in_order(row: FitRow) -> int:
    """Where a size stands in its sheet, 0 for the best."""
    return int(np.flatnonzero(row.arrays.order == row.at)[0])


def _verdict(one: FitRow, other: FitRow) -> Reason:
    """The two words of one of them."""
    words = {"girths": girth_words(one), "length": length_words(one)}
    return Reason("against-verdict", {"size": size_name(one, other), **words})


def _dimensions(one: FitRow, other: FitRow) -> Iterator[tuple[Dimension, Reason]]:
    for dimension in MAIN:
        pair = one.dimensions[dimension], other.dimensions[dimension]
        if all(fit.state in _NOTHING for fit in pair):
            continue
        values: dict[str, object] = {
            "dimension": dimension,
            "gives": _gives(pair[0]),
            "other_gives": _gives(pair[1]),
        }
        yield dimension, Reason("against-dimension", values | {"other": size_name(other, one)})


def _gives(fit: DimensionFit) -> Reason:
    """What one size leaves in one dimension, or what it lacks."""
    if fit.margin is None and fit.state in _NOTHING:
        return Reason("gives-unchecked")
    return _length_gives(fit) if fit.dimension is BACK else _girth_gives(fit)


def _girth_gives(fit: DimensionFit) -> Reason:
    if fit.margin is None:
        return Reason("gives-no-limit")
    if fit.margin >= -SLACK:
        return Reason("gives-left", {"left": max(0.0, fit.margin)})
    side = side_of(fit)
    if -fit.margin < JUST_CM:
        return Reason(f"gives-{side}-just")
    return Reason(f"gives-{side}", {"by": -fit.margin})


def _length_gives(fit: DimensionFit) -> Reason:
    """A length speaks of its low end, unless the vest is short."""
    if fit.state in _SHORT and fit.upper_margin is not None and fit.upper_margin < 0:
        return Reason("gives-short", {"by": -fit.upper_margin})
    if fit.lower_margin is None:
        return Reason("gives-no-lower-end")
    if fit.lower_margin < -SLACK:
        return Reason("gives-long", {"by": -fit.lower_margin})
    return Reason("gives-over", {"over": max(0.0, fit.lower_margin)})


def _chance(one: FitRow, other: FitRow) -> Reason | None:
    """How sure each is; sizes of which not the same number was checked are not compared by it."""
    mine, theirs = one.probability, other.probability
    if mine is None or theirs is None:
        return None
    if one.checked != other.checked:
        counts: dict[str, object] = {"count": one.checked, "other_count": other.checked}
        return Reason("against-counts", counts | {"other": size_name(other, one)})
    tens: dict[str, object] = {"of_ten": round(10 * mine), "other_ten": round(10 * theirs)}
    names = {"size": size_name(one, other), "other": size_name(other, one)}
    return Reason("against-chance", tens | names)
