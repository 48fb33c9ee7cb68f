"""How far a word for whom a table is reaches: until the next name of the same kind.

``WOMEN'S SIZES`` over one table and ``ZORBOS' SIZES`` over the next, in a file for women: the
second name is like the first but for a word that nobody knows. Whoever that is, it may not be the
women, and no words farther off are taken for it.
"""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Iterator, Sequence
from dataclasses import replace
from functools import lru_cache
from typing import Final

from charts.columns.words import SourceNames, Surroundings, Words, is_sentence
from charts.dimensions import Role, find_units, read_band
from charts.headings.bands import apart
from charts.identity import own_words
from charts.layout.fields import Field, Table
from charts.layout.looks import look
from charts.schema import UnitFrom
from charts.sheet import Sheet

_WORD: Final = re.compile(r"[^\W\d_]+(?:['’]s?)?|\d+")
_POSSESSIVE: Final = re.compile(r".+(?:['’]s|s['’])", re.IGNORECASE)
_WHOSE: Final = "whose"
_WHO: Final = "who"
_NAMES_READ: Final = 12  # of one sheet, the nearest to its table


def names_of_source(sheets: Sequence[Sheet]) -> Iterator[SourceNames]:
    """What stands above the tables of a source, as each sheet in turn has it.

    A caption above more than one sheet is the heading of a page, no table's own.
    """
    found = [text for sheet in sheets for text in sheet.context[-_NAMES_READ:]]
    found += [next(iter(sheet.cells.values())).text for sheet in sheets if sheet.cells]
    counts = Counter(text for sheet in sheets for text in set(sheet.context))
    names = SourceNames(
        tuple(dict.fromkeys(found)),
        tuple(dict.fromkeys(sheet.name for sheet in sheets)),
        frozenset(text for text, count in counts.items() if count > 1),
    )
    for sheet in sheets:
        yield names
        names = replace(names, ended=names.ended | _ended_by(sheet.context))


def _ended_by(context: Sequence[str]) -> frozenset[str]:
    """The captions of a sheet that a nearer one contradicts: ``Women's``, and then ``Men``."""
    nearest = next((band for text in reversed(context) if (band := read_band(text))), None)
    return frozenset(text for text in context if apart(read_band(text), nearest))


def names_of_tables(tables: Sequence[Table]) -> tuple[str, ...]:
    """The titles of the tables of one sheet."""
    return tuple(at.text for table in tables for at in table.titles)


def in_scope(around: Surroundings) -> tuple[Words, ...]:
    """The words around a table that may say for whom it is, the nearest first.

    What is farther than a name that ends the scope of bands is left out, notes excepted: they
    are the table's own.
    """
    own = {at.text for at in around.table.titles}
    for number, words in enumerate(around.words):
        if words.kind is UnitFrom.TITLE and ends_bands(
            words.text, around.titles, alone=words.text in own
        ):
            later = around.words[number + 1 :]
            notes = tuple(one for one in later if one.kind is UnitFrom.NOTE)
            return (*around.words[: number + 1], *notes)
    return around.words


def band_of_sheet(around: Surroundings) -> str | None:
    """``WOMENS GUIDE`` in the first row over ``Specifications``: the name of the whole sheet.

    It holds for a later table that has no title, or one that says but what kind of table it is,
    where no table before it is for anybody else.
    """
    table = around.table
    first = [at for at, _ in zip(sorted(table.sheet.cells), range(2), strict=False)]
    above = [words for words in around.far if words.kind is UnitFrom.TITLE]
    heads = [words for words in above if words.place in {table.sheet.place(*at) for at in first}]
    if len(heads) < len(first) or any(own_words(at.text) for at in table.titles):
        return None
    bands = {band for words in above if (band := read_band(words.text)) is not None}
    top = read_band(table.sheet.cells[first[0]].text)
    return top if bands == {top} and not is_sentence(table.sheet.cells[first[0]].text) else None


def ends_bands(text: str, titles: Sequence[str], *, alone: bool = True) -> bool:
    """Whether a name is like one of ``titles`` that names a band, and names none itself.

    ``alone``: whether a single word, "Zorbos", is like the single word "Women". It is as a title
    within the table's sheet; as a caption it may be the model under a heading for all of them.
    """
    if is_sentence(text) or read_band(text) is not None or not own_words(text):
        return False
    words = _words(text)
    return any(
        _alike(words, _framed(title), alone=alone)
        for title in titles
        if read_band(title) is not None and not is_sentence(title)
    )


def under_a_stranger(field: Field, banded: Sequence[Field]) -> bool:
    """Whether a word that nobody knows stands over a column where the others have their band.

    ``Ladies | | Zorbos |`` over ``Bust | Hip | Chest | Waist``: the waist is not the ladies'.
    """
    levels = {
        level
        for other in banded
        for level, at in enumerate(other.heads[:-1])
        if read_band(at.text) is not None
    }
    heads = [at.text for at in field.heads[:-1]]
    return any(level < len(heads) and _of_somebody(heads[level]) for level in levels)


def _of_somebody(text: str) -> bool:
    """A name or a code that says nothing of a measure."""
    named = any(sign.isalpha() for sign in text) and not find_units(text)
    coded = any(sign.isdigit() for sign in text) or bool(own_words(text))
    return named and coded and look(text).heading.role is Role.UNKNOWN


def _alike(words: Sequence[str], frame: Sequence[str], *, alone: bool) -> bool:
    """Whether ``words`` have an unknown word wherever ``frame`` has whom it is for."""
    if len(words) != len(frame) or not {_WHO, _WHOSE} & set(frame):
        return False
    if (
        len(frame) == 1
        and not alone
        and not (frame[0] == _WHOSE and _POSSESSIVE.fullmatch(words[0]))
    ):
        return False
    return all(
        _unknown(word) if part in {_WHO, _WHOSE} else word == part
        for word, part in zip(words, frame, strict=True)
    )


def _unknown(word: str) -> bool:
    """A word that could be a person's: none that any chart has, no size and no figure."""
    one = look(word)
    return bool(own_words(word)) and not one.sure_label and not one.value


@lru_cache(maxsize=4096)
def _framed(title: str) -> tuple[str, ...]:
    """The words of a name, with the place of those for whom it is; one place for several."""
    parts = []
    for word in _words(title):
        band = read_band(word) is not None
        whose = band and _POSSESSIVE.fullmatch(word) is not None
        parts.append(_WHOSE if whose else _WHO if band else word)
    return tuple(parts)


def _words(text: str) -> tuple[str, ...]:
    return tuple(word.replace("’", "'") for word in _WORD.findall(text.lower()))
