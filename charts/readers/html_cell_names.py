"""What a page writes only into the attributes of a cell: the heading of its column, an icon's name.

A page made for small screens may have no row of headings, as its style sheet prints the names that
stand in the data of each cell; and a heading may be a picture whose title names the measure.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import TYPE_CHECKING, Final

from charts.dimensions import Role, read_heading
from charts.readers.plain_text import tidy

if TYPE_CHECKING:
    from lxml.etree import _Element

_NAMES: Final = (
    "data-th",
    "data-label",
    "data-title",
    "data-heading",
    "data-header",
    "data-column",
    "data-content",
)
_ICONS: Final = ("i", "span", "em", "b", "svg", "img", "use")
_TITLES: Final = ("title", "aria-label", "alt")
_FEWEST: Final = 2
_LONGEST: Final = 60


def name_in_data(cell: _Element) -> str:
    """The heading that the data of a cell names, "" where they name none."""
    return next((words for key in _NAMES if (words := tidy(cell.get(key) or ""))), "")


def named_only_in_data(rows: Sequence[Sequence[_Element]]) -> bool:
    """Whether every cell of a table names its column, and no row of headings does."""
    if len(rows) < _FEWEST or len({len(row) for row in rows}) != 1 or len(rows[0]) < _FEWEST:
        return False
    names = [[name_in_data(cell) for cell in row] for row in rows]
    if names[0] != names[-1] or any(row != names[0] for row in names) or not all(names[0]):
        return False
    heads = any(cell.tag == "th" for cell in rows[0][1:])
    printed = any(
        tidy("".join(map(str, cell.itertext()))) == name
        for cell, name in zip(rows[0], names[0], strict=True)
    )
    short = all(len(name) <= _LONGEST for name in names[0])
    measured = any(read_heading(name).role is Role.MEASURE for name in names[0])
    return short and measured and not heads and not printed


def icon_name(cell: _Element) -> str:
    """The measure that the title of a picture in a heading names, "" where none does."""
    for icon in cell.iter(*_ICONS):
        if icon is cell or "".join(map(str, icon.itertext())).strip():
            continue
        for key in _TITLES:
            words = tidy(icon.get(key) or "")
            if words and len(words) <= _LONGEST and read_heading(words).role is Role.MEASURE:
                return words
    return ""
