"""Whose measures a text speaks of: the body's, the finished garment's, or half of it laid flat.

The phrases stand in the vocabulary. A phrase that is denied ("no garment measurements") means the
other side, and a text that names both sides, or a garment of the reader's own, leaves it open.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator, Sequence
from functools import cache, lru_cache
from typing import Final, NamedTuple

from charts.headings.parts import Hit, hits_of
from charts.headings.referring import compared_in_size, referred_to, with_ease
from charts.schema import Basis, Dimension
from charts.vocabulary import FURTHER, MAIN, SPACELESS, normal, spellings, tables

_DENIES: Final = re.compile(
    r"\b(?:not|no|non|nicht|keinen?|kein|statt|anstatt|pas|plutot|niet|geen|inte|ej|ikke|nie|neni"
    r"|nejsou|nao|sin|sem|sans|ohne|without|instead|rather)\b"
)
_APART: Final = re.compile(r"[,;:|()\n–—]|\s-\s|\.\s")
"""Signs between which a phrase does not run on: "Riding vest - measurements in cm"."""
_BEFORE: Final = 3
"""Words before a phrase within which a denial holds for it."""
_MEASURE: Final = re.compile(
    r"\b(?:measure|compare|messen|vergleich\w*|miss|mesure[rz]|compare[rz]|meet|vergelijk\w*|misura\w*"
    r"|confronta\w*|mida|mide|medir|compar[ae]\w*|meca|medi[rt]\w*|mat|jamfor\w*|mal|sammenlign\w*"
    r"|zmierz\w*|porownaj\w*|zmerte|porovnejte)\b"
)
_MEASURES: Final = re.compile(
    r"\b(?:measure\w*|dimension\w*|masse?n?|abmessung\w*|mesures?|mensuration\w*|maat|maten"
    r"|afmeting\w*|misur[ae]|medidas?|matt(?:et|en)?|mal(?:et|ene)?|wymiar\w*|rozmer\w*|miry|mir)\b"
)
_PLACE: Final = re.compile(
    r"(?:(?:taken )?on the|your|am|auf dem|sur le|votre|op het|uw|je|sul|del tuo|sobre el|tu|su|pa"
    r"|na|no|sobre o|seu) (?:body|korper|corps|lichaam|corpo|cuerpo|kroppen|krop|ciele|tele)$"
)
"""Where something sits as well as where it is measured: "cut close, moves with your body"."""
_TAKEN: Final = re.compile(
    r"\b(?:measured|taken|gemessen\w*|abgenommen|mesuree?s?|prises?|gemeten|pres[ei]|rilevat\w*"
    r"|tomad\w*|tirad\w*|tagna|taget|matt|malt|zmierzon\w*|mierzon\w*|meren\w*)\b"
)
_LOOK_UP: Final = re.compile(
    r"\b(?:check|verify|consult|prufen?|uberprufen?|beachten?|verifie[rz]|consulte[rz]?|controleer"
    r"|controlla\w*|verific\w*|comprueb\w*|comprobar|consulta[rt]?|confira|kontrolle\w*|tjek|sjekk"
    r"|sprawdz\w*|zkontroluj\w*)\b"
)
_REAL: Final = re.compile(
    r"\b(?:actual|exact|real|tatsachlich\w*|genauen?|reell?e?s?|exactes?|effettiv\w*|esatt\w*|reales"
    r"|exactas?|exatas?|reais|werkelijke?|exacte|faktiska?|faktiske|rzeczywist\w*|skutecn\w*)\b"
)
"""A text that bids look up the actual measures of the garment says that these are others."""
_DOUBLED: Final = re.compile(
    r"\b(?:doubled|verdoppelt|doppelt genommen|doublees?|verdubbeld|raddoppiat[aei]|doblad[ao]s?"
    r"|dobrad[ao]s?|dubblad[et]?|fordoblet|doblet|podwojon[ey]|zdvojen[aeo])\b"
)
"""What lies flat and is doubled is the girth of the garment (common words, no source)."""
_TIMES_TWO: Final = re.compile(
    r"\b(?:x ?2|2 ?x|(?:times|mal|par|maal|per|por|razy|krat) (?:2|two))\b"
)
"""Done to the figures, or what the reader is to do with them."""
_MULTIPLIED: Final = re.compile(
    r"\b(?:multipl\w*|vermenigvuldig\w*|moltiplic\w*|ganget|pomnozon\w*|vynasob\w*) \w{1,4} "
    r"(?:2|two|zwei|deux|due|dos|dois|duas|twee|tva|to|dwa|dva)\b"
)
_GIRTHS: Final = frozenset(
    {Dimension.CHEST, Dimension.WAIST, Dimension.HIP, Dimension.UNDERBUST, Dimension.NECK}
)
_SPACELESS: Final = re.compile(f"[{SPACELESS}]")
_KINDS: Final = {"body": Basis.BODY, "finished": Basis.FINISHED, "flat": Basis.FLAT}


class Whose(NamedTuple):
    """What a text says: a basis, or UNKNOWN; ``open`` where it raises the question itself."""

    basis: Basis = Basis.UNKNOWN
    open: bool = False


@lru_cache(maxsize=4096)
def whose(text: str) -> Whose:
    """Whose measures ``text`` speaks of; a text about something else says nothing."""
    words = _in_parts(text)
    said, denied = set[Basis](), set[Basis]()
    for kind, basis in _KINDS.items():
        itself = _of_itself(words) if basis is Basis.FINISHED else ()
        plain = (one for one in _pattern(kind).finditer(words) if not _within(one, itself))
        plain = (one for one in plain if _PLACE.match(one[0]) is None or _is_measured(words))
        for found in (*plain, *itself):
            near = words[: found.start()].rpartition("|")[2].split()[-_BEFORE:]
            if basis is Basis.FINISHED and _is_elsewhere(words, found):
                continue
            (denied if _DENIES.search(" ".join(near)) else said).add(basis)
        for found in _further(kind).finditer(words):
            (denied if _is_denied(words, found) else said).add(basis)
    if _pattern("compared").search(words) and (said - {Basis.BODY} or _MEASURE.search(words)):
        return Whose(open=True)
    referred = referred_to(words)
    if with_ease(words) and not said - {Basis.BODY}:
        return Whose(open=True)
    if compared_in_size(words) and said and not said & {Basis.BODY}:
        return Whose(open=True)  # of what stands elsewhere: "the garment is larger than the chart"
    said |= referred - {Basis.UNKNOWN}
    if not said:
        said = {Basis.FINISHED if one is Basis.BODY else Basis.BODY for one in denied}
    if len(said) > 1 and Basis.BODY in said:
        return Whose(open=True)
    if said:
        return _of_flat(words) if Basis.FLAT in said else Whose(said.pop())
    return Whose(open=bool(referred) or _pattern("doubtful").search(words) is not None)


def _of_flat(words: str) -> Whose:
    """What lies flat, or the girth of it where a text says that it was doubled."""
    done = _DOUBLED.search(words)
    if done is not None and not _DENIES.search(words[: done.start()].rpartition("|")[2]):
        return Whose(Basis.FINISHED)
    return Whose(open=True) if _TIMES_TWO.search(words) else Whose(Basis.FLAT)


def says_doubled(text: str) -> bool:
    """Whether ``text`` says of a measure that twice as much of it is given: "waist to back x 2"."""
    words = _in_parts(text)
    done = _DOUBLED.search(words) or _TIMES_TWO.search(words) or _MULTIPLIED.search(words)
    return done is not None and not _DENIES.search(words[: done.start()].rpartition("|")[2])


def perhaps_the_garments(text: str) -> bool:
    """Whether a text says "measures of the vest": those it has, or those it is made for."""
    return whose(text).open and _pattern("doubtful").search(_in_parts(text)) is not None


def says_in_passing(text: str) -> bool:
    """Whether a text without a stop is a sentence: "Måtten gäller plagget, inte kroppen"."""
    return bool(referred_to(_in_parts(text)))


def _in_parts(text: str) -> str:
    return " | ".join(normal(part) for part in _APART.split(text.replace("×", " x ")))


def _is_denied(words: str, found: re.Match[str]) -> bool:
    """Whether a phrase of a further language is denied, in front or behind as it does it."""
    before = words[: found.start()].rpartition("|")[2].split()[-_BEFORE:]
    behind = words[found.end() :].partition("|")[0]
    return bool(
        _further("denied").search(" ".join(before)) or _further("denied_behind").search(behind)
    )


@cache
def _pattern(kind: str) -> re.Pattern[str]:
    return _any_of(_phrases(kind, MAIN))


@cache
def _further(kind: str) -> re.Pattern[str]:
    return _any_of(_phrases(kind, FURTHER))


def _any_of(phrases: Iterable[str]) -> re.Pattern[str]:
    ordered = sorted(phrases, key=lambda one: (-len(one), one))
    return re.compile("|".join(ordered) if ordered else r"(?!)")


def _within(found: re.Match[str], longer: Sequence[re.Match[str]]) -> bool:
    return any(one.start() <= found.start() and found.end() <= one.end() for one in longer)


def _of_itself(words: str) -> Sequence[re.Match[str]]:
    """Phrases that speak of the garment itself, in a text about measures: not about its colour."""
    found = [*_any_itself().finditer(words)]
    measured = found and (_MEASURES.search(words) or any(map(_is_girth, hits_of(words))))
    return found if measured else ()


def _is_elsewhere(words: str, found: re.Match[str]) -> bool:
    """Whether a text bids look the garment's measures up: "check the actual product measures"."""
    before = words[: found.end()].rpartition("|")[2]
    bidden = _LOOK_UP.search(before)
    return bidden is not None and _REAL.search(before, bidden.end()) is not None


