"""The cells of one sheet on the tapes, taken over from the one before where they hold. No Qt.

While a line is moved, three of four tapes stay as they are; to word and lay them out again at each
step would cost more than the comparison itself.
"""

from __future__ import annotations

from collections.abc import Mapping

import numpy as np
import numpy.typing as npt

from charts.schema import Dimension
from harmonizer.body import Body
from harmonizer.fit_sheet import FitSheet
from ui.drawing.tape import SizeSpan
from ui.fitting_page.cells import estimated_cell, spans_beside_guess, spans_of, tape_cell
from ui.fitting_page.model_groups import ModelGroups
from ui.fitting_page.row_words import RowWords
from ui.fitting_page.rows import TAPES, TapeCell, TapeHead


class SheetCells:
    """Makes the cells of one fit when they are asked for, and remembers them tape by tape."""

    def __init__(
        self,
        fit: FitSheet,
        groups: ModelGroups,
        words: RowWords,
        heads: Mapping[Dimension, TapeHead],
    ) -> None:
        self._fit = fit
        self._groups = groups
        self._signature = groups.signature(fit)
        self._words = words
        self._heads = heads
        self._made: dict[Dimension, dict[int, TapeCell]] = {tape: {} for tape in TAPES}

    def follow(self, shown: SheetCells) -> None:
        """Share the cells ``shown`` before of every tape on which nothing has changed."""
        alike = self._fit.table is shown._fit.table and self._signature == shown._signature
        if alike and self._words.words is shown._words.words:
            same = unchanged(self._fit, shown._fit)
            for tape, still in zip(TAPES, same.tolist(), strict=True):
                if still:
                    self._made[tape] = shown._made[tape]

    def cell(self, dimension: Dimension, at: int) -> TapeCell:
        """The cell of the offer ``at``; cells that look the same are one object.

        Where nothing was compared it is made anew: what is said there depends on more than the
        arrays that ``unchanged`` holds against each other.
        """
        made = self._made[dimension].get(at)
        if made is None:
            made = self._groups.only(self._new(dimension, at))
            if not np.isnan(self._fit.lower[TAPES.index(dimension), at]):
                self._made[dimension][at] = made
        return made

    def _new(self, dimension: Dimension, at: int) -> TapeCell:
        cell = tape_cell(self._fit, self._words, dimension, at, self._spans)
        if self._heads[dimension].guess is None:
            return cell
        row = TAPES.index(dimension)
        return estimated_cell(cell, spans_beside_guess(self._fit, row, at, self._groups))

    def _spans(self, row: int, at: int) -> tuple[SizeSpan, ...]:
        return spans_of(self._fit, row, at, self._groups, self._signature)


def unchanged(now: FitSheet, before: FitSheet) -> npt.NDArray[np.bool_]:
    """On which tapes two fits of one table compare the same with the same outcome, size by size.

    There the same columns of the charts serve, the rider is the same on every one of them, in
    light clothing and in warm, and each size has the state it had.
    """
    return np.array([_same_on(now, before, row, tape) for row, tape in enumerate(TAPES)])


def _same_on(now: FitSheet, before: FitSheet, row: int, tape: Dimension) -> bool:
    return (
        np.array_equal(now.states[row], before.states[row])
        and np.array_equal(now.choice.lane[row], before.choice.lane[row])
        and all(_same_rider(now.body, before.body, lane) for lane in now.table.lanes_of(tape))
    )


def _same_rider(now: Body, before: Body, lane: int) -> bool:
    light = np.array_equal(now.light[lane], before.light[lane], equal_nan=True)
    return light and np.array_equal(now.warm[lane], before.warm[lane], equal_nan=True)
