"""Labels that were mistyped or misread: what they may have been, never what they are taken for."""

from __future__ import annotations

import re
from typing import Final

from charts.date_texts import month_and_day
from charts.headings.reading import Role
from charts.headings.words import entries
from charts.labels.words import known_words, slips
from charts.vocabulary import normal

_LOOKALIKES: Final = str.maketrans({"q": "g", "1": "l", "|": "l", "0": "o", "5": "s", "8": "b"})
_RUN_TOGETHER: Final = re.compile(r"(1[3-9]\d|20\d)(\d{2,3})([A-Z]{0,2})")
_SHORTEST: Final = 4
_LONG_WORD: Final = 8
_UNIT: Final = re.compile(r"\([^()]*\)\s*$")
_LETTER_FOR_FIGURE: Final = re.compile(r"(?=\D*\d)(?=[\dI]*[OoI])[\dOoI]{2,3}")
_FIGURES: Final = str.maketrans("OoI", "001")
"""The letters that are typed and scanned for 0 and 1: 4O, I2. An l is a length: 1l."""
_FOOTNOTED: Final = re.compile(r"((?:\d{1,2}|X{0,4})?X?[SL]|M)[1-9]")


def suggestion(text: str) -> str | None:
    """What a mistyped label may have been; None when nothing is near enough."""
    if text in slips():
        return slips()[text]
    if match := _RUN_TOGETHER.fullmatch(text):
        return f"{match[1]}/{match[2]}{match[3]}" if int(match[2]) <= 140 else None
    if match := _FOOTNOTED.fullmatch(text):
        return match[1]
    if match := _LETTER_FOR_FIGURE.fullmatch(text):
        return match[0].translate(_FIGURES)
    found = month_and_day(text)
    if found is not None:
        return "-".join(str(number) for number in sorted(found))
    if _heads(normal(_UNIT.sub("", text))):
        return None
    return _lookalike(text) or _near(normal(text))


def _heads(words: str) -> bool:
    """Whether it is a heading as it stands: Polish "klatka" is a chest, no Czech "krátká"."""
    entry = entries().get(words)
    return entry is not None and any(one.role is Role.MEASURE for one in entry.columns)


def _lookalike(text: str) -> str | None:
    """Sma 11 for Small, Reqular for Regular: letters and figures that look alike."""
    read = normal(text).replace(" ", "").translate(_LOOKALIKES)
    return known_words().get(read) if len(read) >= _SHORTEST else None


def _near(word: str) -> str | None:
    """One letter away from a word of labels, two for a long one; a plural is no slip."""
    if not _SHORTEST < len(word) <= 14 or not word.replace(" ", "").isalpha():
        return None
    from rapidfuzz import process
    from rapidfuzz.distance import OSA

    most = 2 if len(word) >= _LONG_WORD else 1
    known = [one for one in known_words() if one[0] == word[0] and not word.startswith(one)]
    best = process.extractOne(word, known, scorer=OSA.distance, score_cutoff=most)
    return known_words()[best[0]] if best else None
