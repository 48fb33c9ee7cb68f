"""Columns that only name people, each in front of the sizes of theirs: bands of a turned table.

``Size | Women | 36 | 38 | Men | 48 | 50`` over ``Chest | | 84-88 | 88-92 | | 94-98 | 98-102``: what
is a row of its own where sizes stand below each other. What stands in front of the first band is
for all, unless a band brings names of its own. A band may have several tables side by side.
"""

from __future__ import annotations

from dataclasses import dataclass
from itertools import groupby
from typing import Final

from charts.dimensions import read_band
from charts.layout.forms import framed
from charts.layout.looks import look
from charts.layout.side_by_side import parted
from charts.layout.view import At, View

_NARROWEST: Final = 4


@dataclass(frozen=True, slots=True)
class BandPart:
    """What is said of a band in columns that hold nothing else, and the columns of its table."""

    names: tuple[At, ...]
    view: View


def parts_of_bands(view: View) -> list[BandPart]:
    """The tables of a run whose bands stand in columns of their own; none where it has no such."""
    if view.turned or view.height < 2 or view.width < _NARROWEST:
        return []
    if sum(at is not None and _names_people(at) for at in view.row(0)) < 2:
        return []
    groups = [
        (lone, list(columns))
        for lone, columns in groupby(range(view.width), lambda column: _is_lone(view, column))
    ]
    front = [] if groups[0][0] else groups.pop(0)[1]
    if len(groups) < 4 or len(groups) % 2:
        return []
    parts = [
        _part(view, front, names, own)
        for (_, names), (_, own) in zip(groups[::2], groups[1::2], strict=True)
    ]
    parts = [one for part in parts for one in (_beside_each_other(part) if not front else [part])]
    told = all(any(map(_names_people, part.names)) for part in parts)
    return parts if told and all(framed(part.view).complete for part in parts) else []


def _beside_each_other(part: BandPart) -> list[BandPart]:
    return [BandPart(part.names, view) for view in parted(part.view)]


def _is_lone(view: View, column: int) -> bool:
    """Whether a column holds a text that is no size and no measure, and below it nothing else."""
    first = view.at(0, column)
    if first is None or not (_names_people(first) or look(first.text).sentence):
        return False
    below = (view.at(row, column) for row in range(1, view.height))
    return all(at is None or at.origin == first.origin for at in below)


def _names_people(at: At) -> bool:
    """``Women``, ``Women's wetsuits``; not ``Women M`` and no ``Women's chest``."""
    one = look(at.text)
    size = one.label is not None and not one.bare_band
    return not (one.value or one.measures or one.sentence or size) and bool(read_band(at.text))


def _part(view: View, front: list[int], names: list[int], own: list[int]) -> BandPart:
    named = any(at is not None and look(at.text).measures for at in list(view.column(own[0]))[1:])
    columns = tuple(view.columns[column] for column in (own if named else [*front, *own]))
    said = tuple(at for column in names if (at := view.at(0, column)) is not None)
    return BandPart(said, View(view.sheet, view.rows, columns))
