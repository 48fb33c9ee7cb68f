"""Words on a printed page, put into lines: what stands at one height is one line.

Figures raised above a line keep their sense: ``34`` with a small raised ``1/2`` is 34 1/2, and
``L`` with a small raised ``1`` is L with a footnote's mark.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, replace
from typing import Final

from charts.readers.plain_text import tidy
from charts.readers.raised_text import Piece, on_one_line

_UNMAPPED: Final = re.compile(r"\(cid:\d+\)")
_SAME_LINE: Final = 0.35
_SMALLER: Final = 0.82
_TOUCHING: Final = 0.12
_ONE_FIELD: Final = 0.65
"""Parts of the letters' size: how far bases of one line differ, how much smaller raised letters
are, how near the pieces of one word and the words of one field stand (common practice)."""


@dataclass(frozen=True, slots=True)
class Word:
    """A word with its box in points, from the top left of the page, and its letters' size."""

    text: str
    x0: float
    x1: float
    top: float
    bottom: float
    size: float
    raised: bool = False

    @property
    def middle(self) -> tuple[float, float]:
        """The centre of its box."""
        return (self.x0 + self.x1) / 2, (self.top + self.bottom) / 2


@dataclass(frozen=True, slots=True)
class Field:
    """Neighbouring words of one line that belong together, with their text and box."""

    words: tuple[Word, ...]
    text: str
    x0: float
    x1: float
    top: float
    bottom: float
    size: float

    @staticmethod
    def of(words: Sequence[Word]) -> Field:
        """The field of some words, from left to right."""
        return Field(
            tuple(words),
            _said(words),
            words[0].x0,
            max(word.x1 for word in words),
            min(word.top for word in words),
            max(word.bottom for word in words),
            max(word.size for word in words),
        )

    @property
    def centre(self) -> float:
        """The middle of its width."""
        return (self.x0 + self.x1) / 2


@dataclass(frozen=True, slots=True)
class PrintLine:
    """The fields of one line, from left to right."""

    fields: tuple[Field, ...]

    @property
    def top(self) -> float:
        """Its upper edge."""
        return min(field.top for field in self.fields)

    @property
    def bottom(self) -> float:
        """Its lower edge."""
        return max(field.bottom for field in self.fields)

    @property
    def size(self) -> float:
        """The size of its largest letters."""
        return max(field.size for field in self.fields)

    @property
    def text(self) -> str:
        """All of its fields, as a sentence."""
        return " ".join(field.text for field in self.fields)


def known_letters(text: str) -> str:
    """``text`` with a question mark for each letter that the file gives no meaning for."""
    return _UNMAPPED.sub("?", text)


def lines_of(words: Iterable[Word]) -> list[PrintLine]:
    """The words in lines from top to bottom, each with its fields."""
    rows = _with_raised(_rows(words))
    return [PrintLine(tuple(_fields(row))) for row in rows]


def text_of(words: Sequence[Word]) -> str:
    """The words of one cell, a line of it a line."""
    return "\n".join(_said(row) for row in _with_raised(_rows(words)))


def _rows(words: Iterable[Word]) -> list[list[Word]]:
    """Words whose bases stand at one height."""
    rows: list[list[Word]] = []
    for word in sorted(words, key=lambda one: (one.bottom, one.x0)):
        near = rows and abs(rows[-1][0].bottom - word.bottom) <= _SAME_LINE * word.size
        if near:
            rows[-1].append(word)
        else:
            rows.append([word])
    return [sorted(row, key=lambda one: one.x0) for row in rows]


def _with_raised(rows: list[list[Word]]) -> list[list[Word]]:
    """Rows of small letters that touch the row below are its raised ones."""
    kept: list[list[Word]] = []
    waiting: list[Word] = []
    for row in rows:
        row_words = [*waiting, *row]
        waiting = []
        below = _row_below(row, rows)
        if below is not None and all(_rises(word, below) for word in row):
            waiting = row_words
        else:
            kept.append(_marked(row_words))
    if waiting:
        kept.append(_marked(waiting))
    return kept


def _row_below(row: list[Word], rows: list[list[Word]]) -> list[Word] | None:
    at = rows.index(row)
    return rows[at + 1] if at + 1 < len(rows) else None


def _rises(word: Word, below: Sequence[Word]) -> bool:
    """Whether a small word stands at the shoulder of one in the row below."""
    return any(
        word.size < _SMALLER * other.size
        and word.bottom > other.top
        and min(abs(word.x0 - other.x1), abs(other.x0 - word.x1)) < 0.5 * other.size
        for other in below
    )


def _marked(row: list[Word]) -> list[Word]:
    """The row from left to right, its smaller words above the base marked as raised."""
    size = max(word.size for word in row)
    base = max(word.bottom for word in row if word.size >= _SMALLER * size)
    return sorted(
        (
            replace(word, raised=True)
            if word.size < _SMALLER * size and word.bottom < base - 0.15 * size
            else word
            for word in row
        ),
        key=lambda one: one.x0,
    )


def _fields(row: Sequence[Word]) -> Iterator[Field]:
    group: list[Word] = []
    for word in row:
        if group and _parts(group[-1], word):
            yield Field.of(group)
            group = []
        group.append(word)
    if group:
        yield Field.of(group)


def are_touching(before: Word, after: Word) -> bool:
    """Whether two words stand so near that no blank is between them."""
    return after.x0 - before.x1 <= _TOUCHING * max(before.size, after.size)


def _parts(before: Word, after: Word) -> bool:
    """Whether two words are two fields: far from each other, or a bracket that runs into a word."""
    if before.text.endswith(")") and after.text[:1].isalnum() and are_touching(before, after):
        return True
    return after.x0 - before.x1 > _ONE_FIELD * max(before.size, after.size)


def _said(words: Sequence[Word]) -> str:
    pieces: list[Piece] = []
    for at, word in enumerate(words):
        apart = at > 0 and not are_touching(words[at - 1], word)
        pieces.append(Piece(f" {word.text}" if apart else word.text, raised=word.raised))
    return tidy(on_one_line(pieces))
