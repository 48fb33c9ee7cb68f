"""What a word or a mark between the figures of a cell can mean; one word may have several senses.

The senses are bits of one number, since a token is asked for them thousands of times a second.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from functools import cache
from typing import Final

from charts.cell_text import OPEN_WAVE
from charts.unit_words import figure_units
from charts.vocabulary import FURTHER, MAIN, tables, unaccented

NUMBER: Final = 1 << 0
UNIT: Final = 1 << 1
DASH: Final = 1 << 2
SLASH: Final = 1 << 3
TILDE: Final = 1 << 4
TO: Final = 1 << 5
FROM: Final = 1 << 6
BETWEEN: Final = 1 << 7
AND: Final = 1 << 8
CIRCA: Final = 1 << 9
AT_MOST: Final = 1 << 10
BELOW: Final = 1 << 11
AT_LEAST: Final = 1 << 12
ABOVE: Final = 1 << 13
OR_LESS: Final = 1 << 14
OR_MORE: Final = 1 << 15
PLUS: Final = 1 << 16
PLUS_MINUS: Final = 1 << 17
OPEN: Final = 1 << 18
CLOSE: Final = 1 << 19
COMMA: Final = 1 << 20
BREAK: Final = 1 << 21
FOOT: Final = 1 << 22
HALF: Final = 1 << 23
FILLER: Final = 1 << 24
WORD: Final = 1 << 25
END: Final = 0

MOST: Final = AT_MOST | BELOW
LEAST: Final = AT_LEAST | ABOVE
RANGE_MARK: Final = DASH | TO | TILDE

_WORD_LISTS: Final = {
    "to": TO,
    "from": FROM,
    "between": BETWEEN,
    "and": AND,
    "circa": CIRCA,
    "at_most": AT_MOST,
    "below": BELOW,
    "at_least": AT_LEAST,
    "above": ABOVE,
    "or_less": OR_LESS,
    "or_more": OR_MORE,
    "filler": FILLER,
}
MARKS: Final[Mapping[str, int]] = {
    "-": DASH,
    "/": SLASH,
    "~": TILDE | CIRCA,
    "≈": CIRCA,
    "<": BELOW,
    ">": ABOVE,
    "<=": AT_MOST,
    "=<": AT_MOST,
    "≤": AT_MOST,
    ">=": AT_LEAST,
    "=>": AT_LEAST,
    "≥": AT_LEAST,
    "+": PLUS,
    "±": PLUS_MINUS,
    "+/-": PLUS_MINUS,
    "+-": PLUS_MINUS,
    "+ -": PLUS_MINUS,
    "(": OPEN,
    ")": CLOSE,
    "[": OPEN,
    "]": CLOSE,
    ",": COMMA,
    ";": BREAK,
    "|": BREAK,
    "\n": BREAK,
    "=": BREAK,
    "'": FOOT | UNIT,
    '"': UNIT,
    OPEN_WAVE: AT_MOST | OR_MORE,
}


@cache
def phrases() -> Mapping[str, int]:
    """Folded words and phrases of all languages to the senses they have."""
    found = _listed(FURTHER) | _listed(MAIN)
    for word in figure_units():
        found[word] = found.get(word, 0) | UNIT
    found["h"] = found.get("h", 0) | HALF
    return found


def _listed(languages: Sequence[str]) -> dict[str, int]:
    found: dict[str, int] = {}
    for name, sense in _WORD_LISTS.items():
        for _, words in tables("cell", name, among=languages):
            for word in words:
                folded = unaccented(word)
                found[folded] = found.get(folded, 0) | sense
    return found


@cache
def blanks() -> frozenset[str]:
    """Texts that stand for nothing given, folded."""
    marks = {"", "-", "--", "?", "??", "...", "…", ".", "/", "*", "x", "_", '"', "〃"}
    return frozenset(marks | {unaccented(w) for _, words in tables("cell", "blank") for w in words})
