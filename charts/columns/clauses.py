"""The clauses of a note, each with the headings it speaks of and whose measures it says they are.

"Waist and hip are body measurements; inseam is the garment." says one thing of two columns and
another of the third. "All of the garment, except chest" takes a column out. A clause whose subject
is no column speaks of all.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field
from functools import cache, lru_cache
from typing import Final, NamedTuple

from charts.columns.named_in import by_letters, name_words, named_in
from charts.headings.clause_words import commands, is_closed, is_listing, listed, said_in_clause
from charts.headings.whose import Whose, whose
from charts.schema import Basis
from charts.vocabulary import unaccented, vocabulary

_SENTENCE: Final = re.compile(r"[;!?|\n。！？；]+|\.(?=\s|$)")
_COMMA: Final = re.compile(r",(?!\d)\s*")
_SUBJECT: Final = re.compile(r"[:=]|\s[-–—]\s")
_WORD: Final = re.compile(r"[^\W_]+")
_OPENING: Final = 3
"""Letters before an exception that opens its sentence: "(", a bullet."""

Headings = frozenset[str]


class Statement(NamedTuple):
    """What a clause says of some headings; ``first`` where it says whose before it names them."""

    headings: Headings
    said: Whose
    first: bool = False


@dataclass(frozen=True, slots=True)
class Clauses:
    """What a text says: of some headings each, of all others, and what it takes out of all.

    ``divided`` tells that it does not say one thing of everything.
    """

    scoped: tuple[Statement, ...] = ()
    general: tuple[str, ...] = ()
    apart: Headings = frozenset()
    divided: bool = False


@dataclass(slots=True)
class _Sentence:
    """A sentence while it is read: names that wait for what is said of them."""

    headings: tuple[str, ...]
    subject: Headings
    scoped: list[Statement] = field(default_factory=list)
    general: list[str] = field(default_factory=list)
    waiting: Headings = frozenset()


@lru_cache(maxsize=4096)
def clauses_of(text: str, headings: tuple[str, ...], subject: Headings = frozenset()) -> Clauses:
    """The clauses of ``text``; ``subject`` are the headings that bear the mark it begins with."""
    scoped: list[Statement] = []
    general: list[str] = []
    apart: Headings = frozenset()
    without = False
    for sentence in _SENTENCE.split(text):
        main, excepted = _turned(*_parted(sentence), headings)
        read = _Sentence(headings, subject)
        _read_all(main, read)
        out = named_in(excepted, headings) if excepted else frozenset()
        without = without or bool(excepted)
        scoped += [one._replace(headings=one.headings - out) for one in read.scoped]
        scoped += [Statement(out, _of_exception(excepted, headings))] * bool(out)
        general += read.general
        apart |= out
    scoped = [one for one in scoped if one.headings]
    return Clauses(tuple(scoped), tuple(general), apart, bool(scoped) or without)


def _parted(sentence: str) -> tuple[str, str]:
    """A sentence and the exception it makes, "" for none; in brackets it ends with them."""
    found = _excepting().search(sentence)
    if found is None:
        return sentence, ""
    before, behind = sentence[: found.start()], sentence[found.end() :]
    if before.count("(") > before.count(")") and ")" in behind:
        behind, _, rest = behind.partition(")")
        return f"{before} {rest}", behind
    if len(before.strip()) < _OPENING and "," in behind:
        behind, _, rest = behind.partition(",")
        return rest, behind
    return before, behind


@cache
def _excepting() -> re.Pattern[str]:
    words = {one.lower() for one in vocabulary("clauses")["except"]}
    ordered = sorted(words | {unaccented(one) for one in words}, key=lambda one: (-len(one), one))
    return re.compile(rf"\b(?:{'|'.join(ordered)})\b", re.IGNORECASE)


def _of_exception(text: str, headings: tuple[str, ...]) -> Whose:
    """What an exception says of its columns; where it says nothing a person has to."""
    said = said_in_clause(text, _words_of(headings))
    return said if said.basis is not Basis.UNKNOWN else Whose(open=True)


def _turned(main: str, excepted: str, headings: tuple[str, ...]) -> tuple[str, str]:
    """``All except chest are of the body``: what stands behind the verb is said of the others."""
    if not excepted or whose(main).basis is not Basis.UNKNOWN:
        return main, excepted
    before = ""
    for word in _WORD.finditer(excepted):
        verb = unaccented(word[0]) in listed("verbs") and before not in listed("relative")
        if verb and named_in(excepted[: word.start()], headings):
            return f"{main} {excepted[word.start() :]}", excepted[: word.start()]
        before = unaccented(word[0])
    return main, excepted


def _read_all(sentence_text: str, sentence: _Sentence) -> None:
    """The clauses of a sentence; one that tells how to measure speaks of everything."""
    if commands(sentence_text) and not sentence.subject:
        sentence.general += [sentence_text] * _tells(whose(sentence_text))
        return
    for part in _COMMA.split(sentence_text):
        clauses = _halved(part, sentence.headings)
        for clause in clauses:
            _read_clause(clause, sentence, apart=len(clauses) > 1)


def _tells(said: Whose) -> bool:
    return said.open or said.basis is not Basis.UNKNOWN


def _read_clause(clause: str, sentence: _Sentence, *, apart: bool) -> None:
    names, first = _subject(clause, sentence.headings)
    said = _said(clause, sentence, named=bool(names), before=first or apart)
    tells = _tells(said)
    if names and tells:
        sentence.scoped.append(Statement(names | sentence.waiting, said, first))
        sentence.waiting = frozenset()
    elif tells:
        _without_names(clause, said, sentence)
    elif not is_closed(clause, _words_of(sentence.headings)):
        sentence.waiting = frozenset()
    elif names and _goes_on(clause, sentence):
        last = sentence.scoped[-1]
        sentence.scoped[-1] = last._replace(headings=last.headings | names)
    else:
        sentence.waiting |= names


def _goes_on(clause: str, sentence: _Sentence) -> bool:
    """Whether a clause lists more measures of which the one before has said whose they are."""
    listing = is_listing(clause, _words_of(sentence.headings))
    return listing and bool(sentence.scoped) and sentence.scoped[-1].first


def _said(clause: str, sentence: _Sentence, *, named: bool, before: bool) -> Whose:
    """What a clause says; a mere noun counts behind the name of a measure: "chest of the vest".

    "Size of jacket by chest" names what is sold.
    """
    strong = whose(clause)
    known = _words_of(sentence.headings)
    if not named and not sentence.subject and not sentence.waiting:
        return strong
    if not named or before or sentence.subject:
        return said_in_clause(clause, known)
    start = next(
        (one.start() for one in _WORD.finditer(clause) if named_in(one[0], sentence.headings)), 0
    )
    if strong.basis is not Basis.UNKNOWN or not is_closed(clause[:start], known):
        return said_in_clause(clause, known)
    return said_in_clause(clause[start:], known)


def _without_names(clause: str, said: Whose, sentence: _Sentence) -> None:
    headings = sentence.waiting or sentence.subject
    if headings:
        sentence.scoped.append(Statement(headings, said))
    else:
        sentence.general.append(clause)
    sentence.waiting = frozenset()


def _halved(part: str, headings: tuple[str, ...]) -> Sequence[str]:
    """A part whose two halves say opposite things: "Body chest and vest length"."""
    names = _words_of(headings)
    for found in (*_SUBJECT.finditer(part), *_joins(part)):
        halves = part[: found.start()], part[found.end() :]
        said = [said_in_clause(half, names).basis for half in halves]
        if said[0] is not said[1] and Basis.UNKNOWN not in said:
            return halves
    return (part,)


def _joins(part: str) -> Iterator[re.Match[str]]:
    return (one for one in _WORD.finditer(part) if one[0].lower() in listed("joins"))


def _subject(clause: str, headings: tuple[str, ...]) -> tuple[Headings, bool]:
    """The headings a clause speaks of, and whether it says whose before it names them."""
    sign = _SUBJECT.search(clause)
    if sign is not None:
        before, behind = clause[: sign.start()], clause[sign.end() :]
        if names := _at_head(before, headings):
            return names, False
        if whose(before).basis is not Basis.UNKNOWN:
            listing = is_listing(behind, _words_of(headings))
            return (named_in(behind, headings) if listing else frozenset()), True
    for verb in _WORD.finditer(clause):
        ends = unaccented(verb[0]) in listed("verbs")
        if ends and (names := _at_head(clause[: verb.start()], headings)):
            return names, False
    names = _at_head(clause, headings)
    return names, bool(names) and whose(_before_names(clause, headings)).basis is not Basis.UNKNOWN


def _before_names(text: str, headings: tuple[str, ...]) -> str:
    """What stands before the first heading that a text names."""
    opening = (one for one in _WORD.finditer(text) if named_in(text[: one.end()], headings))
    first = next(opening, None)
    return text[: first.start()] if first else text


def _at_head(text: str, headings: tuple[str, ...]) -> Headings:
    """The headings that a text names, where it begins with them or with small words."""
    names = named_in(text, headings)
    if not names or names == by_letters(text, headings):
        return names
    return names if is_closed(_before_names(text, headings), _words_of(headings)) else frozenset()


@lru_cache(maxsize=1024)
def _words_of(headings: tuple[str, ...]) -> Headings:
    return frozenset(word for one in headings for word in name_words(one))
