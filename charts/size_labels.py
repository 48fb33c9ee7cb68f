"""Size labels: their normal form, their order, and the second axis (short, regular, long).

A label is text: nothing is measured by it and nothing in it is changed. What it was read as
serves to sort sizes, to find the labels of a table, and to suggest what a mistyped one meant.
"""

from __future__ import annotations

import re
from dataclasses import replace
from functools import lru_cache
from typing import Final

from charts.cell_text import clean
from charts.labels.letters import letters_label
from charts.labels.numbers import numbers_label
from charts.labels.reading import ADULT, INFANT, LENGTHS, LabelKind, SizeLabel, order_of
from charts.labels.slips import suggestion
from charts.labels.words import label_words, length_words, rank_words
from charts.vocabulary import normal, unaccented

__all__ = ["LabelKind", "SizeLabel", "read_label", "read_length"]

LONGEST: Final = 40
"""Characters above which a text is a sentence and no label (common practice)."""

_LONGEST_NUMBER: Final = 3
_BRACKET: Final = re.compile(r"([^()\[\]]+?)\s*[(\[]([^()\[\]]+)[)\]]")
_UNMEASURED: Final = re.compile(r"[<>≤≥±%€$£\"]|\d['’]|\d\s?(?:cm|mm|in|kg|lbs?)\b", re.IGNORECASE)
_SYSTEM: Final = re.compile(r"([a-z]{1,4})\.?[ :-]?\s*(?=\d)(.+)")
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
    plain = clean(text).replace("\n", " ")
    if not plain or len(plain) > LONGEST or not any(map(str.isalnum, plain)):
        return None
    if match := _BRACKET.fullmatch(plain):
        return _with_bracket(plain, match[1], match[2])
    if _UNMEASURED.search(plain):
        return None
    return _known(plain) or _doubtful(plain)


def _known(plain: str) -> SizeLabel | None:
    found = letters_label(plain) or numbers_label(plain) or _word(plain)
    if found is not None:
        return found
    if (both := _letters_and_number(plain)) is not None:
        return both
    rest = _without_prefix(plain)
    inner = rest and (letters_label(rest) or numbers_label(rest))
    return replace(inner, text=plain) if inner else _ranked(plain)


def _letters_and_number(plain: str) -> SizeLabel | None:
    """M/38, S - 36, 10 / M: one size by letters, with its number as the second label.

    Four digits are no size: WL-3301 is the number of an article.
    """
    parts = re.split(r" ?[/|-] ?", plain)
    if len(parts) != 2:
        return None
    for name, figure in (parts, reversed(parts)):
        letters, number = letters_label(name), numbers_label(figure)
        if letters is not None and number is not None and len(figure) <= _LONGEST_NUMBER:
            return replace(letters, text=plain, also=(figure,))
    return None


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


def read_length(text: str) -> str | None:
    """The place on the second axis that ``text`` names ("Kurz" is "short"), or None.

    Single letters count too (R, S, L, XL): ask only for what stands on a length axis.
    """
    if len(text) > 2 * LONGEST:
        return None
    words = normal(clean(text))
    return length_words().get(words) or _LENGTH_LETTERS.get(words)
