"""Figures beside and inside the tables of a sheet that came into no value: a part may be lost.

Whatever the layout was taken for, every figure of it is a value, a name of a size, a heading, a
note or something known to be no measure; what is none of these is asked about, once a sheet.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from typing import Final

from charts.checks.left_over import rows_left
from charts.dimensions import Role
from charts.findings import FindingLog
from charts.layout.fields import FieldKind, Table
from charts.layout.looks import look
from charts.layout.view import At
from charts.sheet import Addressing, Sheet

_FEWEST: Final = 2
"""A lone figure beside a chart is a term of delivery or a page number (common practice)."""
_NO_MEASURES: Final = frozenset({Role.LABEL, Role.IDENTITY, Role.OTHER, Role.STEP, Role.TOLERANCE})
_FEWEST_ALONE: Final = 3
"""Figures beside the name of a measure that could be a chart of its own."""
Place = tuple[int, int]


def say_left_cells(sheet: Sheet, tables: Sequence[Table], log: FindingLog) -> None:
    """Ask once a sheet about figures that no chart of it has taken.

    The place covers all of them, so that no one of them goes unsaid; the text is the first one's.
    Figures that were put beside those of another cell, as its other unit, are taken with it.
    """
    if sheet.addressing is Addressing.LINE:
        return
    taken = [at for table in tables for at in _taken(table)]
    used = {at.origin for at in taken}
    joined = [at.text for at in taken if at.text != sheet.text(at.row, at.column)]
    left = [
        place
        for place, cell in sorted(sheet.cells.items())
        if (cell.shared_from or place) not in used
        and look(cell.text).value
        and not _named_otherwise(sheet, place)
        and not any(cell.text.strip() in text for text in joined)
    ]
    rows = rows_left(sheet, tables)
    left = sorted({*rows, *(left if len(left) >= _FEWEST else ())})
    if left:
        text = sheet.text(*left[0]).strip()
        log.add("text-order", _around(sheet, left), case="left", text=text)


def _around(sheet: Sheet, places: Sequence[Place]) -> str:
    """The smallest rectangle that holds every one of the places."""
    rows, columns = zip(*places, strict=True)
    return sheet.area((min(rows), min(columns)), (max(rows), max(columns)))


def say_unread_sheet(sheet: Sheet, log: FindingLog) -> bool:
    """Ask about the figures of a sheet that gave no chart; whether they could have been one."""
    figures = _perhaps_a_chart(sheet)
    if figures:
        text = sheet.text(*figures[0]).strip()
        log.add("text-order", _around(sheet, figures), case="left", text=text)
    return bool(figures)


def _perhaps_a_chart(sheet: Sheet) -> list[Place]:
    """The figures of a sheet in which no chart was found, though it names a measure."""
    cells = [
        (place, look(cell.text))
        for place, cell in sorted(sheet.cells.items())
        if cell.shared_from is None
    ]
    figures = [place for place, one in cells if one.value]
    named = any(one.measures and not one.sentence for _, one in cells)
    return figures if named and len(figures) >= _FEWEST_ALONE else []


def _taken(table: Table) -> Iterator[At]:
    """The cells of a table that are values, names, headings, titles or notes."""
    yield from table.titles
    yield from table.notes
    for field in table.fields:
        yield from field.heads
        yield from (unit for unit in field.units if unit is not None)
        if field.tolerance is not None:
            yield field.tolerance
        if field.kind is not FieldKind.NOTE:
            yield from (at for cell in field.cells for at in cell)


def _named_otherwise(sheet: Sheet, place: Place) -> bool:
    """Whether the word over the figure or before it names sizes, articles, prices or steps.

    Where the other of both names a measure, the word for sizes only says whose figures they are.
    """
    row, column = place
    above = _first_role(sheet.text(other, column) for other in range(row - 1, -1, -1))
    before = _first_role(sheet.text(row, other) for other in range(column - 1, -1, -1))
    if (above, before) == (Role.LABEL, Role.MEASURE):
        return False
    if (above, before) == (Role.MEASURE, Role.LABEL):
        return not _headed_here(sheet, place)
    return above in _NO_MEASURES or before in _NO_MEASURES


def _headed_here(sheet: Sheet, place: Place) -> bool:
    """Whether the word over the figure stands in its own block: no blank cell is between."""
    row, column = place
    for other in range(row - 1, -1, -1):
        text = sheet.text(other, column)
        if not text.strip():
            return False
        if not look(text).value:
            return True
    return False


def _first_role(texts: Iterable[str]) -> Role | None:
    """What the nearest text that is no figure names; None where there is none."""
    for text in texts:
        one = look(text)
        if text.strip() and not one.blank and not one.value:
            return one.heading.role
    return None
