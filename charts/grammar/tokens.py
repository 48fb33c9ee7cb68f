"""One cleaned cell cut into figures, units, words and marks, each with where it stood."""

from __future__ import annotations

import re
from collections.abc import Mapping
from functools import cache
from typing import Final, NamedTuple

from charts.grammar import senses
from charts.unit_words import figure_units
from charts.vocabulary import unaccented

_PIECE: Final = re.compile(
    r" *(?:(\d+(?:[.,]\d+)?|[.,]\d+)"
    r"|([^\W\d_]+)"
    r"|(\+/-|\+ ?-|<=|=<|>=|=>|[-/~≈<>≤≥+±()\[\],;|:='\"\n])"
    r"|([^ ]))"
)
_CAPITAL_UNITS: Final = frozenset({"m", "g", "st", "an", "h"})


class Token(NamedTuple):
    """One piece of a cell.

    ``sense`` are the bits of ``charts.grammar.senses``, 0 past the end. ``text`` is folded;
    ``unit`` is the unit's value, or "months". ``spaced`` tells of a space in front.
    """

    sense: int
    text: str
    unit: str | None
    spaced: bool
    start: int
    end: int


@cache
def _marks() -> Mapping[str, tuple[int, str | None]]:
    units = figure_units()
    return {mark: (sense, units.get(mark)) for mark, sense in senses.MARKS.items()}


@cache
def _words() -> Mapping[str, tuple[int, str | None]]:
    units = figure_units()
    return {word: (sense, units.get(word)) for word, sense in senses.phrases().items()}


@cache
def _phrases_by_first_word() -> Mapping[str, tuple[str, ...]]:
    """Phrases of several words under their first word, the longest first."""
    found: dict[str, list[str]] = {}
    for phrase in sorted(senses.phrases(), key=len, reverse=True):
        first = re.match(r"[^\W\d_]+", phrase)
        if first is not None and first[0] != phrase:
            found.setdefault(first[0], []).append(phrase)
    return {first: tuple(phrases) for first, phrases in found.items()}


def tokenise(plain: str) -> list[Token]:
    """Cut a cleaned cell; the last token has sense END.

    A capital M, G, ST, AN or H is a letter of a label and no unit.
    """
    folded = unaccented(plain)
    if len(folded) != len(plain):
        plain = folded
    found: list[Token] = []
    at = 0
    while (match := _PIECE.match(folded, at)) is not None:
        group = match.lastindex or 4
        start, end = match.span(group)
        text = match[group]
        unit = None
        if group == 1:
            sense = senses.NUMBER
        elif group == 3:
            sense, unit = _marks()["±" if text[0] == "+" and len(text) > 1 else text]
        elif group == 2:
            text = _phrase(folded, start, text)
            end = start + len(text)
            sense, unit = _word(text, plain, start)
            end += folded.startswith(".", end) and not folded[end + 1 : end + 2].isdigit()
        else:
            sense = senses.WORD
        found.append(Token(sense, text, unit, start > at, start, end))
        at = end
    found.append(Token(senses.END, "", None, True, len(folded), len(folded)))
    return found


def _phrase(folded: str, start: int, first: str) -> str:
    """The longest known phrase that begins with the word at ``start``, or that word alone."""
    for phrase in _phrases_by_first_word().get(first, ()):
        end = start + len(phrase)
        if folded.startswith(phrase, start) and not folded[end : end + 1].isalpha():
            return phrase
    return first


def _word(text: str, plain: str, start: int) -> tuple[int, str | None]:
    if text in _CAPITAL_UNITS and plain[start].isupper():
        return senses.WORD, None
    return _words().get(text, (senses.WORD, None))
