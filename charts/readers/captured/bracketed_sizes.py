"""Sizes with what they are for in brackets: ``S (Up to 50 kg)`` a line, or all in one line.

``Sizes: S (chest 82-86 cm), M (chest 87-91 cm) and L (...)``. What stands in the brackets is a mass
with its unit, which only the wearer has, or measures by their names. A line above is the title.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import replace
from typing import Final, NamedTuple

from charts.dimensions import Role, read_heading
from charts.readers.captured.choosing import WORN
from charts.readers.captured.lines import Line, LineCell, LineTable
from charts.readers.captured.prose import common_head
from charts.readers.captured.said import MONEY, pair_of, unbulleted
from charts.readers.captured.size_names import may_measure
from charts.readers.captured.value_runs import is_size
from charts.readers.captured.values import is_value

_ITEM: Final = re.compile(r"(?P<before>[^()\[\]]*)[(\[](?P<said>[^()\[\]]{3,80})[)\]]")
_PARTING: Final = re.compile(
    r"\A\s*(?:[,;|/·•–-]|\b(?:and|or|und|oder|et|ou|y|o|e|en|of|och|eller|og|oraz|i|lub|ja)\b|\s)*",
    re.IGNORECASE,
)
_PARTS: Final = re.compile(r"\s*[;|]\s*|,\s+(?=[^\W\d_])|\s+/\s+(?=[^\W\d_]{3})")
_MASS: Final = re.compile(r"\d\s?(?:kgs?|kilos?|lbs?|pounds?|кг)\b", re.IGNORECASE)
_LENGTH: Final = re.compile(r"\d\s?(?:cm|mm|m|in(?:ch(?:es)?)?|ft|feet)\b|[\"'”″’′]", re.IGNORECASE)
_PREPOSITION: Final = re.compile(r"\s(?:in|en|em|i|w)\Z")
_END: Final = " .;,"
_LONGEST: Final = 600
_LONGEST_TITLE: Final = 60
_FEWEST: Final = 2
_MOST_LINES: Final = 40
_WORDS_OF_A_SIZE: Final = 3


class _Item(NamedTuple):
    """One size, and a value to each name, "" for a mass."""

    label: str
    pairs: tuple[tuple[str, str], ...]
    line: int

    @property
    def names(self) -> tuple[str, ...]:
        return tuple(name.lower() for name, _ in self.pairs)


def bracketed_size_table(lines: Sequence[Line]) -> LineTable | None:
    """The table that such sizes at the beginning of ``lines`` make; None when they make none."""
    if not lines or len(lines[0].text) > _LONGEST:
        return None
    if "(" in lines[0].text or "[" in lines[0].text:
        return _listed(lines)
    below = next((at for at, line in enumerate(lines) if at and line.text.strip()), None)
    if below is None or len(lines[0].text) > _LONGEST_TITLE or any(map(str.isdigit, lines[0].text)):
        return None
    table = _listed(lines[below:])
    if table is None or WORN.search(lines[0].text):
        return None
    title = [LineCell(lines[0].text.strip(" :"), lines[0].number)]
    return replace(table, rows=[title, *table.rows], used=table.used + below)


def _listed(lines: Sequence[Line]) -> LineTable | None:
    found: list[_Item] = []
    intro = ""
    used = 0
    for at, line in enumerate(lines[:_MOST_LINES]):
        if not line.text.strip():
            continue
        before, items = _items(line)
        if not items or (found and before) or not _go_on(found, items):
            break
        intro, used = intro or before, at + 1
        found += items
    if len(found) < _FEWEST:
        return None
    rows = _rows(found)
    title = _PREPOSITION.sub("", intro)  # "Available in": no inches
    said = [[LineCell(title, found[0].line)]] if title else []
    return LineTable([*said, *rows], used)


def _go_on(found: Sequence[_Item], items: Sequence[_Item]) -> bool:
    """Whether all are of one list: the same names, and no size again."""
    whole = [*found, *items]
    labels = {one.label.lower() for one in whole}
    return len(labels) == len(whole) and len({one.names for one in whole}) == 1


def _items(line: Line) -> tuple[str, list[_Item]]:
    """The words before the first size of a line, and its sizes; none where it says more."""
    text = unbulleted(line.text)
    if len(text) > _LONGEST or MONEY.search(text) or WORN.search(text):
        return "", []
    found: list[_Item] = []
    intro = ""
    end = 0
    for match in _ITEM.finditer(text):
        before, label = _label(match["before"])
        pairs = _pairs(match["said"].strip())
        if match.start() != end or not label or not pairs or (found and before):
            return "", []
        intro = intro or before
        found.append(_Item(label, pairs, line.number))
        end = match.end()
    alone = len(found) == 1 and bool(intro)
    return ("", []) if text[end:].strip(_END) or alone else (intro, found)


def _label(text: str) -> tuple[str, str]:
    """What stands before a size, and the size that ends ``text``; "" where none does."""
    text = _PARTING.sub("", text).strip()
    words = text.split()
    for count in range(min(_WORDS_OF_A_SIZE, len(words)), 0, -1):
        size = " ".join(words[-count:])
        before = " ".join(words[:-count])
        if is_size(size) and not any(map(str.isdigit, before)):
            if read_heading(before).role is Role.LABEL and not before.endswith(":"):
                return "", text  # "Size S": the word belongs to each of them
            return before.rstrip(" :"), size
    return "", ""


def _pairs(text: str) -> tuple[tuple[str, str], ...]:
    """The mass that a bracket gives, or its measures by their names; none for anything else."""
    if is_value(text):
        return (("", text),) if _MASS.search(text) and not _LENGTH.search(text) else ()
    pairs = [pair_of(part.strip()) for part in _PARTS.split(text) if part.strip()]
    named = [pair for pair in pairs if pair is not None and pair[0]]
    known = all(may_measure(name) for name, _ in named)
    names = {name.lower() for name, _ in named}
    return tuple(named) if known and len(names) == len(pairs) else ()


def _rows(found: Sequence[_Item]) -> list[list[LineCell]]:
    head, labels = common_head([one.label for one in found])
    names = [name for name, _ in found[0].pairs]
    titles = [[LineCell(text, found[0].line) for text in (head, *names)]]
    rows = titles if any((head, *names)) else []
    for one, label in zip(found, labels, strict=True):
        told = {name.lower(): value for name, value in one.pairs}
        texts = (label, *(told[name.lower()] for name in names))
        rows.append([LineCell(text, one.line) for text in texts])
    return rows
