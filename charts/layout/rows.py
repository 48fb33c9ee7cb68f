"""The rows of a rectangle: blank ones, lone cells (titles and notes), and runs of table rows."""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from typing import Final

from charts.dimensions import Role
from charts.headings.bands import names_adults
from charts.layout.looks import Look, look
from charts.layout.view import At, View
from charts.remembered import remembered
from charts.sheet import Sheet
from charts.size_labels import LabelKind

# What a shop says of a file in a cell of its own, with the answer in the cell beside it.
_FILE_WORDS: Final = frozenset(
    (
        *("brand", "supplier", "manufacturer", "model", "style", "season", "collection"),
        *("product", "category", "gender"),
        *("marke", "hersteller", "lieferant", "modell", "saison", "kollektion", "produkt"),
        *("artikel", "kategorie", "geschlecht"),
        *("marque", "fournisseur", "modèle", "produit", "catégorie", "genre"),
    )
)

_CONVERSION: Final = re.compile(r"\d\s*(?:[^\W\d_]+\.?|[\"”″])\s*[=≈]\s*\d+[.,]?\d*\s*[^\W\d_]+")
"""``1 inch = 2.54 cm``: how units are converted, no size."""


@dataclass(frozen=True, slots=True)
class Lone:
    """A row with one text: a title, a band, a note, a footnote."""

    at: At
    row: int


@dataclass(frozen=True, slots=True)
class Run:
    """Neighbouring rows of a table, without the lone rows between them."""

    rows: tuple[int, ...]


@dataclass(frozen=True, slots=True)
class Gap:
    """One or more blank rows."""


def pieces(view: View) -> Iterator[Lone | Run | Gap]:
    """The rows of the view (not turned) in their order, as lone rows, runs and gaps."""
    run: list[int] = []
    before: int | None = None
    start = _first_column(view)
    for number, row in enumerate(view.rows):
        if before is not None and _blank_between(view.sheet, before, row):
            if run:
                yield Run(tuple(run))
                run = []
            yield Gap()
        before = row
        filled = distinct(view.sheet, row, view.columns)
        if not run and _says_of_the_file(view, number, filled):
            yield Lone(_joined(filled), row)
            continue
        if len(filled) > 1 or (filled and _belongs(view, number, filled[0], start)):
            run.append(row)
            continue
        if run:
            yield Run(tuple(run))
            run = []
        if filled:
            yield Lone(filled[0], row)
    if run:
        yield Run(tuple(run))


def _says_of_the_file(view: View, number: int, filled: Sequence[At]) -> bool:
    """``Product: | Vest``, ``#date | 2027-02-03``: a name and a value before a wider table."""
    if len(filled) != 2 or filled[1].column - filled[0].column != 1:
        return False
    if filled[0].column != view.columns[0]:
        return False
    first, second = look(filled[0].text), look(filled[1].text)
    names = {Role.MEASURE, Role.LABEL, Role.UNIT}
    if first.heading.role in names or first.label is not None or first.value:
        return False
    if second.heading.role in {Role.MEASURE, Role.UNIT}:
        return False
    below = view.rows[number + 1 :]
    widths = [len(distinct(view.sheet, row, view.columns)) for row in below[:8]]
    widest = max(widths, default=0)
    return widest > 3 or (widest > 1 and _names_the_file(filled[0].text, second))


def _names_the_file(name: str, said: Look) -> bool:
    """Above a table of few columns more is asked of the name, as a heading looks like it."""
    plain = name.strip()
    if said.sure_label and not said.value:
        return False
    if plain.lstrip("#").rstrip(": ").lower() in _FILE_WORDS:
        return True
    return not said.value and (plain.endswith(":") or plain.startswith("#"))


def _joined(filled: Sequence[At]) -> At:
    """Both cells as one text: ``Product: Vest``."""
    name = filled[0].text.strip().lstrip("#").rstrip(":").strip()
    cell = replace(filled[0].cell, text=f"{name}: {filled[1].text.strip()}")
    return replace(filled[0], cell=cell)


def _blank_between(sheet: Sheet, before: int, row: int) -> bool:
    """Whether a visible blank row stands between two rows."""
    return any(between not in sheet.hidden_rows for between in range(before + 1, row))


@remembered
def distinct(sheet: Sheet, row: int, columns: Sequence[int]) -> list[At]:
    """The filled cells of one row between the first and the last column; a merged area once."""
    first, last = columns[0], columns[-1]
    found: dict[tuple[int, int], At] = {}
    for column, cell in sheet.row(row):
        if first <= column <= last and cell.text.strip():
            found.setdefault(cell.shared_from or (row, column), At(cell, row, column))
    return list(found.values())


def _belongs(view: View, number: int, at: At, start: int) -> bool:
    """Whether a lone cell is part of a table: a group heading, a value, a size without values.

    ``start`` is the column in which rows of several cells start.
    """
    one = look(at.text)
    if one.sentence or (one.blank and not one.text) or _CONVERSION.search(one.text):
        return False
    first = next((c for c in view.columns if (view.rows[number], c) in view.sheet.cells), None)
    if first is None or first != start:
        return one.value or (_next_is_table(view, number) and _groups(view, number, at))
    return _labels_a_row(view, number, at)


def _first_column(view: View) -> int:
    """The first column in which a row with several cells starts."""
    starts = []
    for row in view.rows:
        filled = distinct(view.sheet, row, view.columns)
        if len(filled) > 1:
            starts.append(filled[0].column)
    return min(starts, default=view.columns[0])


def _next_is_table(view: View, number: int) -> bool:
    after = view.rows[number + 1 : number + 2]
    return bool(after) and len(distinct(view.sheet, after[0], view.columns)) > 1


def _groups(view: View, number: int, at: At) -> bool:
    """A heading over several columns: it spans some of them, or names what they measure."""
    row = view.rows[number]
    spanned = sum(
        1
        for column in view.columns
        if (cell := view.sheet.cells.get((row, column))) is not None and cell.text == at.text
    )
    if spanned > 1:
        return True
    return look(at.text).heading.role in {Role.MEASURE, Role.LOW_END, Role.HIGH_END}


def _grown_ups(one: Look) -> bool:
    """``Adults`` alone: who wears the sizes below, though no band of their own."""
    label = one.label
    worded = label is not None and label.kind is LabelKind.WORD and not label.also
    return worded and names_adults(one.text)


def _labels_a_row(view: View, number: int, at: At) -> bool:
    """A size whose values are all blank, between rows that are sizes: no title."""
    one = look(at.text)
    if not (one.sure_label or one.value) or one.band is not None or _grown_ups(one):
        return False
    if one.length is not None and len(one.text) > 2:
        return False
    before = view.rows[max(0, number - 1) : number]
    for row in before:
        cells = distinct(view.sheet, row, view.columns)
        if len(cells) > 1 and cells[0].column == at.column:
            return look(cells[0].text).label is not None
    return False
