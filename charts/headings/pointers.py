"""Words that point to a drawing or count the measures: "Chest (see fig. 2)", "No. 1 chest".

They say nothing of what is measured. A picture alone, or the number of something, is a column of
its own: only with a letter, a small number or a word for seeing beside it does it point.
"""

from __future__ import annotations

import re
from functools import cache
from typing import Final

from charts.vocabulary import spellings, vocabulary

_WHICH: Final = r"(?:[a-z]|\d{1,2}|[a-z]\d|\d[a-z])"


def without_pointers(words: str) -> str:
    """The words of a heading in normal form without such; all of them where nothing is left."""
    rest = " ".join(_pattern().sub(" ", words).split())
    return rest or words


@cache
def _pattern() -> re.Pattern[str]:
    see, drawing, place, small = map(_one_of, ("see", "drawing", "place", "small"))
    shown = rf"{see}(?: {small})? (?:{drawing}(?: {_WHICH})?|{place})"
    return re.compile(rf"\b(?:{shown}|{drawing} {_WHICH})(?!\S)")


@cache
def _one_of(name: str) -> str:
    words = {spelling for word in vocabulary("pointers")[name] for spelling in spellings(word)}
    return "(?:" + "|".join(sorted(words, key=lambda one: (-len(one), one))) + ")"
