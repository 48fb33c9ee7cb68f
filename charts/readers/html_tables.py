"""Tables of a web page to cells: spans repeated with their origin kept, hidden rows marked."""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field, replace
from typing import TYPE_CHECKING, Final

from charts.dimensions import Role, read_heading
from charts.readers.html_cell_names import icon_name, name_in_data, named_only_in_data
from charts.readers.html_text import is_hidden, text_of
from charts.readers.page_outline import PageTable
from charts.readers.plain_text import tidy
from charts.readers.source import LONGEST_CELL, MOST_CELLS, too_many
from charts.sheet import Cell

if TYPE_CHECKING:
    from lxml.etree import _Element

_CELLS: Final = ("td", "th")
_GROUPS: Final = ("thead", "tbody", "tfoot")
_CELL_ROLES: Final = ("cell", "gridcell", "columnheader", "rowheader")
_TABLE_ROLES: Final = ("table", "grid", "treegrid")
_WIDEST: Final = 1_000
# How a page's whole numbers are read: the HTML standard, "rules for parsing integers".
_COUNT: Final = re.compile(r"\s*\+?([0-9]{1,5})(?![0-9])")


@dataclass(slots=True)
class _Placed:
    """Cells put on a grid row by row; ``taken`` holds what spans from above.

    ``free`` is where the search for the next free column of a row begins.
    """

    cells: dict[tuple[int, int], tuple[Cell, bool]] = field(default_factory=dict)
    taken: set[tuple[int, int]] = field(default_factory=set)
    hidden: set[tuple[int, int]] = field(default_factory=set)
    free: dict[int, int] = field(default_factory=dict)
    columns: int = 0

    @property
    def row_widths(self) -> dict[int, int]:
        """The cells of each row, those that reach into it from above included."""
        widths: dict[int, int] = {}
        for row, column in self.taken:
            widths[row] = max(widths.get(row, 0), column + 1)
        return widths

    def put(
        self, row: int, made: tuple[Cell, bool], area: tuple[int, int], *, hidden: bool
    ) -> None:
        """Place a cell at the first free column of ``row`` and repeat it over ``area``."""
        cell, part_hidden = made
        column = self.free.get(row, 0)
        while (row, column) in self.taken:
            column += 1
        height, width = area
        self.free[row] = column + width
        if len(self.taken) + height * width > MOST_CELLS or len(cell.text) > LONGEST_CELL:
            raise too_many(len(self.taken) + len(cell.text))
        shared = replace(cell, shared_from=(row, column))
        for below in range(height):
            for beside in range(width):
                at = (row + below, column + beside)
                self.taken.add(at)
                if hidden:
                    self.hidden.add(at)
                elif cell.text:
                    here = cell if at == (row, column) else shared
                    self.cells.setdefault(at, (here, part_hidden))
        self.columns = max(self.columns, column + width)

    def part_hidden(
        self, hidden_rows: set[int], hidden_columns: frozenset[int]
    ) -> Iterator[tuple[int, int]]:
        """Cells hidden alone or in part, outside of hidden rows and columns."""
        for row, column in self.hidden:
            if row not in hidden_rows and column not in hidden_columns:
                yield row, column
        yield from (at for at, (_, part) in self.cells.items() if part)


def is_table(element: _Element) -> bool:
    """Whether the page itself calls ``element`` a table."""
    return element.tag == "table" or element.get("role") in _TABLE_ROLES


def grid_of(table: _Element) -> PageTable:
    """The cells of ``table`` without those of tables nested in it."""
    rows = list(_rows_of(table))
    placed = _Placed()
    hidden_rows: set[int] = set()
    named = named_only_in_data([list(_cells_of(row)) for row in rows])
    for number, row in enumerate(rows):
        if is_hidden(row) or _is_hidden_group(row):
            hidden_rows.add(number)
        for element in _cells_of(row):
            hidden = number in hidden_rows or is_hidden(element)
            area = _area(element, len(rows) - number)
            placed.put(number, _cell(element, row, named=named), area, hidden=hidden)
    seen = {row for row, _ in placed.taken if row not in hidden_rows}
    hidden_columns = frozenset(_hidden_columns(placed, len(seen), hidden_rows))
    return PageTable(
        cells={at: cell for at, (cell, _) in placed.cells.items()},
        rows=len(rows),
        columns=placed.columns,
        hidden_rows=frozenset(hidden_rows),
        hidden_columns=hidden_columns,
        hidden_cells=frozenset(placed.part_hidden(hidden_rows, hidden_columns)),
        context=tuple(_words_before(table)),
        notes=tuple(_comments_inside(table)),
        row_widths=placed.row_widths,
    )


