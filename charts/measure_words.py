"""Whether a longer text speaks of body measures at all: a quick look, no reading."""

from __future__ import annotations

from functools import cache
from itertools import pairwise
from typing import Final

from charts.headings.reading import Role
from charts.headings.words import entries
from charts.schema import Dimension
from charts.vocabulary import normal

_LONGEST: Final = 200_000


def speaks_of_measures(text: str) -> bool:
    """Whether a word for a body measure stands in ``text``, in any language of the vocabulary."""
    words = normal(text[:_LONGEST]).split()
    phrases = _measures()
    return not phrases.isdisjoint(words) or any(
        f"{first} {second}" in phrases for first, second in pairwise(words)
    )


@cache
def _measures() -> frozenset[str]:
    """The phrases that always name a measure of the body, of one or two words."""
    return frozenset(
        phrase
        for phrase, entry in entries().items()
        if entry.columns
        and len(phrase.split()) < 3
        and all(
            one.role is Role.MEASURE and one.dimension not in (None, Dimension.OTHER)
            for one in entry.columns
        )
    )
