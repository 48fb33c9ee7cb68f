"""Sentences that are rows of a table: ``Talla S: Cintura 71-76 cm | Cadera 86-91 cm``.

A run of lines makes a table when each has a label, the same names and a value to each name.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import replace
from typing import Final

from charts.dimensions import Role, read_heading
from charts.readers.captured.lines import Line, LineCell, LineTable
from charts.readers.captured.said import (
    LONGEST_LABEL,
    LONGEST_LINE,
    MONEY,
    NO_LABEL,
    Said,
    pair_of,
    taken_apart,
    unbulleted,
)
from charts.readers.captured.size_names import size_line
from charts.readers.captured.value_runs import is_size
from charts.readers.captured.values import is_glued, is_value
from charts.schema import Basis, Dimension
from charts.size_labels import read_label, without_word_for_size

_SENTENCE: Final = re.compile(
    r"\s*(?P<label>[^=:.]{1,20}?)\s*[=:]\s*(?P<value>[<>≤≥~]?\s*\d[^=:]*?)"
    r"\s+(?P<name>[^\W\d_][^\d.=:]{2,30}?)\s*(?:\.|\Z)"
)
_TITLE: Final = re.compile(r"[^\d:=]{3,60}:")
_MASS: Final = re.compile(r"\d\s*(?:kgs?|lbs?|pounds?|kilos?|кг)\b", re.IGNORECASE)
_STROKE: Final = re.compile(r"\s*/\s*")
_STROKE_APART: Final = re.compile(r"\s+/\s+")
_METRIC: Final = re.compile(r"\d\s*(?:cm|mm)\b", re.IGNORECASE)
_INCHES: Final = re.compile(r"[\d½¼¾⅛⅜⅝⅞]\s*(?:[\"”″]|''|in(?:ch(?:es)?)?\b)", re.IGNORECASE)
_MADE: Final = frozenset({Basis.FINISHED, Basis.FLAT})
_NEVER_MADE: Final = frozenset({Dimension.HEIGHT, Dimension.WEIGHT, Dimension.AGE})
_PAIRS_ENOUGH: Final = 3  # one line alone makes a row with so many names


def prose_table(lines: Sequence[Line]) -> LineTable | None:
    """The table that ``lines`` begin with; None when they begin with none."""
    if not may_begin_prose(lines):
        return None
    if taken_apart(lines[0]) is None:
        return _sentences(lines[0]) or _records(lines)
    said: list[Said] = []
    used = 0
    for line in lines:
        if not line.text.strip():
            used += 1
            continue
        found = taken_apart(line)
        if found is None or (said and not _goes_with(said, found)):
            break
        said.append(found)
        used = lines.index(line) + 1
    return _table(said, used) if len(said) > 1 or (said and _is_alone(said[0])) else None


def _is_alone(said: Said) -> bool:
    """Whether one line is a table: it names many measures, or the one size that there is."""
    size = size_line(said.label)
    enough = len(said.pairs) >= _PAIRS_ENOUGH or (size is not None and size.for_all)
    return enough and all(said.names)


def may_begin_prose(lines: Sequence[Line]) -> bool:
    """Whether the first line, or the filled one after it, can be taken apart; cheap."""
    if not lines or not lines[0].text.strip():
        return False
    if taken_apart(lines[0]) is not None or "=" in lines[0].text or ":" in lines[0].text:
        return True
    following = next((line for line in lines[1:4] if line.text.strip()), None)
    return following is not None and _name_and_value(following) is not None


def _sentences(line: Line) -> LineTable | None:
    """``Sizes:X/Small = 30" chest.Small = 32" chest.A guide.``: several rows in one line.

    Words before the first colon and behind the last row are kept where they hold no figure.
    """
    title = _TITLE.match(line.text)
    for start in (0, title.end()) if title is not None else (0,):
        found, end = _rows_from(line, start)
        before, after = line.text[:start].strip(), line.text[end:].strip()
        same = len({one.names for one in found}) == 1
        if len(found) > 1 and same and not any(map(str.isdigit, after)):
            table = _table(found, used=1)
            around = [
                [[LineCell(words, line.number)]] if words else [] for words in (before, after)
            ]
            return replace(table, rows=[*around[0], *table.rows, *around[1]])
    return None


def _rows_from(line: Line, start: int) -> tuple[list[Said], int]:
    """The rows that follow each other from a place of a line, and where they end."""
    found: list[Said] = []
    end = start
    while len(line.text) <= LONGEST_LINE and (match := _SENTENCE.match(line.text, end)):
        if not is_value(match["value"]):
            break
        found.append(Said(match["label"], ((match["name"], match["value"]),), line.number))
        end = match.end()
    return found, end


def _records(lines: Sequence[Line]) -> LineTable | None:
    """A title and the same names under each: ``Size S`` / ``Chest: 86-91`` / ``Waist: 71-76``."""
    filled = [line for line in lines if line.text.strip()]
    said: list[Said] = []
    at = 0
    while at < len(filled) and _name_and_value(filled[at]) is None:
        title = filled[at]
        pairs, places = [], []
        at += 1
        while at < len(filled) and (pair := _name_and_value(filled[at])) is not None:
            pairs.append(pair)
            places.append(filled[at].number)
            at += 1
        record = Said(unbulleted(title.text), tuple(pairs), title.number, tuple(places))
        if len(pairs) < 1 or (said and record.names != said[0].names):
            break
        said.append(record)
    if len(said) < 2 or any(len(one.label) > LONGEST_LABEL for one in said):
        return None
    last = filled[len(said) * (1 + len(said[0].pairs)) - 1]
    return _table([part for one in said for part in _by_strokes(one)], lines.index(last) + 1)


def _by_strokes(said: Said) -> list[Said]:
    """``Bust / Back length:`` over ``S: 32 in / 20 in``: a record for each measure of the title.

    Every value needs as many parts as there are measures, in the same units: 32 in / 81 cm is one.
    """
    names = _made_alike(_STROKE.split(said.label.rstrip(" :")))
    values = [_STROKE_APART.split(value) for _, value in said.pairs]
    measures = {read_heading(name).dimension for name in names}
    if len(names) < 2 or None in measures or len(measures) < len(names):
        return [said]
    if any(len(parts) != len(names) or not _alike(parts) for parts in values):
        return [said]
    return [
        replace(
            said,
            label=name,
            pairs=tuple((size, parts[at]) for size, parts in zip(said.names, values, strict=True)),
        )
        for at, name in enumerate(names)
    ]


def _made_alike(names: Sequence[str]) -> list[str]:
    """``Finished bust / back length``: the first word says of all that the garment is measured.

    A measure with a word of its own for whose it is, or of a person, keeps its name.
    """
    word, _, rest = names[0].partition(" ")
    made = read_heading(names[0]).basis
    if made not in _MADE or not rest or read_heading(rest).basis is made:
        return list(names)
    found = [names[0]]
    for name in names[1:]:
        own, carried = read_heading(name), read_heading(f"{word} {name}")
        same = carried.dimension is own.dimension and carried.basis is made
        alone = own.basis is not Basis.UNKNOWN or own.dimension in _NEVER_MADE
        found.append(f"{word} {name}" if same and not alone else name)
    return found


def _alike(parts: Sequence[str]) -> bool:
    """Whether all parts are values that print the same units."""
    units = {(bool(_METRIC.search(one)), bool(_INCHES.search(one))) for one in parts}
    return len(units) == 1 and all(map(is_value, parts))


def _name_and_value(line: Line) -> tuple[str, str] | None:
    """``Chest: 86-91 cm`` or ``Chest 86-91 cm``: one name and its value, which no size is."""
    size = size_line(line.text)
    if size is not None and size.word:
        return None
    found = taken_apart(line)
    if found is not None:
        return (found.label, found.pairs[0][1]) if found.names == ("",) else None
    if is_glued(line.text) or len(line.text) > LONGEST_LINE or MONEY.search(line.text):
        return None
    pair = pair_of(unbulleted(line.text))
    if pair is None or not pair[0] or len(pair[0]) > LONGEST_LABEL or NO_LABEL.search(pair[0]):
        return None
    return pair


def _goes_with(said: Sequence[Said], other: Said) -> bool:
    """Whether a line has the names of the lines before, or every name in both is a measure."""
    before = {name.lower() for one in said for name in one.names}
    if before >= {name.lower() for name in other.names}:
        return True
    return all(_is_told(name, value) for one in (*said, other) for name, value in one.pairs)


def _is_told(name: str, value: str) -> bool:
    """A known measure; or no name and a mass, which can only be the wearer's."""
    if not name:
        return _MASS.search(value) is not None
    return read_heading(name).role is Role.MEASURE


