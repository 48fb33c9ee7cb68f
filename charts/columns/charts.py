"""One table to charts: one per band and model, the sizes in source order."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import replace
from typing import Final

from charts.columns.about_so_much import with_abouts
from charts.columns.after_the_bands import columns_behind_asked
from charts.columns.ages_in_months import with_months
from charts.columns.at_ages import with_ages
from charts.columns.band_scope import ends_bands, under_a_stranger
from charts.columns.band_words import band_around
from charts.columns.bands_below import bands_below_asked
from charts.columns.basis import with_basis
from charts.columns.borrowed_corners import titles_below
from charts.columns.bounds import bounded
from charts.columns.corner_sizes import corner_sizes_asked
from charts.columns.doubled_backs import doubled_backs
from charts.columns.girths_told import girths_told
from charts.columns.leftovers import say_blanks, with_tolerances, without_doubles
from charts.columns.lines import Line, lines_of
from charts.columns.long_backs import backs_doubted
from charts.columns.meaning import columns_of
from charts.columns.named_twice import told_by_height
from charts.columns.nameless import beside_nameless
from charts.columns.pairs import paired
from charts.columns.past_the_sizes import past_the_sizes_asked
from charts.columns.positions import positions_told
from charts.columns.priced_measures import say_priced_measures
from charts.columns.repeats import without_repeats
from charts.columns.rows import rows_in_another_unit
from charts.columns.short_heights import heights_doubted
from charts.columns.short_rows import short_rows_asked
from charts.columns.sides import with_sides
from charts.columns.sides_of_rows import of_side, sides_of_rows
from charts.columns.small_bodies import is_of_grown_ups
from charts.columns.small_weights import weighed_in_grams
from charts.columns.suspects import suspected
from charts.columns.taken_for import taken_for_garments
from charts.columns.two_in_a_cell import pairs_asked
from charts.columns.units import with_units
from charts.columns.values import Filled, filled
from charts.columns.words import Surroundings, notes_of, title_of
from charts.dimensions import Role, read_band
from charts.findings import listed
from charts.headings.bands import CHILDREN, names_adults
from charts.layout.fields import FieldKind
from charts.layout.looks import look
from charts.schema import Chart, Dimension, Range, Said, Size, UnitFrom

_GROWN: Final = frozenset({"women", "men"})
Group = tuple[str | None, str | None]


def charts_of(around: Surroundings) -> list[Chart]:
    """Every chart that one table holds, without the checks of whole charts."""
    named = told_by_height(columns_of(around), around)
    named = girths_told(positions_told(beside_nameless(named, around), around), around)
    named = doubled_backs(backs_doubted(named, around), around)
    named = weighed_in_grams(named)
    named = columns_behind_asked(with_sides(named, around), around)
    named = bands_below_asked(corner_sizes_asked(named, around), around)
    named = pairs_asked(named, around)
    columns = heights_doubted(with_units(with_ages(named, around), around), around)
    columns = with_basis(columns, around)
    columns = taken_for_garments(suspected(columns, around), around)
    columns = [with_abouts(column) for column in with_months(columns, around)]
    each = rows_in_another_unit([filled(column, around) for column in columns], around)
    read = paired(short_rows_asked(each, around), around)
    read = without_doubles(read, around)
    say_blanks(read, around)
    say_priced_measures(around)
    read = bounded(with_tolerances(read, around), around)
    lines = without_repeats(lines_of(around), read, around)
    read = _for_all(past_the_sizes_asked(read, lines, around))
    sides = sides_of_rows(lines)
    charts = []
    for group in _groups(lines, read):
        side = sides.get(group[1] or "")
        chart = _chart(group, lines, [of_side(one, side) for one in read], around)
        if chart.sizes:
            charts.append(chart if side is None else replace(chart, model=None))
    return charts


def _of_model(model: str | None, lines: Sequence[Line]) -> str | None:
    """For whom a model's name says it is, where other names say it of others: no "Lady Zorbo"."""
    bands = {read_band(line.group) for line in lines if line.group} - {None}
    return read_band(model) if model and len(bands) > 1 else None


def _for_all(read: Sequence[Filled]) -> list[Filled]:
    """Columns that only name people share the chart of those that measure: nobody knows them.

    ``Men | Women | Chest``: a chart of each would say the same chest of both.
    """
    own = [one for one in read if one.column.band is not None]
    told = any(one.column.band is None and _measures(one) for one in read)
    if not told or any(_measures(one) or one.column.field.heading.rest for one in own):
        return list(read)
    return [replace(one, column=replace(one.column, band=None)) for one in read]


def _measures(one: Filled) -> bool:
    named = one.column.field.heading.role is Role.MEASURE
    return named or one.column.dimension is not Dimension.OTHER


