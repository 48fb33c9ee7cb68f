"""Sentences that are rows of a table: ``Talla S: Cintura 71-76 cm | Cadera 86-91 cm``.

A run of lines makes a table when each has a label, the same names and a value to each name.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass, replace
from functools import lru_cache
from typing import Final

from charts.dimensions import Role, read_heading
from charts.readers.line_values import is_glued, is_value, without_limit
from charts.readers.lines import Line, LineCell, LineTable
from charts.readers.value_runs import is_size, named_values, sized_values

_BULLET: Final = re.compile(r"\s*(?:[•▪◦●○·*‣»>✓–-]\s+|\d{1,2}[.)]\s+(?=\D))?")
_LABEL_END: Final = re.compile(r"\s*[:=]\s*|\s+[-–—]\s*")
_NO_LABEL: Final = re.compile(r"[\t;|,\"]|\S {2,}\S|\w / \w")
_PART_END: Final = re.compile(
    r"\s*[|;•·]\s*|,\s+(?=[^\d\s])|(?<=[^\W\d_]),\s+(?=\d)|(?<=[^\W\d_])\.\s+(?=\d)"
)
_NAME_FIRST: Final = re.compile(
    r"(?P<name>[^\d<>≤≥~]*?)\s*[:=]?\s*(?P<value>(?:[<>≤≥~]|(?<=\s)\+(?=\d))?\s*\d.*)"
)
_VALUE_FIRST: Final = re.compile(r"(?P<value>[<>≤≥~]?\s*\d.*?)\s+(?P<name>[^\W\d_]{3}[^\d]*)")
_SENTENCE: Final = re.compile(
    r"\s*(?P<label>[^=:.]{1,20}?)\s*[=:]\s*(?P<value>[<>≤≥~]?\s*\d[^=:]*?)"
    r"\s+(?P<name>[^\W\d_][^\d.=:]{2,30}?)\s*(?:\.|\Z)"
)
_TITLE: Final = re.compile(r"[^\d:=]{3,60}:")
_IN_BRACKETS: Final = re.compile(
    r"(?P<label>[^\d()][^()]{0,18}?|\d?X{1,4}[SL])\s*"
    r"\((?P<value>[^()]*\d\s?(?:cms?|kgs?|lbs?|pounds?|kilos?)\b[^()]*)\)\.?",
    re.IGNORECASE,
)
"""A size and, with its unit, what it is for: ``L (80kg to 105kg / 176-231lbs)``."""
_NAMED_IN_BRACKETS: Final = re.compile(
    r"(?P<label>[^\W\d_][^\d()]{0,18}?|\d?X{1,4}[SL])\s*"
    r"\((?P<name>[^\d()<>≤≥~]{3,30}?)\s*(?P<value>[<>≤≥~]?\s*\d[^()]*)\)\.?"
)
"""A size and a named measure of it: ``Small (Height < 5'4")``."""
_MONEY: Final = re.compile(r"[€$£¥]|\b(?:EUR|USD|GBP|CHF|PLN|SEK|DKK|NOK)\b|\d{5}")
"""Prices, and numbers of pieces or articles: no chart's figures are so long."""
_MASS: Final = re.compile(r"\d\s*(?:kgs?|lbs?|pounds?|kilos?|кг)\b", re.IGNORECASE)
_STROKE: Final = re.compile(r"\s*/\s*")
_STROKE_APART: Final = re.compile(r"\s+/\s+")
_METRIC: Final = re.compile(r"\d\s*(?:cm|mm)\b", re.IGNORECASE)
_INCHES: Final = re.compile(r"[\d½¼¾⅛⅜⅝⅞]\s*(?:[\"”″]|''|in(?:ch(?:es)?)?\b)", re.IGNORECASE)
_LONGEST_LABEL: Final = 28
_PAIRS_ENOUGH: Final = 3  # one line alone makes a row with so many names
_LONGEST_LINE: Final = 2_000


@dataclass(frozen=True, slots=True)
class _Said:
    """One line taken apart: a label, and a value to each name ("" when there is one value).

    ``lines`` tells where each pair stands when that is not the line of the label.
    """

    label: str
    pairs: tuple[tuple[str, str], ...]
    line: int
    lines: tuple[int, ...] = ()

    @property
    def names(self) -> tuple[str, ...]:
        return tuple(name for name, _ in self.pairs)


def prose_table(lines: Sequence[Line]) -> LineTable | None:
    """The table that ``lines`` begin with; None when they begin with none."""
    if not may_begin_prose(lines):
        return None
    if _taken_apart(lines[0]) is None:
        return _sentences(lines[0]) or _records(lines)
    said: list[_Said] = []
    used = 0
    for line in lines:
        if not line.text.strip():
            used += 1
            continue
        found = _taken_apart(line)
        if found is None or (said and not _goes_with(said, found)):
            break
        said.append(found)
        used = lines.index(line) + 1
    alone = len(said) == 1 and len(said[0].pairs) >= _PAIRS_ENOUGH and all(said[0].names)
    return _table(said, used) if len(said) > 1 or alone else None


def may_begin_prose(lines: Sequence[Line]) -> bool:
    """Whether the first line, or the filled one after it, can be taken apart; cheap."""
    if not lines or not lines[0].text.strip():
        return False
    if _taken_apart(lines[0]) is not None or "=" in lines[0].text or ":" in lines[0].text:
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


def _rows_from(line: Line, start: int) -> tuple[list[_Said], int]:
    """The rows that follow each other from a place of a line, and where they end."""
    found: list[_Said] = []
    end = start
    while len(line.text) <= _LONGEST_LINE and (match := _SENTENCE.match(line.text, end)):
        if not is_value(match["value"]):
            break
        found.append(_Said(match["label"], ((match["name"], match["value"]),), line.number))
        end = match.end()
    return found, end


def _records(lines: Sequence[Line]) -> LineTable | None:
    """A title and the same names under each: ``Size S`` / ``Chest: 86-91`` / ``Waist: 71-76``."""
    filled = [line for line in lines if line.text.strip()]
    said: list[_Said] = []
    at = 0
    while at < len(filled) and _name_and_value(filled[at]) is None:
        title = filled[at]
        pairs, places = [], []
        at += 1
        while at < len(filled) and (pair := _name_and_value(filled[at])) is not None:
            pairs.append(pair)
            places.append(filled[at].number)
            at += 1
        record = _Said(_unbulleted(title.text), tuple(pairs), title.number, tuple(places))
        if len(pairs) < 1 or (said and record.names != said[0].names):
            break
        said.append(record)
    if len(said) < 2 or any(len(one.label) > _LONGEST_LABEL for one in said):
        return None
    last = filled[len(said) * (1 + len(said[0].pairs)) - 1]
    return _table([part for one in said for part in _by_strokes(one)], lines.index(last) + 1)


def _by_strokes(said: _Said) -> list[_Said]:
    """``Bust / Back length:`` over ``S: 32 in / 20 in``: a record for each measure of the title.

    Every value needs as many parts as there are measures, in the same units: 32 in / 81 cm is one.
    """
    names = _STROKE.split(said.label.rstrip(" :"))
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


def _alike(parts: Sequence[str]) -> bool:
    """Whether all parts are values that print the same units."""
    units = {(bool(_METRIC.search(one)), bool(_INCHES.search(one))) for one in parts}
    return len(units) == 1 and all(map(is_value, parts))


def _name_and_value(line: Line) -> tuple[str, str] | None:
    """``Chest: 86-91 cm`` or ``Chest 86-91 cm``: one name and its value."""
    found = _taken_apart(line)
    if found is not None:
        return (found.label, found.pairs[0][1]) if found.names == ("",) else None
    if is_glued(line.text) or len(line.text) > _LONGEST_LINE or _MONEY.search(line.text):
        return None
    pair = _pair(_unbulleted(line.text))
    if pair is None or not pair[0] or len(pair[0]) > _LONGEST_LABEL or _NO_LABEL.search(pair[0]):
        return None
    return pair


def _unbulleted(text: str) -> str:
    bullet = _BULLET.match(text)
    return text[bullet.end() if bullet else 0 :].strip()


@lru_cache(maxsize=4096)
def _taken_apart(line: Line) -> _Said | None:
    if is_glued(line.text) or len(line.text) > _LONGEST_LINE or _MONEY.search(line.text):
        return None
    text = _unbulleted(line.text)
    whole = _IN_BRACKETS.fullmatch(text)
    if whole is not None and is_size(whole["label"]) and is_value(whole["value"]):
        return _Said(whole["label"], (("", whole["value"].strip()),), line.number)
    if (said := _named_in_brackets(text, line.number)) is not None:
        return said
    for end in _LABEL_END.finditer(text):
        label = text[: end.start()].strip()
        run = (named_values(text) or sized_values(text)) if label[-1:].isdigit() else None
        if run is not None and len(run.parts) > 1:
            return None  # "26 - 32 33 - 38", "2Y 1 - 2Y 86 cm": ranges, no label and its values
        if not label or len(label) > _LONGEST_LABEL or _NO_LABEL.search(label):
            return None
        parts = [part for part in _PART_END.split(text[end.end() :]) if part.strip()]
        pairs = [pair for part in parts if (pair := _pair(part.strip().rstrip(".")))]
        if pairs and len(pairs) == len(parts) and len({name for name, _ in pairs}) == len(pairs):
            return _Said(label, tuple(pairs), line.number)
    return None


def _named_in_brackets(text: str, number: int) -> _Said | None:
    found = _NAMED_IN_BRACKETS.fullmatch(text)
    if found is None or not is_size(found["label"]) or not is_value(found["value"]):
        return None
    name, limit = without_limit(found["name"].strip(" :="))
    if read_heading(name).role is not Role.MEASURE:
        return None
    return _Said(found["label"], ((name, limit + found["value"].strip()),), number)


def _pair(part: str) -> tuple[str, str] | None:
    if is_value(part):
        return "", part
    first = _NAME_FIRST.fullmatch(part)
    if first is not None and is_value(first["value"]):
        name, limit = without_limit(first["name"])
        return name.rstrip(" :="), limit + first["value"]
    last = _VALUE_FIRST.fullmatch(part)
    if last is not None and is_value(last["value"]):
        return last["name"].strip(), last["value"]
    return None


def _goes_with(said: Sequence[_Said], other: _Said) -> bool:
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


def _table(said: Sequence[_Said], used: int) -> LineTable:
    spelled = {name.lower(): name for one in reversed(said) for name in one.names}
    names = list(dict.fromkeys(name.lower() for one in said for name in one.names))
    names = [spelled[name] for name in names]
    head, labels = common_head([one.label for one in said])
    heading = [LineCell(text, said[0].line) for text in (head, *names)]
    rows = [heading] if any((head, *names)) else []
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


def common_head(labels: Sequence[str]) -> tuple[str, list[str]]:
    """``Talla S``, ``Talla M``: the word that all labels begin with is the column's heading."""
    words = [label.split() for label in labels]
    first = {split[0].lower() for split in words}
    if len(first) == 1 and all(len(split) > 1 for split in words):
        return words[0][0], [" ".join(split[1:]) for split in words]
    return "", list(labels)
