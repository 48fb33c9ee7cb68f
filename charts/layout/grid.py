"""Grids: two axes of bands with the size in the cell, or two parts of a label with the range there.

Height across and weight down with S, M, L inside; cup letters across and numbers down with the
girth inside; lengths across and sizes down with the back length inside.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass, replace
from itertools import pairwise
from typing import Final

from charts.dimensions import HeadingReading, Role
from charts.layout.axis_names import axis_headings, without_names
from charts.layout.cups import are_cups, bust_heading, cup_in, growing, leaping, with_cup
from charts.layout.fields import Field, FieldKind
from charts.layout.frames import Frame
from charts.layout.looks import Look, look
from charts.layout.measured_keys import GIRTHS, names_the_side
from charts.layout.view import At, View
from charts.schema import Dimension, Kind

_MOST_HEADS: Final = 3
_BRACKETED: Final = re.compile(r"[(\[]([^()\[\]]*\d[^()\[\]]*)[)\]]\s*$")
_CODE: Final = re.compile(
    r"[^\W\d_]{1,3}[ -]?\d{1,3}[^\W\d_]?|\d?[^\W\d_]{1,4}[ /-][^\W\d_]{1,2}|\d{1,2}[^\W\d_]{1,3}"
)
_NO_HEADING: Final = HeadingReading(Role.UNKNOWN)


@dataclass(frozen=True, slots=True)
class Axes:
    """Where the two axes of a grid stand in the view, and its inner cells by (row, column)."""

    view: View
    head_row: int
    head_column: int
    across: tuple[At, ...]
    down: tuple[At, ...]
    inner: dict[tuple[int, int], At]


def grid(view: View) -> Frame | None:
    """The view as a grid, or None when it is none."""
    axes = _axes(without_names(view))
    if axes is None:
        return None
    across, down = _looks(axes.across), _looks(axes.down)
    inner = _looks(tuple(axes.inner.values()))
    if not inner or not _nameless(across) or not _nameless(down) or _named_one_by_one(axes):
        return None
    if _bands(across) and _bands(down) and (_named(inner) or _coded(inner)):
        return _sizes_inside(axes)
    if _letters(across) and _bands(down) and all(one.sure_label for one in inner):
        return _sizes_inside(axes, cups=True)
    if _share(inner, wordy=False) < 0.9:
        return None
    if _lengths(across) and _labels(down):
        return _by_length(axes)
    if _lengths(down) and _labels(across):
        turned = _axes(view.turn())
        return _by_length(turned) if turned is not None else None
    if _letters(across) and _labels(down) and not _letters(down):
        return _by_parts(axes)
    if _letters(down) and _labels(across) and not _letters(across):
        turned = _axes(without_names(view).turn())
        return _by_parts(turned) if turned is not None else None
    return None


def _axes(view: View) -> Axes | None:
    """The last leading row and column before the inner cells."""
    for row in range(min(_MOST_HEADS, view.height - 1)):
        for column in range(min(_MOST_HEADS, view.width - 1)):
            if view.at(row, column + 1) is None or view.at(row + 1, column) is None:
                continue
            across = [view.at(row, n) for n in range(column + 1, view.width)]
            down = [view.at(n, column) for n in range(row + 1, view.height)]
            heads = [at for at in (*across, *down) if at is not None]
            if len(heads) < len(across) + len(down) or _merged(heads):
                continue
            looks = _looks(heads)
            if any((one.heads and not _of_cups(one)) or one.sentence for one in looks):
                continue
            if min(len(across), len(down)) < 2:
                return None
            return _axes_at(view, row, column)
    return None


def _of_cups(one: Look) -> bool:
    """A letter that could head a column is a cup here, and so is one with the word for it."""
    cup = cup_in(one.text)
    return cup is not None and not cup.rest


def _merged(heads: Sequence[At]) -> bool:
    return any(at.cell.shared_from is not None for at in heads)


def _axes_at(view: View, row: int, column: int) -> Axes:
    rows, columns = range(row + 1, view.height), range(column + 1, view.width)
    inner = {
        (r, c): at
        for r in rows
        for c in columns
        if (at := view.at(r, c)) is not None and not look(at.text).blank
    }
    across = tuple(at for c in columns if (at := view.at(row, c)) is not None)
    down = tuple(at for r in rows if (at := view.at(r, column)) is not None)
    return Axes(view, row, column, across, down, inner)


def _looks(cells: Sequence[At]) -> list[Look]:
    return [look(at.text) for at in cells]


def _nameless(looks: Sequence[Look]) -> bool:
    """Nothing on an axis names a column; single letters that could are cups there."""
    return _letters(looks) or not any(one.heads for one in looks)


def _named_one_by_one(axes: Axes) -> bool:
    """Whether every column has a measure of its own above it: a plain table, seen too low."""
    view = axes.view
    for turned, first, last in (
        (view, axes.head_row, axes.head_column),
        (view.turn(), axes.head_column, axes.head_row),
    ):
        above = (turned.at(r, c) for r in range(first) for c in range(last + 1, turned.width))
        names = {look(at.text).text for at in above if at is not None and look(at.text).measures}
        if len(names) > 1:
            return True
    return False


def _bands(looks: Sequence[Look]) -> bool:
    return all(one.value and not one.wordy_label for one in looks)


def _labels(looks: Sequence[Look]) -> bool:
    return all(one.label is not None for one in looks)


def _letters(looks: Sequence[Look]) -> bool:
    """Cup letters: A, B, C, DD or A/B, C/D."""
    return are_cups([one.text for one in looks])


def _lengths(looks: Sequence[Look]) -> bool:
    return all(one.length is not None for one in looks) and any(len(one.text) > 2 for one in looks)


def _named(inner: Sequence[Look]) -> bool:
    """The inner cells are sizes that can be no figures, or cup letters."""
    named = sum(one.sure_label or one.wordy_label for one in inner)
    return named > 0.9 * len(inner) or _letters(inner)


def _coded(inner: Sequence[Look]) -> bool:
    """Codes of the maker's own, P1 to P9, each of them for one place of the grid."""
    codes = {one.text for one in inner}
    measured = any(one.value for one in inner)  # 37cm is no code
    return not measured and len(codes) == len(inner) and all(map(_CODE.fullmatch, codes))


