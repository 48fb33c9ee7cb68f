"""A word for whom a chart is, in a name of the sheet that no chart has taken: nobody may be told.

The name of a garment can stand below its figures, or a heading behind them. Where it is the only
one that names anybody, a chart without a band may be theirs.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from itertools import chain
from typing import Final

from charts.asked_values import chart_asking, ranges_of
from charts.columns.words import is_sentence
from charts.dimensions import read_band
from charts.findings import FindingLog
from charts.headings.bands import bands_named
from charts.layout.fields import FieldKind, Table
from charts.schema import Chart, Dimension
from charts.sheet import Sheet

_LONGEST: Final = 60
"""Characters beyond which a text says something and names nothing (common practice, no source)."""
_FOR_ALL: Final = "unisex"
Place = tuple[int, int]


def people_unheard_asked(
    charts: Sequence[Chart], sheet: Sheet, tables: Sequence[Table], log: FindingLog
) -> list[Chart]:
    """The charts of a sheet without a band, with one question where a name around them has one.

    Names of different people are those of other pages, but one that names several is a title.
    """
    nobodys = [one for one in charts if one.band is None]
    named = list(_names(sheet, frozenset(_inside(tables)))) if nobodys else []
    several, case = [place for place, bands in named if " " in bands], "people"
    if not several and len(nobodys) < len(charts):
        # Beside a chart for somebody the others may be for anybody, unless nothing names them.
        below = _below_a_band(tables, dict(named))
        nobodys = [one for one in nobodys if one.place in below]
        several, case = [below[one.place] for one in nobodys], "nameless"
    elif not several and len({bands for _, bands in named}) == 1 and named[0][1] != _FOR_ALL:
        several = [place for place, _ in named]
    shifted = {one.id for one in log.findings if one.code == "columns-shifted"}
    nobodys = [one for one in nobodys if not _asked(one, shifted)]
    if not several or not nobodys:
        return list(charts)
    ident = log.add(
        "columns-shifted",
        sheet.place(*several[0]),
        key=f"people {sheet.name}",
        case=case,
        heading=sheet.text(*several[0]).strip(),
    )
    return [chart_asking(one, ident) if one in nobodys else one for one in charts]


def _below_a_band(tables: Sequence[Table], named: Mapping[Place, str]) -> dict[str, Place]:
    """The tables without a name below one that a name says for whom it is, and that name's place.

    They measure what that table does, of more sizes or of other people whose name is lost. A row
    of figures above a table is no name of it.
    """
    found: dict[str, Place] = {}
    place: Place | None = None
    had: set[Dimension | None] = set()
    end = 0
    for number, table in enumerate(tables):
        own = {one.heading.dimension for one in table.of(FieldKind.VALUES)} - {None}
        rows = [at.row for one in table.fields for at in (*one.heads, *chain(*one.cells))]
        behind = (at.text for before in tables[:number][-1:] for at in before.notes[-1:])
        if any(map(_may_name, chain(behind, (at.text for at in table.titles[-1:])))):
            above = [(at.row, at.column) for at in reversed(table.titles)]
            place = next((at for at in above if at in named), None)
            had, end = own, max(rows, default=0)
        elif place is not None and own & had and min(rows, default=0) > end:
            found[table.area] = place
    return found


def _may_name(text: str) -> bool:
    """Whether a text above a table, or behind the one before it, could be its name."""
    return any(map(str.isalpha, text)) and not is_sentence(text) and not any(map(str.isdigit, text))


def _asked(chart: Chart, idents: set[str]) -> bool:
    """Whether all its values are asked about already for words that may stand elsewhere."""
    return all(idents.intersection(one.findings) for one in ranges_of(chart))


def _inside(tables: Iterable[Table]) -> Iterator[Place]:
    """The places of headings and cells: a size may be a child's beside those of others."""
    for table in tables:
        for field in (one for one in table.fields if one.kind is not FieldKind.NOTE):
            yield from (at.origin for at in (*field.heads, *chain(*field.cells)))


def _names(sheet: Sheet, inside: frozenset[Place]) -> Iterator[tuple[Place, str]]:
    """The texts around the tables of a sheet that name for whom something is, and whom."""
    for place, cell in sheet.cells.items():
        if (cell.shared_from or place) in inside:
            continue
        text = cell.text.strip()
        if len(text) > _LONGEST or is_sentence(text) or any(map(str.isdigit, text)):
            continue
        band = read_band(text) or " ".join(sorted(bands_named(text)))
        if band:
            yield place, band
