"""Words of a heading line shared out over the columns below it: the way that fits them best.

Every part of the line is weighed by what it says and by what its column holds. Where another way
weighs about as much and puts a measure over other figures, none is taken.
"""

from __future__ import annotations

import heapq
import re
from collections.abc import Collection, Sequence
from dataclasses import dataclass
from functools import lru_cache
from itertools import pairwise
from typing import Final

from charts.dimensions import HeadingReading, Role, read_heading
from charts.plausible_ranges import plausible
from charts.quantities import Unit
from charts.readers.captured.heads import (
    begins_with_sizes,
    follows_unit,
    holds_sizes_first,
    holds_two_measures,
    holds_two_units,
    may_begin,
    must_begin,
)
from charts.readers.captured.shared_out.columns import Column, family
from charts.readers.captured.shared_out.tokens import Kind
from charts.schema import Dimension

_WORD: Final = re.compile(r"\S+(?:\s*\([^)]*\)[^\s\w]*)?")
_MOST_WORDS: Final = 40
_MOST_IN_PART: Final = 8
_KEPT: Final = 6
"""So many ways are kept to each place: the best and those that could contradict it."""
_CLOSE: Final = 1.5
"""Ways whose weights lie no further apart are equally good (tried on real headings)."""
_NO: Final = -1000.0
"""What cannot be at all."""
_MEASURES: Final = (Role.MEASURE, Role.LOW_END, Role.HIGH_END)
_ASIDE: Final = (Role.OTHER, Role.IDENTITY, Role.NOTE, Role.STEP, Role.TOLERANCE, Role.UNIT)
_LONGER: Final = 2.5
"""Each word behind one for sizes may as well begin the next heading."""
_ALIKE: Final = 2.0
_INNER: Final = frozenset({"to", "of", "at", "from", "de", "du", "der", "del", "van", "di", "da"})
_UNITS: Final = (Unit.CM, Unit.IN, Unit.KG, Unit.LB, Unit.MM, Unit.M)


@dataclass(frozen=True, slots=True)
class Heads:
    """The headings over the sizes and every column; ``sure`` where nothing else comes near."""

    texts: tuple[str, ...]
    sure: bool


def shared_heads(text: str, columns: Sequence[Column]) -> Heads | None:
    """The headings of sizes and ``columns`` in ``text``; None where none or two ways fit."""
    words = _WORD.findall(text)
    if not len(columns) <= len(words) <= _MOST_WORDS:
        return None
    ways = _ways(words, columns)
    if not ways or ways[0][0] <= 0:
        return None
    best = ways[0][1]
    if not best[0] and read_heading(best[1]).role is Role.LABEL:
        return None  # the word for the sizes stands over figures
    near = [way for weight, way in ways[1:] if weight >= ways[0][0] - _CLOSE]
    said = _said(best, columns)
    if not any(said) or any(_said(way, columns) != said for way in near):
        return None
    known = all(_is_known(head, one) for head, one in zip(best[1:], columns, strict=True))
    return Heads(best, known and not any(map(holds_two_measures, best[1:])))


def _ways(words: Sequence[str], columns: Sequence[Column]) -> list[tuple[float, tuple[str, ...]]]:
    """The best ways to part the words, each with its weight, the heaviest first."""
    count = len(words)
    may = [may_begin(words, at) or at == 0 or follows_unit(words, at) for at in range(count)]
    may.append(True)
    must = [must_begin(words, at) for at in range(count)]
    cased = any(word[0].isupper() for word in words[1:]) and any(
        word[0].islower() for word in words
    )
    begun: dict[int, list[tuple[float, tuple[str, ...]]]] = {0: [(0.0, ("",))]}
    for end in range(1, min(_MOST_IN_PART, count - 1) + 1):
        if may[end] and not any(must[1:end]):
            head = " ".join(words[:end])
            begun[end] = [(_name_weight(head), (head,))]
    for column in columns:
        reached: dict[int, list[tuple[float, tuple[str, ...]]]] = {}
        for start, ways in begun.items():
            for end in range(start + 1, min(start + _MOST_IN_PART, count) + 1):
                if any(must[start + 1 : end]):
                    break
                if may[end]:
                    head = " ".join(words[start:end])
                    weight = _weight(head, column) - _case_cost(words[start:end], cased=cased)
                    found = reached.setdefault(end, [])
                    found += [(was + weight, (*way, head)) for was, way in ways]
        begun = {end: heapq.nlargest(_KEPT, ways) for end, ways in reached.items()}
    twice = {word for word in words if words.count(word) > 1 and word[0].isalpha()}
    ended = begun.get(count, [])
    return sorted(((was + _alike(way, twice), way) for was, way in ended), reverse=True)


