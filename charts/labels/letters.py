"""Labels by letters: XS, X-Small, 2XL, XXL/XXXL, Adult Small, XL Long, P M G, YS."""

from __future__ import annotations

import re
from functools import lru_cache
from typing import Final, NamedTuple

from charts.labels.reading import ADULT, CHILD, YOUTH, LabelKind, SizeLabel, order_of
from charts.labels.words import (
    foreign_letters,
    label_words,
    length_words,
    letter_words,
    rank_words,
)
from charts.vocabulary import normal, unaccented

_SHORT: Final = re.compile(r"(\d{1,2})?(x{0,6})(s|m|l)")
_GLUED_X: Final = re.compile(r"^(\d{0,2}x+)([a-z]{2,})$")
_GLUED_PAIR: Final = re.compile(r"^(\dx)(\dx)$")
"""``1x2x``: two sizes in one, whose sign between them is left out."""
_JOINTS: Final = re.compile(r" ?[/|,+-] ?| (?:to|bis|a|à) ")
_PREFIXES: Final = {"y": YOUTH, "c": CHILD, "k": CHILD, "j": YOUTH, "a": ADULT, "w": ADULT}
_PREFIXED: Final = re.compile(r"([YCKJAW])(X{0,3}[SL]|M|\dX[SL])")
_LENGTH_SUFFIX: Final = re.compile(r"(\dX[SL]|X{0,3}[SL]|M)([TRP])")
_LENGTH_LETTERS: Final = {"t": "tall", "r": "regular", "p": "petite"}
_UNITS_OF_SPEECH: Final = frozenset({"CM"})
_MOST_X: Final = 12
_MOST_PLUS: Final = 5  # 6X is a girl's size between 6 and 7


class Letters(NamedTuple):
    """A size by letters: its normal form and its place, M being 0."""

    normal: str
    place: float
    doubtful: str | None = None


@lru_cache(maxsize=16384)
def letters_label(text: str) -> SizeLabel | None:
    """The label by letters that ``text`` is, with who wears it and its length; or None."""
    if text in _UNITS_OF_SPEECH:
        return None
    if match := _PREFIXED.fullmatch(text):
        found = _letters(match[2].lower())
        return found and _label(text, found, rank=_PREFIXES[match[1].lower()])
    if match := _LENGTH_SUFFIX.fullmatch(text):
        found = _letters(match[1].lower())
        return found and _label(text, found, length=_LENGTH_LETTERS[match[2].lower()])
    rest, rank, length = _apart(text)
    if not rest:
        return None
    found = _letters(rest) or _said_twice(rest)
    if found is not None:
        return _label(text, found, rank=rank, length=length)
    return _combined(text, rest, rank=rank, length=length)


def _label(
    text: str, found: Letters, *, rank: float = ADULT, length: str | None = None
) -> SizeLabel:
    order = order_of(LabelKind.ALPHA, found.place, rank=rank, length=length)
    kind = LabelKind.COMBINED if "/" in found.normal else LabelKind.ALPHA
    return SizeLabel(text, kind, found.normal, order, length, doubtful=found.doubtful)


def _apart(text: str) -> tuple[str, float, str | None]:
    """The label without the words that say who wears it or how long it is."""
    words = re.split(r"([ /-])", unaccented(text))
    kept, rank, length = [], ADULT, None
    for word in words:
        plain = normal(word)
        if plain in rank_words():
            rank = rank_words()[plain]
        elif plain in length_words() and plain not in letter_words() and len(plain) > 1:
            length = length_words()[plain]
        else:
            kept.append(word)
    rest = "".join(kept).strip(" /-,.'")
    rest = re.sub(r"'s$|'$", "", rest)
    return re.sub(r" {2,}", " ", rest), rank, length


@lru_cache(maxsize=16384)
def _letters(folded: str) -> Letters | None:
    """One size: s, xs, 2xl, x-small, xx/large, extra extra large, klein, gg."""
    if folded in foreign_letters():
        return Letters(folded.upper(), foreign_letters()[folded])
    if folded == "ml":
        return Letters("M/L", 0.5)
    glued = re.sub(r"[ ./-]", "", folded)
    if match := _SHORT.fullmatch(glued):
        return _of_parts(int(match[1] or 0), len(match[2]), match[3], joints=folded != glued)
    if match := re.fullmatch(r"(\d{1,2})x", glued):
        return _number_of_x(int(match[1]))
    spaced = _GLUED_X.sub(r"\1 \2", folded)
    return _of_words([word for word in re.split(r"[ ./-]+", spaced) if word])


def _said_twice(folded: str) -> Letters | None:
    """``S Small``, ``XL extra large``: the letters, and the words that they stand for."""
    first, _, rest = folded.partition(" ")
    letters, words = _letters(first), _letters(rest) if len(rest) > len(first) else None
    alike = letters is not None and words is not None and letters.place == words.place
    return letters if alike else None


def _of_words(words: list[str]) -> Letters | None:
    if not words or words[-1] not in letter_words():
        return None
    place = letter_words()[words[-1]]
    count = number = 0
    for word in words[:-1]:
        if word in label_words("extra") or re.fullmatch(r"x+", word):
            count += len(word) if set(word) == {"x"} else 1
        elif match := re.fullmatch(r"(\d{1,2})x?", word):
            number = int(match[1])
        else:
            return None
    letter = {-1.0: "s", 0.0: "m", 1.0: "l"}[place]
    return _of_parts(number, count or (1 if number else 0), letter, joints=False)


def _of_parts(number: int, count: int, letter: str, *, joints: bool) -> Letters | None:
    """2xl is xxl; a number stands for so many x."""
    if number:
        if count != 1 or number > _MOST_X:
            return None
        count = number
    if letter == "m":
        return Letters("M", 0.0) if not count else None
    if joints and not count:
        return None
    sign = -1.0 if letter == "s" else 1.0
    many = f"{count}X" if count > 1 else "X" * count
    return Letters(f"{many}{letter.upper()}", sign * (1 + count))


def _number_of_x(number: int) -> Letters | None:
    """2X is often, but not always, 2XL: in plus sizes it is another grade."""
    if not 1 <= number <= _MOST_PLUS:
        return None
    meant = f"{number}XL" if number > 1 else "XL"
    return Letters(f"{number}X", 1.0 + number, doubtful=meant)


def _combined(text: str, rest: str, *, rank: float, length: str | None) -> SizeLabel | None:
    """S/M, XXL/XXXL, XL-XXXL: several sizes in one."""
    parts = [_letters(part) for part in _JOINTS.split(_GLUED_PAIR.sub(r"\1/\2", rest))]
    if len(parts) < 2 or any(part is None for part in parts):
        return None
    known = [part for part in parts if part is not None]
    first, last = known[0], known[-1]
    if first.place > last.place:
        return None
    order = order_of(
        LabelKind.COMBINED,
        (first.place + last.place) / 2,
        rank=rank,
        second=first.place,
        length=length,
    )
    name = "/".join(part.normal for part in known)
    return SizeLabel(text, LabelKind.COMBINED, name, order, length)
