"""The sizes of one model in one dimension as intervals on the body, ready to be drawn.

A run holds sizes that are measured alike and may stand on one axis. Ends are as the maker prints
them; a single value reaches half a step to its neighbours and is marked derived. What cannot be
drawn is said instead: nothing is left out in silence. All in cm.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Iterable, Iterator, Sequence
from dataclasses import dataclass
from enum import StrEnum
from typing import Final

from charts.in_house import InHouseRow
from charts.schema import Basis, Definition, Dimension, Kind, Range
from harmonizer.borders import Reach, reaches
from harmonizer.settings import Settings

OFF_THE_BODY: Final = frozenset({Basis.FINISHED, Basis.FLAT})
"""Whose figures are never drawn on the body's axis."""


@dataclass(frozen=True, slots=True)
class Span:
    """One size from ``low_cm`` to ``high_cm``; None is an open end.

    ``derived``: the ends come from a single value. ``questioned``: a question about it is open.
    """

    label: str
    low_cm: float | None
    high_cm: float | None
    derived: bool = False
    questioned: bool = False


@dataclass(frozen=True, slots=True)
class Run:
    """Sizes measured alike, in their order.

    ``otherwise``: measured between other points than the shop measures. ``length`` is the maker's
    word for one length option where each has ranges of its own.
    """

    spans: tuple[Span, ...]
    definition: Definition = Definition.UNKNOWN
    otherwise: bool = False
    length: str | None = None


class Untold(StrEnum):
    """Why something is not on the axis."""

    NOT_GIVEN = "not-given"
    UNREAD = "unread"
    ALONE = "alone"
    FINISHED = "finished"
    FLAT = "flat"


@dataclass(frozen=True, slots=True)
class Remark:
    """What is not drawn, and of which sizes; no sizes means all of them."""

    why: Untold
    sizes: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class WallCell:
    """All that one model says in one dimension."""

    runs: tuple[Run, ...]
    remarks: tuple[Remark, ...]


@dataclass(frozen=True, slots=True)
class _Said:
    """One row's range, or None where the row has none."""

    row: InHouseRow
    size: str
    value: Range | None


def wall_cell(rows: Sequence[InHouseRow], dimension: Dimension, settings: Settings) -> WallCell:
    """What ``rows``, which are one model, say in ``dimension``."""
    said = list(_all_said(rows, dimension))
    usual = settings.default_definition(dimension)
    drawn: dict[Definition, list[_Said]] = {}
    for each in said:
        if each.value is not None and not _why_not_drawn(each.value):
            drawn.setdefault(each.value.definition, []).append(each)
    runs, alone = [], []
    for definition, group in drawn.items():
        otherwise = definition not in (Definition.UNKNOWN, usual)
        for length, part in _by_length(group):
            spans, left = _spans(part, by_length=length is _ALL_SIZES)
            alone += left
            if spans:
                word = None if length is _ALL_SIZES else length
                runs.append(Run(spans, definition, otherwise, word))
    return WallCell(tuple(runs), tuple(_remarks(said, alone)))


_ALL_SIZES: Final = ""
"""Stands for the length where every size has the same lengths: the lengths are the labels then."""


def _all_said(rows: Sequence[InHouseRow], dimension: Dimension) -> Iterator[_Said]:
    for row in rows:
        size = row.size or row.length or ""
        values = row.measures.get(dimension, ())
        if not values:
            yield _Said(row, size, None)
        for value in values:
            yield _Said(row, size, value)


def _why_not_drawn(value: Range) -> Untold | None:
    if value.basis in OFF_THE_BODY:
        return Untold(value.basis.value)
    return Untold.UNREAD if value.kind is Kind.UNREAD else None


def _by_length(group: Sequence[_Said]) -> Iterator[tuple[str | None, Sequence[_Said]]]:
    """Parts of ``group`` that share an axis row: all sizes, or the sizes of one length each."""
    lengths = list(dict.fromkeys(each.row.length for each in group))
    sizes = list(dict.fromkeys(each.size for each in group))
    if len(lengths) < 2 or _same_within(group, lambda each: each.size):
        yield None, group
    elif len(sizes) > 1 and _same_within(group, lambda each: each.row.length):
        yield _ALL_SIZES, group
    else:
        for length in lengths:
            yield length, [each for each in group if each.row.length == length]


def _same_within(group: Iterable[_Said], key: Callable[[_Said], str | None]) -> bool:
    """Whether everything that shares a key has the same range."""
    found: dict[str | None, tuple[object, ...]] = {}
    for each in group:
        ends = _printed_ends(each.value)
        if found.setdefault(key(each), ends) != ends:
            return False
    return True


def _printed_ends(value: Range | None) -> tuple[object, ...]:
    return (value.low, value.high, value.value) if value is not None else ()


def _spans(part: Sequence[_Said], *, by_length: bool) -> tuple[tuple[Span, ...], list[str]]:
    """The spans of one run, and the labels of single values that stand alone."""
    values = [each.value for each in part if each.value is not None]
    spans: dict[tuple[str, float, float], Span] = {}
    alone = []
    for each, reach in zip(part, reaches(values), strict=True):
        label = (each.row.length or "") if by_length else each.size
        if reach is None:
            alone.append(label)
            continue
        key = (label, reach.low, reach.high)
        span = _span(label, reach, questioned=_questioned(each))
        before = spans.get(key)
        if before is None or (span.questioned and not before.questioned):
            spans[key] = span
    return tuple(spans.values()), alone


def _span(label: str, reach: Reach, *, questioned: bool) -> Span:
    low = reach.low if math.isfinite(reach.low) else None
    high = reach.high if math.isfinite(reach.high) else None
    return Span(label, low, high, reach.derived, questioned)


def _questioned(said: _Said) -> bool:
    """Whether a question bears on this value, or on the whole row and on none of its values."""
    row = said.row
    own = said.value.findings if said.value is not None else ()
    borne = {
        each for values in row.measures.values() for value in values for each in value.findings
    }
    return not row.open_questions.isdisjoint(own) or bool(row.open_questions - borne)


def _remarks(said: Sequence[_Said], alone: Sequence[str]) -> Iterator[Remark]:
    every = {each.size for each in said}
    left: dict[Untold, dict[str, None]] = {}
    for each in said:
        why = Untold.NOT_GIVEN if each.value is None else _why_not_drawn(each.value)
        if why is not None:
            left.setdefault(why, {})[each.size] = None
    left.setdefault(Untold.ALONE, {}).update(dict.fromkeys(alone))
    for why, sizes in left.items():
        if sizes:
            yield Remark(why, () if set(sizes) >= every else tuple(sizes))
