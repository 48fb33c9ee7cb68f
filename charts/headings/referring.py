"""Sentences by which a chart says in passing whose measures its figures are, or leaves it open.

"These measurements refer to the product, not to the body": a verb or a denial, and a bare word for
the one or the other. "The garment will be larger than the chart" and "includes 4 cm of ease" say
neither: the first speaks of what stands elsewhere, the second of a body and something more.
"""

from __future__ import annotations

import re
from functools import cache
from typing import Final

from charts.schema import Basis
from charts.vocabulary import normal, spellings, vocabulary

_MEASURES: Final = re.compile(
    r"\b(?:measure\w*|dimension\w*|sizes?|figures?|values?|numbers?|chart|table"
    r"|masse?n?|messung\w*|gemessen\w*|abmessung\w*|angaben|werte|zahlen|tabelle|grossen"
    r"|mesur\w*|mensuration\w*|cotes|chiffres|valeurs|tableau|tailles"
    r"|maat|maten|afmeting\w*|gemeten|cijfers|waarden|tabel|misur\w*|valori|tabella|taglie"
    r"|medid\w*|valores|tabla|tabela|tallas|matt(?:et|en)?|mal(?:et|ene)?|malt|matten|maten"
    r"|varden\w*|storlek\w*|vaerdier\w*|wymiar\w*|pomiar\w*|rozmer\w*|rozmiar\w*|miry|mir"
    r"|mitat|mittoja|mitta\w*)\b"
)
_SIDES: Final = (("body", Basis.BODY), ("garment", Basis.FINISHED), ("vest", Basis.UNKNOWN))


def referred_to(words: str) -> frozenset[Basis]:
    """What a text about measures, in normal form and parted by bars, says they refer to.

    The vest's are UNKNOWN: "measurements of the vest" are those it is made for as often.
    """
    if not _MEASURES.search(words):
        return frozenset()
    found = {basis for side, basis in _SIDES if _referring(side).search(words)}
    return frozenset(found | {Basis.FINISHED} if _not_the_body().search(words) else found)


def speaks_of_measures(text: str) -> bool:
    """Whether a text has a word for measures, or for the table they stand in."""
    return _MEASURES.search(normal(text)) is not None


def with_ease(words: str) -> bool:
    """Whether the figures are said to hold more than a body measures."""
    ease = _any("ease").search(words)
    if ease is None or not _any("including").search(words) or not _MEASURES.search(words):
        return False
    denied = _any("denied", "without")
    return denied.search(words[: ease.start()]) is None


def compared_in_size(words: str) -> bool:
    """Whether something is said to be larger or smaller than something else."""
    return _any("larger").search(words) is not None


@cache
def _any(*names: str) -> re.Pattern[str]:
    return re.compile(rf"\b(?:{'|'.join(_one_of(name) for name in names)})\b")


@cache
def _one_of(name: str) -> str:
    words = {spelling for word in vocabulary("referring")[name] for spelling in spellings(word)}
    return "(?:" + "|".join(sorted(words, key=lambda one: (-len(one), one))) + ")"


def _up_to_the_end(side: str) -> str:
    """Small words, the bare word for a side, and no more of the sentence but a unit or a tape."""
    words = rf"(?: {_one_of('before')}){{0,3}} {_one_of(side)}(?: {_one_of('end')})*"
    return rf"{words}(?: {_one_of('by_means')} [^|]*)?\s*(?:\||$)"


@cache
def _referring(side: str) -> re.Pattern[str]:
    """``refer to the product``, but not where a denial stands in front of it."""
    behind = _up_to_the_end(side)
    return re.compile(rf"(?<!not )(?<!never )\b{_one_of('refers')}{behind}")


@cache
def _not_the_body() -> re.Pattern[str]:
    """``not to the body``, ``inte kroppen``, ``do not refer to the body``."""
    return re.compile(rf"\b{_one_of('denied')}(?: {_one_of('refers')})?{_up_to_the_end('body')}")
