"""Tables put together from lines of one cell each, held to what speaks for their arrangement.

Nothing but the order of such lines says which cell is which: one that was lost or strayed moves
all that follow. A person compares the table unless the figures themselves prove it.
"""

from __future__ import annotations

from collections.abc import Sequence
from itertools import chain
from typing import Final

from charts.dimensions import Role, read_heading
from charts.readers.captured.arranging.arrangement import Arrangement, Order
from charts.readers.captured.arranging.proofs import proofs
from charts.readers.captured.lines import Line, LineCell, LineTable
from charts.readers.captured.value_runs import is_cell_value, is_size, rises
from charts.readers.captured.values import is_blank

_ENDS: Final = (Role.LOW_END, Role.HIGH_END)


def is_counted_out(table: LineTable) -> bool:
    """Whether a table came from lines of one cell each, and its figures do not prove it."""
    return is_cell_a_line(table) and not _is_proven([row for row in table.rows if len(row) > 1])


def is_cell_a_line(table: LineTable) -> bool:
    """Whether every cell of a table has a line of its own."""
    rows = [row for row in table.rows if len(row) > 1]
    numbers = [cell.line for cell in chain.from_iterable(rows) if cell.text]
    return len(set(numbers)) == len(numbers) > 1


def _is_proven(rows: Sequence[Sequence[LineCell]]) -> bool:
    head, *body = rows
    if len(body) < 1 or len({len(row) for row in rows}) > 1:
        return False
    texts = [cell.text for cell in head[1:]]
    if all(map(is_size, texts)) and rises(texts):
        way = _way(head, body, turned=True)
    else:
        way = _way(head, body, turned=False)
    return _names_measures(way) and proofs(way) is not None


def _names_measures(way: Arrangement) -> bool:
    """Whether measures are named where headings stand, and no size or figure strayed there.

    ``min`` and ``max`` alone, twice each, stood below names that came before all of them.
    """
    texts = [one.text for one in way.heads]
    roles = [read_heading(text).role for text in texts]
    ends = [text for text, role in zip(texts, roles, strict=True) if role in _ENDS]
    if len(set(ends)) < len(ends):
        return False
    return Role.MEASURE in roles and not any(is_size(text) or is_cell_value(text) for text in texts)


def _way(
    head: Sequence[LineCell], body: Sequence[Sequence[LineCell]], *, turned: bool
) -> Arrangement:
    corner, *names = (_line(cell) for cell in head)
    firsts = tuple(_line(row[0]) for row in body)
    cells = [tuple(_line(cell) for cell in row[1:]) for row in body]
    grid = tuple(zip(*cells, strict=True)) if turned else tuple(cells)
    heads, labels = (firsts, tuple(names)) if turned else (tuple(names), firsts)
    return Arrangement(Order.ROWS, corner, heads, labels, grid, 0, 0)


def _line(cell: LineCell) -> Line:
    return Line("" if is_blank(cell.text) else cell.text, cell.line)
