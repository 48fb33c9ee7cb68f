"""What comes out of one comparison: arrays for painting, and rows made when they are read."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import overload

from harmonizer.fit_arrays import FitArrays
from harmonizer.fit_row import FitRow

__all__ = ["FitRow", "FitRows", "FitSheet"]


@dataclass(frozen=True, slots=True, eq=False)
class FitSheet(FitArrays):
    """One rider against every size of a table."""

    @property
    def rows(self) -> FitRows:
        """The sizes, best first."""
        return FitRows(self)

    def row_of(self, offer: int) -> FitRow:
        """The row of the offer at this place of the table."""
        return FitRow(self, offer)


class FitRows(Sequence[FitRow]):
    """The rows of a sheet, best first."""

    def __init__(self, sheet: FitSheet) -> None:
        self._sheet = sheet

    def __len__(self) -> int:
        return len(self._sheet.order)

    @overload
    def __getitem__(self, at: int) -> FitRow: ...
    @overload
    def __getitem__(self, at: slice) -> Sequence[FitRow]: ...
    def __getitem__(self, at: int | slice) -> FitRow | Sequence[FitRow]:
        places = self._sheet.order[at]
        if isinstance(at, slice):
            return [FitRow(self._sheet, int(place)) for place in places]
        return FitRow(self._sheet, int(places))
