"""Every way to part a line whose cells ran together, so that each part can be what its place holds.

``10 mois79-8287`` is ``10 mois``, ``79-82``, ``87`` where a height and a weight are due.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from functools import lru_cache
from typing import Final, NamedTuple

from charts.dimensions import HeadingReading
from charts.plausible_ranges import plausible
from charts.quantities import Unit
from charts.readers.captured.arranging.spans import JOINT, UNIT, span_of
from charts.readers.captured.value_runs import is_size
from charts.schema import Dimension

_LONGEST_CELL: Final = 20
_LONGEST_LABEL: Final = 20
_MOST: Final = 400
_NUMBER: Final = r"(?:0|[1-9]\d{0,2})(?:[.,](?:\d|25|75))?(?:\s?[½¼¾])?"
_CELL: Final = re.compile(
    rf"{_NUMBER}(?:\s?{UNIT})?(?:{JOINT}{_NUMBER}(?:\s?{UNIT})?)?", re.IGNORECASE
)
_BEGINS: Final = re.compile(r"\s*(?=\d)")
_UNITS: Final = (Unit.CM, Unit.IN, Unit.KG, Unit.LB)


class Parted(NamedTuple):
    """One way to part a line: its label or name, and its cells."""

    label: str
    cells: tuple[str, ...]


def rows_parted(text: str, headings: Sequence[HeadingReading]) -> list[Parted]:
    """Every way to part ``text`` into a size and a figure for each heading; none for too many."""
    found: list[Parted] = []
    for end in range(1, min(len(text), _LONGEST_LABEL)):
        label = text[:end].strip()
        if _BEGINS.match(text, end) and text[end - 1 : end + 1].strip() and is_size(label):
            found += [Parted(label, cells) for cells in parted(text[end:].strip(), tuple(headings))]
    return found if len(found) <= _MOST else []


@lru_cache(maxsize=2048)
def parted(text: str, headings: tuple[HeadingReading, ...]) -> tuple[tuple[str, ...], ...]:
    """Every way to part ``text`` into figures that their headings can have."""
    found: list[tuple[str, ...]] = []
    for cells in _parted(text, headings):
        found.append(cells)
        if len(found) > _MOST:
            return ()
    return tuple(found)


def _parted(text: str, headings: tuple[HeadingReading, ...]) -> Iterator[tuple[str, ...]]:
    if not headings:
        yield ()
        return
    for cell, rest in _first_cells(text, headings):
        for others in _parted(rest, headings[1:]):
            yield (cell, *others)


@lru_cache(maxsize=8192)
def _first_cells(text: str, headings: tuple[HeadingReading, ...]) -> tuple[tuple[str, str], ...]:
    """The first cells behind which all others can follow, each with the rest of the text."""
    found: list[tuple[str, str]] = []
    for end in range(1, min(len(text), _LONGEST_CELL) + 1):
        cell, rest = text[:end], text[end:]
        last = len(headings) == 1
        if bool(rest) is last or not _parts_here(text, end) or _CELL.fullmatch(cell) is None:
            continue
        if may_have(headings[0], cell) and (last or _first_cells(rest, headings[1:])):
            found.append((cell, rest))
    return tuple(found)


def _parts_here(text: str, end: int) -> bool:
    """Whether a cell may end here: at a figure that ran on, never at a blank or within a range."""
    rest = text[end : end + 1]
    return not text[end - 1].isspace() and (not rest or rest.isdigit())


def may_have(heading: HeadingReading, cell: str) -> bool:
    """Whether the figure of a cell rises and is one that its heading can have, in some unit."""
    span = span_of(cell)
    if span is None or span.low > span.high:
        return False
    dimension = heading.dimension
    if dimension is None or dimension is Dimension.OTHER:
        return span.low > 0
    said = heading.unit or span.unit
    units = _UNITS if said is None else (said,)
    limits = [one for unit in units if (one := plausible(dimension, unit))]
    return not limits or any(low <= span.low and span.high <= high for low, high in limits)
