"""Words that tell two sides of a table apart: the wearer's measures and the garment's.

``Rider | Vest`` over the columns, ``Body | Garment`` beside the rows. A phrase such as "garment
measurements" says it by itself; a bare word says it only beside one of the other side.
"""

from __future__ import annotations

from collections.abc import Iterable
from functools import cache, lru_cache
from typing import Final, NamedTuple

from charts.headings.parts import Hit, parts_of
from charts.headings.whose import perhaps_the_garments, whose
from charts.schema import Basis
from charts.vocabulary import spellings, vocabulary

_LONGEST: Final = 60
"""A side is named; a text longer than this says something."""


class Side(NamedTuple):
    """Whose measures a word stands for; ``plain`` where it says so beside no other one."""

    basis: Basis
    plain: bool = False


@lru_cache(maxsize=8192)
def side_of(text: str) -> Side | None:
    """The side that ``text`` is the name of; None for a text that names a measure or nothing."""
    parts = parts_of(text) if len(text) <= _LONGEST else None
    if parts is None or _measures(parts.hits):
        return None
    said = whose(text)
    if said.open:
        return Side(Basis.FINISHED) if perhaps_the_garments(text) else None
    if said.basis is not Basis.UNKNOWN:
        return Side(said.basis, plain=True)
    for name, basis in (("body", Basis.BODY), ("garment", Basis.FINISHED)):
        if parts.words in _words(name):
            return Side(basis)
    return None


def told_apart(texts: Iterable[str]) -> bool:
    """Whether some of several names stand for the body and others for the garment.

    "Body" beside "Trousers" alone is a bodysuit, and both are for sale.
    """
    sides = {parts_of(text).words: side for text in texts if (side := side_of(text)) is not None}
    bodies = {words for words, side in sides.items() if side.basis is Basis.BODY}
    garments = sides.keys() - bodies
    if bodies <= _words("bodysuit") and garments <= _words("beside_a_bodysuit"):
        return False
    return bool(bodies and garments)


def _measures(hits: Iterable[Hit]) -> bool:
    """Whether a phrase names a known measure: "Body length" is no side."""
    entries = (hit.entry for hit in hits if hit.entry is not None)
    return any(one.dimension is not None for entry in entries for one in entry.columns)


@cache
def _words(name: str) -> frozenset[str]:
    words = vocabulary("sides")[name]
    return frozenset(spelling for word in words for spelling in spellings(word))
