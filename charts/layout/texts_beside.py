"""Titles before the headings of a table and notes behind them, in columns that hold no more.

``Men's jackets | Size | Chest`` over blank | S | 86: a title that ran down beside the table stands
in its first row once the merged cells are gone. What names the table names it there too.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

from charts.dimensions import Role
from charts.layout.looks import look
from charts.layout.view import At, View

_MOST_TEXTS: Final = 6
_FEWEST_COLUMNS: Final = 2
_FEW_WORDS: Final = 2
_LISTED: Final = frozenset({Role.LABEL, Role.MEASURE, Role.UNIT})
_ENDS: Final = frozenset({Role.LOW_END, Role.HIGH_END})
"""What heads a column, though its cells may be lost; words for ends join the words of names too."""


@dataclass(frozen=True, slots=True)
class Parted:
    """A run without the texts beside it, which are the titles and notes of its table."""

    view: View
    titles: tuple[At, ...] = ()
    notes: tuple[At, ...] = ()


def parted_from_texts(view: View) -> Parted:
    """The run without columns before its headings, or behind, whose first cell is all they hold."""
    if view.turned or view.height < 2 or view.width <= _FEWEST_COLUMNS:
        return Parted(view)
    first = [view.at(0, column) for column in range(view.width)]
    if first[0] is None and first[-1] is None:
        return Parted(view)
    start = _count(view, first, 1)
    titles = [at for at in first[:start] if at is not None]
    if titles and not _may_name(titles, first[start] if start < view.width else None):
        start, titles = 0, []
    end = view.width - _count(view, first, -1)
    notes = [at for at in first[end:] if at is not None]
    if not all(_is_note(at) for at in notes):
        end, notes = view.width, []
    if not (titles or notes) or end - start < _FEWEST_COLUMNS:
        return Parted(view)
    inner = View(view.sheet, view.rows, view.columns[start:end])
    return Parted(inner, tuple(titles), tuple(notes))


def _count(view: View, first: list[At | None], step: int) -> int:
    """How many columns from one end on hold a text in their first row and nothing below."""
    count = 0
    for column in range(view.width)[::step]:
        at = first[column]
        alone = at is not None and at.cell.shared_from is None and _is_text(at)
        if not alone or any(view.at(row, column) for row in range(1, view.height)):
            break
        count += 1
    return count if count <= _MOST_TEXTS else 0


def _is_text(at: At) -> bool:
    one = look(at.text)
    return not one.value and not one.blank and (one.label is None or one.band is not None)


def _may_name(titles: list[At], behind: At | None) -> bool:
    """Whether texts stand before the headings of a table, and none heads a column by itself.

    ``Size chart`` does not where a word for the sizes follows; ``Size`` alone may have lost them.
    """
    if behind is None or look(behind.text).value:
        return False
    follows = look(behind.text).heading.role is Role.LABEL
    for at in titles:
        one = look(at.text)
        role = one.heading.role
        heads = role in _LISTED or (role in _ENDS and len(one.text.split()) <= _FEW_WORDS)
        if heads and not one.sentence and not (role is Role.LABEL and follows):
            return False
    return True


def _is_note(at: At) -> bool:
    one = look(at.text)
    return one.sentence or one.text.endswith((".", "!")) or one.heading.role is Role.NOTE
