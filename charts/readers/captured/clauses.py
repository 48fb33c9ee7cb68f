"""One sentence about several sizes: ``a small vest suits 40-55 kg, a medium one 55-70 kg, …``.

Each clause names a size before its range; the ranges print their unit and rise. What else the
clauses say was not understood, so that a person compares the whole.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from decimal import Decimal
from itertools import pairwise
from typing import Final

from charts.dimensions import Role, read_heading
from charts.readers.captured.choosing import WORN
from charts.readers.captured.lines import Line, LineCell, LineTable
from charts.readers.captured.said import MONEY
from charts.readers.captured.sentences import measure_among
from charts.readers.captured.values import OPEN_ENDED
from charts.size_labels import LabelKind, read_label

_LONGEST: Final = 900
_FEWEST: Final = 3
_WORDS_BEHIND: Final = 3
_FIGURE: Final = r"\d{1,3}(?:[.,]\d{1,2})?"
_RANGE: Final = re.compile(
    rf"(?<![\w.,])(?P<low>{_FIGURE})\s?(?:[-–—]|to|and|bis|und|à|et|a|y|e|tot|en|til|och|og)\s?"
    rf"(?P<high>{_FIGURE})\s?(?P<unit>kgs?|kilos?|lbs?|pounds?|cms?|inches|in)\b",
    re.IGNORECASE,
)
_SENTENCE_END: Final = re.compile(r"[.!?]\s+")
_WORD: Final = re.compile(r"[^\W\d_]+(?:-[^\W\d_]+)?|\d?X{1,4}[SL]")
_MASSES: Final = ("k", "l", "p")
_WEARERS: Final = frozenset(
    (
        *("infant", "child", "children", "toddler", "youth", "junior", "adult"),
        *("kind", "enfant", "niño", "bambino", "barn"),
    )
)
"""Words that name whose size it is, where they stand for the size itself."""


def clauses_table(lines: Sequence[Line]) -> LineTable | None:
    """The table that clauses of the first line make; None unless each names one size and range."""
    text = lines[0].text if lines else ""
    if not text.strip() or len(text) > _LONGEST or MONEY.search(text) or WORN.search(text):
        return None
    found = list(_RANGE.finditer(text))
    if len(found) < _FEWEST or len({one["unit"].lower()[0] for one in found}) != 1:
        return None
    before = _before(text, found)
    sizes = [_size(words) for words in before]
    name = _name(before, found[0]["unit"])
    distinct = None not in sizes and len(set(sizes)) == len(sizes)
    if name is None or not distinct or not _rise(found) or _opened(before, text[found[-1].end() :]):
        return None
    number = lines[0].number
    rows = [[LineCell(text, number)], [LineCell("", number), LineCell(name, number)]]
    for size, one in zip(sizes, found, strict=True):
        rows.append([LineCell(size or "", number), LineCell(one[0], number)])
    return LineTable(rows, 1, inferred=True)


def _before(text: str, found: Sequence[re.Match[str]]) -> list[str]:
    """The words of the same sentence between each range and the one before it."""
    ends = [0, *(one.end() for one in found)]
    pieces = [text[a : one.start()] for a, one in zip(ends[:-1], found, strict=True)]
    return [_SENTENCE_END.split(piece)[-1] for piece in pieces]


def _opened(before: Sequence[str], behind: str) -> bool:
    """Whether a word around leaves an end open: "40 kg or more"."""
    words = [*" ".join(before).split(), *behind.split()[:_WORDS_BEHIND]]
    return any(OPEN_ENDED.fullmatch(word.strip(".,;")) for word in words)


def _size(words: str) -> str | None:
    """The first size that a clause names."""
    for word in (found[0] for found in _WORD.finditer(words)):
        label = read_label(word)
        lettered = label is not None and label.kind is LabelKind.ALPHA and label.doubtful is None
        if (lettered and len(word) > 1) or word.lower() in _WEARERS:
            return word
    return None


def _name(before: Sequence[str], unit: str) -> str | None:
    """The one measure of all clauses; "" for masses, which are the wearer's; None for none."""
    if unit.lower().startswith(_MASSES):
        return ""
    names = {name for words in before if (name := measure_among(words)) is not None}
    measures = [name for name in names if read_heading(name).role is Role.MEASURE]
    return measures[0] if len(names) == len(measures) == 1 else None


def _rise(found: Sequence[re.Match[str]]) -> bool:
    ends = [[Decimal(one[end].replace(",", ".")) for end in ("low", "high")] for one in found]
    whole = all(low < high for low, high in ends)
    return whole and all(a < b for pair in pairwise(ends) for a, b in zip(*pair, strict=True))
