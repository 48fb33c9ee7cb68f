"""Whose measures one clause of a note speaks of: "of the vest", "= fertige Weste", "(corps)".

A clause that names a measure says it with few words. Where it holds nothing but known ones, a noun
for what is worn, or for who wears it, behind a word like "of" is enough.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from functools import cache, lru_cache
from typing import Final

from charts.headings.parts import hits_of
from charts.headings.reading import Role
from charts.headings.whose import Whose, whose
from charts.headings.words import Meaning
from charts.schema import Basis
from charts.unit_words import named_units
from charts.vocabulary import normal, spellings, vocabulary

_SIGN: Final = re.compile(r"[:=()–—/]|\s-\s|^-\s")
_SAYING: Final = ("garment", "genitive", "body", "body_genitive", "half")
_KNOWN: Final = (*_SAYING, "links", "verbs", "articles", "little", "joins", "except")
_DENIALS: Final = re.compile(
    r"\b(?:not|no|nicht|keine?|pas|niet|geen|non|inte|ikke|nie|ne|sin|sem|sans|ohne|without)\b"
)

_BAR: Final = "|"
_OPENING: Final = 5
"""Words within which a sentence that tells how to measure says so."""


@cache
def listed(kind: str) -> frozenset[str]:
    """The words of one list of ``clauses.toml`` in normal form."""
    words = vocabulary("clauses")[kind]
    return frozenset(spelling for word in words for spelling in spellings(word))


@cache
def _known() -> frozenset[str]:
    return frozenset().union(*map(listed, _KNOWN))


def plain_words(text: str) -> list[str]:
    """The words of a clause in normal form, without its units."""
    return normal(named_units(text)[1]).split()


def is_closed(text: str, names: frozenset[str] = frozenset()) -> bool:
    """Whether a clause holds nothing but words that are known here; ``names`` are known too."""
    known = _known() | names
    return all(
        hit.entry is not None or hit.phrase in known or hit.phrase.isdigit()
        for hit in hits_of(" ".join(plain_words(text)))
    )


def is_listing(text: str, names: frozenset[str]) -> bool:
    """Whether a clause holds nothing but names of measures: "chest, waist and hip"."""
    small = listed("joins") | listed("articles") | names | {"in"}
    return all(
        hit.phrase in small or (hit.entry is not None and _is_measure(hit.entry.columns))
        for hit in hits_of(" ".join(plain_words(text)))
    )


def _is_measure(meanings: Sequence[Meaning]) -> bool:
    return any(one.role is Role.MEASURE for one in meanings)


def commands(text: str) -> bool:
    """Whether a sentence tells how to measure: "To find your size measure the chest"."""
    words = plain_words(text)
    return bool(words) and any(word in listed("commands") for word in words[:_OPENING])


@lru_cache(maxsize=4096)
def said_in_clause(text: str, names: frozenset[str] = frozenset()) -> Whose:
    """Whose measures a clause speaks of that is known to speak of some measures only."""
    strong = whose(text)
    if not is_closed(text, names):
        return strong
    sides = {one for one in (strong.basis, *_nouns(text, names)) if one is not Basis.UNKNOWN}
    halves = listed("half") - names
    if not halves.isdisjoint(_tokens(text)) and Basis.BODY not in sides:
        return Whose(Basis.FLAT)
    if Basis.FLAT in sides:
        sides.discard(Basis.FINISHED)
    denied = strong.basis is Basis.UNKNOWN and _DENIALS.search(normal(text)) is not None
    if len(sides) > 1 or (sides and denied):
        return Whose(open=True)
    return Whose(sides.pop()) if sides else strong


def _tokens(text: str) -> list[str]:
    """The words of a clause in normal form, signs as bars: what stands behind one is said."""
    tokens: list[str] = []
    for number, part in enumerate(_SIGN.split(text)):
        tokens += [_BAR] * bool(number) + normal(part).split()
    return tokens


def _nouns(text: str, names: frozenset[str]) -> list[Basis]:
    """The side of each noun that is linked to what stands before it, and no part of a heading."""
    tokens = _tokens(text)
    found = []
    for place, token in enumerate(tokens):
        garment = token in listed("garment") or token in listed("genitive")
        if not garment and token not in listed("body") and token not in listed("body_genitive"):
            continue
        if token in names:
            continue
        itself = token in listed("genitive") or token in listed("body_genitive")
        if itself or _linked(tokens[:place]):
            found.append(Basis.FINISHED if garment else Basis.BODY)
    return found


def _linked(before: Sequence[str]) -> bool:
    """Whether the words before a noun end in one like "of", in a sign, or are none."""
    rest = list(before)
    while rest and rest[-1] in listed("articles") and rest[-1] not in listed("links"):
        rest.pop()
    return not rest or rest[-1] == _BAR or rest[-1] in listed("links")
