"""Ways along the back in many words: "from the 7th vertebra to the waist", "dalla nuca alla vita".

Each is one known measure. A text that begins at a place, "from 2 cm above the navel", tells where
something is measured and is no lower end of a range.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from functools import cache
from typing import Final

from charts.headings.words import Entry, entries
from charts.vocabulary import normal, spellings, vocabulary

_UNITS: Final = frozenset({"cm", "mm", "in", "inch", "inches", "kg", "lb", "lbs", "zoll"})


def with_known_ways(words: str) -> str:
    """The words of a heading in normal form, each way in the words that are known for it."""
    for pattern, phrase in _ways():
        way = pattern.search(words)
        if way is not None and not _goes_on(words[: way.start()], words[way.end() :]):
            return f"{words[: way.start()]}{phrase}{words[way.end() :]}"
    return words


def _goes_on(before: str, behind: str) -> bool:
    """From the waist over the shoulder to the waist: a way of three points is another one."""
    beside = {*before.split()[-1:], *behind.split()[:1]}
    return not beside.isdisjoint(_listed("to") | _listed("over"))


def begins_at_a_place(text: str) -> bool:
    """Whether a text says from where something is measured: more than the end of a range."""
    words = normal(text).split()
    if len(words) < 2 or words[0] not in _listed("from"):
        return False
    return any(_is_place(entries().get(word), word) for word in words[1:])


def _is_place(entry: Entry | None, word: str) -> bool:
    if word in _UNITS or word in _listed("articles") or not word.isalpha() or len(word) < 3:
        return False
    return entry is None or bool(entry.points) or "location" in entry.parts


@cache
def _ways() -> Sequence[tuple[re.Pattern[str], str]]:
    start, end, article = map(_one_of, ("from", "to", "articles"))
    found = []
    for row in vocabulary("ways")["measures"]:
        first, second = map(_one_of, row["points"])
        way = rf"\b(?:{start} )?(?:{article} )*{first} {end} (?:{article} )*{second}(?!\S)"
        found.append((re.compile(way), str(row["phrase"])))
    return tuple(found)


@cache
def _listed(name: str) -> frozenset[str]:
    words = vocabulary("ways")[name]
    return frozenset(spelling for word in words for spelling in spellings(word))


def _one_of(name: str) -> str:
    return "(?:" + "|".join(sorted(_listed(name), key=lambda one: (-len(one), one))) + ")"
