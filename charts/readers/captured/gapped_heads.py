"""Headings with wide gaps over rows of single blanks: ``EU Size  Bust (cm)`` over ``38 82``.

The gaps tell where a heading ends, as those of a pasted page do; each row has a figure to every
heading and nothing else, so that counting them is sure.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from typing import Final

from charts.dimensions import Role, read_heading
from charts.readers.captured.lines import Line, LineCell, LineTable
from charts.readers.captured.value_runs import is_size
from charts.readers.captured.values import is_value

_GAP: Final = re.compile(r"\s{2,}")
_FEWEST: Final = 3
"""Fewer columns, or fewer rows, may agree in their number by chance."""
_LONGEST: Final = 200


def gapped_head_table(lines: Sequence[Line]) -> LineTable | None:
    """The table that ``lines`` begin with; None unless the first is sizes and measures alone."""
    heads = _heads(lines[0].text) if lines else []
    if not heads:
        return None
    rows = [[LineCell(head, lines[0].number) for head in heads]]
    for line in lines[1:]:
        words = _row(line.text, len(heads))
        if not words:
            break
        rows.append([LineCell(word, line.number) for word in words])
    return LineTable(rows, len(rows)) if len(rows) > _FEWEST else None


def _heads(text: str) -> list[str]:
    """The word for sizes and the measures that a line names between wide gaps; none else."""
    text = text.strip()
    if len(text) > _LONGEST or _GAP.search(text) is None:
        return []
    heads = _GAP.split(text)
    roles = [read_heading(head).role for head in heads] if len(heads) >= _FEWEST else []
    sure = roles[:1] == [Role.LABEL] and set(roles[1:]) == {Role.MEASURE}
    return heads if sure else []


def _row(text: str, count: int) -> list[str]:
    """A size and its figures, parted by single blanks; none where the line is anything else."""
    text = text.strip()
    words = text.split()
    if len(words) != count or _GAP.search(text) is not None:
        return []
    return words if is_size(words[0]) and all(map(is_value, words[1:])) else []
