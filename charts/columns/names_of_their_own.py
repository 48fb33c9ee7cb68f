"""Columns of one band that may have names of sizes of their own: ages or heights in front of them.

``Women | | Kids |`` over ``Size | Chest | Age | Chest``: two tables side by side whose rows have
nothing to do with each other, or sizes with one name for both. Nobody can tell, so it is asked.
So it is where the first word stands over the names of the sizes and another band begins with a
measure in front of the one that the others begin with: all words may stand a column too early.
"""

from __future__ import annotations

from collections.abc import Sequence

from charts.columns.meaning import Column
from charts.columns.words import Surroundings
from charts.dimensions import Role
from charts.headings.bands import CHILDREN
from charts.layout.fields import Field, FieldKind
from charts.layout.looks import look
from charts.quantities import Unit
from charts.schema import Dimension


def own_names_asked(columns: Sequence[Column], around: Surroundings) -> list[Column]:
    """The columns, those of such a band with one question on each."""
    found = list(columns)
    for band in dict.fromkeys(one.band for one in columns if one.band is not None):
        first = _first_of(band, around.table.fields)
        case = _case(first, band, around.table.fields) if first is not None else ""
        if first is None or not case:
            continue
        place = around.place(first.heads[-1].row, first.heads[-1].column)
        heading = first.printed_heading
        ident = around.log.add("columns-shifted", place, case=case, heading=heading)
        found = [one.asking(ident) if one.band == band else one for one in found]
    return found


def _first_of(band: str, fields: Sequence[Field]) -> Field | None:
    return next((one for one in fields if one.heading.band == band and one.heads), None)


def _case(first: Field, band: str, fields: Sequence[Field]) -> str:
    """What may be wrong with the columns of a band that begins with ``first``; empty for nothing.

    Where every band has ages or heights they are a measure like the others; where they name the
    sizes of all there is nothing to tell apart.
    """
    number = fields.index(first)
    names = [one for one in fields[:number] if one.kind is FieldKind.LABEL]
    others = [one for one in fields if one.heading.band not in {None, band}]
    before = [one.heading.dimension for one in fields[:number] if _measures(one) and one in others]
    behind = [one.heading.dimension for one in fields[number + 1 :] if one.heading.band == band]
    if not names or not before or not set(before) & set(behind):
        return ""
    if _ages_or_heights(first, band):
        return "" if any(_ages_or_heights(one, band) for one in (*others, *names)) else "own"
    begins_alike = first.heading.dimension == before[0]
    early = _banded(names[0]) and not begins_alike and behind[0] == before[0]
    return "groups" if early else ""


def _measures(field: Field) -> bool:
    return field.kind is FieldKind.VALUES


def _banded(field: Field) -> bool:
    """Whether a word for whom stands above the heading of a column."""
    return len(field.heads) > 1 and look(field.heads[0].text).heading.role is Role.BAND


def _ages_or_heights(field: Field, band: str) -> bool:
    """Ages; heights, where children may be named by them."""
    if field.heading.dimension is Dimension.AGE or _all_ages(field):
        return True
    return band in CHILDREN and field.heading.dimension is Dimension.HEIGHT


def _all_ages(field: Field) -> bool:
    quantities = [look(cell[0].text).reading.quantity for cell in field.cells if cell]
    return bool(quantities) and all(one and one.unit is Unit.YEARS for one in quantities)
