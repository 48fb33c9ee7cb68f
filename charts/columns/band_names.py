"""Names that name several: a file or a page for women and men, a jersey and one for kids.

Such a name stands over tables of each of them, and tells of none whose it is.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from typing import Final

from charts.columns.words import Surroundings, Words, is_sentence
from charts.dimensions import read_band
from charts.headings.bands import bands_named
from charts.identity import own_words
from charts.layout.fields import FieldKind
from charts.schema import UnitFrom

_AND: Final = re.compile(
    r"(?:\b|_)(?:and|und|et|en|y|e|och|og|i|(?<!per )a|oraz|plus)(?:\b|_)|[&+]"
)
"""Words for "and": the Czech one is the Catalan ``per a``, for whom."""
_WORD: Final = re.compile(r"[^\W\d_]+(?:['’][^\W\d_]+)*")
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
    if _and_a_band(words.text, of_a_file=wide):
        return True
    bands = bands_named(words.text)
    return wide and len(bands) > 1 and any(one in bands for one in _named_alone(words, around))


def _is_nearest(words: Words, around: Surroundings) -> bool:
    return around.table.sheet.context[-1:] == (words.text,)


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
