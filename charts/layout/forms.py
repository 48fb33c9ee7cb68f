"""Which form a view has: sizes down, sizes across, a grid, or one row per size and dimension."""

from __future__ import annotations

from itertools import pairwise
from typing import Final

from charts.dimensions import Role
from charts.layout.conditions import by_conditions
from charts.layout.fields import FieldKind
from charts.layout.frames import Frame, frame
from charts.layout.grid import grid
from charts.layout.heads_across import heads_across
from charts.layout.long_form import widened
from charts.layout.looks import Look, look
from charts.layout.view import View

_DIGITS: Final = 3
_PLAIN: Final = frozenset({FieldKind.VALUES, FieldKind.LABEL, FieldKind.LENGTH})


def without_numbers(view: View) -> View:
    """The view without a first column that only numbers the names of measures beside it."""
    if view.turned or view.width < 3:
        return view
    first, names = (_merged_once(view, column) for column in range(2))
    numbers = [one.text.rstrip(".") for one in first if one.value]
    counted = numbers == [str(n) for n in range(1, len(numbers) + 1)] and len(numbers) > 1
    counted = counted or (bool(first) and _numbered(first[0], numbers))
    named = 2 * sum(one.measures for one in names) > len(names)
    if not counted or not named or len(first) - len(numbers) > 1:
        return view
    return View(view.sheet, view.rows, view.columns[1:])


def _merged_once(view: View, column: int) -> list[Look]:
    """The cells of a column; a corner merged down over two rows of headings is one of them."""
    cells = {at.origin: at for at in view.column(column) if at is not None}
    return [look(at.text) for at in cells.values()]


def _numbered(corner: Look, numbers: list[str]) -> bool:
    """Whether small numbers rise under a word for a number: some of a longer list are left out."""
    if corner.value or not all(one.isdecimal() and len(one) < _DIGITS for one in numbers):
        return False
    rising = all(int(one) < int(after) for one, after in pairwise(numbers))
    return corner.heading.role is Role.OTHER and rising and len(numbers) > 1


def plainly_down(found: Frame) -> bool:
    """Whether every column is headed by a measure or names the sizes: no turning can be better."""
    values = [field for field in found.fields if field.kind is FieldKind.VALUES]
    others = {field.kind for field in found.fields} - _PLAIN
    named = all(field.heading.dimension is not None for field in values)
    return found.labelled and len(values) > 1 and named and not others


def framed(view: View) -> Frame:
    """The form that explains the view best; sizes down the rows when two are equal."""
    view = without_numbers(view)
    found = heads_across(view) or grid(view) or by_conditions(view)
    if found is not None:
        return found
    down = frame(view)
    wide = widened(down)
    if wide is not None:
        return wide
    if plainly_down(down):
        return down
    across = frame(view.turn())
    if _stands(down) != _stands(across):
        return down if _stands(down) else across
    return across if across.score > down.score else down


def _stands(found: Frame) -> bool:
    """Whether it has sizes and figures: without sizes no score can make a table of it."""
    return found.labelled and found.valued
