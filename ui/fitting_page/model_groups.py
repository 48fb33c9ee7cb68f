"""From sizes to models: which offers belong to one model, and how the models rank. No Qt.

Everything here is arrays, so that five thousand sizes are grouped and put into bands within a
fraction of one display frame.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field
from typing import Final, Self

import numpy as np
import numpy.typing as npt

from harmonizer.fit_row import FitRow
from harmonizer.fit_sheet import FitSheet
from harmonizer.not_compared import is_not_compared, not_compared
from harmonizer.offers import model_key
from harmonizer.range_table import RangeTable
from harmonizer.states import VERDICTS
from ui.drawing.tape import SizeSpan
from ui.fitting_page.rows import BAND_OF, BANDS, TAPES, Band, TapeCell

Places = npt.NDArray[np.int64]

_BAND_CODES: Final = np.array([BANDS.index(BAND_OF[verdict.value]) for verdict in VERDICTS])
_NOT_COMPARED: Final = BANDS.index(Band.NOT_COMPARED)
_MOST_LOOKS: Final = 8192


@dataclass(frozen=True, slots=True, eq=False)
class ModelGroups:
    """The offers of a table by model: ``group_of`` per offer, ``members`` per model.

    ``asked`` says of which offers something is asked. ``spans`` remembers the sizes drawn on a
    tape, which stay the same from reading to reading, by signature, tape and best size; ``looks``
    the cells as they look; ``names`` what a row is called, by offer and language.
    """

    keys: tuple[str, ...]
    group_of: Places
    members: tuple[tuple[int, ...], ...]
    asked: npt.NDArray[np.bool_]
    spans: dict[tuple[int, int, int], tuple[SizeSpan, ...]] = field(default_factory=dict)
    signatures: dict[tuple[bytes, bytes], int] = field(default_factory=dict)
    looks: dict[TapeCell, TapeCell] = field(default_factory=dict)
    names: dict[tuple[int, str], tuple[str, str]] = field(default_factory=dict)

    @classmethod
    def of(cls, table: RangeTable) -> Self:
        """The models of ``table``: one maker's one model in one band and season."""
        places: dict[str, int] = {}
        group_of = np.empty(len(table.offers), np.int64)
        members: list[list[int]] = []
        for at, offer in enumerate(table.offers):
            group = places.setdefault(model_key(offer), len(places))
            if group == len(members):
                members.append([])
            members[group].append(at)
            group_of[at] = group
        return cls(
            keys=tuple(places),
            group_of=group_of,
            members=tuple(tuple(one) for one in members),
            asked=np.array([bool(offer.open_questions) for offer in table.offers], np.bool_),
        )

    def only(self, cell: TapeCell) -> TapeCell:
        """The one object that stands for all cells that look like ``cell``.

        Painters tell by identity what they have painted: a cell holds every size of its model.
        """
        if len(self.looks) >= _MOST_LOOKS:
            self.looks.clear()
        return self.looks.setdefault(cell, cell)

    def signature(self, sheet: FitSheet) -> int:
        """A number for what decides which sizes can be drawn: equal where the spans are equal."""
        tapes = len(TAPES)
        compared = np.isnan(sheet.lower[:tapes])
        lanes = sheet.choice.lane[:tapes].astype(np.uint16)
        key = (lanes.tobytes(), compared.tobytes())
        return self.signatures.setdefault(key, len(self.signatures))


@dataclass(frozen=True, slots=True, eq=False)
class Ranked:
    """The models of one fit: the best offer of each, best first within its band."""

    best: Places
    bands: npt.NDArray[np.int64]

    def count(self, band: Band) -> int:
        """How many models stand in ``band``."""
        return int(np.count_nonzero(self.bands == BANDS.index(band)))


def in_band(sheet: FitSheet, band: Band) -> npt.NDArray[np.bool_]:
    """Which offers stand in ``band`` by their own verdict."""
    return np.asarray(_band_codes(sheet) == BANDS.index(band))


def band_of(row: FitRow) -> Band:
    """The group of one size: by its verdict, apart from that nothing of it was compared."""
    return Band.NOT_COMPARED if is_not_compared(row) else BAND_OF[row.verdict.value]


def _band_codes(sheet: FitSheet) -> Places:
    codes = _BAND_CODES[sheet.verdicts]
    return np.where(not_compared(sheet), _NOT_COMPARED, codes)


def ranked_as(sheet: FitSheet, groups: ModelGroups, order: Ranked) -> Ranked:
    """The best offer of every model now, the models in the order and bands of ``order``."""
    best_of_group = sheet.order[_first_places(sheet, groups)]
    return Ranked(best_of_group[groups.group_of[order.best]], order.bands)


def ranked(sheet: FitSheet, groups: ModelGroups) -> Ranked:
    """The best offer of every model, by band, and within a band as the engine orders them."""
    best = sheet.order[np.sort(_first_places(sheet, groups))]
    bands = _band_codes(sheet)[best]
    by_band = np.argsort(bands, kind="stable")
    return Ranked(best[by_band], bands[by_band])


def _first_places(sheet: FitSheet, groups: ModelGroups) -> Places:
    """Where in the engine's order each model first appears.

    Written from the end to the beginning, so that the first place is what stays.
    """
    in_order = groups.group_of[sheet.order]
    first = np.empty(len(groups.keys), np.int64)
    first[in_order[::-1]] = np.arange(len(in_order) - 1, -1, -1)
    return first


def neighbours_of(fit: FitSheet, at: int, members: Sequence[int]) -> tuple[int, ...]:
    """Of one model the next size down and up in the same length, then the lengths of this size.

    Where no chest orders the sizes, those before and after in the chart.
    """
    larger, offers_ = fit.table.facts.larger, fit.table.offers
    sizes = [one for one in members if larger[one] == at or one == larger[at]]
    own = offers_[at]
    lengths = [
        one
        for one in members
        if one != at and own.length is not None and offers_[one].size == own.size
    ]
    if sizes or lengths:
        return (*sizes, *lengths)
    place = members.index(at)
    return (*members[max(place - 1, 0) : place], *members[place + 1 : place + 2])