def _table(said: Sequence[Said], used: int) -> LineTable:
    spelled = {name.lower(): name for one in reversed(said) for name in one.names}
    names = list(dict.fromkeys(name.lower() for one in said for name in one.names))
    names = [spelled[name] for name in names]
    measure, labels = _measure_behind([one.label for one in said]) if "" in names else ("", [])
    head, labels = common_head(labels or [one.label for one in said])
    heads = (head, *(name or measure for name in names))
    rows = [[LineCell(text, said[0].line) for text in heads]] if any(heads) else []
    for one, label in zip(said, labels, strict=True):
        places = one.lines or (one.line,) * len(one.pairs)
        values = {
            name.lower(): LineCell(value, place)
            for (name, value), place in zip(one.pairs, places, strict=True)
        }
        empty = LineCell("", one.line)
        cells = [values.get(name.lower(), empty) for name in names]
        rows.append([LineCell(label, one.line), *cells])
    return LineTable(rows, used)


def _measure_behind(labels: Sequence[str]) -> tuple[str, list[str]]:
    """``XS width``, ``S width``: the measure that stands behind each size, and the sizes."""
    words = [label.rsplit(maxsplit=1) for label in labels]
    if any(len(split) < 2 or read_label(split[0]) is None for split in words):
        return "", []
    measures = {split[1].lower() for split in words}
    if len(measures) > 1 or read_heading(words[0][1]).role is not Role.MEASURE:
        return "", []
    return words[0][1], [split[0] for split in words]


def common_head(labels: Sequence[str]) -> tuple[str, list[str]]:
    """``Talla S``, ``Talla M``: the word that all labels begin with is the column's heading.

    ``UK 8`` keeps what it begins with: that is no word for sizes, nor for those who wear them.
    """
    words = [label.split() for label in labels]
    if read_heading(words[0][0]).role is not Role.BAND and all(map(_is_whole, labels)):
        return "", list(labels)
    first = {split[0].lower() for split in words}
    several = len(labels) > 1 or read_heading(words[0][0]).role is Role.LABEL
    if len(first) == 1 and several and all(len(split) > 1 for split in words):
        return words[0][0], [" ".join(split[1:]) for split in words]
    return "", list(labels)


def _is_whole(label: str) -> bool:
    """Whether a label is a size and begins with no word for sizes."""
    return is_size(label) and without_word_for_size(label) == label