def _cell(element: _Element, row: _Element, *, named: bool) -> tuple[Cell, bool]:
    """The cell and whether a part of it is hidden; ``named`` by its data, as by a heading."""
    said = text_of(element)
    comment, heading = tidy(element.get("title") or ""), _is_heading(element, row)
    text = said.text
    if named and text:
        text = f"{name_in_data(element)}: {text}"
    elif heading and (not text or read_heading(text).role is Role.UNIT):
        text = f"{icon_name(element)} {text}".strip()
    return Cell(text, comment=comment, heading=heading, struck=said.struck), said.part_hidden


def _rows_of(table: _Element) -> Iterator[_Element]:
    by_role = table.tag != "table"
    if not by_role and is_row(table):
        yield table
    for element in table.iterdescendants():
        row = element.get("role") == "row" if by_role else is_row(element)
        row = row and element.tag != "table"
        if row and _owner(element, table) is table:
            yield element


def is_row(element: _Element) -> bool:
    """A row; or a head or a table whose cells stand in none, which browsers show as one."""
    if element.tag == "tr":
        return True
    return element.tag in (*_GROUPS, "table") and any(map(is_cell, element))


def is_cell(element: _Element) -> bool:
    """A cell by its tag."""
    return element.tag in _CELLS


def _owner(element: _Element, table: _Element) -> _Element | None:
    """The nearest table around ``element``."""
    return next((one for one in element.iterancestors() if one is table or is_table(one)), None)


def _cells_of(row: _Element) -> Iterator[_Element]:
    roles = row.tag != "tr"
    for element in row:
        if element.tag in _CELLS or (roles and element.get("role") in _CELL_ROLES):
            yield element


def _is_heading(element: _Element, row: _Element) -> bool:
    if element.tag == "th" or element.get("role") in ("columnheader", "rowheader"):
        return True
    group = row.getparent()
    return row.tag == "thead" or (group is not None and group.tag == "thead")


def _is_hidden_group(row: _Element) -> bool:
    group = row.getparent()
    return group is not None and group.tag in _GROUPS and is_hidden(group)


def _area(element: _Element, rows_left: int) -> tuple[int, int]:
    height = _span(element, "rowspan", "aria-rowspan")
    width = _span(element, "colspan", "aria-colspan")
    # A row span of 0 reaches to the end of its group.
    return min(height or rows_left, rows_left), min(width or 1, _WIDEST)


def _span(element: _Element, *names: str) -> int:
    """The count at the head of an attribute: like a browser, whatever follows it is let be."""
    for name in names:
        if counted := _COUNT.match(element.get(name) or ""):
            return int(counted[1])
    return 1


def _hidden_columns(placed: _Placed, rows: int, hidden_rows: set[int]) -> Iterator[int]:
    counts: dict[int, int] = {}
    for row, column in placed.hidden:
        if row not in hidden_rows:
            counts[column] = counts.get(column, 0) + 1
    for column, count in counts.items():
        if count == rows:
            yield column


def _words_before(table: _Element) -> Iterator[str]:
    """The caption and the name that the page gives the table, also one the eye does not see."""
    for name in ("summary", "aria-label"):
        if words := tidy(table.get(name) or ""):
            yield words
    for caption in table.iterchildren("caption"):
        if words := text_of(caption).text:
            yield words


def _comments_inside(table: _Element) -> Sequence[str]:
    from lxml import etree

    return [words for one in table.iter(etree.Comment) if (words := said_in_comment(one.text))]


def said_in_comment(text: str | None) -> str:
    """The words of a comment in the source; "" where it holds code or marks an end."""
    words = tidy(text or "")
    code = any(sign in words for sign in "<>{}[]=;")
    is_end = words.startswith("/") or words.lower().startswith(("end", "ende"))
    return "" if code or is_end or len(words) > 120 else words
