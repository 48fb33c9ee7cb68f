"""Cells with bars whose rows end in the size: ``33 |``, ``- |``, ``35" |``, ``Small |``.

A page laid out by a table gives a bar to every empty cell, and cells of their own to the hyphens of
its ranges. Empty cells are left out, so that a person has to compare the whole.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from typing import Final

from charts.dimensions import Role, read_heading
from charts.readers.captured.bars import cells_before_bars, ends_in_bar
from charts.readers.captured.lines import Line, LineCell, LineTable
from charts.readers.captured.value_runs import is_size
from charts.readers.captured.values import is_value

_HYPHENS: Final = frozenset("-–—")
_TIMES: Final = re.compile(r"[1-9]X")
"""``1X`` as a size is known by the sizes around it only."""
_FEWEST_ROWS: Final = 2
_MOST_COLUMNS: Final = 8


def labels_last_table(lines: Sequence[Line]) -> LineTable | None:
    """The table whose headings ``lines`` begin with; None unless every row ends in its size."""
    if not ends_in_bar(lines[0].text):
        return None
    cells = _joined([one for one in cells_before_bars(lines) if one.text])
    width = next((at for at, one in enumerate(cells) if is_value(one.text)), 0)
    heads = [one.text for one in cells[:width]]
    if not 2 <= width <= _MOST_COLUMNS or any(map(is_size, heads)):
        return None
    roles = [read_heading(head).role for head in heads]
    if roles[0] is not Role.MEASURE or roles[-1] is Role.MEASURE:
        return None  # the headings tell where the sizes stand
    count = _rows(cells[width:], width)
    end = width * (count + 1)
    over = end < len(cells) and is_value(cells[end].text)
    if count < _FEWEST_ROWS or over:
        return None
    rows = [cells[at : at + width] for at in range(0, end, width)]
    # The size goes in front, where the rows of other captures have it.
    table = [[LineCell(one.text, one.number) for one in (row[-1], *row[:-1])] for row in rows]
    last = rows[-1][-1].number
    used = next(at for at, line in enumerate(lines, start=1) if line.number == last)
    return LineTable(table, used, inferred=True)


def _rows(cells: Sequence[Line], width: int) -> int:
    """How many rows of figures and a size behind them stand here, each size another."""
    labels: set[str] = set()
    for at in range(0, len(cells) - width + 1, width):
        *values, label = [one.text for one in cells[at : at + width]]
        if not all(map(is_value, values)) or not _names(label) or label in labels:
            break
        labels.add(label)
    return len(labels)


def _names(text: str) -> bool:
    return (is_size(text) and not is_value(text)) or _TIMES.fullmatch(text) is not None


def _joined(cells: Sequence[Line]) -> list[Line]:
    """The cells, two figures with a hyphen in a cell between them as one range."""
    found: list[Line] = []
    at = 0
    while at < len(cells):
        three = [one.text for one in cells[at : at + 3]]
        ranged = len(three) == 3 and set(three[1]) <= _HYPHENS and len(three[1]) == 1
        if ranged and is_value(three[0]) and is_value(three[2]):
            found.append(Line(" ".join(three), cells[at].number))
            at += 3
            continue
        found.append(cells[at])
        at += 1
    return found
