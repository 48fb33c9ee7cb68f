"""Figures of measures above the sizes they belong to: ``Chest (cm) 84 88 92`` over ``Size S M L``.

Makers of several garments print the body's figures once and a row of sizes for each garment below.
A row with another count has lost the places of its cells: it stays whole, to be compared.
"""

from __future__ import annotations

from collections.abc import Sequence
from functools import lru_cache
from itertools import pairwise
from typing import Final, NamedTuple

from charts.dimensions import Role, read_heading
from charts.readers.captured.lines import Line, LineCell, LineTable
from charts.readers.captured.value_runs import is_size, named_values, rises
from charts.size_labels import LabelKind, read_label

_FEWEST: Final = 3
_MOST_LINES: Final = 40
_LONGEST: Final = 300
_LONGEST_NAME: Final = 60
_SPREAD: Final = 2.5
"""Numbers that grow so many times are sizes: no measure does from the smallest to the largest."""
_LETTERS: Final = (LabelKind.ALPHA, LabelKind.COMBINED)


class _Row(NamedTuple):
    """A name, what stands behind it, and whether these can be nothing but sizes."""

    name: str
    parts: tuple[str, ...]
    sure: bool
    line: int

    @property
    def cells(self) -> list[LineCell]:
        return [LineCell(text, self.line) for text in (self.name, *self.parts)]


def sizes_under_table(lines: Sequence[Line]) -> LineTable | None:
    """The table whose measures ``lines`` begin with, above its sizes; None without such sizes."""
    if not lines or _measure(lines[0].text) is None:
        return None
    filled = [line for line in lines[:_MOST_LINES] if line.text.strip()]
    measures = _measures(filled)
    count = len(measures[0].parts)
    below = _sizes(filled[len(measures) :])
    follows = filled[len(measures) + len(below) :][:1]
    if not below or any(_measured(one.text, count) for one in follows):
        return None  # the sizes are those of the next table
    even = [one for one in below if len(one.parts) == count]
    if any(len(one.parts) > count for one in below) or not any(one.sure for one in below):
        return None
    last = below[-1].line
    used = next(at for at, line in enumerate(lines, start=1) if line.number == last)
    uneven = [LineCell(line.text.strip(), line.number) for line in _lines_of(filled, below, count)]
    if not any(one.sure for one in even):
        kept = [LineCell(line.text.strip(), line.number) for line in filled[: len(measures)]]
        return LineTable([[one] for one in (*kept, *uneven)], used, inferred=True)
    worded = all(not one.name or read_heading(one.name).role is Role.LABEL for one in below)
    rows = _rows(even, measures, together=worded)
    return LineTable([*rows, *([one] for one in uneven)], used, inferred=not worded)


def _rows(
    sizes: Sequence[_Row], measures: Sequence[_Row], *, together: bool
) -> list[list[LineCell]]:
    """All names of the same sizes over the measures, or the measures for each garment again."""
    under = [one.cells for one in measures]
    if together:
        ordered = sorted(sizes, key=lambda one: not one.sure)
        return [*(one.cells for one in ordered), *under]
    found: list[list[LineCell]] = []
    for one in sizes:
        garment = one.cells[:1]
        found += [garment, [LineCell("", one.line), *one.cells[1:]], *under]
    return found


def _measures(filled: Sequence[Line]) -> list[_Row]:
    """The rows of measures at the beginning that have as many figures as the first one."""
    found: list[_Row] = []
    for line in filled:
        row = _measure(line.text)
        if row is None or (found and len(row.parts) != len(found[0].parts)):
            break
        found.append(row._replace(line=line.number))
    return found


@lru_cache(maxsize=4096)
def _measure(text: str) -> _Row | None:
    named = named_values(text) if len(text) <= _LONGEST else None
    if named is None or len(named.parts) < _FEWEST or not named.name:
        return None
    measure = read_heading(named.name).role is Role.MEASURE and not _counts_by_two(*named)
    return _Row(*named, False, 0) if measure else None


def _measured(text: str, count: int) -> bool:
    """Whether a line has as many figures as the measures above, with a name or without one."""
    named = named_values(text) if len(text) <= _LONGEST else None
    return named is not None and len(named.parts) == count


def _sizes(filled: Sequence[Line]) -> list[_Row]:
    """The rows of sizes that follow at once, each with a name or only letters."""
    found: list[_Row] = []
    for line in filled:
        row = _size_row(line.text)
        if row is None:
            break
        found.append(row._replace(line=line.number))
    return found


@lru_cache(maxsize=4096)
def _size_row(text: str) -> _Row | None:
    words = text.split() if len(text) <= _LONGEST else []
    first = len(words)
    while first and is_size(words[first - 1]):
        first -= 1
    name, labels = " ".join(words[:first]), tuple(words[first:])
    if len(labels) < _FEWEST or not rises(labels) or len(name) > _LONGEST_NAME:
        return None
    role = read_heading(name).role if name else Role.UNKNOWN
    if any(map(str.isdigit, name)) or (role is Role.MEASURE and not _counts_by_two(name, labels)):
        return None
    read = [label for one in labels if (label := read_label(one)) is not None]
    lettered = all(label.kind in _LETTERS for label in read)
    sure = lettered or role is Role.LABEL or (bool(name) and _grows(labels))
    return _Row(name, labels, sure, 0) if name or lettered else None


def _grows(labels: Sequence[str]) -> bool:
    numbers = [int(one) for one in labels if one.isdecimal()]
    return len(numbers) == len(labels) and numbers[-1] >= _SPREAD * numbers[0] > 0


def _counts_by_two(name: str, parts: Sequence[str]) -> bool:
    """Whether a garment is named by what it is worn around, over sizes: ``Low waist 4 6 8 10``."""
    numbers = [int(one) for one in parts if one.isdecimal()]
    steps = {after - before for before, after in pairwise(numbers)}
    heading = read_heading(name)
    return _grows(parts) and steps == {2} and heading.unit is None and bool(heading.rest)


def _lines_of(filled: Sequence[Line], below: Sequence[_Row], count: int) -> list[Line]:
    """The lines of the sizes that are fewer than the figures."""
    numbers = {one.line for one in below if len(one.parts) != count}
    return [line for line in filled if line.number in numbers]
