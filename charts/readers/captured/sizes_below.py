"""Sizes over several lines, one, two or more on each, over measures with a figure for each size.

``Sizes XXS``, ``4T/5T``, ``XS``, ``6/7`` over ``Chest 25 27``: each size has two names, which take
turns. Counts must agree in two measures or more; a person compares the whole.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from functools import lru_cache
from typing import Final

from charts.dimensions import Role, read_heading
from charts.readers.captured.lines import Line, LineCell, LineTable
from charts.readers.captured.measure_rows import measure_rows
from charts.readers.captured.pieces import pieces
from charts.readers.captured.value_runs import Named, is_size, named_values
from charts.size_labels import LabelKind, read_label

_FEWEST: Final = 2
_FEWEST_LINES: Final = 2
_MOST_LINES: Final = 60
_LONGEST: Final = 40
_MIXED: Final = re.compile(r"\d{1,2}[A-Z]?(?:[-/]\d{1,2}[A-Z]?){1,3}")
"""Several sizes as one: ``6/6X-6/7``."""
_LETTERS: Final = (LabelKind.ALPHA, LabelKind.COMBINED)


def sizes_below_table(lines: Sequence[Line]) -> LineTable | None:
    """The table whose sizes begin in the first line; None where no two measures have as many."""
    filled = [line for line in lines[:_MOST_LINES] if line.text.strip()]
    start = next((at for at, one in enumerate(filled) if _measure(one.text) is not None), 0)
    if start < _FEWEST_LINES:
        return None
    name, labels = _labels(filled[:start])
    first = _measure(filled[start].text)
    if first is None or len(labels) < _FEWEST:
        return None
    heads = _heads(name, labels, len(first.parts))
    rows = measure_rows(filled[start:], len(first.parts))
    if not heads or len(rows) < _FEWEST:
        return None
    last = rows[-1][0].line
    used = next(at for at, line in enumerate(lines, start=1) if line.number == last)
    return LineTable([*heads, *rows], used, inferred=True)


@lru_cache(maxsize=4096)
def _measure(text: str) -> Named | None:
    """A measure with several figures behind it; None for a line of sizes or of words."""
    named = named_values(text)
    if named is None or len(named.parts) < _FEWEST or not named.name:
        return None
    return named if read_heading(named.name).role is Role.MEASURE else None


def _labels(lines: Sequence[Line]) -> tuple[LineCell, list[LineCell]]:
    """The word for sizes, "" for none, and all labels; no labels where anything else is there."""
    name = LineCell("", lines[0].number)
    found: list[LineCell] = []
    for at, line in enumerate(lines):
        text = line.text.strip()
        if len(text) > _LONGEST:
            return name, []
        words = [text] if is_size(text) else pieces(text)
        first, *rest = text.split()
        if at == 0 and read_heading(first).role is Role.LABEL and not is_size(first):
            name, words = LineCell(first, line.number), rest
        if not all(is_size(word) or _MIXED.fullmatch(word) for word in words):
            return name, []
        found += [LineCell(word, line.number) for word in words]
    return name, found


def _heads(name: LineCell, labels: Sequence[LineCell], count: int) -> list[list[LineCell]]:
    """A row of labels, or two of them where each size has two names in turn; none else."""
    if len(labels) == count:
        return [[name, *labels]] if _differ(labels) else []
    first, second = labels[::2], labels[1::2]
    if len(labels) != 2 * count or not all(_differ(one) for one in (first, second)):
        return []
    lettered = [all(map(_is_lettered, one)) for one in (first, second)]
    if lettered.count(True) != 1 or any(map(_is_lettered, second if lettered[0] else first)):
        return []
    return [[name, *first], [LineCell("", name.line), *second]]


def _differ(labels: Sequence[LineCell]) -> bool:
    return len({one.text for one in labels}) == len(labels)


def _is_lettered(cell: LineCell) -> bool:
    label = read_label(cell.text)
    return label is not None and label.kind in _LETTERS
