"""Whether a run has headings or names of sizes of its own, known words or not.

Such a run is no further part of the table above it: its figures are not for the sizes there.
"""

from __future__ import annotations

from typing import Final

from charts.dimensions import Role
from charts.layout.looks import Look, look
from charts.layout.view import View
from charts.notation import Reading

_FEWEST: Final = 2
_CORNERS: Final = frozenset({Role.UNIT, Role.LABEL})


def headed(view: View) -> bool:
    """Whether its first row heads it in any of the ways in which tables are headed."""
    return _by_known_words(view) or _by_words(view) or _by_names_unread(view)


def _by_known_words(view: View) -> bool:
    """Whether the run has headings of its own above its rows, so that no others hold for it."""
    if view.height < _FEWEST:
        return False
    first = [look(at.text) for at in view.row(0) if at is not None]
    named = sum(one.heading.role in {Role.LABEL, Role.MEASURE} and not one.value for one in first)
    return named > 1 and named == len(first)


def _by_words(view: View) -> bool:
    """Whether words that nobody knows stand over every column: no sizes of a table before it."""
    rows = [[at for at in view.row(row) if at is not None] for row in range(view.height)]
    if len(rows) < _FEWEST or len(rows[0]) <= _FEWEST or len(rows[0]) < max(map(len, rows)):
        return False
    words = [look(at.text) for at in rows[0][1:]]
    known = any(
        one.value
        or one.blank
        or one.label is not None
        or one.length is not None
        or one.band is not None
        or one.heading.role is not Role.UNKNOWN
        or not one.text.isalpha()
        for one in words
    )
    return not known and len({one.text for one in words}) == len(words)


def _by_names_unread(view: View) -> bool:
    """``cm | 34 / 8 / 4 | 36 / 10 / 6`` over measures: names of sizes that no rule can read."""
    if view.height < _FEWEST:
        return False
    corner, *rest = view.row(0)
    names = [look(at.text) for at in rest if at is not None]
    if corner is not None and look(corner.text).heading.role not in _CORNERS:
        return False
    others = {one.text for one in names}
    return len(others) == len(names) >= _FEWEST and all(map(_no_figure, names))


def _no_figure(one: Look) -> bool:
    """Figures that are no value and no heading: a name of some kind."""
    unread = one.reading.reading is Reading.UNREAD
    measured = one.heads and one.heading.role is not Role.LABEL
    return unread and one.label is None and not measured and one.band is None
