"""Grids: two axes of bands with the size in the cell, or two parts of a label with the range there.

Height across and weight down with S, M, L inside; cup letters across and numbers down with the
girth inside; lengths across and sizes down with the back length inside.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass, replace
from typing import Final

from charts.dimensions import HeadingReading, Role
from charts.layout.axis_names import axis_headings, without_names
from charts.layout.fields import Field, FieldKind
from charts.layout.frames import Frame
from charts.layout.looks import Look, look
from charts.layout.view import At, View
from charts.schema import Dimension

_MOST_HEADS: Final = 3
_CUP_WORDS: Final = re.compile(
    r"\b(?:cup|körbchen|bonnet|copa|coppa|kupa|kupstorlek)s?\b", re.IGNORECASE
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
    if _bands(across) and _bands(down) and _named(inner):
        return _sizes_inside(axes)
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
            if any((one.heads and len(_cup(one.text)) > 1) or one.sentence for one in looks):
                continue
            if min(len(across), len(down)) < 2:
                return None
            return _axes_at(view, row, column)
    return None


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
    """Cup letters: single letters or doubled ones that are no sizes of the S, M, L kind."""
    texts = [_cup(one.text) for one in looks]
    return texts[0][:1] in {"A", "B"} and all(
        text.isalpha() and len(set(text)) == 1 and len(text) <= 3 for text in texts
    )


def _cup(text: str) -> str:
    """The letters of a cup, without the word for it."""
    return _CUP_WORDS.sub("", text).strip(" -.").upper()


def _lengths(looks: Sequence[Look]) -> bool:
    return all(one.length is not None for one in looks) and any(len(one.text) > 2 for one in looks)


def _named(inner: Sequence[Look]) -> bool:
    """The inner cells are sizes that can be no figures, or cup letters."""
    named = sum(one.sure_label or one.wordy_label for one in inner)
    return named > 0.9 * len(inner) or _letters(inner)


def _share(looks: Sequence[Look], *, wordy: bool) -> float:
    hits = sum(one.wordy_label if wordy else one.value and not one.wordy_label for one in looks)
    return hits / len(looks)


def _sizes_inside(axes: Axes) -> Frame:
    """Bands down and across, the size in the cell: one line per size, one field per axis."""
    places: dict[str, list[tuple[int, int]]] = {}
    for place, at in axes.inner.items():
        places.setdefault(look(at.text).text.upper(), []).append(place)
    firsts = tuple((axes.inner[cells[0]],) for cells in places.values())
    down, across = axis_headings(axes.view, axes.head_row, axes.head_column)
    rows = [_band_cells(axes, {row for row, _ in cells}, down=True) for cells in places.values()]
    columns = [_band_cells(axes, {c for _, c in cells}, down=False) for cells in places.values()]
    fields = (
        Field(FieldKind.LABEL, (), _NO_HEADING, firsts),
        Field(FieldKind.VALUES, down[0], down[1], tuple(rows)),
        Field(FieldKind.VALUES, across[0], across[1], tuple(columns)),
    )
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


def _by_length(axes: Axes) -> Frame:
    """Sizes down, lengths across: one line per pair, one field."""
    pairs = _pairs(axes)
    labels = tuple((down,) for down, _, _ in pairs)
    lengths = tuple((across,) for _, across, _ in pairs)
    fields = (
        Field(FieldKind.LABEL, (), _NO_HEADING, labels),
        Field(FieldKind.LENGTH, (), _NO_HEADING, lengths),
        _values(axes, pairs),
    )
    return Frame(axes.view, axes.head_row + 1, fields, 12.0, len(pairs), gridded=True)


def _by_parts(axes: Axes) -> Frame:
    """Two parts of a label, such as 75 and B: one line per pair, named by both."""
    pairs = _pairs(axes)
    labels = tuple((_joined(down, across),) for down, across, _ in pairs)
    fields = (Field(FieldKind.LABEL, (), _NO_HEADING, labels), _values(axes, pairs))
    return Frame(axes.view, axes.head_row + 1, fields, 12.0, len(pairs), gridded=True)


def _pairs(axes: Axes) -> list[tuple[At, At, At]]:
    found = []
    for (row, column), at in sorted(axes.inner.items()):
        down = axes.view.at(row, axes.head_column)
        across = axes.view.at(axes.head_row, column)
        if down is not None and across is not None:
            found.append((down, across, at))
    return found


def _joined(down: At, across: At) -> At:
    return replace(down, cell=replace(down.cell, text=down.text.strip() + _cup(across.text)))


def _values(axes: Axes, pairs: Sequence[tuple[At, At, At]]) -> Field:
    down, across = axis_headings(axes.view, axes.head_row, axes.head_column)
    heads, heading = down if down[1].dimension is not None else across
    if heading.dimension is Dimension.UNDERBUST:
        # The corner names the numbers down the side; the girth inside is as often the bust.
        both = ((Role.MEASURE, Dimension.CHEST), (Role.MEASURE, Dimension.UNDERBUST))
        heading = replace(heading, dimension=Dimension.CHEST, candidates=both)
    return Field(FieldKind.VALUES, heads, heading, tuple((at,) for _, _, at in pairs))
