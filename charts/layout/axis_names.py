r"""The names of the two axes of a grid: above, beside, or in the corner (Chest \ Height)."""

from __future__ import annotations

import re
from collections.abc import Iterable, Sequence
from dataclasses import replace
from typing import Final

from charts.dimensions import HeadingReading, Role
from charts.layout.heads import combined
from charts.layout.looks import look
from charts.layout.named_value import named_value
from charts.layout.view import At, View
from charts.sheet import Cell
from charts.size_labels import read_length

_LENGTH_AND_BAND: Final = re.compile(
    r"(?P<word>[^\W\d_]{3,})\s*[:=]?\s*[(\[]?(?P<band>[\d<>~≤≥][^()\[\]]*)[)\]]?"
)
Named = tuple[tuple[At, ...], HeadingReading]
_SPLIT: Final = re.compile(r"\s*(?:\\|/|\||\n|→|↓|×| x | vs\.? )\s*")
_NOTHING: Final = HeadingReading(Role.UNKNOWN)


def axis_headings(view: View, row: int, column: int) -> tuple[Named, Named]:
    """The headings of the axis that runs down and of the one that runs across."""
    above = _distinct(view.at(r, c) for r in range(row) for c in range(column + 1, view.width))
    beside = _distinct(view.at(r, c) for c in range(column) for r in range(row + 1, view.height))
    corner = _distinct(view.at(r, c) for r in range(row + 1) for c in range(column + 1))
    down, across = _from_corner(corner)
    return (
        _named(beside) or down or _NONE,
        _named(above) or across or _NONE,
    )


def without_names(view: View) -> View:
    """The view with ``Weight 40-50 kg`` over each column as a name above and the figures below.

    Only where every head of the first row, or of the first column, names the same measure.
    """
    for turned in (view, view.turn()):
        heads = [turned.at(0, column) for column in range(1, turned.width)]
        items = [named_value(at.text) if at is not None else None for at in heads]
        names = {item[0] for item in items if item is not None}
        if len(names) == 1 and all(items) and len(items) > 1 and names != {""}:
            return _renamed(turned, heads, items)
        bands = [_band_of_length(at.text) if at is not None else None for at in heads]
        if len(bands) > 1 and all(bands):
            return _renamed(turned, heads, [("", band) for band in bands if band])
    return view


def _band_of_length(text: str) -> str | None:
    """``Short 155-165``, ``Tall (175-185 cm)``: the heights that a word for a length stands for."""
    match = _LENGTH_AND_BAND.fullmatch(text.strip())
    if match is None or read_length(match["word"]) is None:
        return None
    return match["band"] if look(match["band"]).value else None


def _renamed(
    view: View, heads: Sequence[At | None], items: Sequence[tuple[str, str] | None]
) -> View:
    cells = dict(view.sheet.cells)
    for at, item in zip(heads, items, strict=True):
        if at is not None and item is not None:
            cells[at.row, at.column] = replace(at.cell, text=item[1])
    corner = view.at(0, 0)
    name = next(item[0] for item in items if item is not None)
    if not name:
        found = View(replace(view.sheet, cells=cells), view.rows, view.columns, view.turned)
        return found.turn() if view.turned else found
    place = (view.rows[0], view.columns[0])
    text = f"{corner.text} \\ {name}" if corner is not None else name
    cells[place] = replace(cells.get(place) or Cell(""), text=text)
    found = View(replace(view.sheet, cells=cells), view.rows, view.columns, view.turned)
    return found.turn() if view.turned else found


_NONE: Final[Named] = ((), _NOTHING)


def _distinct(cells: Iterable[At | None]) -> tuple[At, ...]:
    found: dict[tuple[int, int], At] = {}
    for at in cells:
        if at is not None and not look(at.text).blank:
            found.setdefault(at.origin, at)
    return tuple(found.values())


def _named(heads: Sequence[At]) -> Named | None:
    named = tuple(at for at in heads if look(at.text).heading.role is not Role.UNKNOWN)
    return (named, combined(named)) if named else None


def _from_corner(corner: Sequence[At]) -> tuple[Named | None, Named | None]:
    """One text in the corner names the axis that runs down, two name both."""
    measures = [at for at in corner if look(at.text).measures]
    if len(measures) > 1:
        return _named(measures[:1]), _named(measures[1:])
    for at in corner:
        parts = [part for part in _SPLIT.split(at.text) if part]
        readings = [look(part).heading for part in parts]
        if len(parts) == 2 and all(one.role in {Role.MEASURE, Role.UNIT} for one in readings):
            return ((at,), readings[0]), ((at,), readings[1])
    return _named(corner), None
