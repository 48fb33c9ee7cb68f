"""A heading cut into what it is made of: its units, its reference letter, the phrases it holds."""

from __future__ import annotations

import re
from collections.abc import Sequence
from functools import lru_cache
from typing import Final, NamedTuple

from charts.cell_text import clean
from charts.headings.pointers import without_pointers
from charts.headings.reading import Role
from charts.headings.short import written_out
from charts.headings.ways import with_known_ways
from charts.headings.words import (
    LONGEST_PHRASE,
    Entry,
    as_printed,
    bare_letters,
    entries,
    glued,
    longest_from,
)
from charts.quantities import Unit
from charts.unit_words import named_units
from charts.vocabulary import SPACELESS, normal

_LONGEST: Final = 200
# A number with a unit is a place on the body ('High Hip 4" below waist'), no value and no unit.
_MEASURED: Final = re.compile(
    r"(?<![\w/])\d+(?:[.,]\d+)?(?:\s?-\s?\d+(?:[.,]\d+)?)?\s?(?:\"|'|(?:cm|mm|in|inch|inches|kg|lbs?)\b)",
    re.IGNORECASE,
)
_NAME_OF_FIELD: Final = re.compile(r"(?<=[a-z]{2})(?=[A-Z][a-z])")
"""Where a word begins in the name that a program gives a column: chestMin, bodyHeightMaxCm."""
_FOOTNOTE: Final = re.compile(r"(?<=[^\W\d_]{3})\d{1,2}(?![\w/])")
_RAISED: Final = re.compile(r"(?<=[^\W\d_]{2})\s?[⁰¹²³⁴-⁹]+(?!\w)")
"""The number of a note behind a word: ``Waist¹ (cm)``."""
_REFERENCE: Final = re.compile(
    r"^\s*(?:[(\[](?:[A-Z]|\d{1,2})[)\]]|(?:[A-Z]|\d{1,2})[.):]|[A-Z](?=\s)|\d{1,2}(?=\s)"
    r"|[\u2460-\u2473])[\s:./-]*(?=[^\W\d_]{2})"
    r"|[(\[](?:[A-Z]|\d{1,2})[)\]]"
    r"|\s[-/]\s*[A-Z]\s*$"
)

_LISTED: Final = re.compile(r"[^\W\d_]\s*[/&+,;|]\s*[^\W\d_]")
_SPACELESS: Final = re.compile(f"[{SPACELESS}]")


class Hit(NamedTuple):
    """A phrase of a heading: what it can be, None for a word that is not known."""

    phrase: str
    entry: Entry | None


class Parts(NamedTuple):
    """A heading taken apart. ``words`` is the whole of it in normal form, without its units.

    ``printed`` are its words with their accents, the units too. ``listed``: a sign parts two words
    of it, "height / chest", so that the one may be measured beside the other.
    """

    units: tuple[Unit, ...]
    words: str
    hits: tuple[Hit, ...]
    capitals: bool
    printed: str
    listed: bool


def parts_of(text: str) -> Parts:
    """Take a heading apart; a text too long for a heading is cut."""
    plain = _NAME_OF_FIELD.sub(" ", clean(text[:_LONGEST]).replace("\n", " "))
    plain = plain if plain.isascii() else _RAISED.sub("", plain)
    without_places = _MEASURED.sub(" ", plain)
    units, _ = named_units(without_places)
    words = _words(without_places)
    if words not in entries():
        bare = _REFERENCE.sub(" ", _FOOTNOTE.sub("", without_places))
        words = _words(bare)
        if words not in entries():
            words = written_out(named_units(bare)[1]) or words
    if words not in entries():
        words = with_known_ways(without_pointers(words))
    words = words if words in entries() else glued().get(bare_letters(words), words)
    listed = _LISTED.search(named_units(without_places)[1]) is not None
    return Parts(units, words, tuple(hits_of(words)), plain.isupper(), as_printed(plain), listed)


def _words(text: str) -> str:
    return normal(named_units(text)[1])


def hits_of(words: str, *, only_bands: bool = False) -> list[Hit]:
    """The longest known phrases from left to right; unknown words one by one."""
    rest = [piece for word in words.split() for piece in _apart(word)]
    found: list[Hit] = []
    while rest:
        longest = min(LONGEST_PHRASE, len(rest), longest_from().get(rest[0], 1))
        for count in range(longest, 0, -1):
            phrase = " ".join(rest[:count])
            entry = entries().get(phrase)
            if entry is not None and only_bands and not entry.bands and not _measures(entry, count):
                entry = None
            if entry is not None or count == 1:
                found.append(Hit(phrase, entry))
                del rest[:count]
                break
    return found


def measure_elsewhere(parts: Parts, language: str | None) -> Hit | None:
    """What a heading of one word is in a language where the word is a measure.

    Its accents tell it, a unit behind it does, or the ``language`` of the headings beside it.
    """
    entry = parts.hits[0].entry if len(parts.hits) == 1 else None
    if entry is None:
        return None
    told = (entry.accented[word] for word in parts.printed.split() if word in entry.accented)
    meanings = next(told, None)
    if meanings is None:
        own = [one for one in entry.with_unit if one.language == language]
        meanings = entry.with_unit if parts.units else own
    if not any(one.role is Role.MEASURE for one in meanings):
        return None
    return Hit(parts.words, Entry(entry.spelled, meanings))


def _measures(entry: Entry, count: int) -> bool:
    """Whether it is a phrase of several words for a measure: "boy uzunluğu" are no boys."""
    return count > 1 and any(one.role is Role.MEASURE for one in entry.columns)


def _apart(word: str) -> Sequence[str]:
    """A word of a script without spaces as the known words it consists of, else as it is."""
    if word.isascii() or word in entries() or not _SPACELESS.match(word):
        return (word,)
    return _known_words(word) or (word,)


@lru_cache(maxsize=4096)
def _known_words(word: str) -> tuple[str, ...]:
    """The known words that ``word`` consists of, the longest first; none where a part is left."""
    for end in range(len(word), 0, -1):
        if word[:end] in entries():
            behind = _known_words(word[end:])
            if behind or end == len(word):
                return (word[:end], *behind)
    return ()
