"""What each part of a sheet was taken for, as rectangles with words, for a page to outline.

Everything here is what the layout found and the columns were read as; nothing is told again.
A region's words: ``words(region, wording)``.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, field, replace
from enum import StrEnum
from types import MappingProxyType
from typing import Final

from charts.answers import Answer
from charts.answers_columns import JOINT
from charts.columns.dates import undo
from charts.importer import SheetReading, read_sheets
from charts.layout.fields import Field, FieldKind, Table
from charts.layout.view import At
from charts.places import Rectangle, rectangle_in
from charts.schema import FileReading, Kind, Range, UnitFrom
from charts.sheet import Addressing, Sheet
from charts.wording import Wording


class Taken(StrEnum):
    """What a part of a sheet was taken for."""

    TITLE = "title"
    HEADING = "heading"
    SIZES = "sizes"
    LENGTHS = "lengths"
    BAND = "band"
    MODEL = "model"
    VALUES = "values"
    NOT_READ = "not-read"
    TOLERANCE = "tolerance"
    UNIT = "unit"
    NOTE = "note"
    LEFT_OUT = "left-out"
    UNUSED = "unused"


@dataclass(frozen=True, slots=True)
class Region:
    """One rectangle of a sheet. ``code`` and ``values`` give its words (topic "season").

    ``table`` is the area of the table it belongs to, "" for none. ``dimension``, ``unit`` and
    ``band`` are codes, put into words by ``words``.
    """

    cells: Rectangle
    taken: Taken
    code: str
    values: Mapping[str, str] = field(default_factory=dict)
    table: str = ""


@dataclass(frozen=True, slots=True)
class SheetRegions:
    """One sheet with its regions, and the tables they belong to by area.

    ``sheet`` is what a page shows: cells as printed, those read otherwise with their correction.
    A list that was laid out as a table is shown as it was laid out.
    """

    sheet: Sheet
    regions: tuple[Region, ...] = ()
    tables: tuple[str, ...] = ()
    left_out: bool = False


_KINDS: Final[Mapping[FieldKind, Taken]] = MappingProxyType(
    {
        FieldKind.LABEL: Taken.SIZES,
        FieldKind.LENGTH: Taken.LENGTHS,
        FieldKind.BAND: Taken.BAND,
        FieldKind.IDENTITY: Taken.MODEL,
        FieldKind.TOLERANCE: Taken.TOLERANCE,
        FieldKind.UNIT: Taken.UNIT,
        FieldKind.NOTE: Taken.NOTE,
        FieldKind.SKIPPED: Taken.LEFT_OUT,
        FieldKind.NAMES: Taken.UNUSED,
    }
)
_UNSURE: Final = frozenset({UnitFrom.INFERRED})


def regions(
    data: bytes, name: str, folder: str = "", answers: Sequence[Answer] = ()
) -> tuple[SheetRegions, ...]:
    """Every sheet of a file with what each part of it was taken for."""
    return regions_of(*read_sheets(data, name, folder, answers))


def regions_of(reading: FileReading, sheets: Sequence[SheetReading]) -> tuple[SheetRegions, ...]:
    """The regions of sheets that were read already."""
    return tuple(_of_sheet(one, reading) for one in sheets)


def words(region: Region, wording: Wording) -> str:
    """A region's tag as a person reads it."""
    values = dict(region.values)
    if "dimension" in values:
        values["dimension"] = wording.say("combined", f"dimension-{values['dimension']}")
    if "band" in values:
        values["band"] = wording.say("combined", f"band-{values['band']}")
    if "unit" in values:
        values["unit"] = wording.say("season", f"unit-{values['unit']}")
    return wording.say("season", f"region-{region.code}", **values)


def _of_sheet(one: SheetReading, reading: FileReading) -> SheetRegions:
    sheet = one.laid or one.sheet
    if one.laid is None:
        whole = _rectangle(sheet.cells)
        out = [] if whole is None else [Region(whole, Taken.LEFT_OUT, Taken.LEFT_OUT.value)]
        return SheetRegions(sheet, tuple(out), (), left_out=True)
    found = [region for table in one.tables for region in _of_table(table, sheet, reading)]
    rest = _unclaimed(sheet, found)
    areas = tuple(dict.fromkeys(table.area for table in one.tables))
    return SheetRegions(_as_printed(sheet, one.sheet), (*found, *rest), areas)


def _as_printed(sheet: Sheet, source: Sheet) -> Sheet:
    """The sheet with the dates that were turned back shown as the source shows them."""
    shown = {
        at: replace(cell, text=source.cells[at].text)
        for at, cell in sheet.cells.items()
        if at in source.cells
        and (undone := undo(source.cells[at])) is not None
        and cell.text == undone.range_text
    }
    return replace(sheet, cells={**sheet.cells, **shown}) if shown else sheet


def _of_table(table: Table, sheet: Sheet, reading: FileReading) -> Iterator[Region]:
    for texts, taken in ((table.titles, Taken.TITLE), (table.notes, Taken.NOTE)):
        for at in texts:
            yield Region(_merged([at], sheet), taken, taken.value, table=table.area)
    values = _Values(sheet, reading)
    for one in table.fields:
        if one.heads:
            heading = _merged(one.heads, sheet)
            yield Region(heading, Taken.HEADING, Taken.HEADING.value, table=table.area)
        for part in _runs(one, table):
            taken, code, said = _meaning(one, values.within(one, part))
            yield Region(part, taken, code, MappingProxyType(said), table.area)


