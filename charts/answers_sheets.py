"""Answers that bear on a sheet before its tables are looked for: cells that read otherwise, parts.

The sheet that comes back reads as if it had been printed so; what is printed stays in its cells.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace

from charts.answering import Answering
from charts.answers import Answer, CellReads, Corrected, LeftOut, Part
from charts.columns.dates import Undone
from charts.corrections import Correction
from charts.places import cells_at, rectangle_in
from charts.sheet import Cell, Sheet

Dates = Mapping[tuple[int, int], Undone]
At = tuple[int, int]


def left_out(sheet: Sheet, answering: Answering) -> bool:
    """Whether the whole sheet, or the file it belongs to, was left out."""
    for answer, act in answering.of(LeftOut):
        if act.part is Part.FILE or (act.part is Part.SHEET and act.place == sheet.name):
            answering.use(answer)
            return True
    return False


def answered_sheet(sheet: Sheet, dates: Dates, answering: Answering) -> tuple[Sheet, Dates]:
    """``sheet`` with rows left out and cells corrected; a corrected cell is no date any more."""
    for answer, act in answering.of(LeftOut):
        if act.part is Part.ROW and (less := _without_row(sheet, act)) is not None:
            answering.use(answer)
            sheet = less
    cells: dict[At, Cell] = {}
    for answer, corrected in answering.of(Corrected):
        places = [_found(sheet, one, dates) for one in corrected.cells]
        for at, one in zip(places, corrected.cells, strict=True) if all(places) else ():
            cells |= _read_otherwise(sheet, at, one, answer, answering)
    if not cells:
        return sheet, dates
    kept = {at: cell for at, cell in {**sheet.cells, **cells}.items() if cell.text}
    rest = {at: undone for at, undone in dates.items() if at not in cells}
    return replace(sheet, cells=dict(sorted(kept.items()))), rest


def _without_row(sheet: Sheet, act: LeftOut) -> Sheet | None:
    """The sheet without a row, or without the cells of it that ``act`` names."""
    area = rectangle_in(sheet, act.place)
    at = next(iter(cells_at(sheet, act.place)), None)
    if area is None or at is None or act.text not in ("", sheet.text(*at).strip()):
        return None
    whole = area.left == area.right
    kept = {
        (row, column): cell
        for (row, column), cell in sheet.cells.items()
        if not (area.top <= row <= area.bottom and (whole or area.holds(row, column)))
    }
    emptied = {at[0] for at in sheet.cells} - {at[0] for at in kept}
    return replace(sheet, cells=kept, hidden_rows=sheet.hidden_rows | emptied)


def _read_otherwise(
    sheet: Sheet, at: At | None, reads: CellReads, answer: Answer, answering: Answering
) -> dict[At, Cell]:
    """The cells that one correction changes: its own, and those of a merged area around it."""
    if at is None:
        return {}
    correction = Correction(reads.place, reads.printed, reads.text, answer.by, answer.on)
    answering.use(answer)
    answering.corrections.append(correction)
    cell = sheet.cells.get(at) or Cell("")
    new = replace(cell, text=reads.text, stored=None, number_format="", corrected=correction)
    shared = {
        place: replace(new, shared_from=at)
        for place, other in sheet.cells.items()
        if other.shared_from == at
    }
    return {at: new} | shared


def _found(sheet: Sheet, reads: CellReads, dates: Dates) -> At | None:
    """The cell a correction speaks of, if it still prints what it printed then."""
    printed = reads.printed.strip()
    for at in cells_at(sheet, reads.place):
        shown = dates[at].shown if at in dates else None
        if printed in (sheet.text(*at).strip(), shown):
            return at
    area = rectangle_in(sheet, reads.place)
    blank = area is not None and not sheet.text(area.top, area.left).strip()
    return (area.top, area.left) if area is not None and blank and not printed else None
