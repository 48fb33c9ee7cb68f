"""Who a chart is for: women, men, girls, boys, kids, baby, unisex, from words and compounds."""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator
from functools import cache, lru_cache
from typing import Final

from charts.cell_text import clean
from charts.headings.parts import Hit, hits_of
from charts.vocabulary import SPACELESS, normal, spellings, tables

BANDS: Final = ("women", "men", "girls", "boys", "kids", "baby", "unisex")
_LONGEST: Final = 200
_INNER: Final = re.compile(
    r"(?<=[^\W\d_A-Z])(?=[A-ZÀ-ÖØ-Þ])|(?<=[^\W\d_])(?=\d)|(?<=\d)(?=[^\W\d_])"
)
"""Borders within a word of a file's name: sizesKids, Damen2024."""
_TURKISH: Final = re.compile(r"[ğĞıİşŞ]")
_HEIGHT_IN_TURKISH: Final = re.compile(r"\bboy\b", re.IGNORECASE)
_WORD: Final = re.compile(r"[^\W\d_]+(?:['’][^\W\d_]+)*['’]?")
_BLANKLESS: Final = re.compile(f"[{SPACELESS}]+")
CHILDREN: Final = frozenset({"girls", "boys", "kids", "baby"})
_MASCULINE: Final = frozenset({"boys", "kids"})
"""A masculine that means all children until girls stand beside it: niños, bambini."""


@lru_cache(maxsize=16384)
def read_band(text: str) -> str | None:
    """The band ``text`` names: women, men, girls, boys, kids, baby, unisex; or None."""
    plain = _plain(text)
    apart = _INNER.sub(" ", plain)
    return _band_in(normal(plain)) or (_band_in(normal(apart)) if apart != plain else None)


def _plain(text: str) -> str:
    """A text without its marks, and in Turkish without the word for a height, ``boy``."""
    plain = clean(text[:_LONGEST])
    return _HEIGHT_IN_TURKISH.sub(" ", plain) if _TURKISH.search(plain) else plain


def band_of(hits: Iterable[Hit]) -> str | None:
    """The one band that the phrases of a heading name, compounds included; None without one."""
    named = [hit.entry.bands for hit in hits if hit.entry is not None and hit.entry.bands]
    girls = any("girls" in bands for bands in named)
    generic = "boys" if girls else "kids"
    return _one({one for bands in named for one in ({generic} if bands == _MASCULINE else bands)})


def apart(one: str | None, other: str | None) -> bool:
    """Whether nobody is of both bands: women and men, women and kids, girls and boys."""
    if one is None or other is None or one == other or "unisex" in {one, other}:
        return False
    if {one, other} <= CHILDREN:
        return {one, other} == {"girls", "boys"}
    return True


@lru_cache(maxsize=16384)
def bands_named(text: str) -> frozenset[str]:
    """Every band that a word of ``text`` names by itself: women and men in "Women & men".

    A masculine for all children is that of boys beside girls; "unisex" is a band of its own.
    """
    plain = _plain(text)
    words = _WORD.findall(_INNER.sub(" ", plain).replace("_", " "))
    found = {band for word in words if (band := read_band(word)) is not None}
    whole = read_band(text)
    if len(found) > 1:
        return frozenset(found)
    return frozenset({whole} if whole is not None else ())


@lru_cache(maxsize=16384)
def names_adults(text: str) -> bool:
    """Whether ``text`` has a word for adults, also as the head of a compound: Erwachsenengrößen."""
    return _adults().search(normal(clean(text[:_LONGEST]))) is not None


@cache
def _adults() -> re.Pattern[str]:
    words = {
        spelling
        for _, lists in tables("bands", "adult")
        for one in lists
        for spelling in spellings(one)
    }
    return re.compile("|".join(sorted(rf"\b{re.escape(word)}" for word in words if len(word) > 4)))


def _band_in(words: str) -> str | None:
    named = band_of(hits_of(words, only_bands=True))
    in_compounds = set(_in_compounds(words))
    if (in_compounds | {named}) & CHILDREN and _adults().search(words) is not None:
        return None  # "Kinder- und Erwachsenenweste"
    if named is None:
        return _one(in_compounds)
    return _one({named} | in_compounds)  # "Damen-/Herrenweste", "Damen- und Kinderweste"


def _in_compounds(words: str) -> Iterator[str]:
    """The bands of compounds: Kinderweste, damstorlekar, Jugend-Sicherheitsweste, 女装牛仔裤."""
    for pattern, of_stem in _compounds():
        for found in pattern.finditer(words):
            yield of_stem[found[1]]
    if not words.isascii():
        yield from (_spaceless()[1][found[0]] for found in _spaceless()[0].finditer(words))


@cache
def _spaceless() -> tuple[re.Pattern[str], dict[str, str]]:
    """What begins a word of a script without blanks, of two letters at least, and its band."""
    of_word = {
        spelling: band
        for band in BANDS
        for _, lists in tables("bands", band)
        for word in lists
        for spelling in spellings(word)
        if len(spelling) > 1 and _BLANKLESS.fullmatch(spelling)
    }
    return re.compile(rf"(?<![{SPACELESS}])(?:{_any(of_word) or '(?!)'})"), of_word


@cache
def _compounds() -> tuple[tuple[re.Pattern[str], dict[str, str]], ...]:
    """For each language a pattern of its compounds, and the band of each first part."""
    worn = dict(tables("compounds", "worn"))
    found = []
    for language, lists in tables("compounds"):
        of_stem = {
            spelling: band
            for band in BANDS
            for word in lists.get(band, ())
            for spelling in spellings(word)
        }
        lasts = {spelling for word in worn[language] for spelling in spellings(word)}
        pattern = re.compile(rf"\b({_any(of_stem)})[^\W\d_]*?(?:{_any(lasts)})\b")
        found.append((pattern, of_stem))
    return tuple(found)


def _any(words: Iterable[str]) -> str:
    return "|".join(sorted(words, key=lambda word: (-len(word), word)))


def _one(named: set[str]) -> str | None:
    """One band of several words: women and men are unisex, girls and boys are kids.

    Adults and children together are nobody in particular; "nobody" are phrases in which the word
    means something else: a barn jacket, baby blue.
    """
    bands = named - {"adult", "nobody"}
    if "adult" in named and bands & CHILDREN:
        return None
    if len(bands) <= 1:
        return next(iter(bands), None)
    if bands <= {"women", "men", "unisex"}:
        return "unisex"
    bands -= {"unisex"}
    if len(bands - {"kids"}) == 1 and not bands & {"women", "men"}:
        return (bands - {"kids"}).pop() if "baby" not in bands else "kids"
    return "kids" if bands <= CHILDREN else None
