"""Rows parted by strokes: ``Size / length / width`` over ``S / 70 cm / 62 cm``.

The first line has to name the sizes and a measure for every part behind them.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from typing import Final

from charts.dimensions import Role, read_heading
from charts.readers.captured.lines import Line, LineCell, LineTable
from charts.readers.captured.value_runs import is_size
from charts.readers.captured.values import is_value

_STROKE: Final = re.compile(r"\s+/\s+")
_TITLE: Final = re.compile(r"[^:/]{1,40}:\s+")
_NAME: Final = re.compile(r"[^\W\d_]{1,4}")
"""A short word before a figure for every heading is a size, even CM behind CXS and CS."""
_LONGEST: Final = 200
_FEWEST_ROWS: Final = 2


def stroke_table(lines: Sequence[Line]) -> LineTable | None:
    """The table whose headings ``lines`` begin with; None unless every row has all its parts."""
    heads = _parts(_TITLE.sub("", lines[0].text.strip(), count=1)) if lines else []
    if len(heads) < 2 or read_heading(heads[0]).role is not Role.LABEL:
        return None
    if any(read_heading(head).role is not Role.MEASURE for head in heads[1:]):
        return None
    rows: list[list[LineCell]] = [[LineCell(text, lines[0].number) for text in heads]]
    for line in lines[1:]:
        size, *values = _parts(line.text) or [""]
        even = len(values) == len(heads) - 1 and all(map(is_value, values))
        if not even or not (is_size(size) or _NAME.fullmatch(size)):
            break
        rows.append([LineCell(text, line.number) for text in (size, *values)])
    return LineTable(rows, len(rows)) if len(rows) > _FEWEST_ROWS else None


def _parts(text: str) -> list[str]:
    return _STROKE.split(text.strip()) if len(text) <= _LONGEST else []
