"""Units named by words: behind a figure, and in the prose of headings, captions and notes."""

from __future__ import annotations

import re
from collections.abc import Mapping
from functools import cache, lru_cache
from typing import Final

from charts.cell_text import narrow
from charts.quantities import Unit
from charts.vocabulary import SPACELESS, tables, unaccented, vocabulary

MONTHS: Final = "months"
"""A spelling of the vocabulary that is no unit of the schema: months become years."""

_COMPOUNDS: Final = (
    (re.compile(r"(?<![^\W_])st\.?\s?[-/&+]?\s?lbs?(?![^\W_])"), "stone/lb"),
    (re.compile(r"(?<![^\W_])(?:ft|feet)\.?\s?[-/&+]?\s?ins?(?![^\W_])"), "ft/inch"),
)
"""Stones with pounds and feet with inches, in whatever way the two are joined: st-lb, ft in."""
_OPENERS: Final = r"[(\[{/|,;&]\s*|\b(?:or|and|und|oder|et|ou|y|o|e|en|of)\s+"
_CLOSERS: Final = r"\s*(?:[)\]}/|,;&]|$)|\s+(?:or|and|und|oder|et|ou|y|o|e|en|of)\b"
_BEFORE: Final = rf"(?<![^\W_{SPACELESS}])"
_BEHIND: Final = rf"(?![^\W_{SPACELESS}])"
_PREPOSITION: Final = r"(?:\b(?:in|en|em|w|i|v|в|im|als|as|measured in)\s+)?"


def _spelled(unit: str, *keys: str) -> set[str]:
    lists = [vocabulary("units")[unit], *(table for _, table in tables("units", unit))]
    return {unaccented(word) for table in lists for key in keys for word in table.get(key, ())}


@cache
def figure_units() -> Mapping[str, str]:
    """Spelling behind a figure, folded, to the value of its unit (or "months")."""
    return {
        word: unit
        for unit in vocabulary("units")
        if unit != "format"
        for word in _spelled(unit, "words", "figure", "bracket", "marks")
    }


@cache
def _prose() -> re.Pattern[str]:
    """One group for words that always are units, one for those that need brackets round them."""
    names = [name for name in vocabulary("units") if name not in {"format", MONTHS}]
    plain = {word for name in names for word in _spelled(name, "words")}
    bracket = {word for name in names for word in _spelled(name, "bracket", "marks")}
    return re.compile(
        rf"(?P<pre>{_PREPOSITION}){_BEFORE}(?P<word>{_either(plain)})(?:\.(?!\w))?{_BEHIND}"
        rf"|(?P<open>{_OPENERS}|^\s*)(?P<bracket>{_either(bracket)})\.?(?={_CLOSERS})"
        rf"|(?P<tail>\b(?:in|en|em|w)\s+)(?P<last>m|st|g)(?=\s*[)\]]|\s*$)"
        rf"|(?<![^\W_])(?P<joined>in)(?=\s*(?:/|&|,|\bor\b|\band\b|\bund\b|\boder\b)\s*"
        rf"(?:{_either(plain)})(?![^\W_]))"
        r"|(?<=[\w)\]*])\s+(?P<end>in)\.?(?=\s*$)"
    )


def _either(words: set[str]) -> str:
    return "|".join(re.escape(word) for word in sorted(words, key=lambda word: (-len(word), word)))


@cache
def _prose_units() -> Mapping[str, Unit]:
    return {word: Unit(unit) for word, unit in figure_units().items() if unit != MONTHS}


@lru_cache(maxsize=8192)
def named_units(text: str) -> tuple[tuple[Unit, ...], str]:
    """The units that a heading or a sentence names, in their order, and the text without them.

    "in" counts as a unit only in brackets, beside another unit or at the very end: "Umfang in cm"
    is centimetres. The text comes back folded to lower case without accents.
    """
    folded = unaccented(_without_look_alikes(narrow(text)))
    for pattern, plain in _COMPOUNDS:
        folded = pattern.sub(plain, folded)
    found: list[Unit] = []
    rest: list[str] = []
    start = 0
    for match in _prose().finditer(folded):
        word = next(one for one in match.group("word", "bracket", "last", "joined", "end") if one)
        if match["bracket"] and word != "in" and not _stands_apart(match, start if found else -1):
            continue
        found.append(_prose_units()[word])
        rest.append(folded[start : match.start()])
        rest.append(match["open"] or " ")
        start = match.end()
    rest.append(folded[start:])
    return tuple(dict.fromkeys(found)), "".join(rest)


def _without_look_alikes(text: str) -> str:
    """The text without words that are a unit only when their accents are lost: tüm is no tum."""
    return text if text.isascii() else _look_alikes().sub(" ", text)


@cache
def _look_alikes() -> re.Pattern[str]:
    words = {word for _, listed in tables("units", "none") for word in listed}
    return re.compile(rf"(?<![^\W_])(?:{_either(words)})(?![^\W_])", re.IGNORECASE)


def _stands_apart(match: re.Match[str], unit_before: int) -> bool:
    """Whether m, st, g stand in a bracket or right behind another unit: "t/m" is no metre."""
    opener = match["open"].strip()
    return opener in {"(", "[", "{"} or (bool(opener) and match.start() == unit_before)


def find_units(text: str) -> tuple[Unit, ...]:
    """The units named in a heading, caption or note, in their order; "in" only as a unit."""
    return named_units(text[:2000])[0]
