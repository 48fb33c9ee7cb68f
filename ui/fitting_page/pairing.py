"""Puts a foam and an inflatable vest together: one key takes the foam, then the inflatable."""

from __future__ import annotations

from dataclasses import replace

from PySide6.QtCore import QObject, Signal
from PySide6.QtWidgets import QWidget

from charts.model_facts import VestKind
from ui.dress import Dress
from ui.fitting_page.draft import Draft
from ui.fitting_page.fit_rows import FittingSheet
from ui.fitting_page.model_groups import ModelGroups
from ui.fitting_page.pair import Compare, Pair, compared_pair, kind_of, pair_lines
from ui.fitting_page.pair_choice import PairChoice
from ui.fitting_page.pair_strip import PairStrip
from ui.fitting_page.rows import ModelRow
from ui.words import Words


class Pairing(QObject):
    """The pair of the rider on the line; the choice itself is kept in the draft.

    Attributes:
        strip: shows the pair.
        compare: compares a rider with the shop, None while there is none.
        groups: the models of the shop, None while there are none.

    Signals:
        changed(object): a PairChoice, or None where the pair is parted.
        refused(str): a sentence why the row cannot be taken.
    """

    changed = Signal(object)
    refused = Signal(str)

    def __init__(self, words: Words, dress: Dress, parent: QWidget) -> None:
        super().__init__(parent)
        self._words = words
        self._choice: PairChoice | None = None
        self.compare: Compare | None = None
        self.groups: ModelGroups | None = None
        self.strip = PairStrip(words, dress.type_, parent)
        self.strip.over_foam.connect(self._over_foam)
        self.strip.thickness.connect(self._thickness)
        self.strip.parted.connect(self.part)

    def pair(self, draft: Draft) -> Pair | None:
        """The pair of ``draft`` as it is worn, None where there is none."""
        if draft.pair is None or self.compare is None or not draft.has_readings:
            return None
        return compared_pair(draft.pair, draft.rider(), self.compare)

    def statement(self, draft: Draft) -> tuple[str, ...]:
        """What is said of a whole pair, for paper; nothing while only the foam is chosen."""
        pair = self.pair(draft)
        if pair is None or self.groups is None or not pair.choice.inflatable:
            return ()
        return pair_lines(pair, self.groups, self._words)

    def show(self, draft: Draft, groups: ModelGroups | None) -> None:
        """Show the pair of ``draft``."""
        self._choice, self.groups = draft.pair, groups
        pair = self.pair(draft) if groups is not None else None
        lines = pair_lines(pair, groups, self._words) if pair and groups is not None else ()
        self.strip.show_pair(draft.pair, lines, pair.noted if pair else None)

    def press(self, sheet: FittingSheet, row: ModelRow) -> None:
        """Take the chosen row: the foam first, then the inflatable; a whole pair is parted."""
        kind = kind_of(sheet, row)
        choice = self._choice
        if choice is None or choice.inflatable:
            if kind is VestKind.FOAM:
                self.changed.emit(PairChoice(row.key))
            elif choice is not None:
                self.part()
            else:
                self._refuse("choose-foam")
        elif kind is VestKind.INFLATABLE:
            self.changed.emit(replace(choice, inflatable=row.key))
        else:
            self._refuse("choose-other")

    def part(self) -> None:
        """The pair is wanted no more."""
        self.changed.emit(None)

    def _over_foam(self, value_cm: float | None) -> None:
        if self._choice is not None and self._choice.over_foam_cm != value_cm:
            self.changed.emit(replace(self._choice, over_foam_cm=value_cm))

    def _thickness(self, value_mm: float | None) -> None:
        if self._choice is not None and self._choice.thickness_mm != value_mm:
            self.changed.emit(replace(self._choice, thickness_mm=value_mm))

    def _refuse(self, code: str) -> None:
        self.refused.emit(self._words.wording.say("pair", code))
