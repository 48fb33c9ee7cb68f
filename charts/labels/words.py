"""The words of size labels, from the vocabulary: letters, lengths, ages, who wears it."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from functools import cache
from typing import Final

from charts.labels.reading import ADULT, CHILD, INFANT, YOUTH
from charts.vocabulary import FURTHER, MAIN, spellings, tables, vocabulary, words_at

_LETTERS: Final = {"small": -1.0, "medium": 0.0, "large": 1.0}
_RANKS: Final = {
    "baby": INFANT,
    "kids": CHILD,
    "girls": CHILD,
    "boys": CHILD,
    "women": ADULT,
    "men": ADULT,
    "unisex": ADULT,
    "adult": ADULT,
}


@cache
def letter_words() -> Mapping[str, float]:
    """small, klein, petit and the like, in normal form, to their place among the letters."""
    return {word: place for name, place in _LETTERS.items() for word in words_at("labels", name)}


@cache
def foreign_letters() -> Mapping[str, float]:
    """P, PP, G, GG and the like, in lower case, to their place among the letters."""
    return {
        letters.lower(): float(place)
        for _, table in tables("label_letters")
        for letters, place in table.items()
    }


@cache
def length_words() -> Mapping[str, str]:
    """Words of the second axis in normal form to the one word used for it."""
    found: dict[str, str] = {}
    for name in vocabulary("en")["lengths"]:
        for word in words_at("lengths", name):
            found.setdefault(word, name)
    return found


@cache
def rank_words() -> Mapping[str, float]:
    """Words for who wears a size, in normal form, to their rank from infant to adult."""
    found: dict[str, float] = {}
    for band, rank in _RANKS.items():
        for word in words_at("bands", band):
            found.setdefault(word, rank)
    return found | dict.fromkeys(words_at("labels", "youth"), YOUTH)


@cache
def label_words(name: str) -> frozenset[str]:
    """The words of one list of the labels: extra, years, months, age, size, one_size, newborn."""
    return words_at("labels", name)


@cache
def slips() -> Mapping[str, str]:
    """Slips of typing that no nearness explains, as typed, to what is meant."""
    return {typed: meant for _, table in tables("label_slips") for typed, meant in table.items()}


@cache
def known_words() -> Mapping[str, str]:
    """Every word a label may consist of, in normal form, to its printed spelling."""
    found = {**_printed(FURTHER), **_printed(MAIN)}
    return {word: printed for word, printed in found.items() if len(word) >= 4}


def _printed(languages: Sequence[str]) -> dict[str, str]:
    lists = [
        words
        for name in ("small", "medium", "large")
        for _, words in tables("labels", name, among=languages)
    ]
    for _, of_length in tables("lengths", among=languages):
        lists.extend(of_length.values())
    return {
        spelling: word.title() for words in lists for word in words for spelling in spellings(word)
    }
