"""What is said at the other tables of a sheet that may hold for this one.

``Women`` over ``Tops``, and ``Bottoms`` below: where levels of headings are lost, two titles above
one table and one above the next are a name over both and a name of each. It holds until a table has
more than its own name again. So does a band over a table for tables without any name down to the
next band: what stands between two bands can be nobody's but the first one's.
"""

from __future__ import annotations

from collections.abc import Sequence
from itertools import chain, pairwise

from charts.columns.band_notes import is_a_name
from charts.columns.sizes_going_on import goes_on
from charts.columns.words import Words, is_sentence
from charts.dimensions import Role, find_units
from charts.headings.referring import speaks_of_measures
from charts.headings.whose import whose
from charts.layout.fields import FieldKind, Table
from charts.layout.looks import look
from charts.layout.view import At
from charts.schema import Basis, Dimension, UnitFrom


def far_words(table: Table, tables: Sequence[Table]) -> tuple[Words, ...]:
    """Titles of the tables before this one, the nearest first, and notes of all the others."""
    before = tables[: tables.index(table)]
    titles = [at for one in reversed(before) for at in reversed(one.titles)]
    notes = [at for one in tables if one is not table for at in one.notes]
    sheet = table.sheet
    return tuple(
        Words(at.text, kind, sheet.place(at.row, at.column))
        for kind, cells in ((UnitFrom.TITLE, titles), (UnitFrom.NOTE, notes))
        for at in cells
    )


def outer_words(table: Table, tables: Sequence[Table]) -> tuple[Words, ...]:
    """The titles over the names of this table and of one before it, the nearest first.

    A band is among them where another one stands over names of its own: then both are levels.
    """
    if not table.titles:
        return _between_bands(table, tables) or _of_the_sizes_before(table, tables)
    if all(map(_only_whose, table.titles)):
        return _under_whose(table, tables)
    if len(table.titles) != 1 or not _names(table.titles[0]):
        return ()
    for before in reversed(tables[: tables.index(table)]):
        if outer := _outer(before):
            leveled = len({look(at.text).band for one in tables for at in _outer(one)} - {None}) > 1
            held = (at for at in reversed(outer) if leveled or look(at.text).band is None)
            return tuple(_words(at, table) for at in held)
        if not all(map(_names, before.titles)):
            return ()
    return ()


def _only_whose(title: At) -> bool:
    """Whether a title says whose measures follow, the body's or the garment's, and no more."""
    text = title.text
    names = look(text).band is not None or is_sentence(text)
    return not names and whose(text).basis is not Basis.UNKNOWN


def _under_whose(table: Table, tables: Sequence[Table]) -> tuple[Words, ...]:
    """``Men's jackets``, ``Body measurements``, and ``Garment measurements`` below: both are men's.

    Where tables above are for different people, nobody says for which of them this one is.
    """
    before = tables[: tables.index(table)]
    bands = {look(at.text).band for one in before for at in one.titles} - {None}
    named = [[at for at in one.titles if not _only_whose(at)] for one in before]
    nearest = next((titles for titles in reversed(named) if titles), [])
    return tuple(_words(at, table) for at in reversed(nearest)) if len(bands) <= 1 else ()


def _between_bands(table: Table, tables: Sequence[Table]) -> tuple[Words, ...]:
    """``Men`` over collars, then waists without a title, then ``Women``: the waists are men's.

    Where the table measures again what one before it did, or begins in another column than the
    bands, a title of its own may be lost.
    """
    at = tables.index(table)
    after = next((one for one in tables[at + 1 :] if one.titles), None)
    measured = _measured(table)
    for before in reversed(tables[:at]):
        if measured & _measured(before):
            return ()
        if before.titles:
            first = _band_alone(before)
            second = _band_alone(after) if after is not None else None
            if first is None or second is None or first.column != second.column:
                return ()
            under = _first_column(table) == _first_column(before)
            another = look(first.text).band != look(second.text).band
            return (_words(first, table),) if under and another else ()
    return ()


def _of_the_sizes_before(table: Table, tables: Sequence[Table]) -> tuple[Words, ...]:
    """The nearest title of the table whose sizes go on in this one."""
    for own, before in pairwise(reversed(tables[: tables.index(table) + 1])):
        if not goes_on(own, before):
            return ()
        if before.titles:
            return (_words(before.titles[-1], table),)
    return ()


def _band_alone(table: Table) -> At | None:
    """The only title of a table, where it says for whom the table is and no more."""
    if len(table.titles) != 1 or look(table.titles[0].text).band is None:
        return None
    return table.titles[0] if is_a_name(table.titles[0].text) else None


def _measured(table: Table) -> set[Dimension]:
    fields = table.of(FieldKind.VALUES)
    return {one.heading.dimension for one in fields if one.heading.dimension is not None}


def _first_column(table: Table) -> int | None:
    cells = (at for field in table.fields for at in (*field.heads, *chain(*field.cells)))
    return min((at.column for at in cells), default=None)


def _outer(table: Table) -> tuple[At, ...]:
    """The titles of a table above its name."""
    named = len(table.titles) > 1 and _names(table.titles[-1])
    return table.titles[:-1] if named else ()


def _names(title: At) -> bool:
    """Whether a title is the name of something that is measured: ``Tops``, and no ``Size chart``.

    One that says for whom it is stands on the level of the titles over it.
    """
    one = look(title.text)
    named = not is_sentence(title.text) and one.band is None
    of_the_chart = one.heading.role is Role.LABEL or bool(find_units(title.text))
    return named and not of_the_chart and not speaks_of_measures(title.text)


def _words(at: At, table: Table) -> Words:
    return Words(at.text, UnitFrom.TITLE, table.sheet.place(at.row, at.column))
