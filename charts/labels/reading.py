"""What a size label was read as, and the order labels stand in."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum
from typing import Final


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

    ``order`` sorts labels of one chart: by who wears it (infant to adult), then by size, then by
    length. ``length`` is the normal word of the second axis when the label carries it ("36R").
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


INFANT: Final = 0.0
TODDLER: Final = 0.5
CHILD: Final = 1.0
YOUTH: Final = 2.0
ADULT: Final = 3.0

_NUMBERS: Final = 0.0
_LETTERS: Final = 1.0
_CODES: Final = 2.0
_WORDS: Final = 3.0
_GROUPS: Final = {
    LabelKind.ALPHA: _LETTERS,
    LabelKind.COMBINED: _LETTERS,
    LabelKind.CODE: _CODES,
    LabelKind.WORD: _WORDS,
}
LENGTHS: Final = ("extra short", "short", "petite", "regular", "long", "tall", "extra long")
"""The normal words of the second axis, in their order."""


def order_of(
    kind: LabelKind,
    place: float,
    *,
    rank: float = ADULT,
    second: float = 0.0,
    length: str | None = None,
) -> tuple[float, ...]:
    """The sorting key of a label: who, numbers before letters, size, finer size, length."""
    known = length if length in LENGTHS else "regular"
    return (rank, _GROUPS.get(kind, _NUMBERS), float(place), second, float(LENGTHS.index(known)))
