"""One way to arrange cells that lost their places: a row a size, a column a heading."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from enum import StrEnum

from charts.readers.captured.lines import Line, LineCell


class Order(StrEnum):
    """In which order a text gives the cells of its table."""

    ROWS = "each size with its figures behind it"
    ROWS_LAST = "each size behind its figures"
    ROWS_GAPS = "each size with its figures behind it, some of them lost"
    COLUMNS = "each heading with its figures behind it"
    COLUMNS_LAST = "each heading behind its figures"
    APART_ROWS = "headings and sizes apart, the figures size by size"
    APART_COLUMNS = "headings and sizes apart, the figures heading by heading"


@dataclass(frozen=True, slots=True)
class Arrangement:
    """Cells put in their places; an empty text is a cell without a figure.

    ``cells`` holds a row for each of ``labels`` with a cell for each of ``heads``. ``used`` counts
    the cells of the text up to the last of these, ``start`` those before the first: titles.
    """

    order: Order
    corner: Line | None
    heads: tuple[Line, ...]
    labels: tuple[Line, ...]
    cells: tuple[tuple[Line, ...], ...]
    start: int
    used: int

    @property
    def columns(self) -> list[tuple[Line, ...]]:
        """The cells of each heading, from the first size to the last."""
        return list(zip(*self.cells, strict=True))

    @property
    def texts(self) -> tuple[tuple[str, ...], ...]:
        """What would be read: equal for two ways that come to the same."""
        heads = tuple(one.text for one in self.heads)
        rows = zip(self.labels, self.cells, strict=True)
        return (heads, *((label.text, *(one.text for one in row)) for label, row in rows))

    @property
    def figures(self) -> int:
        """How many cells hold a figure."""
        return sum(bool(one.text) for row in self.cells for one in row)

    def rows(self, titles: Sequence[Line] = ()) -> list[list[LineCell]]:
        """The table as rows: titles, the headings, then a row a size."""
        corner = self.corner or Line("", self.heads[0].number)
        rows = zip(self.labels, self.cells, strict=True)
        all_rows = [*([one] for one in titles), (corner, *self.heads)]
        all_rows += [(label, *row) for label, row in rows]
        return [[LineCell(one.text, one.number) for one in row] for row in all_rows]
