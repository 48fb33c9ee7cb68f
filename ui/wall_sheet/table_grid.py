"""Columns of the full table: how wide each is, and which of them go side by side. No Qt."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from itertools import groupby
from typing import Final

from charts.writers.printed_table import InHouseTable, Role, TableCell, TableRow
from ui.wall_sheet.paper import SMALL, SMALL_STRONG, Face
from ui.wall_sheet.type_setting import Setter

_WIDEST: Final = 150.0
_LEAST: Final = 30.0
PAIR_GAP: Final = 8.0
GAP: Final = 14.0
_STRONG: Final = frozenset({Role.NAME, Role.SIZE, Role.PUBLISHED})


@dataclass(frozen=True, slots=True)
class Column:
    """One head and the table's columns under it, by number, each as wide as its words need."""

    head: str
    units: tuple[str, ...]
    cells: tuple[int, ...]
    widths: tuple[float, ...]

    @property
    def width(self) -> float:
        """All of it, without the gap to the next."""
        return sum(self.widths) + PAIR_GAP * (len(self.widths) - 1)


@dataclass(frozen=True, slots=True)
class Grid:
    """Which columns of the table are printed: those that name a row, then measures.

    ``said`` are the columns that hold for a whole model, by number; they stand above its rows.
    """

    names: tuple[Column, ...]
    tiers: tuple[tuple[Column, ...], ...]
    said: tuple[int, ...]


def face_of(cell: TableCell) -> Face:
    """Strong for sizes and for the maker's own figures."""
    return SMALL_STRONG if cell.role in _STRONG else SMALL


def grid(table: InHouseTable, setter: Setter, room: float) -> Grid:
    """The columns of ``table`` for a page ``room`` points wide.

    Measures that do not fit side by side come as further tables, each with the sizes again.
    """
    numbers = range(len(table.columns))
    named = range(table.frozen)
    measures = [number for number in numbers if table.columns[number].unit]
    names = tuple(
        _column(table, setter, (number,)) for number in named if not _of_model(number, table)
    )
    heads = [
        _column(table, setter, tuple(group))
        for _, group in groupby(measures, key=lambda number: table.columns[number].head)
    ]
    taken = sum(column.width + GAP for column in names)
    said = [number for number in numbers if number not in measures and number not in named]
    band = [number for number in named if _of_model(number, table)][2:]
    return Grid(names, tuple(_tiers(heads, room - taken)), (*band, *said))


def _of_model(number: int, table: InHouseTable) -> bool:
    """Maker, model and band are said once above the rows; size and length are not."""
    return number < table.frozen - 2


def _tiers(columns: Sequence[Column], room: float) -> Iterator[tuple[Column, ...]]:
    tier: list[Column] = []
    used = 0.0
    for column in columns:
        if tier and used + column.width > room:
            yield tuple(tier)
            tier, used = [], 0.0
        tier.append(column)
        used += column.width + GAP
    if tier:
        yield tuple(tier)


def _column(table: InHouseTable, setter: Setter, numbers: tuple[int, ...]) -> Column:
    first = table.columns[numbers[0]]
    units = tuple(table.columns[number].unit for number in numbers)
    widths = [_width(table.rows, number, setter) for number in numbers]
    short = setter.measure(first.head, SMALL_STRONG) - sum(widths)
    widths[-1] += max(short - PAIR_GAP * (len(widths) - 1), 0.0)
    return Column(first.head, units, numbers, tuple(widths))


def _width(rows: Sequence[TableRow], number: int, setter: Setter) -> float:
    """What the widest line of the column needs, within reason."""
    lines = (
        setter.measure(line, face_of(cell))
        for row in rows
        for cell in (row.cells[number],)
        for line in cell.text.split("\n")
    )
    return min(max(lines, default=0.0) + 0.5, _WIDEST) if rows else _LEAST
