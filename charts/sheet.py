"""A sheet of raw cells as a person sees it. Readers make sheets; nothing is converted here."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field
from datetime import date, datetime, time
from decimal import Decimal
from enum import StrEnum
from functools import lru_cache

from charts.corrections import Correction


class Addressing(StrEnum):
    """How a cell's place is written for a person."""

    SHEET = "sheet"  # Women!C4
    PLAIN = "plain"  # C4
    TABLE = "table"  # table 2!C4
    PAGE = "page"  # page 3!C4
    LINE = "line"  # line 12


StoredValue = str | Decimal | bool | date | datetime | time | None


@dataclass(frozen=True, slots=True)
class Cell:
    r"""One cell: the text a person sees, and what the source stored behind it.

    ``text`` is as printed (a number format applied, line breaks kept as ``\\n``). ``stored`` is
    the value of a typed source, with numbers as exact decimals and the noise of floating point
    taken out; text sources leave it None. ``number_format`` is the source's own format code.
    ``shared_from`` is the (row, column) of the merged area's first cell when this cell only
    repeats it. ``heading`` marks a cell that the source itself declares a heading. ``struck``
    says that the source crosses out this text or a part of it; a crossed-out part is left out
    of ``text`` when something else remains. ``corrected`` says that a person read the cell
    otherwise: ``text`` is then theirs, and what is printed stands in it.
    """

    text: str
    stored: StoredValue = None
    number_format: str = ""
    shared_from: tuple[int, int] | None = None
    comment: str = ""
    heading: bool = False
    struck: bool = False
    formula_without_value: bool = False
    corrected: Correction | None = None

    @property
    def printed(self) -> str:
        """The text as the source has it, whatever a person said of it since."""
        return self.corrected.printed if self.corrected is not None else self.text


@dataclass(frozen=True, slots=True)
class Sheet:
    """A rectangle of cells with the words around it.

    Rows and columns count from 0 and are the source's own, so a place is never shifted;
    ``cells`` holds the filled ones only. One stray cell can make ``rows`` a million: go over
    ``filled_rows``, never over ``range(rows)``.
    ``name`` is what the person sees ("Women", "table 2", "page 3"). ``context`` are titles,
    headings and captions that stand before the table in the source, outermost first; ``notes``
    are sentences that stand after or beside it. Hidden rows and columns are left out of
    ``cells`` and listed here by their 0-based numbers; ``hidden_cells`` are single cells that the
    source hides, whole or in part. ``hidden`` marks a table that a page keeps
    out of sight until a switch is pressed. ``line_of_row`` gives the source's 1-based line of a
    row where the two differ, ``line_of_cell`` the line of a single cell. ``row_widths`` tells how
    many cells the source gives a row, blank ones included, where it marks each. ``inferred`` tells
    that rows and columns were put together from a text that has none: to be compared with the
    source.
    """

    name: str
    addressing: Addressing
    cells: Mapping[tuple[int, int], Cell]
    rows: int
    columns: int
    context: tuple[str, ...] = ()
    notes: tuple[str, ...] = ()
    hidden_rows: frozenset[int] = frozenset()
    hidden_columns: frozenset[int] = frozenset()
    hidden_cells: frozenset[tuple[int, int]] = frozenset()
    hidden: bool = False
    comments: Mapping[tuple[int, int], str] = field(default_factory=dict)
    line_of_row: Mapping[int, int] = field(default_factory=dict)
    line_of_cell: Mapping[tuple[int, int], int] = field(default_factory=dict)
    row_widths: Mapping[int, int] = field(default_factory=dict)
    inferred: bool = False
    _by_row: Mapping[int, tuple[tuple[int, Cell], ...]] = field(
        init=False, repr=False, compare=False
    )

    def __post_init__(self) -> None:
        by_row: dict[int, list[tuple[int, Cell]]] = {}
        for row, column in sorted(self.cells):
            by_row.setdefault(row, []).append((column, self.cells[row, column]))
        frozen = {row: tuple(cells) for row, cells in by_row.items()}
        object.__setattr__(self, "_by_row", frozen)

    @property
    def filled_rows(self) -> tuple[int, ...]:
        """The rows that hold a cell, from top to bottom."""
        return tuple(self._by_row)

    def text(self, row: int, column: int) -> str:
        """The printed text at (row, column), "" where nothing stands."""
        cell = self.cells.get((row, column))
        return cell.text if cell is not None else ""

    def row(self, row: int) -> Iterator[tuple[int, Cell]]:
        """The filled cells of one row as (column, cell), from left to right."""
        yield from self._by_row.get(row, ())

    def place(self, row: int, column: int) -> str:
        """The cell's place as a person writes it: ``Women!C4``, ``C4``, ``line 12``."""
        if self.addressing is Addressing.LINE:
            line = self.line_of_cell.get((row, column))
            return f"line {line or self.line_of_row.get(row, row + 1)}"
        return self._prefixed(f"{column_letters(column)}{row + 1}")

    def area(self, first: tuple[int, int], last: tuple[int, int]) -> str:
        """The place of a rectangle from ``first`` to ``last``, both inside: ``Women!A3:F9``."""
        if self.addressing is Addressing.LINE or first == last:
            return self.place(*first)
        start = f"{column_letters(first[1])}{first[0] + 1}"
        return self._prefixed(f"{start}:{column_letters(last[1])}{last[0] + 1}")

    def _prefixed(self, reference: str) -> str:
        return reference if self.addressing is Addressing.PLAIN else f"{self.name}!{reference}"


@lru_cache(maxsize=1024)
def column_letters(column: int) -> str:
    """The letters of a 0-based column: 0 is A, 25 is Z, 26 is AA."""
    letters = ""
    number = column + 1
    while number:
        number, rest = divmod(number - 1, 26)
        letters = chr(ord("A") + rest) + letters
    return letters
