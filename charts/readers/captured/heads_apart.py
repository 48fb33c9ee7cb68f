"""A line of headings that a blank line parts from its rows: ``Size  Chest  Waist``, then figures.

Wide gaps part it into as many pieces as the rows have cells. Left as one text it would be a title,
and the headings of the table before would be taken for these rows.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from typing import Final

from charts.dimensions import Role, read_heading
from charts.readers.captured.lines import Line, LineTable
from charts.readers.captured.values import is_value

_GAP: Final = re.compile(r"\s{2,}|\t")
_FEWEST: Final = 3
_LONGEST: Final = 40
"""Characters above which a piece is a sentence and no heading (common practice)."""


def heads_apart(before: Sequence[Line], table: LineTable) -> tuple[list[str], int] | None:
    """The headings of a table in the last line before it, and how many blank lines are between.

    None where the line stands close, has other pieces than the rows, or names nothing; and where
    the table begins with a row that has no figure, which heads it.
    """
    blanks = 0
    while blanks < len(before) and not before[-1 - blanks].text.strip():
        blanks += 1
    if not blanks or blanks == len(before) or not any(is_value(one.text) for one in table.rows[0]):
        return None
    line = before[-1 - blanks].text.rstrip()
    pieces = _GAP.split(line.strip())
    if line[:2].isspace():
        pieces.insert(0, "")  # the corner is blank
    if len(pieces) < _FEWEST or len(pieces) != max(map(len, table.rows)):
        return None
    return (pieces, blanks) if _heads(pieces) else None


def _heads(pieces: Sequence[str]) -> bool:
    """Whether a word for sizes or a measure is among short pieces, and no figure alone."""
    if any(len(one) > _LONGEST for one in pieces) or is_value(pieces[0]):
        return False
    roles = {read_heading(one).role for one in pieces if one}
    sizes = read_heading(pieces[0]).role is Role.LABEL
    return bool(roles & {Role.MEASURE, Role.LABEL}) and (
        sizes or not any(map(is_value, pieces[1:]))
    )
