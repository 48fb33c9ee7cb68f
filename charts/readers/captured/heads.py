"""Headings in one line with single blanks between them: ``Size Height Age Weight, kg Waist, cm``.

A unit or a bracket ends a heading and never begins one. Between such ends the words are parted
where each part is a known heading; what is known in no way stays one heading that has its unit.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field
from itertools import islice
from typing import Final

from charts.dimensions import Role, find_units, read_heading
from charts.schema import Dimension
from charts.size_labels import LabelKind, read_label

_WORD: Final = re.compile(r"\S+(?:\s*\([^)]*\)[^\s\w]*)?")
_MOST_WORDS: Final = 40
_MOST_IN_PART: Final = 8
_MOST_WORDS_OF_ONE: Final = 3
"""Longer headings of no known measure may be several that are known."""
_MOST_WAYS: Final = 2_000
_JOINING: Final = frozenset({"/", "&", "+", "-", "–", "or", "oder", "ou", "o", "eller"})
"""What stands between two words of one heading: none begins with it or ends in it."""
_ARTICLES: Final = frozenset(
    (
        *("the", "a", "of", "to", "at", "from", "der", "die", "den", "dem", "am", "im", "an"),
        *("du", "de", "des", "del", "della", "dello", "dei", "da", "do", "das", "la", "le"),
        *("les", "el", "los", "las", "di", "van", "het", "til", "av", "af"),
    )
)
_INNER: Final = frozenset(
    (
        *("to", "of", "at", "from", "de", "du", "des", "del", "della", "dello", "di", "do"),
        *("da", "til", "van", "av", "af"),
    )
)
"""Small words that join two others, so that no heading begins with them: ``waist to shoulder``."""
_IN: Final = frozenset({"in", "en"})
"""``Chest in cm`` goes on behind these, which print a unit only where nothing follows."""
_GO_ON: Final = _JOINING | _ARTICLES | _IN
_COLUMNS: Final = (Role.MEASURE, Role.LABEL)


@dataclass(slots=True)
class _Words:
    """The words of a heading line: where it may be cut, and where it has to be."""

    words: Sequence[str]
    may: list[bool]
    must: list[bool]
    known: dict[tuple[int, int], bool] = field(default_factory=dict)

    def part(self, start: int, end: int) -> str:
        return " ".join(self.words[start:end])


def parted_heads(text: str, columns: int) -> list[str] | None:
    """The headings of ``columns`` columns; None where none or several ways part them so."""
    words = _WORD.findall(text)
    if not columns <= len(words) <= _MOST_WORDS:
        return None
    may = [may_begin(words, at) for at in range(len(words))]
    heads = _Words(words, may, [must_begin(words, at) for at in range(len(words))])
    ways = list(islice(_ways(heads, 0, columns), _MOST_WAYS + 1))
    if not ways or len(ways) > _MOST_WAYS:
        return None
    ranks = [_rank(way) for way in ways]
    best = [way for way, rank in zip(ways, ranks, strict=True) if rank == max(ranks)]
    return best[0] if len(best) == 1 else None


def is_known_column(head: str) -> bool:
    """Whether a heading names a measure or sizes, and not the one before the other."""
    known = read_heading(head).role in _COLUMNS
    return known and not holds_sizes_first(head) and not holds_two_units(head)


def follows_unit(words: Sequence[str], at: int) -> bool:
    """Whether a unit stands behind another: ``Bust cm inch`` is two columns of one measure."""
    first, second = (word.strip(",;:.").lower() for word in (words[at - 1], words[at]))
    return at > 0 and first not in _IN and first != second and _is_unit(first) and _is_unit(second)


def holds_two_units(head: str) -> bool:
    """Whether two units stand behind each other in a heading with nothing that joins them."""
    words = head.split()
    return any(follows_unit(words, at) for at in range(1, len(words)))


def holds_sizes_first(head: str) -> bool:
    """Whether a word for sizes stands before a measure: ``Size Height (cm)`` is two columns."""
    words = head.split()
    return any(
        _can_name_sizes(words[at - 1]) and _is_plain_measure(" ".join(words[at:]))
        for at in range(1, len(words))
    )


def _can_name_sizes(words: str) -> bool:
    heading = read_heading(words)
    return heading.role is Role.LABEL and not heading.rest


def _is_plain_measure(words: str) -> bool:
    heading = read_heading(words)
    plain = heading.role is Role.MEASURE and (Role.LABEL, None) not in heading.candidates
    return plain and words[0].isalnum()


def begins_with_sizes(text: str) -> bool:
    """Whether a line of several words begins with the one for sizes: no heading stands above it."""
    first, *others = text.split() or [""]
    return bool(others) and read_heading(first).role is Role.LABEL


def holds_two_measures(head: str) -> bool:
    """Whether two measures stand side by side in a heading: ``Chest Waist`` over one figure.

    There are more names than figures then, and any of the columns may be the one that lacks.
    """
    meant = _measures_of(head)
    words = head.split()
    several = len(meant) > 1 or (len(words) > _MOST_WORDS_OF_ONE and meant == {Dimension.OTHER})
    cuts = range(1, len(words)) if several else ()
    return any(
        left not in _JOINING
        and right not in _JOINING
        and _tell_two(" ".join(words[:at]), " ".join(words[at:]))
        for at in cuts
        for left, right in [(words[at - 1].lower(), words[at].lower())]
    )


def _tell_two(first: str, second: str) -> bool:
    one, other = _measures_of(first), _measures_of(second)
    return bool(one and other) and one != other


def _measures_of(head: str) -> set[Dimension]:
    heading = read_heading(head)
    meant = (*heading.candidates, (heading.role, heading.dimension))
    return {one for role, one in meant if role is Role.MEASURE and one is not None}


def must_begin(words: Sequence[str], at: int) -> bool:
    """Whether a heading begins with the word at a place: one can, and a unit ends before it."""
    return at > 0 and may_begin(words, at) and _ends(words, at)


def may_begin(words: Sequence[str], at: int) -> bool:
    """Whether a heading can begin with the word at a place: no unit, no bracket, no joint."""
    word = words[at].strip(",;:.").lower()
    if not word or not word[0].isalnum() or word in _JOINING:
        return False
    if _is_unit(word) and not (at > 0 and "(" in words[at - 1] and _ends(words, at)):
        return False  # a unit goes on behind no other in brackets: "(cm) metres of yarn"
    if words[at] in _INNER and not (word == "to" and words[at + 1 : at + 2] == ["fit"]):
        return False
    return at == 0 or (words[at - 1].lower() not in _GO_ON and not _is_of_thing(words, at))


def _is_of_thing(words: Sequence[str], at: int) -> bool:
    """Whether a measure is that of a thing by the word before it: ``Shipping weight``."""
    if read_heading(words[at]).role is not Role.MEASURE:
        return False
    whole = read_heading(f"{words[at - 1]} {words[at]}")
    return whole.role is Role.OTHER and not whole.rest and not whole.candidates


def _is_unit(word: str) -> bool:
    return bool(find_units(word)) and read_heading(word).role is Role.UNIT


def _ends(words: Sequence[str], at: int) -> bool:
    """Whether the word before a place ends its heading: a unit, alone or in brackets."""
    before = words[at - 1]
    bracket = before[before.find("(") :] if "(" in before else ""
    if bracket:
        return bool(find_units(bracket.strip("(),;:")))
    return at > 1 and before.lower() not in _IN and _is_unit(before.strip(",;:."))


def _ways(heads: _Words, start: int, columns: int) -> Iterator[list[str]]:
    """Every way to part the words from ``start`` on into as many headings as columns."""
    count = len(heads.words)
    if columns == 0 or start == count:
        if columns == 0 and start == count:
            yield []
        return
    for end in range(start + 1, min(start + _MOST_IN_PART, count - columns + 1) + 1):
        if end < count and not heads.may[end]:
            continue
        if any(heads.must[start + 1 : end]):
            return
        if _is_part(heads, start, end):
            head = heads.part(start, end)
            yield from ([head, *rest] for rest in _ways(heads, end, columns - 1))


def _is_part(heads: _Words, start: int, end: int) -> bool:
    """Whether a known heading stands here, or all between two ends that no way parts."""
    if _is_known(heads, start, end):
        return True
    whole = start > 0 and heads.must[start] and (end == len(heads.words) or heads.must[end])
    return whole and not _comes_out(heads, start, end)


def _is_known(heads: _Words, start: int, end: int) -> bool:
    here = (start, end)
    if here not in heads.known:
        heads.known[here] = is_known_column(heads.part(start, end))
    return heads.known[here]


def _comes_out(heads: _Words, start: int, end: int) -> bool:
    """Whether the words can be parted into known headings."""
    return any(
        _is_known(heads, start, at) and (at == end or _comes_out(heads, at, end))
        for at in range(start + 1, end + 1)
        if at == end or heads.may[at]
    )


def _holds_sizes(part: str) -> bool:
    """Whether more than sizes is named behind a word for them: ``Size Height`` is two columns."""
    first, _, rest = part.partition(" ")
    if not rest or read_heading(first).role is not Role.LABEL:
        return False
    return read_heading(rest).role is not Role.LABEL


def _rank(parts: Sequence[str]) -> tuple[int, int]:
    """How many parts are plainly one measure, and how little they differ in length."""
    headings = [read_heading(part) for part in parts]
    lengths = [part.count(" ") for part in parts]
    plain = sum(
        not one.candidates and not one.rest and not _holds_sizes(part)
        for one, part in zip(headings, parts, strict=True)
    )
    return plain, min(lengths) - max(lengths)


def begins_with_letters(text: str) -> bool:
    """Whether a line begins with the letters of a size: no heading does."""
    label = read_label((text.split() or [""])[0])
    return label is not None and label.kind is LabelKind.ALPHA and label.doubtful is None
