"""One rider against the shop, as the page shows it: what was measured, and what is tried. No Qt."""

from __future__ import annotations

from collections.abc import Callable
from typing import Final

from charts.schema import Dimension
from harmonizer.fit_sheet import FitSheet
from harmonizer.range_table import RangeTable
from harmonizer.rider import Rider
from ui.fitting_page.advice_lines import nearest_sentence
from ui.fitting_page.draft import Draft
from ui.fitting_page.fit_rows import FOLDED_AT_FIRST, FittingSheet
from ui.fitting_page.model_groups import ModelGroups
from ui.fitting_page.rows import Band
from ui.fitting_page.trial import STEP_CM, Trial
from ui.words import Words

Compare = Callable[[Rider], FitSheet]
_NEAREST: Final = (Band.TRY, Band.JUST_OUTSIDE)


class Comparison:
    """Holds what is shown, and makes it anew when the rider, the shop or a tried value changes.

    Attributes:
        groups: the models of the shop, None while there are none.
        sizes: how many sizes they have.
        sheet: what is shown, None while nothing is compared.
    """

    def __init__(self, words: Words) -> None:
        self.groups: ModelGroups | None = None
        self.sizes = 0
        self.sheet: FittingSheet | None = None
        self._words = words
        self._compare: Compare | None = None
        self._rider = Draft().rider()
        self._folded = FOLDED_AT_FIRST
        self._measured: FittingSheet | None = None
        self._trial = Trial()

    @property
    def is_trying(self) -> bool:
        """Whether what is shown is about a value that nobody measured."""
        return bool(self._trial)

    def show_shop(self, table: RangeTable, compare: Compare) -> None:
        """Compare with another set of charts from now on."""
        self.groups = ModelGroups.of(table) if table.offers else None
        self.sizes = len(table.offers)
        self._compare = compare

    def fold_as_at_first(self) -> None:
        """Forget which bands were folded and unfolded."""
        self._folded = FOLDED_AT_FIRST

    def measure(self, draft: Draft) -> None:
        """Compare the readings of ``draft``; whatever was tried is over."""
        self._rider = draft.rider()
        self._trial = Trial()
        self.sheet = self._measured = self._compared() if draft.has_readings else None

    def try_figure(self, dimension: Dimension, value_cm: float) -> bool:
        """Show what another figure would give, in the order of what was measured."""
        if self._measured is None or self._compare is None or self.groups is None:
            return False
        self._trial = self._trial.with_figure(dimension, value_cm)
        fit = self._compare(self._trial.on(self._rider))
        folded = self._measured.folded
        self.sheet = FittingSheet(
            fit, self.groups, self._words, folded, measured=self._measured, shown=self.sheet
        )
        return True

    def nudge(self, dimension: Dimension, steps: int) -> bool:
        """Try the figure so many steps beside the one that is shown."""
        at = self.sheet.heads[dimension].rider_cm if self.sheet else None
        return at is not None and self.try_figure(dimension, at + steps * STEP_CM)

    def put_back(self) -> bool:
        """Show what was measured again; false where nothing was tried."""
        tried, self._trial = self._trial, Trial()
        self.sheet = self._measured
        return bool(tried)

    def turn_band(self, band: Band) -> None:
        """Fold a band, or unfold it; whatever was tried is over."""
        self._trial = Trial()
        if self._measured is not None and self.groups is not None:
            self._folded = self._measured.folded ^ {band}
            fit = self._measured.fit
            self._measured = FittingSheet(fit, self.groups, self._words, self._folded)
        self.sheet = self._measured

    @property
    def banner(self) -> str:
        """What is tried; else, that nothing fits; else nothing."""
        measured = self._measured
        if measured is None:
            return ""
        if self._trial:
            readings = {one: head.centre_cm for one, head in measured.heads.items()}
            return self._trial.sentence(readings, self._words)
        return nearest_sentence(measured.fit, self._words.wording)

    def _compared(self) -> FittingSheet | None:
        if self._compare is None or self.groups is None:
            return None
        fit = self._compare(self._rider)
        sheet = FittingSheet(fit, self.groups, self._words, self._folded, shown=self.sheet)
        if Band.NO in self._folded and _is_bare(sheet):
            # Nothing to try: then the nearest of those that do not fit are what is wanted.
            sheet = FittingSheet(fit, self.groups, self._words, self._folded - {Band.NO})
        return sheet


def _is_bare(sheet: FittingSheet) -> bool:
    """Whether there is nothing to try, nor anything just outside."""
    return not any(sheet.counts[band] for band in _NEAREST)
