"""One cleaned cell cut into figures, units, words and marks, each with where it stood."""

from __future__ import annotations

import re
from collections.abc import Mapping
from functools import cache
from typing import Final

from charts.cell_reading import Expected
from charts.grammar import senses
from charts.quantities import Unit
from charts.unit_words import figure_units
from charts.vocabulary import SPACELESS

_PIECE: Final = re.compile(
    r"\d+(?:[.,]\d+)?|(?<![^\W\d_])[.,]\d+"
    r"|[^\W\d_]+"
    r"|\+/-|\+ ?-|<=|=<|>=|=>"
    r"|[^ ]"
)
_CAPITAL_UNITS: Final = frozenset({"m", "g", "st", "an", "h"})
_NUMBER: Final = senses.NUMBER
_WORD: Final = senses.WORD
_PAST_THE_END: Final = 6
_NO_SENSES: Final = [senses.END] * _PAST_THE_END
_NO_TEXTS: Final = [""] * _PAST_THE_END
_NO_UNITS: Final = [None] * _PAST_THE_END
_SPACELESS: Final = re.compile(f"[{SPACELESS}]")


class Cell:
    """A cell on its way through the grammar: its pieces side by side, one list per property.

    Attributes:
        plain: the cleaned text; in lower case without accents where that changes its length.
        expected: what the column says.
        senses: the bits of ``charts.grammar.senses`` of each piece; 0 past the end.
        texts: each piece, folded.
        units: the value of the unit a piece names ("months" too), else None.
        count: how many pieces there are. Six empty ones stand behind them to be looked at.
    """

    __slots__ = ("_folded", "_joined", "count", "expected", "plain", "senses", "texts", "units")

    def __init__(self, plain: str, folded: str, expected: Expected) -> None:
        self.plain = plain if len(folded) == len(plain) else folded
        self.expected = expected
        self._folded = folded
        self._joined: list[tuple[int, int]] = []
        pieces = (_PIECE if folded.isascii() else _pattern_for(folded)).findall(folded)
        if not _to_be_looked_at().isdisjoint(pieces):
            pieces = self._whole_words(pieces)
        known = _senses()
        self.count = len(pieces)
        self.senses = [
            # figures end in a digit, words that no list knows hold none
            known.get(one) or (_NUMBER if one[-1].isdecimal() else _WORD)
            for one in pieces
        ]
        self.senses += _NO_SENSES
        self.units: list[str | None] = [*map(figure_units().get, pieces), *_NO_UNITS]
        self.texts: list[str] = pieces
        self.texts += _NO_TEXTS
        if plain != folded and not _CAPITAL_UNITS.isdisjoint(pieces):
            self._capitals_are_letters()

    @property
    def inches(self) -> bool:
        """Whether inches are expected in this cell."""
        expected = self.expected
        return Unit.IN in {expected.unit, expected.second_unit} or "in" in self.units

    def spaced(self, at: int) -> bool:
        """Whether a space stands in front of a piece."""
        if at >= self.count:
            return True
        spans = self._spans()
        return at > 0 and spans[at][0] > spans[at - 1][1]

    def text(self, first: int, past: int) -> str:
        """The printed text of the pieces from ``first`` up to ``past``, which is left out."""
        spans = self._spans()
        return self.plain[spans[first][0] : spans[past - 1][1]].strip()

    def _spans(self) -> list[tuple[int, int]]:
        """Where the pieces stand; asked for seldom, so worked out when it is."""
        pieces = _pattern_for(self._folded).finditer(self._folded)
        spans = [match.span() for match in pieces]
        for at, count in self._joined:
            spans[at : at + count] = [(spans[at][0], spans[at + count - 1][1])]
        return spans

    def _whole_words(self, pieces: list[str]) -> list[str]:
        """Join the pieces of a phrase of several words, drop the full stop behind a word."""
        found: list[str] = []
        at = 0
        while at < len(pieces):
            start, text = at, pieces[at]
            at += 1
            if text in _phrases_by_first_word():
                text, at = _phrase(pieces, start)
            if text[0].isalpha() and pieces[at : at + 1] == ["."]:
                at += 1
            if at > start + 1:
                self._joined.append((len(found), at - start))
            found.append(text)
        return found

    def _capitals_are_letters(self) -> None:
        """A capital M, G, ST, AN or H is a letter of a label and no unit."""
        for at, (start, _) in enumerate(self._spans()):
            if self.texts[at] in _CAPITAL_UNITS and self.plain[start].isupper():
                self.senses[at], self.units[at] = senses.WORD, None


def _pattern_for(folded: str) -> re.Pattern[str]:
    """How a text is cut: scripts without spaces need their words known."""
    if folded.isascii() or _SPACELESS.search(folded) is None:
        return _PIECE
    return _spaceless_piece()


@cache
def _spaceless_piece() -> re.Pattern[str]:
    """Known words of scripts without spaces, the longest first; 90cm以下 is 90, cm, 以下."""
    known = [one for one in senses.phrases() if " " not in one and _SPACELESS.search(one)]
    words = "|".join(re.escape(one) for one in sorted(known, key=len, reverse=True))
    letters = rf"[{SPACELESS}]|[^\W\d_{SPACELESS}]+"
    return re.compile(_PIECE.pattern.replace(r"[^\W\d_]+", f"{words}|{letters}"))


@cache
def _senses() -> Mapping[str, int]:
    return {**senses.phrases(), **senses.MARKS}


@cache
def _to_be_looked_at() -> frozenset[str]:
    """Pieces that may belong to the one before: second words of phrases, and full stops."""
    return frozenset(
        pieces[1] if pieces[1].isalpha() else pieces[0]
        for phrases in _phrases_by_first_word().values()
        for _, pieces in phrases
    ) | {"."}


@cache
def _phrases_by_first_word() -> Mapping[str, tuple[tuple[str, list[str]], ...]]:
    """Phrases of several pieces under their first word, the longest first, with the pieces."""
    found: dict[str, list[tuple[str, list[str]]]] = {}
    for phrase in sorted(senses.phrases(), key=len, reverse=True):
        pieces = _PIECE.findall(phrase)
        if len(pieces) > 1:
            found.setdefault(pieces[0], []).append((phrase, pieces))
    return {first: tuple(phrases) for first, phrases in found.items()}


def _phrase(pieces: list[str], at: int) -> tuple[str, int]:
    """The longest known phrase that begins at a piece, or that word alone; and what follows it."""
    for phrase, wanted in _phrases_by_first_word()[pieces[at]]:
        if pieces[at : at + len(wanted)] == wanted:
            return phrase, at + len(wanted)
    return pieces[at], at + 1
