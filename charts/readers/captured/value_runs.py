"""Several values or labels in one line with single blanks between them: ``26 - 32" 33 - 38"``.

A line is cut only when all of it comes out as whole values, or as whole labels.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from functools import lru_cache
from itertools import pairwise
from typing import Final, NamedTuple

from charts.dimensions import Role, read_heading
from charts.readers.captured.value_pattern import LIMIT, UPPER, VALUE, WHOLE
from charts.readers.captured.values import is_value
from charts.size_labels import LabelKind, SizeLabel, read_label

_AGE_OR_VALUE: Final = re.compile(
    rf"(?:\d{{1,2}}\s?[-–]\s?\d{{1,2}}\s?[MY](?=\s)|{VALUE.pattern})", re.IGNORECASE
)
_YEARS: Final = re.compile(r"\d{1,2}Y", re.IGNORECASE)
_BRACKETED: Final = re.compile(rf"\(\s*{WHOLE}\s*\)(?=\s|\Z)", re.IGNORECASE)
_MARK: Final = re.compile(r"\(\d\)(?=\s|\Z)(?!\s*\()")
"""``Chest (1) 84 90``: the number of a footnote or of a place in a drawing, no value."""
_BEGIN: Final = re.compile(
    rf"(?:{UPPER}|{LIMIT})[\d½¼¾⅛⅜⅝⅞]|\((?=\s*(?:{UPPER}|{LIMIT})[\d½¼¾])", re.IGNORECASE
)
_JOINED: Final = re.compile(r"\s*([-–/])\s*")
_SPLIT_WORDS: Final = re.compile(
    r"\b(x{1,3}|extra|\d) (small|large|klein|groß|gross)\b", re.IGNORECASE
)
_BEHIND_SIZE: Final = re.compile(r"(?<=[\dSMLX]) (?=\(\d[^()]{0,8}\)(?:\s|\Z))")
"""``158 (40) 164 (42)``: a second name of each size."""
_KEPT: Final = "\N{NO-BREAK SPACE}"
_WORDY: Final = (LabelKind.ALPHA, LabelKind.COMBINED)
_LIGHTEST_NAME: Final = 40
"""``88ST`` is a stout size: nobody weighs so many stones (common practice, no source)."""
_SMALL: Final = ("CH", "XCH")
_BEHIND_SMALL: Final = {"M", "G"}
"""``CH`` (chico) is a size before M and G only: elsewhere it is a chest, or a country."""
_LETTERED: Final = frozenset({"S", "M", "L", "XL"})
_FITS: Final = "TSPRL"
"""Tall, short, petite, regular, long behind a number."""
_TIMES: Final = re.compile(r"[1-9]X")
_FOR_ALL: Final = ("O/S", "OS")
"""One size for all, among letters that name the others; a person may write it small as a word."""
_ROW: Final = re.compile(r"\S\s{3,}\S")
_LONGEST_NAME: Final = 60
_OF_A_ROW: Final = 3
"""Values that are more than one cell's: one cell may hold one in two units."""
_MOST_WORDS: Final = 4
_MOST_SIZE_WORDS: Final = 2
_LONGEST_LINE: Final = 400
_HALF_NAMED: Final = re.compile(r"(?:½|1/2)\s*[^\W\d_].*")
_INNER_FIGURE: Final = re.compile(
    r"(?:(?:½|1/2)\s*)?[^\W\d_][^\d½¼¾]*?[\s(]\d{1,2}(?:[.,]\d)?(?P<unit>\s?(?:cm|mm|[\"”″]))"
    r"\s(?:[^\d½¼¾]*[\s(])?[^\W\d_](?:[^\d½¼¾]*\d?)\)?"
)
"""``Chest 2 cm below the armhole``: one figure with its unit, and the place that it tells."""
_SLASHED: Final = re.compile(r"(?P<low>\d{2,3})/(?P<high>\d{2,3})")
_WIDEST: Final = 6
"""How far the ends of ``98/104`` lie apart at most: children's heights go up by so much."""


class Named(NamedTuple):
    """A line cut up: the name in front ("" for none) and what follows it."""

    name: str
    parts: tuple[str, ...]


