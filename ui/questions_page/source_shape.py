"""A sheet as it came, laid out for a grid: rows, columns, joined cells and outlined parts. No Qt.

Rows and columns of the grid are counted from 0 without gaps; those of the sheet are its own.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, field, replace
from typing import Final

from charts.asked_values import values_of
from charts.findings import Finding
from charts.places import Rectangle, cells_at, rectangle_in
from charts.regions import Region, SheetRegions, Taken, words
from charts.schema import FileReading
from charts.sheet import Addressing, Sheet, column_letters
from charts.wording import Wording

_MOST_ROWS: Final = 600
_MOST_COLUMNS: Final = 60
_RUNNING_ON: Final = frozenset({Taken.TITLE, Taken.NOTE, Taken.UNUSED, Taken.LEFT_OUT})
At = tuple[int, int]


@dataclass(frozen=True, slots=True)
class Outline:
    """One outlined part in the grid's own rows and columns. ``open``: a question hangs on it."""

    cells: Rectangle
    taken: Taken
    tag: str
    open: bool = False


@dataclass(frozen=True, slots=True)
class SourceShape:
    """What a grid shows of one sheet. ``joined`` are the cells that show as one."""

    sheet: Sheet
    rows: tuple[int, ...] = ()
    columns: tuple[int, ...] = ()
    outlines: tuple[Outline, ...] = ()
    joined: tuple[Rectangle, ...] = ()
    tagged_rows: frozenset[int] = frozenset()
    _row_at: Mapping[int, int] = field(default_factory=dict)
    _column_at: Mapping[int, int] = field(default_factory=dict)

    def here(self, at: At) -> At | None:
        """Where a cell of the sheet stands in the grid."""
        row, column = self._row_at.get(at[0]), self._column_at.get(at[1])
        return None if row is None or column is None else (row, column)

    def there(self, row: int, column: int) -> At:
        """Which cell of the sheet stands in the grid at a row and column."""
        return self.rows[row], self.columns[column]

    def row_name(self, row: int) -> str:
        """The row's own number; a line's number where the source has lines."""
        number = self.rows[row]
        if self.sheet.addressing is Addressing.LINE:
            return str(self.sheet.line_of_row.get(number, number + 1))
        return str(number + 1)

    def column_name(self, column: int) -> str:
        """The column's letters; none where the source has lines."""
        lines = self.sheet.addressing is Addressing.LINE
        return "" if lines else column_letters(self.columns[column])

    def rectangle(self, area: Rectangle) -> Rectangle | None:
        """A rectangle of the sheet in the grid's rows and columns."""
        rows = [at for row, at in self._row_at.items() if area.top <= row <= area.bottom]
        columns = [at for one, at in self._column_at.items() if area.left <= one <= area.right]
        if not rows or not columns:
            return None
        return Rectangle(min(rows), min(columns), max(rows), max(columns))


def shape_of(one: SheetRegions, wording: Wording) -> SourceShape:
    """The grid of a sheet with its parts outlined and tagged in words."""
    sheet = one.sheet
    rows, columns = _rows(sheet), _columns(sheet)
    shape = SourceShape(
        sheet,
        rows,
        columns,
        _row_at={row: at for at, row in enumerate(rows)},
        _column_at={column: at for at, column in enumerate(columns)},
    )
    joined = (*_merged(shape), *_running_on(shape, one.regions))
    outlines = tuple(_outlines(shape, one.regions, joined, wording))
    tagged = frozenset(outline.cells.top for outline in outlines)
    return replace(shape, outlines=outlines, joined=joined, tagged_rows=tagged)


def cells_asked(finding: Finding, sheet: Sheet, reading: FileReading) -> tuple[At, ...]:
    """The cells of a sheet that a question is about: its place, and the values it bears on."""
    places = [(finding.place, finding.values.get("text", ""))]
    places += [(one.place, one.published) for _, one in values_of(finding, reading)]
    found = [at for place, text in dict.fromkeys(places) for at in _at(sheet, place, text)]
    return tuple(dict.fromkeys(found))


