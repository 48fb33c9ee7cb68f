"""Tables of a Markdown text without the rule below their heads: bars alone, and blocks of code.

A person reads ``| Size | S | M |`` over ``| Chest | 86 | 92 |`` as a table, and so a block that is
set apart by blanks or by a fence and holds columns parted by tabs, bars or wide blanks.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from typing import Final

from charts.readers.captured.bars import separated_table
from charts.readers.captured.columns import column_table
from charts.readers.captured.lines import Line, LineTable
from charts.readers.captured.values import is_value

MOST_LINES_OF_BLOCK: Final = 300
_INDENT: Final = re.compile(r"\A(?: {4}|\t)")
_FENCE: Final = re.compile(r" {0,3}(`{3,}|~{3,})[^`]*")
_FEWEST_FIELDS: Final = 3
_FEWEST_ROWS: Final = 2


def is_fence(line: str) -> bool:
    """Whether ``line`` opens or closes a block of code and says nothing itself."""
    return _FENCE.fullmatch(line) is not None


def is_indented(line: str) -> bool:
    """Whether ``line`` is set in by as much as makes a block of code."""
    return _INDENT.match(line) is not None and bool(line.strip())


def bars_without_rule(rows: Sequence[Sequence[str]]) -> bool:
    """Whether rows of fields between bars are a table: as many in each, a third of them figures."""
    counts = {len(row) for row in rows}
    cells = [field.strip() for row in rows[1:] for field in row[1:] if field.strip()]
    figures = sum(map(is_value, cells))
    even = len(counts) == 1 and min(counts) >= _FEWEST_FIELDS
    return len(rows) >= _FEWEST_ROWS and even and 3 * figures > len(cells) > 1


def block_of_code(lines: Sequence[str]) -> LineTable | None:
    """The table that lines of a block of code begin with, its cells parted by signs or columns."""
    numbered = [
        Line(_INDENT.sub("", line, count=1), at)
        for at, line in enumerate(lines[:MOST_LINES_OF_BLOCK])
    ]
    if not numbered or not numbered[0].text.strip():
        return None
    return separated_table(numbered) or column_table(numbered)
