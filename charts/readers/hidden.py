"""What a workbook hides is left out, and said so once."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from collections.abc import Set as AbstractSet

from charts.findings import FindingLog
from charts.readers.merged_areas import Cells
from charts.sheet import Addressing, Sheet, column_letters


def shown_sheet(
    name: str,
    cells: Cells,
    hidden_rows: AbstractSet[int],
    hidden_columns: AbstractSet[int],
    *,
    comments: Mapping[tuple[int, int], str],
    notes: tuple[str, ...] = (),
) -> Sheet:
    """A workbook's sheet without its hidden rows and columns, of which those with cells are told.

    ``cells`` are all cells by (row, column) from 0, merged areas already repeated in them.
    """
    shown = {
        (row, column): cell
        for (row, column), cell in cells.items()
        if row not in hidden_rows and column not in hidden_columns
    }
    return Sheet(
        name=name,
        addressing=Addressing.SHEET,
        cells=shown,
        rows=max((row for row, _ in shown), default=-1) + 1,
        columns=max((column for _, column in shown), default=-1) + 1,
        notes=notes,
        hidden_rows=frozenset(hidden_rows & {row for row, _ in cells}),
        hidden_columns=frozenset(hidden_columns & {column for _, column in cells}),
        comments=comments,
    )


def note_hidden(sheets: Iterable[Sheet], hidden_sheets: Sequence[str], log: FindingLog) -> None:
    """One note for all that is hidden, written as places: ``Women!5:6``, ``Women!C:C``."""
    places: list[str] = []
    for sheet in sheets:
        rows = [f"{first + 1}:{last + 1}" for first, last in _runs(sheet.hidden_rows)]
        columns = [
            f"{column_letters(first)}:{column_letters(last)}"
            for first, last in _runs(sheet.hidden_columns)
        ]
        for column in sorted({column for _, column in sheet.hidden_cells}):
            runs = _runs(row for row, beside in sheet.hidden_cells if beside == column)
            places.extend(sheet.area((first, column), (last, column)) for first, last in runs)
        plain = sheet.addressing is Addressing.PLAIN
        places.extend(part if plain else f"{sheet.name}!{part}" for part in rows + columns)
    places.extend(hidden_sheets)
    if places:
        log.add("hidden-left-out", places[0], key="", places=", ".join(places))


def _runs(numbers: Iterable[int]) -> list[tuple[int, int]]:
    runs: list[tuple[int, int]] = []
    for number in sorted(numbers):
        if runs and number == runs[-1][1] + 1:
            runs[-1] = (runs[-1][0], number)
        else:
            runs.append((number, number))
    return runs
