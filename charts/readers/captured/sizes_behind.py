"""Lists whose sizes stand behind what they are for: ``40 - 55 kg: S``, ``Chest 82-86 cm = Size S``.

Every line gives a mass, or the same named measures with their unit, and then one size.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from typing import Final, NamedTuple

from charts.dimensions import Role, read_heading
from charts.readers.captured.choosing import WORN
from charts.readers.captured.lines import Line, LineCell, LineTable
from charts.readers.captured.said import MONEY, pair_of, unbulleted
from charts.readers.captured.size_names import may_measure, size_line
from charts.readers.captured.value_runs import is_size
from charts.readers.captured.values import is_value
from charts.size_labels import read_label

_JOINT: Final = re.compile(r"\s*(?:[:=→⇒➔➜►]|[-=]>)\s*|\s+[-–—]\s+|,\s+(?=[^\W\d_])")
_PARTS: Final = re.compile(
    r"\s*[;|]\s*|,\s+(?=[^\W\d_])|\s+/\s+(?=[^\W\d_]{3})"
    r"|\s+(?:and|und|et|y|e|en|och|og|oraz|i|a)\s+(?=[^\W\d_]{3})"
)
_MASS: Final = re.compile(r"\d\s?(?:kgs?|kilos?|lbs?|pounds?|st|кг)\b", re.IGNORECASE)
_UNIT: Final = re.compile(
    rf"{_MASS.pattern}|\d\s?(?:cms?|mm|m|ins?|inch(?:es)?|zoll|pouces?|ft|см)\b|[\d½¼¾]\s?[\"”″'’]",
    re.IGNORECASE,
)
_DASHES: Final = frozenset("-–—")
_LONGEST: Final = 160
_LONGEST_SIZE: Final = 24
_FEWEST: Final = 2
_MOST_LINES: Final = 60


class _Row(NamedTuple):
    """The size of a line, the word for sizes before it, and a value to each name."""

    word: str
    size: str
    pairs: tuple[tuple[str, str], ...]
    line: int

    @property
    def names(self) -> tuple[str, ...]:
        return tuple(name.lower() for name, _ in self.pairs)


def sizes_behind_table(lines: Sequence[Line]) -> LineTable | None:
    """The table that such a list at the beginning of ``lines`` makes; None when it makes none."""
    if not lines or not lines[0].text.strip():
        return None
    title = lines[0].text.strip(" :")
    named = read_heading(title).role is Role.MEASURE and not any(map(str.isdigit, title))
    rows: list[_Row] = []
    used = 0
    for at, line in enumerate(lines[:_MOST_LINES]):
        if not line.text.strip() or (named and not at):
            continue
        row = _row(line, title if named else "")
        if row is None or (rows and row.names != rows[0].names):
            break
        rows.append(row)
        used = at + 1
    labels = {row.size.lower() for row in rows}
    sure = sum(is_size(row.size) for row in rows)
    if len(rows) < _FEWEST or len(labels) < len(rows) or sure * 2 <= len(rows):
        return None
    return LineTable(_cells(rows), used)


def _row(line: Line, title: str) -> _Row | None:
    """What a line says of its last words, a size; None where it says anything else."""
    text = unbulleted(line.text).rstrip(" .;,")
    if len(text) > _LONGEST or MONEY.search(text) or WORN.search(text):
        return None
    for joint in reversed(list(_JOINT.finditer(text))):
        word, size = _size(text[joint.end() :])
        if not word and is_value(size) and joint[0].strip() in _DASHES:
            return None  # "82 cm - 86" is a range
        pairs = _pairs(text[: joint.start()], title) if size else ()
        if pairs:
            return _Row(word, size, pairs, line.number)
    return None


def _size(text: str) -> tuple[str, str]:
    """The word for sizes and the size that ``text`` is; "" for anything with a unit."""
    if len(text) > _LONGEST_SIZE or _UNIT.search(text):
        return "", ""
    found = size_line(text)
    if found is not None:
        return found.word, found.size
    label = read_label(text)
    return ("", text) if label is not None and label.doubtful is None else ("", "")


def _pairs(text: str, title: str) -> tuple[tuple[str, str], ...]:
    """A mass, or named measures that print their unit; none for anything else."""
    if is_value(text):
        named = _UNIT.search(text) is not None and bool(title)
        return ((title, text),) if named else (("", text),) if _MASS.search(text) else ()
    pairs = [pair_of(part.strip()) for part in _PARTS.split(text) if part.strip()]
    found = tuple(pair for pair in pairs if pair is not None)
    names = {name.lower() for name, _ in found}
    known = all(name and may_measure(name) for name, _ in found)
    united = all(_UNIT.search(value) for _, value in found)
    return found if known and united and len(names) == len(pairs) else ()


def _cells(rows: Sequence[_Row]) -> list[list[LineCell]]:
    """A row for each size under the names of its measures; a mass needs no name."""
    names = [name for name, _ in rows[0].pairs]
    head = (rows[0].word, *names)
    cells = [[LineCell(text, rows[0].line) for text in head]] if any(names) else []
    for row in rows:
        texts = (row.size, *(value for _, value in row.pairs))
        cells.append([LineCell(text, row.line) for text in texts])
    return cells
