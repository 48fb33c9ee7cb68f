"""Which sheets of a file are gone into: no lists of the trade, and none beyond any chart's size."""

from __future__ import annotations

from typing import Final

from charts.findings import FindingLog
from charts.patience import Patience
from charts.sheet import Sheet
from charts.trade_lists import is_trade_list

_MOST_CELLS: Final = 12_000
"""Filled cells of a sheet; a supplier's longest chart has some thousands."""
_PATIENT_CELLS: Final = 5_000
"""Cells of a file that are read however long it takes: a slow machine refuses no real chart."""
_LONGEST_S: Final = 1.4
_LETTERS_A_CELL: Final = 40
"""Letters of a long text that cost as much as one cell more."""


class Allowance:
    """How much of one file is read: its cells are counted, and the time since it was opened."""

    def __init__(self, name: str, log: FindingLog) -> None:
        self._name = name
        self._log = log
        self._patience = Patience(_LONGEST_S)
        self._cells = 0

    def worth_reading(self, sheet: Sheet) -> bool:
        """Whether ``sheet`` may hold charts; what is left out is said in the log."""
        if is_trade_list(sheet):
            first = sheet.place(*next(iter(sheet.cells)))
            self._log.add("not-a-chart", first, key=sheet.name, case="trade")
            return False
        size = sum(1 + len(cell.text) // _LETTERS_A_CELL for cell in sheet.cells.values())
        self._cells += size
        spent = self._cells > _PATIENT_CELLS and self._patience.is_over
        if size <= _MOST_CELLS and not spent:
            return True
        what = str(len(sheet.cells))
        name = f"{self._name} ({sheet.name})" if sheet.name else self._name
        self._log.add("too-large", name, key=sheet.name, name=name, what=what, case="many")
        return False
