"""The headings over groups of cells: in one group, or in two of which the upper lost its width.

``Size | Chest | Waist`` over ``in | cm | in | cm`` is spread out evenly where the numbers allow it.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final, NamedTuple

from charts.dimensions import Role, read_heading
from charts.readers.captured.lines import Line
from charts.readers.captured.size_names import may_measure

_MOST_LEVELS: Final = 2
_LONGEST: Final = 40
"""Longer ones are sentences about measures."""
_OF_TITLES: Final = (Role.UNKNOWN, Role.BAND)
Group = tuple[Line, ...]


class Headings(NamedTuple):
    """Rows of headings, the titles in front of them, and whether they can stand in one way only."""

    titles: Group
    rows: tuple[Group, ...]
    sure: bool = True


def headings_over(heads: Sequence[Group], width: int) -> Headings | None:
    """The headings of rows with ``width`` cells; None where they are too few or too many.

    Without any, none: rows that begin with sizes across are rows themselves.
    """
    if len(heads) == 1:
        return _single(heads[0], width)
    return _double(heads[0], heads[1], width) if len(heads) == _MOST_LEVELS else None


def _single(head: Group, width: int) -> Headings | None:
    """As many headings as the rows have cells, or the corner alone is lacking.

    What stands before them is a title, and no heading whose cells were left out.
    """
    roles = _roles(head)
    if len(head) < width:
        lacking = len(head) == width - 1 and Role.LABEL not in roles
        corner = Line("", head[0].number)
        return Headings((), ((corner, *head),)) if lacking else None
    over = len(head) - width
    titled = roles[over] is Role.LABEL or roles[over - 1] in _OF_TITLES
    before = head[over - 1].text
    if over and (not titled or (len(before) <= _LONGEST and may_measure(before))):
        return None
    return Headings(head[:over], (head[over:],))


def _double(upper: Group, lower: Group, width: int) -> Headings | None:
    """Names over equally many columns each, with the word for sizes above or below."""
    roles = _roles(upper)
    beside = [at for at, role in enumerate(_roles(lower)) if role is Role.LABEL]
    if len(lower) == width and len(beside) > 1:
        return _side_by_side(upper, lower, beside)
    labels = [at for at, role in enumerate(roles) if role is Role.LABEL]
    if len(lower) == width - 1 and Role.LABEL not in _roles(lower) and len(labels) == 1:
        at = labels[0]
        titles, corner, names = upper[:at], upper[at], upper[at + 1 :]
        below = (Line("", lower[0].number), *lower)
    elif len(lower) == width and _roles(lower)[0] is Role.LABEL and not labels:
        titles, corner, names = (), Line("", upper[0].number), upper
        below = lower
    else:
        return None
    if (width - 1) % max(1, len(names)) or not any(may_measure(one.text) for one in names):
        return None
    step = (width - 1) // len(names)
    spread = tuple(name for name in names for _ in range(step))
    return Headings(titles, ((corner, *spread), below), _repeats(below[1:], step))


def _side_by_side(upper: Group, lower: Group, starts: Sequence[int]) -> Headings | None:
    """A name over each of several tables that stand side by side."""
    if len(upper) != len(starts) or starts[0]:
        return None
    ends = (*starts[1:], len(lower))
    spread = [name for name, a, b in zip(upper, starts, ends, strict=True) for _ in range(a, b)]
    return Headings((), (tuple(spread), lower))


def _repeats(cells: Group, step: int) -> bool:
    """Whether each name has the same words below: ``from | to | from | to``."""
    texts = [one.text.lower() for one in cells]
    return all(text == texts[at % step] for at, text in enumerate(texts))


def _roles(cells: Group) -> list[Role]:
    return [read_heading(one.text).role for one in cells]
