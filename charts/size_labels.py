"""Size labels: their normal form, their order, and the second axis (short, regular, long)."""

from __future__ import annotations

import re
from dataclasses import dataclass
from enum import StrEnum
from typing import Final

from charts.cell_text import clean


class LabelKind(StrEnum):
    """What a size is named by."""

    ALPHA = "alpha"
    NUMBER = "number"
    NUMBER_LENGTH = "number_length"
    HEIGHT = "height"
    AGE = "age"
    CODE = "code"
    WORD = "word"
    COMBINED = "combined"


@dataclass(frozen=True, slots=True)
class SizeLabel:
    """One label: as printed, its normal form, its sorting key.

    ``length`` is the normal word of the second axis when the label carries it ("36R").
    ``also`` are the labels in brackets behind it. ``doubtful`` suggests what a mistyped label
    may have been; the label itself is never changed.
    """

    text: str
    kind: LabelKind
    normal: str
    order: tuple[float, ...]
    length: str | None = None
    also: tuple[str, ...] = ()
    doubtful: str | None = None


_ALPHA: Final = {"xs": -2.0, "s": -1.0, "m": 0.0, "l": 1.0, "xl": 2.0, "xxl": 3.0, "2xl": 3.0}
_WORDS: Final = {"small": "s", "medium": "m", "large": "l", "x-small": "xs", "x-large": "xl"}
_LENGTHS: Final = {
    "short": "short",
    "regular": "regular",
    "long": "long",
    "kurz": "short",
    "normal": "regular",
    "lang": "long",
    "r": "regular",
    "s": "short",
    "l": "long",
}


def read_label(text: str) -> SizeLabel | None:
    """The size label that ``text`` is, or None when it cannot be one at all."""
    plain = clean(text[:80])
    low = _WORDS.get(plain.lower(), plain.lower())
    if low in _ALPHA:
        return SizeLabel(plain, LabelKind.ALPHA, low.upper(), (0.0, _ALPHA[low]))
    if re.fullmatch(r"\d{1,3}", low):
        return SizeLabel(plain, LabelKind.NUMBER, low, (1.0, float(low)))
    return None


def read_length(text: str) -> str | None:
    """The place on the second axis that ``text`` names ("Kurz" is "short"), or None."""
    return _LENGTHS.get(clean(text[:80]).lower())
