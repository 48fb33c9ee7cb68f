"""Girths that are taken over clothes: neither the body's nor the garment's that is sold."""

from __future__ import annotations

import re
from functools import cache, lru_cache
from typing import Final

from charts.vocabulary import normal, spellings, vocabulary

_LONGEST: Final = 300


@lru_cache(maxsize=4096)
def over_clothes(text: str) -> bool:
    """Whether ``text`` says so: "Chest (over riding jacket)", and not "over light clothing"."""
    return _pattern().search(normal(text[:_LONGEST])) is not None


@cache
def _pattern() -> re.Pattern[str]:
    over, between, clothes = (_one_of(name) for name in ("over", "between", "clothes"))
    return re.compile(rf"\b{over}(?: {between}){{0,3}} {clothes}\b")


def _one_of(name: str) -> str:
    words = {spelling for word in vocabulary("over_clothes")[name] for spelling in spellings(word)}
    return "(?:" + "|".join(sorted(words, key=lambda one: (-len(one), one))) + ")"
