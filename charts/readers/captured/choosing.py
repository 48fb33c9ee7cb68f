"""Sentences that end in the size: ``With a chest between 87 and 90 cm your size will be 44``.

They make a table where two or more neighbours say the same word for word but for their figures,
which print their unit, and their sizes behind. Which figure is the size was only told from its
place in the sentence, so the whole is to be compared.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass
from typing import Final

from charts.dimensions import Role, read_heading
from charts.readers.captured.lines import Line, LineCell, LineTable
from charts.readers.captured.sentences import measure_among
from charts.readers.captured.value_runs import is_size, rises
from charts.readers.captured.values import OPEN_ENDED, is_value, without_limit

_NUMBER: Final = r"\d{1,3}(?:[.,]\d{1,2})?(?:\s?[½¼¾])?"
_UNIT: Final = r"\s?(?:cm|mm|inch(?:es)?|in|kg|lbs?|[\"”″])(?![^\W\d_])"
_BETWEEN: Final = r"(?:entre|between|zwischen|tra|fra|tussen|mellan|mellem|från|from|von|de|da|del)"
_AND: Final = (
    r"(?:-|–|—|\bto\b|\band\b|\bund\b|\bbis\b|\bet\b|\bà\b|\by\b|\ba\b|\be\b|\ben\b|\boch\b)"
)
_TOKEN: Final = re.compile(
    rf"(?:\b{_BETWEEN}\s+)?{_NUMBER}\s*{_AND}\s*{_NUMBER}{_UNIT}"
    rf"|(?:\b{_BETWEEN}\s+)?{_NUMBER}(?P<unit>{_UNIT})\s*{_AND}\s*{_NUMBER}(?P=unit)"
    rf"|{_NUMBER}{_UNIT}|\d?[^\W_]+(?:[-'’/][^\W_]+)*",
    re.IGNORECASE,
)
_UNITED: Final = re.compile(rf"\d.*{_UNIT}\Z", re.IGNORECASE)
_BULLET: Final = re.compile(r"\A\s*(?:[•▪◦●○·*‣»>✓–-]\s+)?")
_LONGEST_LINE: Final = 300
_FEWEST_WORDS: Final = 4
_WORDS_OF_A_NAME: Final = 4
WORN: Final = re.compile(
    r"model\w*|mannequin|wear\w*|wore|trägt|porte|lleva|viste|indossa|veste|draagt|nosi",
    re.IGNORECASE,
)
"""What the model in a picture measures and wears is no size chart."""


@dataclass(frozen=True, slots=True)
class _Slots:
    """Where neighbouring sentences differ: places of figures, and of sizes behind them."""

    figures: tuple[int, ...]
    sizes: tuple[int, ...]


def choosing_table(lines: Sequence[Line]) -> LineTable | None:
    """The table that sentences at the beginning of ``lines`` make; None when they make none."""
    said: list[list[str]] = []
    used: list[Line] = []
    for line in lines:
        words = _words(line.text)
        if not words or (said and not _like(said[0], words)):
            break
        said.append(words)
        used.append(line)
    slots = _slots(said) if len(said) > 1 else None
    names = _names(said[0], slots.figures) if slots is not None else None
    return _table(used, said, slots, names) if slots is not None and names is not None else None


def _words(text: str) -> list[str]:
    """The words of a sentence, a figure with its unit or a range of them as one."""
    if len(text) > _LONGEST_LINE or not any(map(str.isdigit, text)):
        return []
    words = [found[0] for found in _TOKEN.finditer(_BULLET.sub("", text, count=1))]
    if len(words) < _FEWEST_WORDS or any(map(WORN.fullmatch, words)):
        return []
    return words if any(map(_UNITED.search, words)) else []


def _like(first: Sequence[str], other: Sequence[str]) -> bool:
    """Whether two sentences are as long, and differ in figures and sizes only."""
    differing = [pair for pair in zip(first, other, strict=False) if pair[0] != pair[1]]
    even = len(first) == len(other) and bool(differing)
    return even and all(_is_slot(word) for pair in differing for word in pair)


def _is_slot(word: str) -> bool:
    return _UNITED.search(word) is not None or is_size(word)


def _slots(said: Sequence[Sequence[str]]) -> _Slots | None:
    """The places that differ; None unless sizes stand behind all figures, and no other figures."""
    columns = list(zip(*said, strict=True))
    differing = [at for at, column in enumerate(columns) if len(set(column)) > 1]
    figures = [at for at in differing if all(map(_UNITED.search, columns[at]))]
    sizes = [at for at in differing if at not in figures]
    if not figures or not sizes or min(sizes) < max(figures):
        return None
    if not all(is_size(word) for at in sizes for word in columns[at]):
        return None
    if any(
        is_value(word) for at in range(len(columns)) if at not in differing for word in columns[at]
    ):
        return None
    keys = [at for at in sizes if rises(columns[at])]
    if len(keys) != 1 or any(
        OPEN_ENDED.fullmatch(w) for at in figures for w in said[0][at + 1 : at + 4]
    ):
        return None
    return _Slots(tuple(figures), (keys[0], *(at for at in sizes if at != keys[0])))


def _names(words: Sequence[str], figures: Sequence[int]) -> list[str] | None:
    """The measure named in the words before each figure; None where one has none or several."""
    names: list[str] = []
    for start, at in zip((0, *(one + 1 for one in figures)), figures, strict=False):
        name = measure_among(" ".join(words[start:at]))
        if name is None:
            return None
        names.append(_whole_name(words[start:at], name))
    return names


def _whole_name(words: Sequence[str], name: str) -> str:
    """``tour de poitrine`` for ``poitrine``: the words before it that are a part of the name."""
    end = next(at for at, word in enumerate(words) if word.startswith(name)) + 1
    dimension = read_heading(name).dimension
    for start in range(max(0, end - _WORDS_OF_A_NAME), end - 1):
        heading = read_heading(" ".join(words[start:end]))
        plain = heading.role is Role.MEASURE and not heading.candidates and not heading.rest
        if plain and heading.dimension is dimension:
            return " ".join(words[start:end])
    return name


def _table(
    lines: Sequence[Line], said: Sequence[Sequence[str]], slots: _Slots, names: Sequence[str]
) -> LineTable:
    head = [*("" for _ in slots.sizes), *names]
    rows = [[LineCell(text, lines[0].number) for text in head]]
    for line, words in zip(lines, said, strict=True):
        values = [_limited(words, slots.figures, at) for at in range(len(slots.figures))]
        texts = (*(words[at] for at in slots.sizes), *values)
        rows.append([LineCell(text, line.number) for text in texts])
    return LineTable(rows, len(rows) - 1, inferred=True)


def _limited(words: Sequence[str], figures: Sequence[int], number: int) -> str:
    """A figure with the limit before it: "less than 90 cm"; a range has both its ends."""
    start = figures[number - 1] + 1 if number else 0
    value = words[figures[number]]
    if len(re.findall(_NUMBER, value)) > 1:
        return value
    return without_limit(" ".join(words[start : figures[number]]))[1] + value
