"""Known headings that an unknown one resembles: they are offered to a person, never taken."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from functools import cache, lru_cache
from typing import Final

from charts.headings.parts import Hit
from charts.headings.reading import HeadingReading, Role
from charts.headings.words import entries
from charts.schema import Dimension
from charts.vocabulary import normal

_NEAR_SORTED: Final = 80
_NEAR_SET: Final = 90
_NEAR_COUNT: Final = 3
_NEAR_WORDS: Final = 6
_NEAR_LETTERS: Final = 4
_SLIP_LETTERS: Final = 5
_TWO_SLIPS: Final = 14
"""Letters from which on two letters may be wrong."""
_SHORT: Final = 7
"""Letters below which a slip in the first one makes another word: netto is no petto."""
_LONGEST: Final = 60


def mistyped(hits: Sequence[Hit], words: str, *, measures: bool) -> tuple[str, ...]:
    """Measures that a heading with a word nobody knows is one slip of typing away from.

    "Max chst" would be no more than an end of a range, "collr size" no more than a size. Where
    the rest of the heading ``measures`` nothing, the unknown words may also be a measure alone.
    The words that are known must stand: "loader height" is no "loader weight".
    """
    odd = [hit.phrase for hit in hits if hit.entry is None and hit.phrase.isalpha()]
    if not any(len(phrase) > 1 for phrase in odd) or len(words) > _LONGEST:
        return ()
    known = {word for hit in hits if hit.entry is not None for word in hit.phrase.split()}
    found = tuple(one for one in _one_slip_away(words) if known <= set(normal(one).split()))
    return found if found or measures else _one_slip_away(" ".join(odd))


@lru_cache(maxsize=4096)
def _one_slip_away(words: str) -> tuple[str, ...]:
    if len(words) < _SLIP_LETTERS:
        return ()
    from rapidfuzz import process
    from rapidfuzz.distance import OSA

    slips = 2 if len(words) >= _TWO_SLIPS else 1
    known = _measures_about(len(words), slips)
    hits = process.extract(words, known, scorer=OSA.distance, score_cutoff=slips, limit=_NEAR_COUNT)
    near = [phrase for phrase, _, _ in hits if len(words) >= _SHORT or phrase[0] == words[0]]
    return tuple(dict.fromkeys(entries()[phrase].spelled for phrase in near))


def near_headings(heading: HeadingReading) -> tuple[str, ...]:
    """Known headings that an unknown one resembles, as they are spelled in the vocabulary.

    Looked for when a person is asked, not when a heading is read: every line of a page is.
    """
    return heading.slips or _near(heading.strange)


@lru_cache(maxsize=4096)
def _near(words: str) -> tuple[str, ...]:
    if len(words) < _NEAR_LETTERS or len(words.split()) > _NEAR_WORDS:
        return ()
    if not any(len(word) >= _NEAR_LETTERS and not word.isdecimal() for word in words.split()):
        return ()  # numbers and scraps, as in the names of files, resemble nothing
    from rapidfuzz import fuzz, process

    known = _known_headings()
    for scorer, cutoff in (
        (fuzz.token_sort_ratio, _NEAR_SORTED),
        (fuzz.token_set_ratio, _NEAR_SET),
    ):
        hits = process.extract(words, known, scorer=scorer, score_cutoff=cutoff, limit=_NEAR_COUNT)
        if hits:
            return tuple(dict.fromkeys(entries()[phrase].spelled for phrase, _, _ in hits))
    return ()


@cache
def _known_headings() -> tuple[str, ...]:
    return tuple(
        phrase
        for phrase, entry in entries().items()
        if len(phrase) >= _NEAR_LETTERS
        and any(one.role in {Role.MEASURE, Role.LABEL} for one in entry.columns)
    )


def _measures_about(letters: int, slips: int) -> list[str]:
    """The names of measures that so few slips could make a word of so many letters of."""
    lengths = range(letters - slips, letters + slips + 1)
    return [phrase for length in lengths for phrase in _measures_by_length().get(length, ())]


@cache
def _measures_by_length() -> Mapping[int, Sequence[str]]:
    found: dict[int, list[str]] = {}
    for phrase, entry in entries().items():
        named = {one.dimension for one in entry.columns if one.role is Role.MEASURE}
        if named - {Dimension.OTHER}:
            found.setdefault(len(phrase), []).append(phrase)
    return found