def _groups(lines: Sequence[Line], read: Sequence[Filled]) -> list[Group]:
    """The pairs of band and model that the lines and the columns name, in their order."""
    bands: dict[str | None, None] = {one.column.band: None for one in read if one.column.band}
    if any(_of_nobody_named(one, read) for one in read):
        bands[None] = None
    found: dict[Group, None] = {}
    for line in lines:
        for band in [line.band] if line.band or not bands else bands:
            found[band, line.group] = None
    return list(found)


def _chart(
    group: Group, lines: Sequence[Line], read: Sequence[Filled], around: Surroundings
) -> Chart:
    band, model = group
    own = [line for line in lines if line.group == model and _is_in(band, line, read)]
    columns = [one for one in read if _is_of(band, one, read)]
    sizes = [size for line in own if (size := _size(line, columns)) is not None]
    return Chart(
        place=around.table.area,
        title=title_of(around.table),
        sizes=tuple(sizes),
        model=Said(model, "column") if model else None,
        band=band
        or _of_model(model, lines)
        or (None if _beside_others(columns, read) else _band_of_all(around, lines)),
        notes=notes_of(around.table),
    )


def _beside_others(columns: Sequence[Filled], read: Sequence[Filled]) -> bool:
    """Whether the columns are told from those of named bands, so that no title names theirs."""
    return any(_of_nobody_named(one, read) for one in columns)


def _band_of_all(around: Surroundings, lines: Sequence[Line]) -> str | None:
    """The band that the words around give; a comment beside some rows says it of those alone.

    Sizes that say they are for adults are no children's, whatever the file is called.
    """
    if any(line.band for line in lines):
        beside = set(around.table.sheet.comments.values())
        near = tuple(words for words in around.words if words.text not in beside)
        around = replace(around, words=near)
    band = _in_the_corner(around) or band_around(around)
    if band in CHILDREN and is_of_grown_ups(around.table):
        near = tuple(words for words in around.words if words.kind is not UnitFrom.SHEET)
        band = _in_the_corner(around) or band_around(replace(around, words=near))
    said = (text for line in lines for text in (line.label or "", line.people))
    return None if any(_is_another(text, band) for text in said) else band


def _is_another(label: str, band: str | None) -> bool:
    """Whether a size names somebody else: ``Adult S`` among kids, ``Men M`` among women."""
    named = look(label).band
    if band in CHILDREN:
        return names_adults(label) or named in _GROWN
    return band in _GROWN and named in _GROWN and named != band


def _is_in(band: str | None, line: Line, read: Sequence[Filled]) -> bool:
    """Whether a size is a band's: said of its row, or of the columns that all rows share."""
    of_columns = any(one.column.band is not None for one in read)
    return line.band == band or (line.band is None and of_columns)


def _is_of(band: str | None, one: Filled, read: Sequence[Filled]) -> bool:
    """Whether a column is a band's own, or shared by all: a height beside girths for each."""
    return one.column.band == band or (one.column.band is None and not _of_nobody_named(one, read))


def _of_nobody_named(one: Filled, read: Sequence[Filled]) -> bool:
    """``Women | Girls | Zorbos`` over the same measures: what no known word names is nobody's.

    A column without a band that measures what columns with one measure is not theirs as well, nor
    one under a word that stands where theirs do.
    """
    own = one.column
    banded = [other.column.field for other in read if other.column.band is not None]
    if own.band is None and under_a_stranger(own.field, banded):
        return True
    return own.band is None and any(
        other.column.band is not None
        and (other.column.dimension, other.column.definition) == (own.dimension, own.definition)
        and other.column.dimension is not Dimension.OTHER
        for other in read
    )


def _size(line: Line, columns: Iterable[Filled]) -> Size | None:
    ranges = tuple(one.ranges[line.number] for one in columns if line.number in one.ranges)
    if not ranges:
        return None
    corrected = line.at.cell.corrected if line.at is not None else None
    found = tuple(_asking(ranges, line.findings))
    return Size(line.label, found, line.length, line.also, corrected)


def _asking(ranges: Iterable[Range], findings: tuple[str, ...]) -> Iterable[Range]:
    for one in ranges:
        both = listed(*one.findings, *findings)
        yield replace(one, findings=both) if findings else one


def _in_the_corner(around: Surroundings) -> str | None:
    """``Women | S | M``, ``Women's size``: the one band that the names of the sizes stand under."""
    labels = around.table.of(FieldKind.LABEL)
    bands = {field.heading.band for field in labels} - {None}
    names = [field.printed_heading for field in labels]
    if any(ends_bands(name, names, alone=False) for name in names):
        return None  # "EU women" beside "EU zorbos": the sizes of both
    corners = [at for field in labels if field.heading.band for at in field.heads[-1:]]
    below = [at.text for corner in corners for at in titles_below(around.table, corner)]
    if any(look(text).band or ends_bands(text, names) for text in below):
        return None  # the row of sizes of "Women", lent to the "Men" below their own title
    return bands.pop() if len(bands) == 1 else None
