"""A sheet of raw cells as a person sees it. Readers make sheets; nothing is converted here."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field
from datetime import date, datetime, time
from decimal import Decimal
from enum import StrEnum


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
    the value of a typed source, with numbers as exact decimals; text sources leave it None.
    ``shared_from`` is the (row, column) of the merged area's first cell when this cell only
    repeats it. ``heading`` marks a cell that the source itself declares a heading.
    """

    text: str
    stored: StoredValue = None
    number_format: str = ""
    shared_from: tuple[int, int] | None = None
    comment: str = ""
    heading: bool = False
    struck: bool = False
    formula_without_value: bool = False


@dataclass(frozen=True, slots=True)
class Sheet:
    """A rectangle of cells with the words around it.

    Rows and columns count from 0 and are the source's own, so a place is never shifted;
    ``cells`` holds the filled ones only.
    ``name`` is what the person sees ("Women", "table 2", "page 3"). ``context`` are titles,
    headings and captions that stand before the table in the source, outermost first; ``notes``
    are sentences that stand after or beside it. Hidden rows and columns are left out of
    ``cells`` and listed here by their 0-based numbers.
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
    hidden: bool = False
    comments: Mapping[tuple[int, int], str] = field(default_factory=dict)
    line_of_row: Mapping[int, int] = field(default_factory=dict)

    def text(self, row: int, column: int) -> str:
        """The printed text at (row, column), "" where nothing stands."""
        cell = self.cells.get((row, column))
        return cell.text if cell is not None else ""

    def row(self, row: int) -> Iterator[tuple[int, Cell]]:
        """The filled cells of one row as (column, cell), from left to right."""
        for column in range(self.columns):
            cell = self.cells.get((row, column))
            if cell is not None:
                yield column, cell

    def place(self, row: int, column: int) -> str:
        """The cell's place as a person writes it: ``Women!C4``, ``C4``, ``line 12``."""
        if self.addressing is Addressing.LINE:
            return f"line {self.line_of_row.get(row, row + 1)}"
        return self._prefixed(f"{column_letters(column)}{row + 1}")

    def area(self, first: tuple[int, int], last: tuple[int, int]) -> str:
        """The place of a rectangle from ``first`` to ``last``, both inside: ``Women!A3:F9``."""
        if self.addressing is Addressing.LINE or first == last:
            return self.place(*first)
        start = f"{column_letters(first[1])}{first[0] + 1}"
        return self._prefixed(f"{start}:{column_letters(last[1])}{last[0] + 1}")

    def _prefixed(self, reference: str) -> str:
        return reference if self.addressing is Addressing.PLAIN else f"{self.name}!{reference}"


def column_letters(column: int) -> str:
    """The letters of a 0-based column: 0 is A, 25 is Z, 26 is AA."""
    letters = ""
    number = column + 1
    while number:
        number, rest = divmod(number - 1, 26)
        letters = chr(ord("A") + rest) + letters
    return letters
