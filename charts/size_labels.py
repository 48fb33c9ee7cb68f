"""Size labels: their normal form, their order, and the second axis (short, regular, long).

A label is text: nothing is measured by it and nothing in it is changed. What it was read as
serves to sort sizes, to find the labels of a table, and to suggest what a mistyped one meant.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import replace
from functools import lru_cache
from typing import Final

from charts.cell_text import clean
from charts.labels.countries import countries_label, without_country
from charts.labels.letters import letters_label
from charts.labels.numbers import numbers_label
from charts.labels.reading import ADULT, INFANT, LENGTHS, LabelKind, SizeLabel, order_of
from charts.labels.slips import suggestion
from charts.labels.words import label_words, length_words, rank_words
from charts.vocabulary import normal, unaccented

__all__ = [
    "LabelKind",
    "SizeLabel",
    "printed_names",
    "read_label",
    "read_length",
    "without_word_for_size",
]

LONGEST: Final = 40
"""Characters above which a text is a sentence and no label (common practice)."""

_LONGEST_NUMBER: Final = 3
_BRACKET: Final = re.compile(r"([^()\[\]]+?)\s*[(\[]([^()\[\]]+)[)\]]")
_UNMEASURED: Final = re.compile(r"[<>≤≥±%€$£\"]|\d['’]|\d\s?(?:cm|mm|in|kg|lbs?)\b", re.IGNORECASE)
_SYSTEM: Final = re.compile(r"([a-z]{1,4})\.?[ :-]?\s*(?=\d)(.+)")
_PARTS: Final = re.compile(r"\s*[/|,]\s*|\s+-\s+")
_CLOSE_PARTS: Final = re.compile(r" ?[/|-] ?")
_TWO_NAMES: Final = 2
_MORE_NAMES: Final = (3, 4)
"""A size by letters and in two or three countries; M-12-34 is rather the number of an article."""
_BREAK: Final = re.compile(r" *\n\s*")
_KILLED: Final = {"na": "NA", "n/a": "N/A", "none": "None", "nan": "nan"}
_LENGTH_LETTERS: Final = {
    "xs": "extra short",
    "s": "short",
    "r": "regular",
    "n": "regular",
    "l": "long",
    "xl": "extra long",
    "t": "tall",
    "p": "petite",
    "k": "short",
}


def read_label(text: str) -> SizeLabel | None:
    """The size label that ``text`` is, or None when it cannot be one at all."""
    return _read(text) if len(text) <= 2 * LONGEST else None


@lru_cache(maxsize=16384)
def _read(text: str) -> SizeLabel | None:
    plain = clean(text)
    if "\n" in plain and (both := _one_a_line(plain)) is not None:
        return both
    plain = plain.replace("\n", " ")
    if not plain or len(plain) > LONGEST or not any(map(str.isalnum, plain)):
        return None
    if match := _BRACKET.fullmatch(plain):
        return _with_bracket(plain, match[1], match[2])
    if _UNMEASURED.search(plain):
        return None
    return _known(plain) or _before_colon(plain) or _doubtful(plain)


def _before_colon(plain: str) -> SizeLabel | None:
    """``M:``: the name of a size with the colon that only says that its figures follow."""
    name = plain.removesuffix(":").rstrip()
    inner = (letters_label(name) or numbers_label(name)) if name != plain else None
    return inner and replace(inner, text=plain)


def _known(plain: str) -> SizeLabel | None:
    found = letters_label(plain) or numbers_label(plain) or _word(plain)
    if found is not None:
        return found
    if (both := _letters_and_number(plain)) is not None:
        return both
    rest = _without_prefix(plain)
    inner = rest and (letters_label(rest) or numbers_label(rest))
    if inner:
        return replace(inner, text=plain)
    return countries_label(plain) or _ranked(plain)


def _letters_and_number(plain: str) -> SizeLabel | None:
    """M/38, S - EU 36, 10 / M: one size by letters, with its number as the second label.

    Four digits are no size: WL-3301 is the number of an article.
    """
    for ends in (_PARTS, _CLOSE_PARTS):
        parts = ends.split(plain)
        if len(parts) == _TWO_NAMES or (ends is _PARTS and len(parts) in _MORE_NAMES):
            named = _one_by_letters(plain, parts)
            if named is not None:
                return named
    return None


def _one_by_letters(plain: str, parts: Sequence[str]) -> SizeLabel | None:
    """XS / 8 / 4: the part by letters names the size, those by numbers are its other names."""
    letters = [label for part in parts if (label := letters_label(part)) is not None]
    figures = tuple(part for part in parts if letters_label(part) is None)
    if len(letters) != 1 or any(_number_in_a_system(figure) is None for figure in figures):
        return None
    return replace(letters[0], text=plain, also=figures)


def _one_a_line(plain: str) -> SizeLabel | None:
    """S over EU 36: the first line is the name, the second what the size is called as well.

    36 over S alone may be a length, 36 short, and stays one name.
    """
    lines = _BREAK.split(plain)
    both = _letters_and_number(" / ".join(lines))
    if both is None or (_without_prefix(both.also[0]) is None and _known(" ".join(lines))):
        return None
    return replace(both, text=lines[0], also=tuple(lines[1:]))


def _number_in_a_system(text: str) -> SizeLabel | None:
    """36, EU 36, UK 8-10."""
    bare = _without_prefix(text) or without_country(text) or text
    return numbers_label(bare) if len(bare) <= _LONGEST_NUMBER or bare != text else None


def _with_bracket(plain: str, outer: str, inner: str) -> SizeLabel | None:
    """S (6-7), 00 (XS): the label and its second one; a quantity in brackets is none."""
    main = _known(outer) or _doubtful(outer)
    if main is None or _UNMEASURED.search(outer):
        return None
    also = () if _UNMEASURED.search(inner) or not _known(inner.strip()) else (inner.strip(),)
    return replace(main, text=plain, also=also)


def _without_prefix(plain: str) -> str | None:
    """Size M, Gr. 38, EU 38, UK12: the label without the word or the system before it."""
    folded = unaccented(plain)
    first, _, rest = folded.partition(" ")
    if rest and normal(first) in label_words("size"):
        return rest
    match = _SYSTEM.fullmatch(folded)
    known = label_words("systems") | label_words("size")
    return match[2] if match and match[1] in known else None


def _ranked(plain: str) -> SizeLabel | None:
    """Youth 6-8, Girls 10: a number with the word for who wears it."""
    words = plain.split(" ")
    for first, rest in ((words[0], words[1:]), (words[-1], words[:-1])):
        rank = rank_words().get(normal(first))
        inner = numbers_label(" ".join(rest)) if rank is not None and rest else None
        if inner is not None and rank is not None:
            return replace(inner, text=plain, order=(rank, *inner.order[1:]))
    return None


def _word(plain: str) -> SizeLabel | None:
    """Infant, Youth, One Size, Regular, Frühchen, Pony; and NA, which is text here."""
    folded, words = unaccented(plain), normal(plain)
    if folded in _KILLED:
        return SizeLabel(plain, LabelKind.WORD, _KILLED[folded], order_of(LabelKind.WORD, 0))
    if words in label_words("one_size"):
        return SizeLabel(plain, LabelKind.WORD, "one size", order_of(LabelKind.WORD, 0))
    if words in label_words("newborn"):
        order = order_of(LabelKind.AGE, 0, rank=INFANT)
        return SizeLabel(plain, LabelKind.AGE, "newborn", order)
    if words in rank_words():
        order = order_of(LabelKind.WORD, 0, rank=rank_words()[words])
        return SizeLabel(plain, LabelKind.WORD, words, order)
    if words in length_words():
        length = length_words()[words]
        order = order_of(LabelKind.WORD, float(LENGTHS.index(length)), rank=ADULT)
        return SizeLabel(plain, LabelKind.WORD, length, order, length)
    if words in label_words("plain"):
        return SizeLabel(plain, LabelKind.WORD, words, order_of(LabelKind.WORD, 0))
    return None


def _doubtful(plain: str) -> SizeLabel | None:
    meant = suggestion(plain)
    found = _known(meant) if meant else None
    return found and replace(found, text=plain, doubtful=meant)


def printed_names(label: SizeLabel) -> tuple[str, ...]:
    """What a size is called as well: the labels behind it, and of S / EU 36 the S alone."""
    if len(label.also) != 1 or label.kind is not LabelKind.ALPHA:
        return label.also
    for ends in (_PARTS, _CLOSE_PARTS):
        parts = ends.split(label.text)
        if len(parts) == 2 and label.also[0] in parts:
            return tuple(parts)
    return label.also


def without_word_for_size(text: str) -> str:
    """``Size M``, ``Größe: 38`` without the word that only says that a size follows."""
    first, _, rest = clean(text).partition(" ")
    word = normal(first.rstrip(":."))
    return rest if word in label_words("size") and rest and _read(rest) is not None else text


def read_length(text: str) -> str | None:
    """The place on the second axis that ``text`` names ("Kurz" is "short"), or None.

    Single letters count too (R, S, L, XL): ask only for what stands on a length axis.
    """
    if len(text) > 2 * LONGEST:
        return None
    words = normal(clean(text))
    return length_words().get(words) or _LENGTH_LETTERS.get(words)
