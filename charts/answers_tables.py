"""Answers that bear on the tables found: their edges, which way they run, what their columns mean.

What comes back are tables as the layout gives them, so all that follows reads them alike.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import replace
from typing import Final

from charts.answering import Answering
from charts.answers import Answer, Edge, LeftOut, Part, Taken, Turned
from charts.answers_columns import answered_columns
from charts.corrections import Correction
from charts.layout.fields import Field, FieldKind, Table
from charts.layout.find import find_tables
from charts.layout.frames import frame
from charts.layout.rows import distinct
from charts.layout.view import At, View
from charts.places import Rectangle, rectangle_in
from charts.sheet import Cell, Sheet

_SAME_AS_ABOVE: Final = "same-as-above"


def answered_tables(
    sheet: Sheet, tables: Sequence[Table], answering: Answering
) -> tuple[Table, ...]:
    """The tables of a sheet as the answers have them."""
    if not answering.answers:
        return tuple(tables)
    found = list(tables)
    for answer in answering.answers:
        match answer.act:
            case LeftOut(Part.TABLE, place):
                found = _changed(found, place, answer, answering, lambda _table: [])
            case Edge() as edge:
                found = _with_edge(sheet, found, edge, answer, answering)
            case Turned(place):
                found = _changed(found, place, answer, answering, _turned)
    return tuple(_filled(answered_columns(one, answering), answering) for one in found)


def _changed(
    tables: list[Table],
    place: str,
    answer: Answer,
    answering: Answering,
    become: Callable[[Table], list[Table]],
) -> list[Table]:
    """The tables with the one at ``place`` replaced by what it becomes."""
    if any(one.area == place for one in tables):
        answering.use(answer)
    return [new for one in tables for new in (become(one) if one.area == place else [one])]


def _turned(table: Table) -> list[Table]:
    """The same cells read the other way."""
    area = rectangle_in(table.sheet, table.area)
    if area is None:
        return [table]
    view = _view(table.sheet, area)
    again = frame(view if table.turned else view.turn())
    return [again.table(table.titles, table.notes)]


def _view(sheet: Sheet, area: Rectangle) -> View:
    filled = [at for at in sheet.cells if area.holds(*at)]
    rows = tuple(sorted({row for row, _ in filled}))
    return View(sheet, rows, tuple(sorted({column for _, column in filled})))


def _with_edge(
    sheet: Sheet, tables: list[Table], edge: Edge, answer: Answer, answering: Answering
) -> list[Table]:
    """The table at the old place read within its true edges, what it swallows taken away."""
    old = next((one for one in tables if one.area == edge.place), None)
    area = rectangle_in(sheet, edge.becomes)
    if old is None or area is None or not _view(sheet, area).rows:
        return tables
    answering.use(answer)
    found: list[Table] = []
    for one in tables:
        where = rectangle_in(sheet, one.area)
        if one is old:
            found += _within(sheet, area, old)
        elif where is None or not where.meets(area):
            found.append(one)
    return found


def _within(sheet: Sheet, area: Rectangle, old: Table) -> list[Table]:
    """The tables inside ``area``; what was cut off above stands as a title, below as a note."""
    inner = {at: cell for at, cell in sheet.cells.items() if area.holds(*at)}
    above, below = _cut_off(sheet, area, old)
    titles = tuple(at for at in (*old.titles, *above) if not area.holds(at.row, at.column))
    notes = tuple(at for at in (*below, *old.notes) if not area.holds(at.row, at.column))
    found = find_tables(replace(sheet, cells=inner)).tables
    return [
        replace(one, sheet=sheet, titles=(*titles, *one.titles), notes=(*one.notes, *notes))
        for one in found
    ]


def _cut_off(sheet: Sheet, area: Rectangle, old: Table) -> tuple[list[At], list[At]]:
    was = rectangle_in(sheet, old.area)
    if was is None:
        return [], []
    columns = range(was.left, was.right + 1)
    lone = {
        row: texts[0]
        for row in sheet.filled_rows
        if was.top <= row <= was.bottom and len(texts := distinct(sheet, row, columns)) == 1
    }
    above = [at for row, at in lone.items() if row < area.top]
    return above, [at for row, at in lone.items() if row > area.bottom]


def _filled(table: Table, answering: Answering) -> Table:
    """The blank cells below filled ones given the value above, where a person said so."""
    for answer, taken in answering.of(Taken):
        area = rectangle_in(table.sheet, table.area)
        at = rectangle_in(table.sheet, taken.place)
        if taken.why != _SAME_AS_ABOVE or area is None or at is None or not area.meets(at):
            continue
        answering.use(answer)
        fields = tuple(_filled_down(one, table, answer, answering) for one in table.fields)
        table = replace(table, fields=fields)
    return table


def _filled_down(one: Field, table: Table, answer: Answer, answering: Answering) -> Field:
    if one.kind is not FieldKind.VALUES:
        return one
    cells = list(one.cells)
    for line in range(1, len(cells)):
        beside = next((f.cells[line][0] for f in table.fields if f.cells[line]), None)
        if cells[line] or not cells[line - 1] or beside is None:
            continue
        above = cells[line - 1][0]
        where = (above.row, beside.column) if table.turned else (beside.row, above.column)
        text = above.text.strip()
        said = Correction(table.sheet.place(*where), "", text, answer.by, answer.on)
        answering.corrections.append(said)
        cells[line] = (At(Cell(text, corrected=said), *where),)
    return replace(one, cells=tuple(cells))
