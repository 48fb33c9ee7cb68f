"""Fields of neighbouring lines compared: what runs together is cut where other lines begin.

A spreadsheet printed without rules leaves a hair's breadth between its columns, less than
between two words. Only what stands under each other in several lines tells them apart.
"""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Sequence
from typing import Final

from charts.readers.captured.values import is_blank, is_value
from charts.readers.print_words import Field, PrintLine, Word, are_touching

_UNIT_NEAR: Final = 4.0
"""Letters' sizes that a unit may stand behind its figure."""
_PLAIN: Final = re.compile(r"\d[\d.,]*(?:\s?[-–—]\s?\d[\d.,]*)?")
_FRACTION: Final = re.compile(r"\d{1,2}[/⁄]\d{1,2}.*")
_LEAST_LINES: Final = 3


def compared(lines: Sequence[PrintLine]) -> list[PrintLine]:
    """``lines`` with their fields cut where columns begin, and units put to their figures."""
    begins = _beginnings(lines)
    least = max(_LEAST_LINES, len(lines) // 2)
    return [
        PrintLine(tuple(_with_units(_cut(line, begins, least)))) if len(line.fields) > 1 else line
        for line in lines
    ]


def _beginnings(lines: Sequence[PrintLine]) -> Counter[int]:
    """At how many lines a word begins at each place, to the point and its neighbours."""
    found: Counter[int] = Counter()
    for line in lines:
        places = {round(word.x0) for field in line.fields for word in field.words}
        found.update(places | {place + 1 for place in places} - places)
    return found


def _cut(line: PrintLine, begins: Counter[int], least: int) -> list[Field]:
    fields: list[Field] = []
    for one in line.fields:
        start = 0
        for at in range(1, len(one.words)):
            left, right = one.words[start:at], one.words[at:]
            column = _begins_column(one.words[at], begins, least)
            if column and not are_touching(left[-1], right[0]) and _are_two(left, right):
                fields.append(Field.of(left))
                start = at
        fields.append(Field.of(one.words[start:]))
    return fields


def _begins_column(word: Word, begins: Counter[int], least: int) -> bool:
    return max(begins[round(word.x0)], begins[round(word.x0) + 1]) >= least


def _are_two(left: Sequence[Word], right: Sequence[Word]) -> bool:
    """Whether two runs of words are two cells: what is one value or one heading stays together."""
    before, after = Field.of(left).text, Field.of(right[:1]).text
    if not is_value(after) or _FRACTION.fullmatch(after):
        return False
    if is_value(f"{before} {after}"):
        return bool(_PLAIN.fullmatch(before) and _PLAIN.fullmatch(after))
    return True


def _with_units(fields: Sequence[Field]) -> list[Field]:
    found: list[Field] = []
    for one in fields:
        if found and _is_unit_of(one, found[-1]):
            found[-1] = Field.of((*found[-1].words, *one.words))
        else:
            found.append(one)
    return found


def _is_unit_of(one: Field, before: Field) -> bool:
    alone = not is_value(one.text) and not is_blank(one.text)
    together = is_value(before.text) and is_value(f"{before.text} {one.text}")
    return alone and together and one.x0 - before.x1 < _UNIT_NEAR * one.size
