"""Tables of a word-processor document to cells: spans repeated, their origin kept."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, field, replace
from typing import TYPE_CHECKING, Final

from charts.readers.document_runs import WORD, SeenRuns, inside, is_on, whole
from charts.readers.page_outline import PageTable
from charts.readers.source import LONGEST_CELL, MOST_CELLS, too_many
from charts.sheet import Cell

if TYPE_CHECKING:
    from lxml.etree import _Element

_WIDEST: Final = 1_000


@dataclass(slots=True)
class DocumentTable:
    """One table, the numbers of its footnotes, and the tables that lie in its cells."""

    table: PageTable
    notes: list[str] = field(default_factory=list)
    nested: list[_Element] = field(default_factory=list)


@dataclass(slots=True)
class _Grid:
    """Cells put down row by row; ``open`` says where a cell of each column began."""

    found: DocumentTable
    cells: dict[tuple[int, int], Cell] = field(default_factory=dict)
    open: dict[int, tuple[int, int]] = field(default_factory=dict)
    taken: int = 0
    columns: int = 0

    def put(self, row: int, column: int, element: _Element, *, heading: bool) -> int:
        """Place a cell at ``column`` and return the column after it."""
        properties = element.find(f"{WORD}tcPr")
        width = max(1, whole(properties, "gridSpan", 1, _WIDEST))
        self.taken += width
        if self.taken > MOST_CELLS:
            raise too_many(self.taken)
        if _continues(properties) and column in self.open:
            cell, origin = self.cells.get(self.open[column]), self.open[column]
        else:
            cell, origin = self._read(element, heading=heading), (row, column)
        for beside in range(column, column + width):
            self.open[beside] = origin
            if cell is not None and cell.text:
                own = (row, beside) == origin
                self.cells[row, beside] = cell if own else replace(cell, shared_from=origin)
        self.columns = max(self.columns, column + width)
        return column + width

    def _read(self, element: _Element, *, heading: bool) -> Cell:
        seen = SeenRuns()
        for child in inside(element):
            if child.tag == f"{WORD}p":
                seen.add(child)
            elif child.tag == f"{WORD}tbl":
                self.found.nested.append(child)
        self.found.notes += seen.notes
        text, struck = seen.told()
        if len(text) > LONGEST_CELL:
            raise too_many(len(text))
        return Cell(text, heading=heading, struck=struck)


def read_table(table: _Element) -> DocumentTable:
    """The cells of ``table`` without those of tables nested in it."""
    found = DocumentTable(PageTable({}, 0, 0))
    grid = _Grid(found)
    rows = list(_rows(table))
    for number, row in enumerate(rows):
        properties = row.find(f"{WORD}trPr")
        column = whole(properties, "gridBefore", 0, _WIDEST)
        for element in inside(row):
            if element.tag == f"{WORD}tc":
                heading = is_on(properties, "tblHeader")
                column = grid.put(number, column, element, heading=heading)
    found.table = PageTable(grid.cells, len(rows), grid.columns)
    return found


def _rows(table: _Element) -> Iterator[_Element]:
    """The rows that no tracked change has deleted and that are not hidden."""
    for row in inside(table):
        properties = row.find(f"{WORD}trPr")
        deleted = properties is not None and properties.find(f"{WORD}del") is not None
        if row.tag == f"{WORD}tr" and not deleted and not is_on(properties, "hidden"):
            yield row


def _continues(properties: _Element | None) -> bool:
    """Whether a cell only carries on the one above it."""
    if properties is None:
        return False
    merge = properties.find(f"{WORD}vMerge")
    return merge is not None and merge.get(f"{WORD}val", "continue") == "continue"
