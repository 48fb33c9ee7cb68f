"""Whole sentences of one pattern: ``Small fits chests from 34 to 36 inches and waists ...``.

They make a table only where two or more say the same words around different sizes and figures,
and every figure has exactly one measure in the words before it.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass
from functools import lru_cache
from typing import Final

from charts.dimensions import Role, find_units, read_heading
from charts.readers.captured.lines import Line, LineCell, LineTable
from charts.readers.captured.prose import common_head
from charts.readers.captured.value_runs import is_size, rises
from charts.readers.captured.values import OPEN_ENDED, is_blank, is_value, without_limit
from charts.size_labels import LabelKind, read_label

_NUMBER: Final = r"\d[\d.,½¼¾]*(?:\s\d/\d{1,2})?"
_UNIT: Final = (
    r"(?:\s*[\"”″]|\s*(?:cms?|mm|ins?|inch(?:es)?|kgs?|lbs?|zoll|pouces|years|jahre|ans)\b\.?)?"
)
_VALUE: Final = re.compile(
    rf"(?:[<>≤≥]=?\s?|[~≈]\s?)?{_NUMBER}{_UNIT}\+?(?:\s*(?:-|–|—|\bto\b|\band\b|\bbis\b|\bà\b|\ba\b|\btot\b|\btill?\b)\s*"
    rf"{_NUMBER}{_UNIT})?",
    re.IGNORECASE,
)
_WORD: Final = re.compile(r"[^\W\d_]+(?:-[^\W\d_]+)*")
_FROM: Final = ("", "from", "von", "de", "desde", "da", "van", "fra", "från", "od")
_BULLET: Final = re.compile(r"(?:[•▪◦●○·*‣–—-]\s+)?")
_FEWEST_NUMBERED: Final = 2
_NAMED_SIZE: Final = re.compile(
    r"(?=[^:]{0,24}\d)(?P<label>[^\s:=,;|][^:=,;|]{0,24}?)\s*[-–—:=]\s+(?=[^\W\d_]{2})"
)
_SIGNED_NAME: Final = re.compile(r"[\s/;,|·•–—-]*(?P<name>[^\W\d_][^:=]*?)\s*[:=]")
_YEAR: Final = re.compile(r"(?:19|20)\d\d")
_LONGEST_LINE: Final = 400
_LONGEST_LABEL: Final = 28


@dataclass(frozen=True, slots=True)
class _Sentence:
    """A line cut at its figures: ``words`` stand before, between and behind ``values``."""

    words: tuple[str, ...]
    values: tuple[str, ...]
    line: int


def sentence_table(lines: Sequence[Line]) -> LineTable | None:
    """The table that sentences at the beginning of ``lines`` make; None when they make none."""
    first = _cut(lines[0]) if lines else None
    if first is None:
        return None
    same = [first]
    for line in lines[1:]:
        other = _cut(line)
        if other is None or other.words[1:] != first.words[1:]:
            break
        same.append(other)
    heads = _without_common_end([one.words[0] for one in same])
    if heads is None:
        return _numbered_table(same)
    labels, common = heads
    names = [
        _between_signs(words) or measure_among(words) for words in (common, *first.words[1:-1])
    ]
    if any(name is None for name in names):
        return None
    table = _table(same, labels, [name or "" for name in names], (common, *first.words[1:-1]))
    return _with_odd_rows(table, lines, (common, *first.words[1:]))


def _with_odd_rows(table: LineTable, lines: Sequence[Line], words: Sequence[str]) -> LineTable:
    """The table with the lines below that say the same around a cell without a figure.

    ``XXL - Bust: >115 / Waist: N/A``; or around figures, where what stands before the first word is
    no name that is known: ``G3 - Bust: 109-117``.
    """
    around = r"\s*(.{1,20}?)\s*".join(map(re.escape, words))
    same = re.compile(rf"(\S.{{0,{_LONGEST_LABEL - 1}}}?)\s*{around}")
    rows = list(table.rows)
    for line in lines[table.used :]:
        found = same.fullmatch(" ".join(_BULLET.sub("", line.text.strip(), count=1).split()))
        if found is None or not all(
            is_value(cell) or is_blank(cell) for cell in found.groups()[1:]
        ):
            break
        label = found[1].strip(" :;,-–—")
        rows.append([LineCell(text, line.number) for text in (label, *found.groups()[1:])])
    return LineTable(rows, table.used + len(rows) - len(table.rows))


def _cut(line: Line) -> _Sentence | None:
    pieces = _words_and_values(line.text)
    return None if pieces is None else _Sentence(*pieces, line.number)


@lru_cache(maxsize=4096)
def _words_and_values(text: str) -> tuple[tuple[str, ...], tuple[str, ...]] | None:
    text = text.strip()
    if len(text) > _LONGEST_LINE:
        return None
    text = _BULLET.sub("", text, count=1).rstrip(" ;")
    label, text = _named_size(text)
    values = [found[0].strip().rstrip(".") for found in _VALUE.finditer(text)]
    words = [" ".join(piece.split()) for piece in _VALUE.split(text)]
    words[0] = label + words[0]
    if not values or not words[0] or not all(is_value(value) for value in values):
        return None
    if any(_YEAR.fullmatch(value) for value in values):
        return None  # "Guide des tailles 2027" is a title, not a waist
    return tuple(words), tuple(values)


def _named_size(text: str) -> tuple[str, str]:
    """The name of a size that holds a figure, ``3XL - ``, ``M (34) - ``, and what follows it."""
    found = _NAMED_SIZE.match(text)
    label = read_label(found["label"]) if found is not None else None
    if found is None or label is None or label.doubtful is not None:
        return "", text
    return found[0], text[found.end() :]


def _without_common_end(heads: Sequence[str]) -> tuple[list[str], str] | None:
    """The differing beginnings (the labels) and the words that all heads end with."""
    split = [head.split() for head in heads]
    common = 0
    while all(len(words) > common + 1 for words in split) and (
        len({words[-1 - common] for words in split}) == 1
    ):
        common += 1
    labels = [" ".join(words[: len(words) - common]).strip(" :;,-") for words in split]
    distinct = len(set(labels)) == len(labels) > 1
    if not common or not distinct or any(len(label) > _LONGEST_LABEL for label in labels):
        return None
    return labels, " ".join(split[0][len(split[0]) - common :])


def _between_signs(words: str) -> str | None:
    """The whole of ``/ Sleeve length (cm):`` where it is the name of a measure; else None."""
    found = _SIGNED_NAME.fullmatch(words)
    heading = read_heading(found["name"]) if found is not None else None
    whole = heading is not None and heading.role is Role.MEASURE and not heading.candidates
    return found["name"] if found is not None and whole else None


def measure_among(words: str) -> str | None:
    """The one word among ``words`` that names a measure; None where none or several do."""
    found = [name for word in _WORD.findall(words) if (name := _named_measure(word))]
    return found[0] if len(found) == 1 else None


def _named_measure(word: str) -> str | None:
    """``word``, without the s of a plural, where it can be the name of a measure."""
    for name in (word, word.removesuffix("s")):
        heading = read_heading(name)
        roles = {heading.role, *(role for role, _ in heading.candidates)}
        if Role.MEASURE in roles:
            return name
    return None


def _table(
    same: Sequence[_Sentence], labels: Sequence[str], names: Sequence[str], before: Sequence[str]
) -> LineTable:
    limits = [without_limit(words)[1] for words in before]
    head, labels = common_head(labels)
    rows = [[LineCell(text, same[0].line) for text in (head, *names)]]
    for one, label in zip(same, labels, strict=True):
        values = [_limited(limit, value) for limit, value in zip(limits, one.values, strict=True)]
        rows.append([LineCell(text, one.line) for text in (label, *values)])
    return LineTable(rows, len(same))


def _numbered_table(same: Sequence[_Sentence]) -> LineTable | None:
    """``Size 62 for a height of 56-61 cm and 6-8 kg of weight``: the first figure is the size.

    All words are the same, the last before the first figure is one for sizes, the sizes rise, and
    every other figure prints its unit: without one it could be anything.
    """
    word, *between = same[0].words[:-1]
    named = word.split()[-1]
    if any(
        OPEN_ENDED.fullmatch(said) for words in same[0].words[2:] for said in _WORD.findall(words)
    ):
        return None
    if len(same) < _FEWEST_NUMBERED or len({one.words[0] for one in same}) > 1 or not between:
        return None
    labels = [one.values[0] for one in same]
    if read_heading(named).role is not Role.LABEL or not all(map(is_size, labels)):
        return None
    names = [measure_among(words) for words in between]
    units = [_unit_before(words) for words in same[0].words[2:]]
    rows = [[f"{a}{b}" for a, b in zip(one.values[1:], units, strict=True)] for one in same]
    if not rises(labels) or None in names or len(set(names)) < len(names):
        return None
    if not all(_prints_unit(value) for row in rows for value in row):
        return None
    limits = [without_limit(words)[1] for words in between]
    table = [[LineCell(text, same[0].line) for text in (named, *(name or "" for name in names))]]
    for one, label, row in zip(same, labels, rows, strict=True):
        values = [_limited(limit, value) for limit, value in zip(limits, row, strict=True)]
        table.append([LineCell(text, one.line) for text in (label, *values)])
    return LineTable(table, len(same))


def _unit_before(words: str) -> str:
    """The unit that a figure's next word is, where no sign or short word of it stood there."""
    word = words.split(maxsplit=1)[0].rstrip(".,;") if words else ""
    return f" {word}" if word and _prints_unit(f"2 {word}") else ""


def _prints_unit(value: str) -> bool:
    """Whether the value tells its unit, which may be one of an age."""
    label = read_label(value)
    return bool(find_units(value)) or (label is not None and label.kind is LabelKind.AGE)


def _limited(limit: str, value: str) -> str:
    """A limit stays with its value; only "from" before a whole range adds nothing."""
    whole = len(re.findall(_NUMBER, value)) > 1
    return value if whole and limit.strip().lower() in _FROM else f"{limit}{value}"
