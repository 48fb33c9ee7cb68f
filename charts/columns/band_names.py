"""Names that name several: a file or a page for women and men, a jersey and one for kids.

Such a name stands over tables of each of them, and tells of none whose it is.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from typing import Final

from charts.columns.band_notes import is_a_name
from charts.columns.words import Surroundings, Words, is_sentence
from charts.dimensions import Role, read_band, read_heading
from charts.headings.bands import bands_named
from charts.headings.referring import speaks_of_measures
from charts.identity import own_words
from charts.layout.fields import FieldKind
from charts.schema import UnitFrom

_AND: Final = re.compile(
    r"(?:\b|_)(?:and|und|et|en|y|e|och|og|i|(?<!per )a|oraz|plus)(?:\b|_)|[&+]"
)
"""Words for "and": the Czech one is the Catalan ``per a``, for whom."""
_WORD: Final = re.compile(r"[^\W\d_]+(?:['’][^\W\d_]+)*")
_SHORTEST_NAME: Final = 4
"""Shorter words are those between names."""
_EXTENSION: Final = re.compile(r"\.[a-z]{2,5}$", re.IGNORECASE)


def of_several(words: Words, around: Surroundings) -> bool:
    """Whether a name lists several, of whom this table may be any.

    ``women_and_men`` says that a lone table is for both; where another name in the source is for
    one of them, the tables are parted. ``jersey_and_kids`` is never the kids' in all its tables,
    and a heading of the page below which a table was somebody else's holds no further.
    """
    if is_sentence(words.text):
        return False
    wide = words.kind is UnitFrom.SHEET or words.text in around.source.over_several
    if words.text in around.source.ended and not _is_nearest(words, around):
        return True
    if words.text == around.file and _of_another_sheet(words, around):
        return True
    if _and_a_band(words.text, of_a_file=wide):
        return True
    bands = bands_named(words.text)
    return wide and len(bands) > 1 and any(one in bands for one in _named_alone(words, around))


def _is_nearest(words: Words, around: Surroundings) -> bool:
    return around.table.sheet.context[-1:] == (words.text,)


def _of_another_sheet(name: Words, around: Surroundings) -> bool:
    """``shop_trousers_kids`` beside sheets ``Trousers`` and ``Kids``: a list of the sheets.

    A sheet that shares no word with the file, or but a word of any chart, ``Sizes``, may hold what
    the file is for.
    """
    own, band = around.table.sheet.name, read_band(name.text)
    if band is None or read_band(own) is not None:
        return False
    listed = {*_names_in(own)} & {*_names_in(name.text)}
    named = (one for one in around.source.sheets if read_band(one) == band and is_a_name(one))
    return bool(listed) and next(named, None) is not None


def _names_in(text: str) -> Iterator[str]:
    """The words of a name that do not say what kind of table it is."""
    for word in _WORD.findall(text.lower().replace("_", " ")):
        of_the_chart = read_heading(word).role is Role.LABEL or speaks_of_measures(word)
        if len(word) >= _SHORTEST_NAME and not of_the_chart and read_band(word) is None:
            yield word


def _named_alone(words: Words, around: Surroundings) -> Iterator[str]:
    """The bands of the names in the source that name but one: titles, columns, names of sheets."""
    headings = (field.printed_heading for field in around.table.of(FieldKind.VALUES))
    for name in (*around.titles, *headings, *around.source.sheets):
        bands = bands_named(name) if name != words.text and not is_sentence(name) else frozenset()
        if len(bands) == 1:
            yield from bands


def _and_a_band(text: str, *, of_a_file: bool) -> bool:
    """``jersey_and_kids``, ``Mother and baby``: whom "and" joins with what is no band.

    In a title, words that any chart has are no other thing: ``Sizes and kids' sizes``.
    """
    parts = [part for part in _AND.split(_EXTENSION.sub("", text.lower())) if part.strip(" _-")]
    if len(parts) < 2 or read_band(parts[0]) is not None:
        return False
    before = parts[0] if of_a_file else own_words(parts[0])
    return bool(_WORD.search(before)) and all(_begins_with_band(part) for part in parts[1:])


def _begins_with_band(part: str) -> bool:
    first: Sequence[str] = _WORD.findall(part.replace("_", " "))[:1]
    return bool(first) and read_band(first[0]) is not None
