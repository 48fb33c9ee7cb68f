"""Sizes of several words in one line: ``Size Child Small Child Medium``, ``Age 3-4 yrs 5-6 yrs``.

The measures below tell how many sizes there are; the words are parted into as many, all of as many
words, each a known size.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from charts.dimensions import Role, read_heading
from charts.readers.captured.lines import Line, LineCell, LineTable
from charts.readers.captured.measure_rows import measure_rows
from charts.readers.captured.value_runs import is_size, named_values, rises
from charts.schema import Dimension
from charts.size_labels import LabelKind, read_label

_FEWEST: Final = 2
_MOST_ROWS: Final = 40
_MOST_OF_ONE: Final = 3
_LONGEST: Final = 300


def wide_sizes_table(lines: Sequence[Line]) -> LineTable | None:
    """The table whose sizes of several words stand in the first line; else None."""
    filled = [line for line in lines[:_MOST_ROWS] if line.text.strip()]
    if len(filled) < _FEWEST or len(filled[0].text) > _LONGEST:
        return None
    below = named_values(filled[1].text)
    if below is None or len(below.parts) < _FEWEST or not _measures(below.name):
        return None
    name, words = _named(filled[0].text.split())
    labels = _labels(words, len(below.parts))
    rows = measure_rows(filled[1:], len(below.parts))
    if not labels or not rows:
        return None
    head = [LineCell(text, filled[0].number) for text in (name, *labels)]
    used = next(at for at, line in enumerate(lines, start=1) if line.number == rows[-1][0].line)
    return LineTable([head, *rows], used, inferred=not rises(labels))


def _measures(name: str) -> bool:
    heading = read_heading(name)
    return heading.role is Role.MEASURE and heading.dimension is not Dimension.AGE


def _named(words: Sequence[str]) -> tuple[str, Sequence[str]]:
    """The word for sizes or ages in front, "" for none, and the words behind it."""
    heading = read_heading(words[0])
    named = heading.role is Role.LABEL or heading.dimension is Dimension.AGE
    return (words[0], words[1:]) if named and not is_size(words[0]) else ("", words)


def _labels(words: Sequence[str], count: int) -> list[str]:
    """As many sizes of two words or more; none where the words are no sizes that differ."""
    each, left = divmod(len(words), count)
    if left or not 1 < each <= _MOST_OF_ONE:
        return []
    labels = [" ".join(words[at : at + each]) for at in range(0, len(words), each)]
    known = all(map(_is_known, labels)) and len(set(labels)) == count
    # Two sizes side by side are no one: each would be known without the other.
    return labels if known and not all(map(is_size, words)) else []


def _is_known(text: str) -> bool:
    label = read_label(text)
    return label is not None and label.doubtful is None and label.kind is not LabelKind.WORD
