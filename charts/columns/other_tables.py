"""What is said at the other tables of a sheet that may hold for this one.

``Women`` over ``Tops``, and ``Bottoms`` below: where levels of headings are lost, two titles above
one table and one above the next are a name over both and a name of each. It holds until a table has
more than its own name again.
"""

from __future__ import annotations

from collections.abc import Sequence

from charts.columns.words import Words, is_sentence
from charts.dimensions import Role, find_units
from charts.headings.referring import speaks_of_measures
from charts.layout.fields import Table
from charts.layout.looks import look
from charts.layout.view import At
from charts.schema import UnitFrom


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