@lru_cache(maxsize=8192)
def values_in(text: str) -> tuple[str, ...]:
    """The values that ``text`` consists of, each whole; none when anything else stands in it."""
    text = text.strip()
    return _values(text, _BRACKETED if text.startswith("(") else VALUE)  # around each, or none


def _values(text: str, value: re.Pattern[str]) -> tuple[str, ...]:
    found: list[str] = []
    at = 0
    while at < len(text) <= _LONGEST_LINE:
        one = value.match(text, at)
        if one is None:
            return ()
        found.append(one[0])
        at = one.end() + len(text[one.end() :]) - len(text[one.end() :].lstrip())
    return tuple(found)


@lru_cache(maxsize=8192)
def is_cell_value(text: str) -> bool:
    """Whether ``text`` is the value of one cell: one figure, or one in two units; no row."""
    if not is_value(text) or _ROW.search(text) is not None or len(values_in(text)) >= _OF_A_ROW:
        return False
    named = named_values(text)  # "cm 64 69 74" is the row of a unit
    return named is None or len(named.parts) < _OF_A_ROW


def is_named_row(text: str) -> bool:
    """Whether ``text`` is a whole row: a name and several values behind it."""
    named = named_values(text)
    return named is not None and len(named.parts) >= _OF_A_ROW and bool(named.name)


@lru_cache(maxsize=8192)
def named_values(text: str) -> Named | None:
    """A name and the values behind it; None when the line does not come out even."""
    text = text.strip()
    starts = (one.start() for one in _BEGIN.finditer(text) if _starts_word(text, one.start()))
    begin = next((at for at in starts if _MARK.match(text, at) is None), None)
    if begin is None or begin > _LONGEST_NAME:
        return None
    name = text[:begin].strip().rstrip(":").strip()
    values = values_in(text[begin:])
    return Named(name, values) if values else None


def counted_values(text: str, count: int) -> Named | None:
    """A name and ``count`` values behind it; the name may hold a figure of its own.

    ``½ waist 36 38``, ``1/2 chest 2 cm below armhole H1 54 57``, ``Neck 37/38 39/40``.
    """
    named = named_values(text)
    if named is not None:
        return named if len(named.parts) == count else None
    text = text.strip()
    starts = [one.start() for one in _BEGIN.finditer(text[:_LONGEST_LINE])]
    for start in starts:
        if start > _LONGEST_NAME or not _starts_word(text, start):
            continue
        name = text[:start].strip().rstrip(":").strip()
        values = values_in(text[start:]) or _slashed_values(name, text[start:])
        if values:
            return Named(name, values) if len(values) == count and _may_name(name) else None
    return None


def holds_place(name: str) -> bool:
    """Whether a name tells a place by a figure: ``Chest 2 cm below the armhole``."""
    return _INNER_FIGURE.fullmatch(name) is not None


def _may_name(name: str) -> bool:
    """Whether the figures in a name can be no values that belong to the row."""
    name = _MARK.sub("", name)
    begin = _BEGIN.search(name)
    bare = begin is None or not _starts_word(name, begin.start())
    if bare:
        return bool(name)
    rest = _HALF_NAMED.fullmatch(name)
    inner = [one.start() for one in _BEGIN.finditer(name) if _starts_word(name, one.start())]
    return (rest is not None and inner == [0]) or holds_place(name)


def _slashed_values(name: str, text: str) -> tuple[str, ...]:
    """``37/38 39/40`` behind the name of a measure, each pair one value; else none."""
    words = text.split() if read_heading(name).role is Role.MEASURE else []
    for word in words:
        found = _SLASHED.fullmatch(word)
        if found is None or not 0 < int(found["high"]) - int(found["low"]) <= _WIDEST:
            return ()
    return tuple(words)


def sized_values(text: str) -> Named | None:
    """A size that holds digits and the values behind it: ``2T 33-35 28-30``, ``XS/34 80 64``.

    Values may be ages in months here: ``Newborn 0-3 M 18-21``. None for a number alone.
    """
    words = text.split()
    for count in range(min(_MOST_SIZE_WORDS, len(words) - 1), 0, -1):
        size = " ".join(words[:count])
        number = is_value(size) and "/" not in size and not _YEARS.fullmatch(size)
        if number or not is_size(size):
            continue
        values = _values(" ".join(words[count:]), _AGE_OR_VALUE)
        if values:
            return Named(size, values)
    return None