def _alike(way: Sequence[str], twice: Collection[str]) -> float:
    """What speaks for a way in which words that come twice stand in headings alike."""
    if not twice:
        return 0.0
    places: dict[str, set[tuple[int, int]]] = {word: set() for word in twice}
    for head in way:
        words = head.split()
        for at, word in enumerate(words):
            if word in places:
                places[word].add((at, len(words)))
    return _ALIKE * sum(len(one) == 1 for one in places.values())


def _case_cost(words: Sequence[str], *, cased: bool) -> float:
    """What speaks against a heading that begins small, or has a capital behind a small word."""
    if not cased:
        return 0.0
    inner = sum(
        left[0].islower() and left.lower() not in _INNER and right[0].isupper()
        for left, right in pairwise(words)
    )
    return (1.5 if words[0][0].islower() else 0.0) + 0.5 * inner


@lru_cache(maxsize=4096)
def _name_weight(head: str) -> float:
    heading = read_heading(head)
    words = head.count(" ")
    if holds_sizes_first(head):
        return _NO
    if heading.role is Role.LABEL or (Role.LABEL, None) in heading.candidates:
        return (8.5 if heading.rest else 10.0) - (_LONGER if begins_with_sizes(head) else 0) * words
    if heading.role is Role.MEASURE:
        named = heading.dimension in (Dimension.AGE, Dimension.HEIGHT) and not heading.candidates
        return 6.0 if named else _NO
    return 3.0 - words


def _weight(head: str, column: Column) -> float:
    """How well a heading stands over a column, less a little for its length."""
    heading = read_heading(head)
    length = 0.05 * head.count(" ") ** 2
    first = head.split(maxsplit=1)[0].lower()
    return _fit(heading, head, column) - length - (3.0 if first in _INNER else 0.0)


def _fit(heading: HeadingReading, head: str, column: Column) -> float:
    words = head.count(" ")
    if holds_two_units(head):
        return -6.0
    if heading.role in _MEASURES and heading.dimension is not None:
        return _measure_fit(heading, head, column)
    if heading.role is Role.LABEL:
        if column.unit is not None:
            return _NO
        return 9.0 if column.sizes or column.kind is Kind.WORDS else -6.0
    if heading.role in _ASIDE:
        return -6.0 if column.kind is Kind.VALUE and column.unit is not None else 7.0
    if column.kind is Kind.WORDS and column.sizes:
        return 6.0 - 0.5 * words
    return (2.0 if column.kind is Kind.VALUE else 4.0) - 0.5 * words


def _measure_fit(heading: HeadingReading, head: str, column: Column) -> float:
    aged = heading.dimension is Dimension.AGE
    if column.kind is Kind.AGE:
        return 10.0 if aged else _NO
    if column.kind is Kind.WORDS:
        return -4.0
    if column.kind is not Kind.VALUE or holds_two_measures(head) or holds_sizes_first(head):
        return _NO
    if aged or heading.dimension is None:
        small = max(column.numbers, default=0.0) < 20
        return (9.0 if small and column.unit is None else _NO) if aged else 5.0
    if not _can_be(heading, column):
        return _NO
    return 8.0 if heading.candidates or heading.rest else 10.0


def _can_be(heading: HeadingReading, column: Column) -> bool:
    """Whether figures of this size, with the unit they or the heading print, are such a measure."""
    dimension = heading.dimension
    if dimension is None or dimension is Dimension.OTHER or not column.numbers:
        return True
    families = {family(unit) for unit in (column.unit, heading.unit) if unit is not None}
    if len(families) > 1:
        return False
    printed = column.unit or heading.unit
    units = [printed] if printed is not None and heading.second_unit is None else _UNITS
    limits = [one for unit in units if (one := plausible(dimension, unit)) is not None]
    middle = sorted(column.numbers)[len(column.numbers) // 2]
    if not limits:
        return printed is None or not any(plausible(dimension, unit) for unit in _UNITS)
    return any(float(low) / 2.2 <= middle <= float(high) * 1.1 for low, high in limits)


def _said(way: Sequence[str], columns: Sequence[Column]) -> list[object]:
    """What a way says of each column of figures, None for nothing."""
    found: list[object] = []
    for head, column in zip(way[1:], columns, strict=True):
        heading = read_heading(head)
        measured = heading.role in _MEASURES and column.kind is Kind.VALUE
        meant = (
            heading.role,
            heading.dimension,
            heading.definition,
            heading.basis,
            heading.unit,
            heading.band,
        )
        found.append(meant if measured else None)
    return found


def _is_known(head: str, column: Column) -> bool:
    role = read_heading(head).role
    return column.kind is not Kind.VALUE or role in (*_MEASURES, Role.LABEL, *_ASIDE)
