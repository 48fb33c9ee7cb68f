"""Sentences that differ, each about one size: ``Small: divers who weigh less than 155 pounds ...``.

A line is a row where it begins with its size and every figure in it that prints a unit has one
measure in the words before it. Two or more measures, the same in all rows, make a table; the words
between were not understood, so a person has to compare it.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass
from typing import Final

from charts.dimensions import Role, read_heading
from charts.readers.line_choosing import WORN
from charts.readers.line_prose import common_head
from charts.readers.line_sentences import measure_among
from charts.readers.line_values import OPEN_ENDED, without_limit
from charts.readers.lines import Line, LineCell, LineTable
from charts.readers.value_runs import is_size

_UNIT: Final = r"\s?(?:cms?|mm|inch(?:es)?|in|kgs?|kilos?|lbs?|pounds?|[\"”″])(?![^\W\d_])"
_FEET: Final = r"\d\s?['’′]\s?(?:\d{1,2}\s?(?:''|’’|[\"”″]))?"
_FIGURE: Final = r"\d{1,3}(?:[.,]\d{1,2})?(?:\s?[½¼¾])?"
_ONE: Final = rf"(?:{_FEET}|{_FIGURE}(?:{_UNIT})?)"
_BEHIND: Final = r"(?:\s+(?:or|and)\s+(?:less|under|below|more|over|above|up|taller|shorter)\b)?"
_VALUE: Final = re.compile(
    rf"(?<![\w.,/-])(?:\b(?:between|entre|zwischen|tra|fra|tussen|mellan|mellem|od|mezi|między)\s+"
    rf"{_ONE}\s+(?:and|und|et|y|e|a|en|och|og|do|i)\s+{_ONE}"
    rf"|{_ONE}\s?(?:[-–—]|\s(?:to|bis|à|a|tot|til|till|do|až)\s)\s?{_ONE}|{_ONE}){_BEHIND}",
    re.IGNORECASE,
)
_UNITED: Final = re.compile(rf"{_FEET}|\d{_UNIT}", re.IGNORECASE)
_SENTENCE_END: Final = re.compile(r"[.!?]\s+(?=[^\W\d_])")
_COLON: Final = re.compile(r"\s*(?P<label>[^\d:.,;]{1,20}|\d?X{1,4}[SL])\s*:\s+(?=[^\W\d_])")
_WORDS: Final = re.compile(r"\s*(?P<word>[^\W\d_]{3,20})\s+(?P<size>[^\s:,]{1,8})(?=[\s:,])")
_LONGEST: Final = 400
_FEWEST: Final = 2
_WORDS_BEHIND: Final = 3


@dataclass(frozen=True, slots=True)
class _Told:
    """One line: its size and a value to each name."""

    label: str
    values: dict[str, str]
    line: int


def told_table(lines: Sequence[Line]) -> LineTable | None:
    """The table that sentences at the beginning of ``lines`` make; None when they make none."""
    rows: list[_Told] = []
    used = 0
    for at, line in enumerate(lines, start=1):
        if not line.text.strip() and rows:
            continue
        told = _told(line)
        if told is None or (rows and set(told.values) != set(rows[0].values)):
            break
        if told.label in (row.label for row in rows):
            break  # the next list
        rows.append(told)
        used = at
    if len(rows) < _FEWEST:
        return None
    head, labels = common_head([row.label for row in rows])
    names = list(rows[0].values)
    table = [[LineCell(text, rows[0].line) for text in (head, *names)]]
    for row, label in zip(rows, labels, strict=True):
        texts = (label, *(row.values[name] for name in names))
        table.append([LineCell(text, row.line) for text in texts])
    return LineTable(table, used, inferred=True)


def _told(line: Line) -> _Told | None:
    text = line.text.strip()
    start = _label(text) if len(text) <= _LONGEST else None
    if start is None or WORN.search(text):
        return None
    label, at = start
    values: dict[str, str] = {}
    for found in _VALUE.finditer(text, at):
        if not _UNITED.search(found[0]):
            continue
        before = _SENTENCE_END.split(text[at : found.start()])[-1]
        name = measure_among(before)
        behind = text[found.end() :].split()[:_WORDS_BEHIND]
        opened = any(OPEN_ENDED.fullmatch(word.strip(".,;")) for word in behind)
        value = without_limit(before)[1] + found[0]
        if name is None or name in values or opened:
            return None
        values[name] = value
        at = found.end()
    return _Told(label, values, line.number) if len(values) >= _FEWEST else None


def _label(text: str) -> tuple[str, int] | None:
    """The size that a line begins with, by itself before a colon or behind a word for sizes."""
    alone = _COLON.match(text)
    if alone is not None and is_size(alone["label"].strip()):
        return alone["label"].strip(), alone.end()
    behind = _WORDS.match(text)
    if behind is None or read_heading(behind["word"]).role is not Role.LABEL:
        return None
    return (f"{behind['word']} {behind['size']}", behind.end()) if is_size(behind["size"]) else None
