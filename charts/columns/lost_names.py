"""Signs that the names of the sizes are lost, or that what was taken for them is something else."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from charts.columns.words import Surroundings
from charts.dimensions import Role
from charts.layout.fields import Field, FieldKind
from charts.layout.looks import look
from charts.layout.rows import distinct

_FEWEST_HEADS: Final = 3
"""Cells of a row that could name columns; two may be a name and what it is."""


def lost_names(key: Field | None, labels: Sequence[Field], around: Surroundings) -> tuple[str, ...]:
    """The question about the sizes of a whole table, where their names are in doubt."""
    return (
        _heads_over_rows(key, around)
        or _size_among_heads(key, around)
        or _sizes_beside_sizes(labels, around)
        or _figures_for_sizes(key, around)
        or _heads_left_above(around)
    )


def _heads_over_rows(key: Field | None, around: Surroundings) -> tuple[str, ...]:
    """``Size | Chest`` over ``S | M``: headings across, of which each was taken for one row."""
    if key is None or not around.table.turned or not key.heads:
        return ()
    head, first = key.heads[0], next((cell[0] for cell in key.cells if cell), None)
    if first is None or head.column < first.column or head.row == first.row:
        return ()
    place = around.table.area
    return (around.log.add("columns-shifted", place, case="headings", text=head.text.strip()),)


def _size_among_heads(key: Field | None, around: Surroundings) -> tuple[str, ...]:
    """``XS | | INCHES`` below the headings: a size without figures, or a unit in the wrong row."""
    for at in key.heads[1:] if key is not None else ():
        if look(at.text).wordy_label and not look(at.text).heads:
            place = around.place(at.row, at.column)
            return (around.log.add("text-order", place, case="left", text=at.text.strip()),)
    return ()


def _sizes_beside_sizes(labels: Sequence[Field], around: Surroundings) -> tuple[str, ...]:
    """Columns of the same letters under no word for size: a grid whose other axis is not read."""
    bare = [one for one in labels if one.heading.role is not Role.LABEL and any(one.cells)]
    looks = [[look(cell[0].text) for cell in one.cells if cell] for one in bare]
    wordy = [{one.text for one in column if one.wordy_label} for column in looks]
    shared = set.union(*wordy[1:]) & wordy[0] if len(wordy) > 1 else set()
    if not shared:
        return ()
    first = next(cell[0] for cell in bare[0].cells if cell)
    place = around.place(first.row, first.column)
    return (around.log.add("label-repeated", place, text=min(shared)),)


def _figures_for_sizes(key: Field | None, around: Surroundings) -> tuple[str, ...]:
    """``Chest | | Waist`` over 84, 88, 66: a nameless column of figures taken for the sizes."""
    if key is None or key.heads or around.table.gridded:
        return ()
    fields = around.table.fields
    before = fields[: fields.index(key)]
    looks = [look(cell[0].text) for cell in key.cells if cell]
    if all(one.sure_label for one in looks) or not any(
        one.kind is FieldKind.VALUES and one.heads for one in before
    ):
        return ()
    first = next(cell[0] for cell in key.cells if cell)
    place = around.place(first.row, first.column)
    return (around.log.add("columns-shifted", place, case="sizes"),)


def _heads_left_above(around: Surroundings) -> tuple[str, ...]:
    """A row of words over the columns of a table without headings, parted from it by a lone line.

    ``Measure | Height | 88, 92 | 96, 100`` over ``Jacket``: sizes or measures lost their names.
    """
    table, sheet = around.table, around.table.sheet
    cells = [at for one in table.fields for cell in one.cells for at in cell]
    if not cells or table.turned or any(one.heads for one in table.fields):
        return ()
    columns = {at.column for at in cells}
    above, last = min(at.row for at in cells), (max(at.row for at in cells), max(columns))
    if table.area != sheet.area((above, min(columns)), last):
        return ()  # it has heads, which were made sizes or lengths
    while above and len(row := distinct(sheet, above - 1, sorted(columns))) == 1:
        above -= 1
    if not above or len(row) < _FEWEST_HEADS or 2 * len(row) < len(columns):
        return ()
    if sum(look(at.text).value for at in row) * 2 > len(row):
        return ()
    place = sheet.area((above - 1, row[0].column), last)
    return (around.log.add("text-order", place, case="left", text=row[0].text.strip()),)