def _share(looks: Sequence[Look], *, wordy: bool) -> float:
    hits = sum(one.wordy_label if wordy else one.value and not one.wordy_label for one in looks)
    return hits / len(looks)


def _sizes_inside(axes: Axes, *, cups: bool = False) -> Frame:
    """Bands down and across, the size in the cell: one line per size, one field per axis.

    ``cups`` run across and measure nothing: 75B inside says its own.
    """
    places: dict[str, list[tuple[int, int]]] = {}
    for place, at in axes.inner.items():
        places.setdefault(look(at.text).text.upper(), []).append(place)
    firsts = tuple((axes.inner[cells[0]],) for cells in places.values())
    down, across = axis_headings(axes.view, axes.head_row, axes.head_column)
    rows = [_band_cells(axes, {row for row, _ in cells}, down=True) for cells in places.values()]
    columns = [_band_cells(axes, {c for _, c in cells}, down=False) for cells in places.values()]
    fields: tuple[Field, ...] = (
        Field(FieldKind.LABEL, (), _NO_HEADING, firsts),
        Field(FieldKind.VALUES, down[0], down[1], tuple(rows)),
    )
    if not cups:
        fields += (Field(FieldKind.VALUES, across[0], across[1], tuple(columns)),)
    uneven = {n for n, cells in enumerate(places.values()) if not _rectangle(cells)}
    lines = len(places)
    return Frame(axes.view, axes.head_row + 1, fields, 12.0, lines, frozenset(uneven), gridded=True)


def _band_cells(axes: Axes, numbers: set[int], *, down: bool) -> tuple[At, ...]:
    head = (axes.head_row, axes.head_column)
    found = []
    for number in sorted(numbers):
        at = axes.view.at(number, head[1]) if down else axes.view.at(head[0], number)
        if at is not None:
            found.append(at)
    return tuple(found)


def _rectangle(cells: Sequence[tuple[int, int]]) -> bool:
    rows, columns = {row for row, _ in cells}, {column for _, column in cells}
    full = len(cells) == len(rows) * len(columns)
    return full and all(max(part) - min(part) < len(part) for part in (rows, columns))


