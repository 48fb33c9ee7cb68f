"""Find the tables of a sheet: cut it into rectangles, rows and runs, and see which stand alone.

A run that has no sizes or no headings of its own belongs to the headings above it: a band, a
model or a page break within one table.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, field, replace
from itertools import islice, pairwise
from typing import Final

from charts.layout.bands_between import parts_of_bands
from charts.layout.bracket_letters import letters_told
from charts.layout.false_friends import only_a_friend
from charts.layout.fields import Table
from charts.layout.forms import framed
from charts.layout.frames import Frame
from charts.layout.legends import with_legends
from charts.layout.looks import look
from charts.layout.names_by_band import for_each_band
from charts.layout.one_size import of_one_size
from charts.layout.own_headings import headed
from charts.layout.rows import Gap, Lone, Run, distinct, pieces
from charts.layout.side_by_side import parted
from charts.layout.sizes_above import named_above, only_of_a_section, only_sizes
from charts.layout.stacked import heading_source_rows, split_run
from charts.layout.texts_beside import parted_from_texts
from charts.layout.told_headings import with_told_headings
from charts.layout.view import At, View
from charts.sheet import Sheet

_LONGEST_TITLE: Final = 90
"""Characters beyond which a text is a sentence (common practice, no source)."""


@dataclass(frozen=True, slots=True)
class Found:
    """The tables of one sheet and the texts that belong to none of them."""

    tables: tuple[Table, ...]
    loose: tuple[At, ...]


@dataclass(slots=True)
class _Search:
    """What is known while going down one rectangle."""

    sheet: Sheet
    tables: list[Table] = field(default_factory=list)
    frames: list[Frame] = field(default_factory=list)
    titles: list[At] = field(default_factory=list)
    over_unread: int = 0  # how many of the titles stand above figures that made no table
    pending: tuple[int, ...] = ()
    loose: list[At] = field(default_factory=list)
    gap: bool = False
    joined: bool = False  # no row stands between this run and the table before
    shared: bool = False  # the sizes or headings of this run stand in the table before


def find_tables(sheet: Sheet) -> Found:
    """Every table of the sheet from top to bottom, from left to right."""
    sheet = letters_told(sheet)
    rows = sorted({row for row, _ in sheet.cells})
    columns = sorted({column for _, column in sheet.cells})
    if not rows:
        return Found((), ())
    found = _find(View(sheet, tuple(rows), tuple(columns)))
    told = (with_told_headings(one, sheet) for one in with_legends(found.tables, sheet))
    return replace(found, tables=tuple(part for one in told for part in for_each_band(one)))


def _find(view: View) -> Found:
    parts = parted(view)
    if len(parts) > 1:
        found = [_find_in(part) for part in parts]
        if sum(bool(one.tables) for one in found) > 1 and all(
            one.tables or not _has_values(part) for one, part in zip(found, parts, strict=True)
        ):
            return _together(found)
    return _find_in(view)


def _together(found: Iterable[Found]) -> Found:
    tables: list[Table] = []
    loose: list[At] = []
    for one in found:
        tables += one.tables
        loose += one.loose
    return Found(tuple(tables), tuple(loose))


def _has_values(view: View) -> bool:
    return any(look(at.text).value for row in range(view.height) for at in view.row(row) if at)


def _find_in(view: View) -> Found:
    search = _Search(view.sheet)
    before: Lone | Run | Gap | None = None
    for piece, after in pairwise((*pieces(view), None)):
        match piece:
            case Gap():
                search.gap = True
            case Lone(at):
                _take_lone(search, at, apart=isinstance(before, Gap) and isinstance(after, Run))
            case Run(rows):
                _take_rows(search, view.with_rows(rows))
                search.gap = False
        before = piece
    _leave(search)
    return Found(tuple(search.tables), tuple(search.loose))


def _take_lone(search: _Search, at: At, *, apart: bool) -> None:
    """A lone text is a note when it is a sentence behind a table, else a title of the next.

    ``apart``: a blank row parts it from what is above, and none from the rows below.
    """
    note = _is_note(at) and not (apart and _long_title(at))
    if search.tables and note and not search.titles:
        _note(search, at)
    else:
        search.titles.append(at)


def _long_title(at: At) -> bool:
    """Whether a long text is no sentence: "Measures of the jacket - laid flat (all in cm)"."""
    text = at.text.strip()
    return text[:1].isupper() and len(text) <= _LONGEST_TITLE and text[-1:] not in {".", "!", "?"}


def _is_note(at: At) -> bool:
    one = look(at.text)
    return one.sentence or at.text.lstrip()[:1] in {"*", "†", "¹", "(", "•"} or one.blank


def _note(search: _Search, at: At) -> None:
    last = search.tables[-1]
    search.tables[-1] = replace(last, notes=(*last.notes, at))


def _take_rows(search: _Search, view: View) -> None:
    """Read neighbouring rows as the tables they are, with the texts that stand beside each."""
    if _take_bands(search, view):
        return
    beside = parted_from_texts(view)
    parts = split_run(beside.view)
    search.titles += beside.titles
    for number, part in enumerate(parts):
        search.joined = number > 0
        if len(parts) > 1:
            own = parted_from_texts(part)
            search.titles += own.titles
            _take_run(search, own.view)
            _take_notes(search, own.notes)
        else:
            _take_run(search, part)
    _take_notes(search, beside.notes)


def _take_bands(search: _Search, view: View) -> bool:
    """Read a table for each band that stands in a column of its own; False where none does."""
    bands, above = parts_of_bands(view), list(search.titles)
    for band in bands:
        search.titles = [*above, *band.names]
        _take_run(search, band.view)
    return bool(bands)


def _take_notes(search: _Search, notes: Iterable[At]) -> None:
    for at in notes:
        if search.tables:
            _note(search, at)
        else:
            search.loose.append(at)


def _take_run(search: _Search, view: View) -> None:
    """Read a run alone, with headings that wait for it, or as a part of the table before."""
    block = of_one_size(view, search.titles[-1] if search.titles else None)
    if block is not None:
        _add(search, block)
        return
    alone = framed(view)
    together = _with_rows_above(search, view, alone)
    search.shared = together is not None and not set(search.pending) & set(together.view.rows)
    if together is not None:
        _continue(search, together, view)
        return
    if alone.labelled and alone.valued and not (only_sizes(view) and not headed(view)):
        _add(search, alone)
    elif not alone.valued or only_sizes(view):
        search.pending = view.rows
        if _holds_figures(view):
            search.over_unread = len(search.titles)
        _texts(search, view)
    else:
        search.over_unread = len(search.titles)
        _texts(search, view)


def _with_rows_above(search: _Search, view: View, alone: Frame) -> Frame | None:
    """The run with the rows above that name its sizes or its columns; None where it has its own."""
    unnamed = not alone.complete or only_a_friend(alone.fields)
    unheaded = unnamed and not headed(view)
    for rows in (search.pending, _shared_rows(search)):
        waits = rows is search.pending
        if not rows or (not waits and _reaches_beyond(view, rows)):
            continue
        if not waits and search.pending and _fully_headed(view, search.pending[-1]):
            break
        together = framed(view.with_rows((*rows, *view.rows)))
        if not together.complete:
            continue
        if unheaded and not only_a_friend(together.fields):
            return together
        before = None if waits else search.frames[-1]
        if named_above(alone, together, rows, before, search.titles):
            return together
    return None


def _fully_headed(view: View, row: int) -> bool:
    """Whether each column of the run has another word in a row above: ``UK | EU | US``.

    That row heads the run, whether it can be understood or not; no other headings hold for it.
    """
    over = {column: cell.text for column, cell in view.sheet.row(row)}
    used = {at.column for n in range(view.height) for at in view.row(n) if at is not None}
    return used <= set(over) and len(set(over.values())) == len(over) > 1


def _reaches_beyond(view: View, rows: tuple[int, ...]) -> bool:
    """Whether the run has figures where nothing stands in the rows of the table above it.

    Then it is not for the sizes named there, or they are other ones.
    """
    over = {column for row in rows for column, _ in view.sheet.row(row)}
    last = max(over, default=0)
    return any(
        at is not None and at.column > last and look(at.text).value
        for row in range(view.height)
        for at in view.row(row)
    )


def _shared_rows(search: _Search) -> tuple[int, ...]:
    return heading_source_rows(search.frames[-1]) if search.frames else ()


def _continue(search: _Search, together: Frame, view: View) -> None:
    """A part without its own headings; without a title between, it is the same table."""
    last = search.frames[-1] if search.frames else None
    if last is not None and not search.titles and not search.pending:
        whole = framed(view.with_rows((*last.view.rows, *view.rows)))
        if whole.complete:
            search.frames[-1] = whole
            search.tables[-1] = whole.table(search.tables[-1].titles, search.tables[-1].notes)
            return
    _add(search, together)


def _add(search: _Search, frame: Frame) -> None:
    search.frames.append(frame)
    if _is_parted_from_titles(search, frame):
        # What stands above figures that made no table names them, and not what comes after.
        search.loose += search.titles[: search.over_unread]
        search.titles = search.titles[search.over_unread :]
    table = frame.table(tuple(search.titles), ())
    if search.tables and _under_one_name(search):
        above = search.tables[-1]
        table = replace(table, over=above.titles or above.over)
    search.tables.append(table)
    search.titles, search.over_unread = [], 0
    search.pending = ()


def _is_parted_from_titles(search: _Search, frame: Frame) -> bool:
    """Whether rows that made no table, and below them a name of its own, stand above a table."""
    waiting = set(search.pending) & set(frame.view.rows)
    parted = 0 < search.over_unread < len(search.titles)
    return parted and not waiting and not _is_note(search.titles[-1])


def _holds_figures(view: View) -> bool:
    """Whether half of the cells behind the first column have figures: rows that nobody reads."""
    rows = (view.row(row) for row in range(view.height))
    cells = [at for row in rows for at in islice(row, 1, None) if at is not None]
    return 0 < len(cells) <= 2 * sum(any(map(str.isdigit, at.text)) for at in cells)


def _under_one_name(search: _Search) -> bool:
    """Whether what stands above the table before holds here: only the kind of measure is named."""
    if not search.titles:
        return search.joined
    return search.shared and all(only_of_a_section(at.text) for at in search.titles)


def _texts(search: _Search, view: View) -> None:
    """Rows that are no table: kept as loose text, so that nothing goes unsaid."""
    for row in view.rows:
        search.loose += distinct(view.sheet, row, view.columns)


def _leave(search: _Search) -> None:
    """What stands below the last table is its note; without a table it is loose text.

    The title of figures that could not be read says nothing of the table before it.
    """
    for number, at in enumerate(search.titles):
        if search.tables and number >= search.over_unread:
            _note(search, at)
        else:
            search.loose.append(at)
