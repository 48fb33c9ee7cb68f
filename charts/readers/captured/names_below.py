"""The names of rows of figures on lines of their own below all rows, in the same order.

Some captures of a drawn page give the texts of its first column after its figures. Nothing but the
order tells which name is whose, so that a person has to compare them.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from charts.dimensions import Role, read_heading
from charts.readers.captured.lines import Line
from charts.readers.captured.value_runs import is_size, labels_in, named_values, sized_values

_LONGEST: Final = 60


def names_below(lines: Sequence[Line], used: int, count: int) -> list[Line]:
    """The word for sizes or "" and ``count`` names of measures behind ``used`` lines; else none.

    What goes on behind them as a table does may be the rows or names of another one.
    """
    below = [one for one in lines[used : used + 3 * count + 6] if one.text.strip()]
    roles = [read_heading(one.text.strip()).role for one in below[: count + 2]]
    worded = roles[:1] == [Role.LABEL]
    names = below[worded : worded + count]
    if roles[worded : worded + count] != [Role.MEASURE] * count:
        return []
    if any(len(one.text.strip()) > _LONGEST for one in names):
        return []
    follows = below[worded + count : worded + count + 1]
    if any(_goes_on(one.text.strip()) for one in follows):
        return []
    return [below[0] if worded else Line("", below[0].number), *names]


def begin_names(lines: Sequence[Line]) -> bool:
    """Whether the next lines begin with the word for sizes or the name of a measure."""
    below = next((one.text.strip() for one in lines if one.text.strip()), "")
    return read_heading(below).role in (Role.LABEL, Role.MEASURE)


def _goes_on(text: str) -> bool:
    """Whether a table that began above goes on here with a heading, a size or figures."""
    measure = read_heading(text).role is Role.MEASURE
    sizes = is_size(text) or labels_in(text) is not None
    return measure or sizes or bool(named_values(text) or sized_values(text))
