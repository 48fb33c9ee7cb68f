"""Which of a table's headings a text names: by what they measure, their words, or their letters."""

from __future__ import annotations

import re
from collections.abc import Sequence
from functools import lru_cache
from typing import Final

from charts.dimensions import read_heading
from charts.headings.clause_words import listed, plain_words
from charts.headings.parts import Hit, hits_of
from charts.headings.reading import Role
from charts.schema import Dimension
from charts.vocabulary import SPACELESS

_REFERENCE: Final = re.compile(
    r"[(\[]\s*([A-Z]|\d{1,2})\s*[)\]]|^\s*([A-Z]|\d{1,2})\s*(?:[.):]|//|\s(?=[^\W\d_]{3}))"
)
_MARKS: Final = re.compile(r"[*†‡§¹²³⁴⁵⁶⁷⁸⁹]+")
_SHORTEST: Final = 4
"""Letters of a word that may be met with another ending."""
_OF_THE_BODY: Final = frozenset({Dimension.HEIGHT, Dimension.WEIGHT, Dimension.AGE})
_SIDES: Final = ("garment", "genitive", "body", "body_genitive", "half")
"""Lists of words that say whose a measure is, and name none: ``Body height`` is not meant by
"body measurements"."""
_SPACELESS: Final = re.compile(f"[{SPACELESS}]+$")
_ENDING: Final = 3
"""Letters by which two forms of a word may differ (common practice, no source)."""


@lru_cache(maxsize=4096)
def named_in(text: str, headings: tuple[str, ...]) -> frozenset[str]:
    """The headings that ``text`` names; none where it names no measure of the table."""
    if not text.strip():
        return frozenset()
    lettered = by_letters(text, headings)
    if lettered:
        return lettered
    words = plain_words(_MARKS.sub(" ", text))
    hits = hits_of(" ".join(words))
    measured = frozenset().union(*(_by_dimension(hit, headings) for hit in hits))
    whole = frozenset(one for one in headings if _is_whole(one, words))
    if whole or measured:
        return _exact(whole, measured)
    return _by_some_words(words, headings)


def _exact(whole: frozenset[str], measured: frozenset[str]) -> frozenset[str]:
    """Headings named in full, and those measured whose dimension no full name has."""
    taken = {dimension for one in whole for dimension in _dimensions(one)}
    taken.discard(Dimension.OTHER)
    return whole | {one for one in measured if taken.isdisjoint(_dimensions(one))}


def by_letters(text: str, headings: Sequence[str]) -> frozenset[str]:
    """``A, B and C``: the letters or the numbers that stand beside headings."""
    tokens = re.findall(r"[^\W_]+", text)
    letters = [token for token in tokens if re.fullmatch(r"[A-Z]|\d{1,2}", token)]
    others = {token.lower() for token in tokens} - {token.lower() for token in letters}
    if not letters or not others <= listed("joins"):
        return frozenset()
    return frozenset(one for one in headings if reference(one) in letters)


def reference(heading: str) -> str | None:
    """The letter or the number that a heading bears: ``Pecho (A)``, ``3. Back length``."""
    found = _REFERENCE.search(heading)
    return (found[1] or found[2]) if found else None


def _by_dimension(hit: Hit, headings: Sequence[str]) -> frozenset[str]:
    """The headings of the one dimension that a phrase is a word for."""
    if hit.entry is None:
        return frozenset()
    said = {one.dimension for one in hit.entry.columns if one.role is Role.MEASURE}
    if len(said) != 1 or said <= {None, Dimension.OTHER}:
        return frozenset()
    return frozenset(one for one in headings if said & _dimensions(one))


@lru_cache(maxsize=2048)
def _dimensions(heading: str) -> frozenset[Dimension]:
    """What a heading may measure; a false friend is not named by a word for how tall one is."""
    reading = read_heading(_MARKS.sub(" ", heading))
    if not reading.candidates:
        return frozenset({reading.dimension} if reading.dimension else ())
    either = {dimension for _, dimension in reading.candidates if dimension is not None}
    return frozenset(either - _OF_THE_BODY)


@lru_cache(maxsize=2048)
def name_words(heading: str) -> tuple[str, ...]:
    """The words of a heading that tell it from others."""
    bare = _REFERENCE.sub(" ", _MARKS.sub(" ", heading))
    small = listed("articles") | listed("joins") | listed("links")
    return tuple(word for word in plain_words(bare) if word not in small and not word.isdigit())


def _is_whole(heading: str, words: Sequence[str]) -> bool:
    own = name_words(heading)
    return bool(own) and all(any(_is_in(one, word) for word in words) for one in own)


def _is_in(part: str, word: str) -> bool:
    """Whether a word of a text is a word of a heading, or holds it where no blanks part words."""
    return _same(part, word) or (len(part) > 1 and part in word and bool(_SPACELESS.match(part)))


def _by_some_words(words: Sequence[str], headings: Sequence[str]) -> frozenset[str]:
    """The headings that share most words with a text that names none in full."""
    shared = {one: sum(_shares(part, words) for part in name_words(one)) for one in headings}
    most = max(shared.values(), default=0)
    return frozenset(one for one, count in shared.items() if most and count == most)


def _shares(part: str, words: Sequence[str]) -> bool:
    telling = len(part) >= _SHORTEST and not any(part in listed(kind) for kind in _SIDES)
    return telling and any(_same(part, word) for word in words)


def _same(one: str, other: str) -> bool:
    """Whether two words are forms of one: ``Contorno`` and ``contornos``."""
    if one == other:
        return True
    shorter = min(len(one), len(other))
    longer = max(len(one), len(other))
    common = next((n for n in range(shorter) if one[n] != other[n]), shorter)
    room = 1 if shorter < _SHORTEST + 2 else _ENDING - 1
    return common >= _SHORTEST - 1 and longer - common <= room and shorter - common <= 1
