"""A legend told off in one line: ``A = Chest, B = Waist, C = Hips. All in cm``.

Or in lines that follow each other as their letters do, with nothing but a blank behind each.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from itertools import pairwise
from typing import Final

from charts.dimensions import HeadingReading, Role
from charts.layout.looks import look
from charts.unit_words import named_units

_MARK: Final = re.compile(
    r"(?:(?<=^)|(?<=[\s,;/|(]))[(\[]?([A-Z])[)\]]?\s*(?:[=:.)]\s*|[-–—]\s+|(?=\s\S))"
)
_BARE: Final = re.compile(r"[(\[]?([A-Z])[)\]]?\s+([^\W\d_][^\n]{2,60})")
_BETWEEN: Final = re.compile(
    r"(?<![\s,;/|.–—-])[\s,;/|.–—-]++$|(?<!\s)\s*+\b(?:and|und|et|en|e|y|och|og|i|a)\s*$"
)
_ENDS: Final = re.compile(r"[.!?;]\s|\s[(\[]|,\s")
_SENTENCE_END: Final = re.compile(r"[.!?;]\s")
"""Where the last name may end and a sentence about all of them begin."""


def entries_in_a_row(line: str) -> list[tuple[str, str]]:
    """Each letter of a line with its name; none where the letters do not follow each other.

    Every name must be one of a measure: an A or an I is a word of many a sentence.
    """
    marks = list(_in_order(line))
    if len(marks) < 2 or line[: marks[0].start()].strip(" :") not in _NOTHING:
        return []
    parts = [line[one.end() : after.start()] for one, after in pairwise(marks)]
    names = [_name(part) for part in parts]
    united = any(look(name).heading.unit for name in names)
    names.append(_last(line[marks[-1].end() :], united=united))
    if not all(names):
        return []
    return [(one[1], name) for one, name in zip(marks, names, strict=True)]


_NOTHING: Final = frozenset({"", "Legend", "Key", "Legende", "Légende", "Legenda", "Leyenda"})


def entries_below_each_other(lines: Sequence[str]) -> list[tuple[str, str]]:
    """Each letter with its name where ``A  Chest`` stands right above ``B  Waist``.

    A letter alone before a word is no entry: lines above or below it go on with the alphabet.
    """
    found = [_BARE.fullmatch(line.strip()) for line in lines]
    entries = [(one[1], one[2]) if one and _name(one[2]) else None for one in found]
    together = [
        bool(one and after and ord(after[0]) == ord(one[0]) + 1) for one, after in pairwise(entries)
    ]
    beside = zip(entries, (False, *together), (*together, False), strict=False)
    return [one for one, above, below in beside if one and (above or below)]


def _in_order(line: str) -> Iterator[re.Match[str]]:
    """The marks whose letters follow each other in the alphabet."""
    last = ""
    for mark in _MARK.finditer(line):
        if not last or ord(mark[1]) == ord(last) + 1:
            last = mark[1]
            yield mark


def _name(text: str) -> str:
    """The measure that is named before the next letter, else nothing."""
    bare = text.strip()
    while (shorter := _BETWEEN.sub("", bare)) != bare:
        bare = shorter
    return bare if _measures(look(bare).heading) else ""


def _measures(heading: HeadingReading) -> bool:
    """A word for a measure, or one that is a size as well: a letter stands for no size."""
    return Role.MEASURE in {heading.role, *(role for role, _ in heading.candidates)}


def _last(text: str, *, united: bool) -> str:
    """The last measure, without what is said of all of them: its unit, unless each has its own."""
    if united and (own := _name(_SENTENCE_END.split(text)[0])):
        return own
    end = _ENDS.search(text)
    name = _name(text[: end.start()] if end else text)
    return " ".join(named_units(name)[1].split()) if name else ""
