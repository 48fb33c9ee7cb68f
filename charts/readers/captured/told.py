"""Sentences that differ, each about one size: ``Small: divers who weigh less than 155 pounds ...``.

A line is a row where it begins with its size and every figure in it that prints a unit has one
measure in the words before it. Two or more measures, the same in all rows, make a table; the words
between were not understood, so a person has to compare it.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass, replace
from itertools import takewhile
from typing import Final

from charts.dimensions import Role, read_heading
from charts.readers.captured.choosing import WORN
from charts.readers.captured.lines import Line, LineCell, LineTable
from charts.readers.captured.prose import common_head
from charts.readers.captured.sentences import measure_among
from charts.readers.captured.value_runs import is_size
from charts.readers.captured.values import OPEN_ENDED, without_limit
from charts.schema import Dimension

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
_COLON: Final = re.compile(
    r"\s*(?:[•▪◦●○·*‣–-]\s+)?(?P<label>[^\d:.,;]{1,24}|\d?X{1,4}[SL]|\d[^:.,;]{0,16}[^\W\d_])"
    r"\s*:\s+(?=[^\W\d_])"
)
_WORDS: Final = re.compile(r"\s*(?P<word>[^\W\d_]{3,20})\s+(?P<size>[^\s:,]{1,8})(?=[\s:,])")
_MASS: Final = re.compile(r"\d\s?(?:kgs?|kilos?|lbs?|pounds?)\b", re.IGNORECASE)
_NOT_SAID: Final = "?"
_VERB: Final = re.compile(
    r"\s*(?:[•▪◦●○·*‣–-]\s+)?(?P<size>\S{1,6})\s+(?=(?:is|are|suits?|fits?|ist|passt|est|convient|es"
    r"|è|är|passar|er|passer|jest|je)\s)"
)
_LONGEST: Final = 400
_FEWEST: Final = 2
_WORDS_BEHIND: Final = 3


@dataclass(frozen=True, slots=True)
class _Told:
    """One line: its size and a value to each name."""

    label: str
    values: dict[str, str]
    line: int
    mass: str = ""
    """The word that the mass is told by, "" where none is."""


def told_table(lines: Sequence[Line]) -> LineTable | None:
    """The table that sentences at the beginning of ``lines`` make; None when they make none."""
    rows: list[_Told] = []
    used = 0
    for at, line in enumerate(lines, start=1):
        if not line.text.strip() and rows:
            continue
        told = _named_like(_told(line), rows)
        if told is None or (rows and set(told.values) != set(rows[0].values)):
            break
        if told.label in (row.label for row in rows):
            break  # the next list
        rows.append(told)
        used = at
    if len(rows) < _FEWEST or _NOT_SAID in rows[0].values:
        return None
    head, labels = common_head([row.label for row in rows])
    names = list(rows[0].values)
    mass = next((row.mass for row in rows if row.mass), "")
    heads = [name or mass for name in names]
    table = [[LineCell(text, rows[0].line) for text in (head, *heads)]]
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
    mass = ""
    for found in _VALUE.finditer(text, at):
        if not _UNITED.search(found[0]):
            continue
        before = _SENTENCE_END.split(text[at : found.start()])[-1]
        behind = text[found.end() :].split()[:_WORDS_BEHIND]
        name = _name(found[0], before, behind)
        opened = any(OPEN_ENDED.fullmatch(word.strip(".,;")) for word in behind)
        value = without_limit(before)[1] + found[0]
        if name in values or opened:
            return None
        mass = mass if name else _mass_word(before)
        values[name] = value
        at = found.end()
    return _Told(label, values, line.number, mass) if len(values) >= _FEWEST else None


def _name(value: str, before: str, behind: Sequence[str]) -> str:
    """The measure of a value: named before or right behind it; "" for a mass, which needs none."""
    if _MASS.search(value):
        return ""
    name = measure_among(before)
    if name is None:
        words = " ".join(takewhile(lambda word: not any(map(str.isdigit, word)), behind))
        name = measure_among(_SENTENCE_END.split(f"{words} ")[0])
    return name or _NOT_SAID


def _mass_word(before: str) -> str:
    name = measure_among(before)
    return name if name and read_heading(name).dimension is Dimension.WEIGHT else ""


def _named_like(told: _Told | None, rows: Sequence[_Told]) -> _Told | None:
    """The row with the one name that it does not say itself, where the rows before say it."""
    if told is None or not rows or _NOT_SAID not in told.values:
        return told
    left = [name for name in rows[0].values if name and name not in told.values]
    if len(left) != 1 or len(told.values) != len(rows[0].values):
        return None
    values = {left[0] if name == _NOT_SAID else name: value for name, value in told.values.items()}
    return replace(told, values=values)


def _label(text: str) -> tuple[str, int] | None:
    """The size that a line begins with: before a colon or a verb, or behind a word for sizes."""
    alone = _COLON.match(text)
    if alone is not None and is_size(alone["label"].strip()):
        return alone["label"].strip(), alone.end()
    verb = _VERB.match(text)
    if verb is not None and is_size(verb["size"]) and not any(map(str.islower, verb["size"])):
        return verb["size"], verb.end()
    behind = _WORDS.match(text)
    if behind is None or read_heading(behind["word"]).role is not Role.LABEL:
        return None
    return (f"{behind['word']} {behind['size']}", behind.end()) if is_size(behind["size"]) else None
