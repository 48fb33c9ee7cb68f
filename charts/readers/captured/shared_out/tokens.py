"""A row of single blanks cut into a name and cells: ``M 48-55 kg 50N black, red`` has three cells.

Whole values, ages, amounts of money and of things, and signs for nothing are a cell each; words
that stand together are one cell, since no blank tells where one ends.
"""

from __future__ import annotations

import re
from dataclasses import dataclass
from enum import StrEnum
from functools import lru_cache
from typing import Final

from charts.readers.captured.pieces import is_age, pieces
from charts.readers.captured.value_pattern import VALUE
from charts.readers.captured.value_runs import is_cell_value
from charts.readers.captured.values import is_blank


class Kind(StrEnum):
    """What a cell holds. AMOUNT is a figure of no measure: a price, grams, newtons."""

    VALUE = "value"
    AGE = "age"
    AMOUNT = "amount"
    NOTHING = "nothing"
    WORDS = "words"


@dataclass(frozen=True, slots=True)
class Part:
    """One cell of a row, or one word of its name."""

    text: str
    kind: Kind


@dataclass(frozen=True, slots=True)
class Row:
    """One line: the words in front, which name the size, and the cells behind them."""

    name: str
    parts: tuple[Part, ...]
    line: int

    @property
    def kinds(self) -> tuple[Kind, ...]:
        """What the cells hold, in their order."""
        return tuple(part.kind for part in self.parts)


_NUMBER: Final = r"\d+(?:[.,]\d+)?"
_MONTH: Final = r"(?:jan|feb|mar|mär|apr|may|mai|jun|jul|aug|sep|oct|okt|nov|dec|dez)[a-z]*"
_AMOUNT: Final = re.compile(
    rf"(?:R?[£€$]\s?{_NUMBER}|{_NUMBER}\s?(?:€|£|\$|zł|Kč|kr|eur|EUR|g|ml|cc|oz|%|pcs|pieces|Stk|Stück|szt|ks)|{_NUMBER}N"
    rf"|\d{{1,2}}[-.]{_MONTH}|\d{{6,}})(?=\s|\Z)"
)
"""Prices, weights of things, newtons, article numbers; and dates, which ranges are changed into."""
_DATE: Final = re.compile(rf"\d{{1,2}}[-.]{_MONTH}", re.IGNORECASE)
_EITHER: Final = re.compile(
    rf"(?:{VALUE.pattern})\s(?:/|or|oder|ou|of|o|eller|bzw\.|resp\.)\s(?:{VALUE.pattern})",
    re.IGNORECASE,
)
"""``155-165 / 5'1"-5'5"``, ``44-46 or 46-48``: two values of one cell."""
_BOUNDS: Final = re.compile(
    rf"(?:over|above|more than|über|mehr als|ab|oltre|plus de|más de|från|od|ponad)\s{_NUMBER}"
    rf"\s?(?P<unit>cm|kg|lbs?|in),?\s(?:and\s|und\s|et\s)?"
    rf"(?:up to|to|bis(?: zu)?|fino a|jusqu['’]à|hasta|do)\s{_NUMBER}\s?(?P=unit)(?=\s|\Z)",
    re.IGNORECASE,
)
"""``over 30 kg up to 45 kg``: both ends of one value in words."""
_BESIDE_M: Final = re.compile(r"(\d{1,2}) M")
"""``5 M`` at the head of a row: a number and a size, no five months."""
_COUNTRY: Final = frozenset({"US", "UK", "EU", "DE", "FR", "IT", "USA", "GB"})
_STOPS: Final = (":", ".", "!", "?")
_SLASH: Final = "/"
_DANGLING: Final = (_SLASH, "&", "+")
_LONGEST: Final = 300
_MOST_NAME: Final = 5
_FIGURE: Final = re.compile(r"\d")


@lru_cache(maxsize=4096)
def row_of(text: str, line: int) -> Row | None:
    """The name and the cells of a line; None where no figure of a measure is in it."""
    text = text.strip()
    if len(text) > _LONGEST or _FIGURE.search(text) is None:
        return None
    found = _parts(text)
    name, rest = _name(found)
    words = name.split()
    if not name or name.endswith(_STOPS) or len(words) > _MOST_NAME:
        return None
    if not any(one.kind is Kind.VALUE for one in rest):
        return None
    return Row(name, tuple(_joined(rest)), line)


def _parts(text: str) -> list[Part]:
    found: list[Part] = []
    at = 0
    while at < len(text):
        part = _part(text, at)
        found.append(part)
        at += len(part.text)
        at += len(text[at:]) - len(text[at:].lstrip())
    return [_between_words(found, at) for at in range(len(found))]


def _between_words(parts: list[Part], at: int) -> Part:
    """The part, a stroke between two words as a word: ``2XL / XXL`` names one size."""
    around = [one.kind for one in (*parts[max(at - 1, 0) : at], *parts[at + 1 : at + 2])]
    joins = parts[at].text == _SLASH and around == [Kind.WORDS, Kind.WORDS]
    return Part(_SLASH, Kind.WORDS) if joins else parts[at]


def _part(text: str, at: int) -> Part:
    amount = _AMOUNT.match(text, at)
    if amount is not None:
        dated = _DATE.fullmatch(amount[0]) is not None
        return Part(amount[0], Kind.VALUE if dated else Kind.AMOUNT)
    whole = _BOUNDS.match(text, at) or _EITHER.match(text, at)
    if whole is not None:
        return Part(whole[0], Kind.VALUE)
    first = pieces(text[at:])[0]
    if at == 0 and (sized := _BESIDE_M.fullmatch(first)) is not None:
        return Part(sized[1], Kind.VALUE)
    if is_age(first):
        return Part(first, Kind.AGE)
    if is_blank(first):
        return Part(first, Kind.NOTHING)
    return Part(first, Kind.VALUE if is_cell_value(first) else Kind.WORDS)


def _name(parts: list[Part]) -> tuple[str, list[Part]]:
    """The words in front of the first figure, or that figure where none is; and what follows."""
    first = next((at for at, one in enumerate(parts) if one.kind is not Kind.WORDS), len(parts))
    end = max(first, 1)
    if [one.text for one in parts[end : end + 1]] == [_SLASH] and first:
        end += parts[end + 1 :] != [] and parts[end + 1].text.isdigit()
    while end < len(parts) and _goes_on(parts[:end], parts[end]):
        end += 1
    return " ".join(one.text for one in parts[:end]), parts[end:]


def _goes_on(name: list[Part], follows: Part) -> bool:
    """Whether a name is not at its end: ``XS /`` before 28, ``S US`` before 0-4, 2 before (S)."""
    last = name[-1]
    if follows.kind is Kind.WORDS:
        return last.kind is Kind.VALUE and follows.text.startswith("(")
    if last.text in _COUNTRY and len(name) > 1:
        return follows.kind is Kind.VALUE
    return last.text in _DANGLING and len(name) > 1 and follows.text.isdigit()


def _joined(parts: list[Part]) -> list[Part]:
    """The cells, words beside each other as one."""
    found: list[Part] = []
    for part in parts:
        if found and part.kind is Kind.WORDS is found[-1].kind:
            found[-1] = Part(f"{found[-1].text} {part.text}", Kind.WORDS)
        else:
            found.append(part)
    return found
