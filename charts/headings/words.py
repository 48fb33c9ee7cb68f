"""The words headings are made of, indexed for looking up: columns, parts, bands, definitions."""

from __future__ import annotations

import re
import unicodedata
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, field, replace
from functools import cache
from typing import Any, Final

from charts.headings.garment_lengths import garment_lengths
from charts.headings.reading import Role
from charts.schema import Basis, Definition, Dimension
from charts.vocabulary import FURTHER, MAIN, spellings, tables

_WORDS: Final = re.compile(r"[^\W\d_]+")
_CEDILLAS: Final = str.maketrans({"ş": "ș", "ţ": "ț"})
"""Romanian is often typed with cedillas where commas are due; Turkish words keep their own."""
LONGEST_PHRASE: Final = 9
"""Words of the longest phrase that is looked for."""


@dataclass(frozen=True, slots=True)
class Meaning:
    """One reading of a column's words, in one language.

    ``garment`` marks words that garments are measured by (width, breadth).
    """

    role: Role
    dimension: Dimension | None = None
    definition: Definition = Definition.UNKNOWN
    basis: Basis = Basis.UNKNOWN
    garment: bool = False
    language: str = ""


_GARMENT_LENGTH: Final = (
    Meaning(Role.MEASURE, Dimension.OTHER, basis=Basis.FINISHED),
    Meaning(Role.LENGTH_AXIS),
)
"""What ``trouser length`` can be, the likelier first: a measure, or a column of short and long."""


@dataclass(slots=True)
class Entry:
    """All that one phrase can be.

    ``columns`` are its readings as a column, those of false friends first; ``parts`` the kinds
    of part it is ("finished", "low_end", "filler"); ``points`` the definitions it names.
    ``with_unit`` are readings in a further language of a word that in the main ones heads no
    column: "Boy (cm)" is a body height in Turkish. ``accented`` are those of a word that has the
    letters of a main one without their accents: Romanian "șold" is a hip, English "sold" is none.
    """

    spelled: str
    columns: list[Meaning] = field(default_factory=list)
    with_unit: list[Meaning] = field(default_factory=list)
    accented: dict[str, list[Meaning]] = field(default_factory=dict)
    parts: set[str] = field(default_factory=set)
    bands: set[str] = field(default_factory=set)
    points: dict[Dimension, Definition] = field(default_factory=dict)


@cache
def entries() -> Mapping[str, Entry]:
    """Every phrase of the vocabulary in normal form, with all that it can be.

    A phrase of a main language means what it means there, whatever a further one has it for.
    """
    main, further = _indexed(MAIN), _indexed(FURTHER)
    for spelling in main.keys() & further.keys():
        if not main[spelling].columns:
            main[spelling].with_unit = further[spelling].columns
    for word, meanings in _columns(FURTHER):
        for spelling in main.keys() & set(spellings(word)):
            if not word.isascii() and as_printed(main[spelling].spelled) != as_printed(word):
                main[spelling].accented.setdefault(as_printed(word), []).extend(meanings)
    return {word: entry for word, entry in further.items() if word not in main} | main


def _indexed(languages: Sequence[str]) -> dict[str, Entry]:
    found: dict[str, Entry] = {}
    for word, meanings in _columns(languages):
        for spelling in spellings(word):
            found.setdefault(spelling, Entry(word)).columns.extend(meanings)
    for language, phrase in garment_lengths(languages):
        for spelling in spellings(phrase):
            entry = found.setdefault(spelling, Entry(phrase))
            own = [replace(one, language=language) for one in _GARMENT_LENGTH]
            entry.columns = entry.columns or own
    for kind, name, word in _parts(languages):
        for spelling in spellings(word):
            entry = found.setdefault(spelling, Entry(word))
            (entry.bands if kind == "bands" else entry.parts).add(name)
    for word, row in _points(languages):
        for spelling in spellings(word):
            points = found.setdefault(spelling, Entry(word)).points
            points[Dimension(row["dimension"])] = Definition(row["definition"])
    return found


def _columns(languages: Sequence[str]) -> Iterator[tuple[str, list[Meaning]]]:
    """Each word of a column with its readings; the false friends before the plain words."""
    for language, rows in tables("false_friend", among=languages):
        for row in rows:
            meanings = [_meaning(one, language) for one in row["readings"]]
            yield from ((word, meanings) for word in row["words"])
    for language, rows in tables("column", among=languages):
        for row in rows:
            meaning = _meaning(row, language)
            yield from ((word, [meaning]) for word in row["words"])


def _parts(languages: Sequence[str]) -> Iterator[tuple[str, str, str]]:
    """(table, name of the list, word) of what stands beside the words of a column.

    A phrase by which a title says whose measures follow says so in a heading too.
    """
    for kind in ("part", "bands"):
        for _, lists in tables(kind, among=languages):
            yield from ((kind, name, word) for name, word in _listed(lists))
    for name in ("body", "finished", "flat"):
        for _, phrases in tables("basis", name, among=languages):
            yield from (("basis", name, phrase.rstrip("*")) for phrase in phrases)


def _points(languages: Sequence[str]) -> Iterator[tuple[str, Mapping[str, Any]]]:
    for _, rows in tables("definition", among=languages):
        yield from ((word, row) for row in rows for word in row["words"])


def _listed(lists: Mapping[str, Any]) -> Iterator[tuple[str, str]]:
    for name, words in lists.items():
        yield from ((name, word) for word in words)


def _meaning(row: Mapping[str, Any], language: str) -> Meaning:
    return Meaning(
        Role(row["role"]),
        Dimension(row["dimension"]) if "dimension" in row else None,
        Definition(row.get("definition", "unknown")),
        Basis(row.get("basis", "unknown")),
        bool(row.get("garment")),
        language,
    )


def as_printed(text: str) -> str:
    """The words of a text in small letters with their accents, one space between."""
    composed = unicodedata.normalize("NFC", text.casefold().translate(_CEDILLAS))
    return " ".join(_WORDS.findall(composed))


@cache
def longest_from() -> Mapping[str, int]:
    """How many words the longest phrase has that begins with a word."""
    found: dict[str, int] = {}
    for phrase in entries():
        words = phrase.split()
        if words:
            found[words[0]] = max(found.get(words[0], 1), len(words))
    return found


@cache
def glued() -> Mapping[str, str]:
    """Phrases of columns by their bare letters: "brust umfang" and "Rueckenlänge" are found so."""
    return {
        bare_letters(phrase): phrase
        for phrase, entry in entries().items()
        if entry.columns and len(phrase) >= 6
    }


def bare_letters(words: str) -> str:
    """Words in normal form without their spaces, with ae, oe, ue as they are without dots."""
    return words.replace(" ", "").replace("ae", "a").replace("oe", "o").replace("ue", "u")