class _Values:
    """The values of one sheet by the cells they were read from."""

    def __init__(self, sheet: Sheet, reading: FileReading) -> None:
        self._lines = sheet.addressing is Addressing.LINE
        self._found: dict[tuple[int, int], list[Range]] = {}
        by_line: dict[str, list[tuple[int, int]]] = {}
        for at in sheet.cells if self._lines else ():
            by_line.setdefault(sheet.place(*at), []).append(at)
        for chart in reading.charts:
            for one in (each for size in chart.sizes for each in size.ranges):
                for place in (one.place, one.also_published.place if one.also_published else ""):
                    area = None if self._lines else rectangle_in(sheet, place)
                    for at in by_line.get(place, ()) if area is None else _inside(area):
                        self._found.setdefault(at, []).append(one)

    def within(self, one: Field, part: Rectangle) -> list[tuple[bool, Range]]:
        """The values of a column; with each, whether this is its second printed unit."""
        here = [
            (at, value)
            for cell in one.cells
            for at in cell
            if part.holds(at.row, at.column)
            for value in self._found.get((at.row, at.column), ())
        ]
        if self._lines:
            here = [pair for pair in here if one.printed_heading in pair[1].heading.split(JOINT)]
        return [(_second(one, value), value) for _, value in here]


def _second(one: Field, value: Range) -> bool:
    """Whether a column holds the unit of a value that was kept beside the reading."""
    also = value.also_published
    apart = also is not None and also.place != value.place
    return apart and one.printed_heading not in value.heading.split(JOINT)


def _inside(area: Rectangle) -> Iterator[tuple[int, int]]:
    for row in range(area.top, area.bottom + 1):
        for column in range(area.left, area.right + 1):
            yield row, column


def _runs(one: Field, table: Table) -> Iterator[Rectangle]:
    """The cells of a field as rectangles; cells of a grid that lie apart are several."""
    cells = {(at.row, at.column) for cell in one.cells for at in cell}
    whole = _rectangle(cells)
    if whole is None:
        return
    along = whole.top == whole.bottom if table.turned else whole.left == whole.right
    if along:
        yield whole
        return
    for column in sorted({column for _, column in cells}):
        part = _rectangle(at for at in cells if at[1] == column)
        if part is not None:
            yield part


def _meaning(one: Field, read: Sequence[tuple[bool, Range]]) -> tuple[Taken, str, dict[str, str]]:
    if one.kind is not FieldKind.VALUES:
        taken = _KINDS.get(one.kind, Taken.UNUSED)
        return taken, taken.value, {}
    if not read:
        return Taken.UNUSED, Taken.UNUSED.value, {}
    second, first = next((pair for pair in read if pair[1].kind is not Kind.UNREAD), read[0])
    said = {"dimension": first.dimension.value}
    if all(value.kind is Kind.UNREAD for _, value in read):
        return Taken.NOT_READ, Taken.NOT_READ.value, said
    code = "values"
    if one.heading.band is not None:
        said["band"] = one.heading.band
        code = "values-band"
    if first.unit_from in _UNSURE:
        return Taken.VALUES, f"{code}-unit-open", said
    also = first.also_published
    unit = also.unit if also is not None and second else first.published_unit or first.unit
    return Taken.VALUES, code, said | {"unit": unit.value}


def _unclaimed(sheet: Sheet, found: Iterable[Region]) -> Iterator[Region]:
    """Rows of the sheet that no table took, left to right in one rectangle each."""
    claimed = {at for region in found for at in _cells(sheet, region.cells)}
    for row in sheet.filled_rows:
        columns = [column for column, _ in sheet.row(row) if (row, column) not in claimed]
        if columns:
            cells = Rectangle(row, min(columns), row, max(columns))
            yield Region(cells, Taken.UNUSED, Taken.UNUSED.value)


def _cells(sheet: Sheet, area: Rectangle) -> Iterator[tuple[int, int]]:
    for row in range(area.top, area.bottom + 1):
        yield from ((row, column) for column, _ in sheet.row(row) if area.holds(row, column))


def _rectangle(cells: Iterable[tuple[int, int]]) -> Rectangle | None:
    places = list(cells)
    if not places:
        return None
    rows, columns = [row for row, _ in places], [column for _, column in places]
    return Rectangle(min(rows), min(columns), max(rows), max(columns))


def _merged(cells: Sequence[At], sheet: Sheet) -> Rectangle:
    """The cells with the whole of the merged areas that they begin."""
    origins = {at.origin for at in cells}
    own = {(at.row, at.column) for at in cells}
    columns = {column for _, column in own}
    lone = len(own) == 1
    shared = {
        at
        for at, cell in sheet.cells.items()
        if cell.shared_from in origins and (lone or at[1] in columns)
    }
    area = _rectangle(own | shared)
    return area if area is not None else Rectangle(0, 0, 0, 0)