def _at(sheet: Sheet, place: str, text: str) -> Sequence[At]:
    """The cells at a place; of the cells of one line those that print ``text``."""
    cells = cells_at(sheet, place)
    if sheet.addressing is Addressing.LINE:
        exact = [at for at in cells if text and sheet.cells[at].printed.strip() == text]
        return exact or cells
    area = None if cells else rectangle_in(sheet, place)
    return cells if area is None else ((area.top, area.left),)


def _rows(sheet: Sheet) -> tuple[int, ...]:
    filled = sheet.filled_rows
    last = filled[-1] if filled else -1
    if last < _MOST_ROWS:
        return tuple(row for row in range(last + 1) if row not in sheet.hidden_rows)
    return filled[:_MOST_ROWS]


def _columns(sheet: Sheet) -> tuple[int, ...]:
    last = max((column for _, column in sheet.cells), default=-1)
    shown = (column for column in range(last + 1) if column not in sheet.hidden_columns)
    return tuple(shown)[:_MOST_COLUMNS]


def _merged(shape: SourceShape) -> Iterator[Rectangle]:
    areas: dict[At, list[At]] = {}
    for at, cell in shape.sheet.cells.items():
        if cell.shared_from is not None:
            areas.setdefault(cell.shared_from, [cell.shared_from]).append(at)
    for cells in areas.values():
        area = shape.rectangle(_around(cells))
        if area is not None and (area.top, area.left) != (area.bottom, area.right):
            yield area


def _around(cells: Iterable[At]) -> Rectangle:
    rows, columns = zip(*cells, strict=True)
    return Rectangle(min(rows), min(columns), max(rows), max(columns))


def _running_on(shape: SourceShape, regions: Sequence[Region]) -> Iterator[Rectangle]:
    """Lone sentences run on over the empty cells beside them, as they do in the source."""
    for region in regions:
        area = region.cells
        if region.taken not in _RUNNING_ON or area.top != area.bottom or area.left != area.right:
            continue
        here = shape.here((area.top, area.left))
        if here is None:
            continue
        end = here[1]
        while end + 1 < len(shape.columns) and not _filled(shape, here[0], end + 1):
            end += 1
        if end > here[1]:
            yield Rectangle(here[0], here[1], here[0], end)


def _filled(shape: SourceShape, row: int, column: int) -> bool:
    return shape.there(row, column) in shape.sheet.cells


def _outlines(
    shape: SourceShape, regions: Sequence[Region], joined: Sequence[Rectangle], wording: Wording
) -> Iterator[Outline]:
    found: list[Outline] = []
    for region in regions:
        area = shape.rectangle(region.cells)
        if area is None:
            continue
        for whole in joined:
            if (whole.top, whole.left) == (area.top, area.left) and whole.meets(area):
                area = _both(area, whole)
        is_open = region.code.endswith("unit-open") or region.taken is Taken.NOT_READ
        found.append(Outline(area, region.taken, words(region, wording), is_open))
    yield from _grown(_grown(found, down=False), down=True)


def _both(one: Rectangle, other: Rectangle) -> Rectangle:
    return Rectangle(
        min(one.top, other.top),
        min(one.left, other.left),
        max(one.bottom, other.bottom),
        max(one.right, other.right),
    )


def _grown(outlines: Iterable[Outline], *, down: bool) -> list[Outline]:
    """Neighbours that say the same, as one outline."""
    grown: list[Outline] = []
    for one in outlines:
        beside = next((other for other in grown if _continues(other, one, down=down)), None)
        if beside is None:
            grown.append(one)
        else:
            at = grown.index(beside)
            grown[at] = replace(beside, cells=_both(beside.cells, one.cells))
    return grown


def _continues(before: Outline, after: Outline, *, down: bool) -> bool:
    if (before.tag, before.taken, before.open) != (after.tag, after.taken, after.open):
        return False
    one, other = before.cells, after.cells
    if one.holds(other.top, other.left) and one.holds(other.bottom, other.right):
        return True
    if down:
        same = (one.left, one.right) == (other.left, other.right)
        return same and other.top == one.bottom + 1
    same = (one.top, one.bottom) == (other.top, other.bottom)
    return same and other.left == one.right + 1
