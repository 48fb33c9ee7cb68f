"""Figures of a line that its own table has not taken: half of what it says would be lost.

A list may be read for one of the measures in each of its lines, ``bust=92 ... 5-6 years``, when the
others are written in a way that no rule covers.
"""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Iterable, Sequence
from typing import Final, TypeVar

from charts.readers.captured.lines import Line, LineTable
from charts.size_labels import read_label

_FIGURE: Final = re.compile(r"(?<![\d.,])\d{2,3}(?:[.,]\d+)?(?!\d|[.,]\d)")
"""A measure has two figures at least before its point: no step of a list, no footnote."""
_FEWEST: Final = 2
_FEWEST_LINES: Final = 2
"""A lone line may be a title with a date, or a sentence that was taken for a heading."""
_SIZED: Final = re.compile(r"(?P<size>[^:=,;|/]{1,28}?)\s*[-–—:=]\s+(?P<rest>[^\W\d_].*)")
_NAME: Final = re.compile(r"[^\W\d_]{3,}(?:[ -][^\W\d_]+)*")
_LONGEST_LINE: Final = 400
_Place = TypeVar("_Place")


def lossy_line(lines: Sequence[Line], table: LineTable) -> int | None:
    """The number of the first of ``lines`` that lost figures; None where hardly any has."""
    cells = [cell for row in table.rows for cell in row]
    known = {cell.line for cell in cells}
    said = ((one.number, one.text) for one in lines[: table.used] if one.number in known)
    return first_lossy(said, (cell.text for cell in cells))


def goes_on(line: Line, table: LineTable) -> bool:
    """Whether the line right below a table is a row of it that was not understood.

    ``L - Waist: 93-99 / Hip: 99-105`` below ``M - Chest: 87-93 / Waist: 71-77 / Hip: 93-99``: a
    size, and then a measure of the table and figures.
    """
    text = line.text.strip()
    found = _SIZED.fullmatch(text) if len(text) <= _LONGEST_LINE else None
    if found is None or len(_FIGURE.findall(found["rest"])) < _FEWEST:
        return False
    label, name = read_label(found["size"]), _NAME.match(found["rest"])
    if label is None or label.doubtful is not None or name is None:
        return False
    heads = [one.text.lower() for one in table.rows[0]]
    return any(head.startswith(name[0].lower()) for head in heads)


def first_lossy(said: Iterable[tuple[_Place, str]], taken: Iterable[str]) -> _Place | None:
    """The place of the first text whose figures came into none of ``taken``; None for hardly any.

    ``said`` are the texts as the source has them, each with its place.
    """
    figures: Counter[str] = Counter()
    for text in taken:
        figures.update(_FIGURE.findall(text))
    lossy = [place for place, text in said if _loses(text, figures)]
    return lossy[0] if len(lossy) >= _FEWEST_LINES else None


def _loses(text: str, taken: Counter[str]) -> bool:
    return sum((Counter(_FIGURE.findall(text)) - taken).values()) >= _FEWEST