def figures_among(text: str) -> int:
    """How many whole values stand in a line that has at least as many of them as words."""
    found = [one for one in VALUE.finditer(text[:_LONGEST_LINE]) if _starts_word(text, one.start())]
    words = VALUE.sub(" ", text[:_LONGEST_LINE]).split()
    return len(found) if len(found) >= len(words) else 0


def labels_in(text: str) -> Named | None:
    """A name and the size labels behind it: ``Size S M L``, ``S/M L XL``; None for none.

    Numbers are labels only behind a word for size; letters stand for themselves.
    """
    words = _words(text)
    first = len(words)
    large = sum(word in _LETTERED for word in words) > 1
    while first and (is_size(words[first - 1]) or _is_among(words[first - 1], large=large)):
        first -= 1
    if first and words[first - 1].upper() in _SMALL and {*words[first:]} >= _BEHIND_SMALL:
        first -= 1
    name, labels = " ".join(words[:first]), tuple(words[first:])
    if len(labels) < 2 or first > _MOST_WORDS or len(set(labels)) < len(labels):
        return None
    if any(character.isdigit() for character in name):
        return None
    read = [label for one in labels if (label := read_label(one)) is not None]
    lettered = sum(label.kind in _WORDY or _has_its_length(label) for label in read)
    role = _role_before(name) if name else Role.UNKNOWN
    if lettered > 1 and role is not Role.MEASURE and (len(labels) > 2 or role is Role.LABEL):
        return Named(name, labels)
    rising = rises(labels) and all(read_label(one) is not None for one in labels)
    return Named(name, labels) if role is Role.LABEL and rising else None


def _has_its_length(label: SizeLabel) -> bool:
    """Whether a number carries the letter of a length, as no figure does: 84R, 77L, 92ST."""
    if label.kind is not LabelKind.NUMBER_LENGTH:
        return False
    stones = label.text.upper().endswith("ST")
    return not stones or int("".join(filter(str.isdecimal, label.text)) or 0) >= _LIGHTEST_NAME


def _role_before(name: str) -> Role:
    """What a name before sizes is: ``Maß`` may be a mass, which stands before no letters."""
    heading = read_heading(name)
    unsure = (Role.UNKNOWN, None) in heading.candidates
    return Role.UNKNOWN if unsure else heading.role


def _is_among(word: str, *, large: bool) -> bool:
    """Whether a word is a size where letters around it are: ``2X`` behind ``L XL``."""
    return word in _FOR_ALL or (large and _TIMES.fullmatch(word) is not None)


def rises(labels: Sequence[str]) -> bool:
    """Whether every label stands for a larger size than the one before it."""
    read = [read_label(one) for one in labels]
    orders = [one.order for one in read if one is not None]
    return len(orders) == len(labels) and all(a < b for a, b in pairwise(orders))


def takes_turns(labels: Sequence[str]) -> bool:
    """Whether figures and words change more than once: rows were cut at the wrong lines.

    ``6T`` below ``6`` is the same size for the tall, and no word.
    """
    numbers = set(filter(is_value, labels))
    figures = [is_value(label) or label.rstrip(_FITS) in numbers for label in labels]
    return sum(a != b for a, b in pairwise(figures)) > 1


def _starts_word(text: str, at: int) -> bool:
    return at == 0 or text[at - 1].isspace()


def _words(text: str) -> list[str]:
    if len(text) > _LONGEST_LINE or "|" in text:
        return []
    kept = _SPLIT_WORDS.sub(rf"\1{_KEPT}\2", _JOINED.sub(r"\1", text.strip()))
    kept = _BEHIND_SIZE.sub(_KEPT, kept)
    return [word.replace(_KEPT, " ") for word in kept.split(" ") if word.strip()]


@lru_cache(maxsize=8192)
def is_size(word: str) -> bool:
    """Whether ``word`` can only be a size: letters, or a number without a unit."""
    label = read_label(word)
    if label is None or label.doubtful is not None:
        return False
    return label.kind is not LabelKind.WORD and not (is_value(word) and '"' in word)
