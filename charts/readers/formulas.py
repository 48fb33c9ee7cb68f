"""Formulas whose value nobody stored: nothing can be read of them, and that is said."""

from __future__ import annotations

from collections.abc import Iterable

from charts.findings import FindingLog
from charts.sheet import Sheet


def note_formulas(sheets: Iterable[Sheet], log: FindingLog) -> None:
    """One error for each sheet, with the places of up to five such cells."""
    for sheet in sheets:
        places = [
            sheet.place(*at)
            for at, cell in sheet.cells.items()
            if cell.formula_without_value and cell.shared_from is None
        ]
        if places:
            more = " …" if len(places) > 5 else ""
            log.add(
                "formula-without-value",
                places[0],
                key=sheet.name,
                cells=", ".join(places[:5]) + more,
            )