def _by_length(axes: Axes) -> Frame | None:
    """Sizes down, lengths across: one line per pair, one field; None for a plain table."""
    if _more_columns(axes):
        return None
    pairs = _pairs(axes)
    labels = tuple((down,) for down, _, _ in pairs)
    lengths = tuple((across,) for _, across, _ in pairs)
    fields = (
        Field(FieldKind.LABEL, (), _NO_HEADING, labels),
        Field(FieldKind.LENGTH, (), _NO_HEADING, lengths),
        _values(axes, pairs),
    )
    return Frame(axes.view, axes.head_row + 1, fields, 12.0, len(pairs), gridded=True)


def _by_parts(axes: Axes) -> Frame | None:
    """Two parts of a label, such as 75 and B: one line per pair, named by both.

    None where the letters refer to a drawing: the figures fall from one cup to the next or leap,
    or bare letters stand over S, M and L.
    """
    pairs = _pairs(axes)
    steps = [(a[2], b[2]) for a, b in pairwise(pairs) if a[0].origin == b[0].origin]
    if _more_columns(axes) or not growing(steps) or leaping(steps):
        return None
    bare = all(len(at.text.strip()) == 1 for at in axes.across)
    if bare and all(one.wordy_label for one in _looks(axes.down)):
        return None
    labels = tuple((_joined(down, across),) for down, across, _ in pairs)
    fields = (Field(FieldKind.LABEL, (), _NO_HEADING, labels), *_cup_values(axes, pairs))
    return Frame(axes.view, axes.head_row + 1, fields, 12.0, len(pairs), gridded=True)


def _more_columns(axes: Axes) -> bool:
    """Whether columns of their own stand before the sizes: a plain table, seen too far in."""
    view = axes.view
    return any(
        len({at.origin for at in list(view.column(column))[axes.head_row + 1 :] if at}) > 1
        for column in range(axes.head_column)
    )


def _pairs(axes: Axes) -> list[tuple[At, At, At]]:
    found = []
    for (row, column), at in sorted(axes.inner.items()):
        down = axes.view.at(row, axes.head_column)
        across = axes.view.at(axes.head_row, column)
        if down is not None and across is not None:
            found.append((down, across, at))
    return found


def _joined(down: At, across: At) -> At:
    cup = cup_in(across.text)
    return with_cup(down, cup.letters if cup is not None else across.text.strip())


def _cup_values(axes: Axes, pairs: Sequence[tuple[At, At, At]]) -> tuple[Field, ...]:
    """The girths inside, and the girth under the bust where the numbers down the side give it."""
    down, across = axis_headings(axes.view, axes.head_row, axes.head_column)
    at_side = [_under_bust(at) for at, _, _ in pairs]
    at_side = at_side if down[1].dimension is Dimension.UNDERBUST else []
    under = tuple((at,) for at in at_side if at is not None)
    heads, heading = across if across[1].dimension is not None else down
    if heading.dimension in {None, Dimension.UNDERBUST} and across[1].dimension is None:
        # The corner names the numbers down the side; the girth inside is as often the bust.
        heading = bust_heading(heading, under=len(under) == len(pairs))
    girths = Field(FieldKind.VALUES, heads, heading, tuple((at,) for _, _, at in pairs))
    return (
        (Field(FieldKind.VALUES, *down, under), girths) if len(under) == len(pairs) else (girths,)
    )


def _under_bust(size: At) -> At | None:
    """``70 (68-72)`` or ``68-72`` at the side of a grid: the girth that the number stands for."""
    bracket = _BRACKETED.search(size.text)
    text = bracket[1] if bracket else size.text
    quantity = look(text).reading.quantity
    if quantity is None or quantity.kind is not Kind.RANGE:
        return None
    return replace(size, cell=replace(size.cell, text=text))


def _values(axes: Axes, pairs: Sequence[tuple[At, At, At]]) -> Field:
    down, across = axis_headings(axes.view, axes.head_row, axes.head_column)
    heads, heading = down if down[1].dimension is not None else across
    if names_the_side(down[1].dimension, pairs):
        heads, heading = across if across[1].dimension not in GIRTHS else ((), _NO_HEADING)
    return Field(FieldKind.VALUES, heads, heading, tuple((at,) for _, _, at in pairs))
