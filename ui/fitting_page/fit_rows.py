"""A fit as the table shows it: models in bands, each with its best size; rows made when painted."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from functools import cached_property
from typing import Final

import numpy as np

from charts.schema import Dimension
from harmonizer.explain import sentence
from harmonizer.fit_row import FitRow
from harmonizer.fit_sheet import FitSheet
from harmonizer.states import GIRTHS
from ui.fitting_page.cells import margins_at, printed_text, state_at
from ui.fitting_page.model_groups import (
    ModelGroups,
    Ranked,
    band_of,
    in_band,
    neighbours_of,
    ranked,
    ranked_as,
)
from ui.fitting_page.remarks import Remark, any_adjusted, remarks_on
from ui.fitting_page.row_names import also_words, make_of, size_and_length, wearer_of
from ui.fitting_page.row_words import RowWords
from ui.fitting_page.rows import (
    BANDS,
    TAPES,
    Band,
    BandRow,
    ModelRow,
    TapeHead,
    VerdictWord,
)
from ui.fitting_page.sheet_cells import SheetCells
from ui.fitting_page.tape_heads import tape_heads
from ui.words import Words

FOLDED_AT_FIRST: Final = frozenset({Band.NO})


class FittingSheet:
    """One fit, laid out in rows.

    Attributes:
        fit: the engine's sheet.
        folded: the bands of which only the heading shows.
        cells: what stands on the tapes.
        ranks: the models in their order; while a value is tried, that of what was ``measured``.

    Of the sheet ``shown`` before, cells are taken over as far as they still hold.
    """

    def __init__(
        self,
        fit: FitSheet,
        groups: ModelGroups,
        words: Words,
        folded: frozenset[Band],
        *,
        measured: FittingSheet | None = None,
        shown: FittingSheet | None = None,
    ) -> None:
        self.fit = fit
        self.folded = folded
        self._groups = groups
        self._words = words
        self._row_words = RowWords(words)
        self.ranks: Ranked = (
            ranked(fit, groups) if measured is None else ranked_as(fit, groups, measured.ranks)
        )
        self._measured = measured
        self._counts = {band: self.ranks.count(band) for band in BANDS}
        self._rows: dict[int, ModelRow | BandRow] = {}
        self._verdicts: dict[tuple[str, bool, str], tuple[VerdictWord, VerdictWord]] = {}
        self._places: list[int] = []
        self._band_rows: list[int] = []
        self._lay_out()
        self._heads = tape_heads(fit, words, measured.heads if measured is not None else None)
        self.cells = SheetCells(fit, groups, self._row_words, self._heads)
        if shown is not None:
            self.cells.follow(shown.cells)

    def _lay_out(self) -> None:
        """One entry a row: the best offer of a model, or a band's heading as -1 - its place."""
        start = 0
        for place, band in enumerate(BANDS):
            count = self._counts[band]
            if count:
                self._band_rows.append(len(self._places))
                self._places.append(-1 - place)
                if band not in self.folded:
                    self._places.extend(self.ranks.best[start : start + count].tolist())
            start += count

    @property
    def heads(self) -> Mapping[Dimension, TapeHead]:
        """The head of every tape."""
        return self._heads

    @property
    def band_rows(self) -> Sequence[int]:
        """Where the headings of bands stand."""
        return self._band_rows

    @property
    def first_model(self) -> int | None:
        """Where the first row of a model stands, None where there is none."""
        return next((at for at, place in enumerate(self._places) if place >= 0), None)

    @cached_property
    def has_notes(self) -> bool:
        """Whether any model's best size has something to note beside the tapes."""
        best = self.ranks.best
        extra = self.fit.states[len(TAPES) :, best]
        known = ~np.isnan(self.fit.lower[len(TAPES) :, best])
        off = bool(np.any((extra != 0) & known))
        gates = any(bool(flags[best].any()) for flags in self.fit.gates.found.values())
        bare = bool(self._counts[Band.NOT_COMPARED])
        asked = bool(self._groups.asked[best].any())
        between = bool(self.fit.between[best].any())
        noted = off or bare or gates or asked or between or bool(self.fit.table.facts.stock)
        own = self.fit.table.facts.experience
        told = bool(own) and any(own[at] is not None for at in best)
        return noted or told or any_adjusted(self.fit, best)

    @property
    def is_trial(self) -> bool:
        """Whether a value is tried that nobody measured; the rows then keep their order."""
        return self._measured is not None

    @property
    def counts(self) -> Mapping[Band, int]:
        """The number of models in each band."""
        return self._counts

    @property
    def models(self) -> int:
        """The number of models."""
        return len(self.ranks.best)

    @property
    def summary(self) -> tuple[str, str]:
        """How much was compared, in two lines."""
        return (
            self._words("summary-models", models=self.models, sizes=len(self.fit.table.offers)),
            self._words("trying-order")
            if self._measured is not None
            else self._words("summary-try", count=self._counts[Band.TRY]),
        )

    def __len__(self) -> int:
        return len(self._places)

    def row(self, number: int) -> ModelRow | BandRow:
        """The row at ``number``, 0 at the top."""
        made = self._rows.get(number)
        if made is None:
            place = self._places[number]
            made = self._band_row(BANDS[-1 - place]) if place < 0 else self.model_row(place)
            self._rows[number] = made
        return made

    def find(self, key: str) -> int | None:
        """Where the model ``key`` stands, None where it is not shown."""
        for number, place in enumerate(self._places):
            if place >= 0 and self._groups.keys[self._groups.group_of[place]] == key:
                return number
        return None

    def fit_row(self, row: ModelRow) -> FitRow:
        """The engine's row of the best size of ``row``."""
        return self.fit.row_of(row.at)

    def model_row(self, at: int) -> ModelRow:
        """The row of the model whose best size is the offer ``at``."""
        offer = self.fit.table.offers[at]
        group = self._groups.group_of[at]
        girths, length = self._verdict_words(at)
        band = band_of(self.fit.row_of(at))
        stopped = band is Band.NOT_OFFERED
        remarks = self._remarks(at, stopped=stopped)
        wearer, make = self._names(at)
        return ModelRow(
            key=self._groups.keys[group],
            at=at,
            band=band,
            maker=offer.supplier or "",
            model=offer.model,
            wearer=wearer,
            make=make,
            edition=offer.season or "",
            size=offer.size,
            length_option=offer.length or "",
            also=self._also(at, self._groups.members[group]),
            girths=girths,
            length=length,
            cells={one: self.cells.cell(one, at) for one in TAPES},
            note=self._row_words.note(remarks),
            stopped=stopped,
            note_brief=self._row_words.note_brief(remarks),
        )

    def _names(self, at: int) -> tuple[str, str]:
        """For whom the chart is, and the maker and the kind."""
        key = (at, self._words.language)
        named = self._groups.names.get(key)
        if named is None:
            offer = self.fit.table.offers[at]
            named = wearer_of(offer, self._words), make_of(offer, self._words)
            self._groups.names[key] = named
        return named

    def members(self, row: ModelRow) -> tuple[int, ...]:
        """Every offer of the model of ``row``, in the order of its chart."""
        return self._groups.members[self._groups.group_of[row.at]]

    def neighbours(self, row: ModelRow) -> tuple[int, ...]:
        """The offers beside the best size of ``row``: the next size each way, then each length."""
        return neighbours_of(self.fit, row.at, self.members(row))

    def best_of(self, key: str) -> int | None:
        """The best size of the model ``key``, shown or folded away; None where it is not there."""
        best, groups = self.ranks.best, self._groups
        return next((int(at) for at in best if groups.keys[groups.group_of[at]] == key), None)

    def size_of(self, at: int) -> str:
        """The size, and the length where there are several, of one offer."""
        return size_and_length(self.fit.table.offers[at], self._words)

    def both_sides(self, row: ModelRow, dimension: Dimension) -> str:
        """What is left at either end of the best size, for the cell that has the focus."""
        margins = margins_at(self.fit, dimension, row.at)
        return "" if margins is None else self._row_words.both_sides(dimension, margins)

    def sentence(self, row: ModelRow, dimension: Dimension | None = None) -> str:
        """What a screen reader says of a row, or of one of its tapes."""
        if dimension is None:
            return self._words(
                "row-sentence-also" if row.also else "row-sentence",
                model=row.model,
                maker=row.make,
                size=self.size_of(row.at),
                also=row.also,
                girths=row.girths.text,
                length=row.length.text,
            )
        reason = self.fit.row_of(row.at).dimensions[dimension].reason
        said = sentence(reason, self._words.wording)
        printed = printed_text(self.fit, dimension, row.at)
        return said if printed is None else self._words("cell-prints", said=said, printed=printed)

    def _verdict_words(self, at: int) -> tuple[VerdictWord, VerdictWord]:
        girth = GIRTHS[self.fit.girths[at]].value
        chest_checked = state_at(self.fit, Dimension.CHEST, at) != "not_checked"
        length = state_at(self.fit, Dimension.BACK_LENGTH, at)
        key = (girth, chest_checked, length)
        said = self._verdicts.get(key)
        if said is None:
            said = self._row_words.girths(girth, chest_checked), self._row_words.length(length)
            self._verdicts[key] = said
        return said

    def _remarks(self, at: int, *, stopped: bool) -> list[Remark]:
        """What is to be noted, the weightiest first; what stops a sale stands alone."""
        remarks = remarks_on(self.fit.row_of(at), self._words)
        return remarks[:1] if stopped else remarks

    @cached_property
    def _can_be_tried(self) -> list[bool]:
        """Which offers can be tried, for every painted row asks it of all its model's sizes."""
        tried: list[bool] = in_band(self.fit, Band.TRY).tolist()
        return tried

    def _also(self, at: int, members: tuple[int, ...]) -> str:
        """The next best size of the model, if it too can be tried."""
        tried = self._can_be_tried
        others = [other for other in members if tried[other] and other != at]
        if not others or not tried[at]:
            return ""
        fit = self.fit
        next_best = min(others, key=lambda other: (fit.verdicts[other], fit.penalty[other]))
        return also_words(fit.table.offers[at], fit.table.offers[next_best], self._words)

    def _band_row(self, band: Band) -> BandRow:
        count = self._counts[band]
        folded = band in self.folded
        code = f"group-{band.value.replace('_', '-')}"
        return BandRow(band, count, folded, self._words(code, count=count))