def _is_measured(words: str) -> bool:
    """Whether a text that names the body speaks of measuring it."""
    spoken = any(one.search(words) for one in (_MEASURE, _MEASURES, _TAKEN))
    return spoken or any(map(_names_a_girth, hits_of(words)))


def _is_girth(hit: Hit) -> bool:
    return _names_a_girth(hit) or (hit.entry is not None and "body" in hit.entry.parts)


def _names_a_girth(hit: Hit) -> bool:
    return hit.entry is not None and any(one.dimension in _GIRTHS for one in hit.entry.columns)


@cache
def _any_itself() -> re.Pattern[str]:
    phrases = [normal(phrase) for phrase in _itself(MAIN)]
    return _any_of(rf"\b{phrase}\b" for phrase in phrases)


def _itself(languages: Sequence[str]) -> Iterator[str]:
    """Phrases like "of the sweater itself", one for each garment of their language."""
    for language, phrases in tables("basis", "itself", among=languages):
        for own, garments in tables("basis", "garments", among=languages):
            if own == language:
                yield from (one.format(garment) for one in phrases for garment in garments)


def _phrases(kind: str, languages: Sequence[str]) -> Iterator[str]:
    for _, phrases in tables("basis", kind, among=languages):
        for phrase in phrases:
            for spelling in spellings(phrase.rstrip("*")):
                border = "" if _SPACELESS.match(spelling) else r"\b"
                yield f"{border}{spelling}" + ("" if phrase.endswith("*") else border)
