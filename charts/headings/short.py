"""Words of a heading that are cut short with a full stop: "Obw. kl. piersiowej", "Tour poitr.".

They are made whole only where everything they could stand for is the same column.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping, Sequence
from functools import cache, lru_cache
from typing import Final

from charts.headings.reading import Role
from charts.headings.words import Entry, entries
from charts.vocabulary import FURTHER, normal, unaccented

_OF_A_FILE: Final = re.compile(
    r"\.(?:csv|tsv|txt|md|html?|xls[xm]?|ods|odt|docx|pdf|eml|mht|zip)$", re.IGNORECASE
)
_TOKEN: Final = re.compile(r"[^\W_]+\.?")
_NAMED: Final = frozenset({Role.MEASURE, Role.LABEL})
_LEFT_OUT: Final = frozenset(
    normal(
        "de du des la le les l d del dei di da do das dos della van het w na v ve the of"
    ).split()
)
"""Small words that are left out where others are cut short: "T. poitrine"."""


def names_a_file(text: str) -> bool:
    """Whether ``text`` is the name of a file, whose point cuts no heading short."""
    return _OF_A_FILE.search(text) is not None


@lru_cache(maxsize=4096)
def written_out(text: str) -> str | None:
    """The phrase of the vocabulary that ``text`` cuts short, None where it may be several."""
    tokens = _TOKEN.findall(unaccented(text))
    cut = [token for token in tokens if token.endswith(".") and not token[:-1].isdecimal()]
    if not cut or names_a_file(text):
        return None
    kept = [token for token in tokens if token not in _LEFT_OUT]
    alike = _phrases().get((tokens[0][0], len(kept)), ())
    found = [phrase for phrase, words in alike if _stands_for(kept, words)]
    found = [phrase for phrase in found if not _is_further(entries()[phrase])] or found
    meant = {_columns(entries()[phrase]) for phrase in found}
    return min(found, key=len) if len(meant) == 1 else None


def _stands_for(tokens: Sequence[str], words: Sequence[str]) -> bool:
    """Whether each token is a word or the beginning of one, in their order."""
    return all(
        word.startswith(token[:-1]) if token.endswith(".") else word == token
        for token, word in zip(tokens, words, strict=True)
    )


def _is_further(entry: Entry) -> bool:
    return all(one.language in FURTHER for one in entry.columns)


@cache
def _phrases() -> Mapping[tuple[str, int], Sequence[tuple[str, Sequence[str]]]]:
    """The phrases with the words that are not left out, by first letter and number of words."""
    found: dict[tuple[str, int], list[tuple[str, Sequence[str]]]] = {}
    for phrase, words in _named():
        kept = [word for word in words if word not in _LEFT_OUT]
        found.setdefault((phrase[0], len(kept)), []).append((phrase, kept))
    return found


def _named() -> Iterator[tuple[str, tuple[str, ...]]]:
    for phrase, entry in entries().items():
        if any(one.role in _NAMED for one in entry.columns):
            yield phrase, tuple(phrase.split())


def _columns(entry: Entry) -> frozenset[tuple[object, ...]]:
    return frozenset((one.role, one.dimension, one.definition) for one in entry.columns)
