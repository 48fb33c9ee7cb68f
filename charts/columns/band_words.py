"""For whom a whole table is: the band that a title, a note, the sheet's or the file's name gives.

A title names a band in a phrase of its own ("Kids' vest. All sizes in cm."). A sentence that
happens to name one ("Also available for women.") says nothing of the table.
"""

from __future__ import annotations

import re
from dataclasses import replace
from typing import Final

from charts.columns.band_names import of_several
from charts.columns.band_notes import is_a_name, name_nobody, notes_among
from charts.columns.band_scope import band_of_sheet, ends_bands, in_scope
from charts.columns.band_statements import asks_which, bids, denies, states
from charts.columns.words import Surroundings, Words, is_sentence
from charts.headings.bands import CHILDREN, names_adults
from charts.layout.fields import FieldKind
from charts.layout.looks import look
from charts.schema import UnitFrom

_BRACKET: Final = re.compile(r"\([^()]*\)")
_WORD: Final = re.compile(r"[^\W\d_]+(?:['’][^\W\d_]+)?")
_LONGEST: Final = 130
_CHILDREN: Final = frozenset({"girls", "boys"})


def band_around(around: Surroundings) -> str | None:
    """The band that the words around a table give: names before sentences, the nearest first.

    "Girls" above a tab for children is the narrower of the two and holds. A name of the table
    that is like those that name bands ends what stands farther off.
    """
    sheet = around.table.sheet
    over = (Words(a.text, UnitFrom.TITLE, sheet.place(a.row, a.column)) for a in around.table.over)
    near = tuple(_without_advice(words) for words in (*over, *in_scope(around)))
    if name_nobody(notes := notes_among(near)):
        near = tuple(words for words in near if words not in notes)
    named = [words for words in near if look(words.text).band and _names(words)]
    named = [words for words in named if not of_several(words, around)]
    named = [words for words in named if not measured_here(words, around)]
    named.sort(key=lambda words: is_sentence(words.text))
    grown = [w for w in near if w.kind is UnitFrom.TITLE and names_adults(w.text)]
    if grown:
        # A file for children and grown-ups names neither for the table of the grown-ups.
        named = [words for words in named if words.kind is not UnitFrom.SHEET]
        # Nor does a title for children above the one for grown-ups: "KIDS", "ADULTS", one table.
        names = (at for at, w in enumerate(near) if w in grown and not is_sentence(w.text))
        farther = near[next(names, len(near)) :]
        named = [w for w in named if w not in farther or look(w.text).band not in CHILDREN]
    found = [look(words.text).band for words in named]
    narrower = found[:1] == ["kids"] and found[1:2] and found[1] in _CHILDREN
    own = found[1] if narrower else next(iter(found), None)
    return own or band_of_sheet(around) or _band_over(around)


def measured_here(words: Words, around: Surroundings) -> bool:
    """Whether a word in the name of a file or a sheet names a band only in another language.

    ``vest_chest_boy`` around ``Boy (cm)``: it is the length or the height that the table heads.
    """
    if words.kind is UnitFrom.TITLE or is_sentence(words.text):
        return False
    heads = (one for one in around.table.of(FieldKind.VALUES) if one.heading.band is None)
    if look(words.text).band is None:
        return False
    measured = {word.casefold() for one in heads for word in _WORD.findall(one.printed_heading)}
    kept = [word for word in _WORD.findall(words.text) if word.casefold() not in measured]
    return look(" ".join(kept)).band is None


def _band_over(around: Surroundings) -> str | None:
    """The band of ``Women`` over ``Tops``, for the ``Bottoms`` below; not for ``Zorbo's tops``."""
    if any(ends_bands(at.text, around.titles, alone=False) for at in around.table.titles):
        return None
    named = (one for one in around.outer if look(one.text).band and _names(one))
    return next((look(one.text).band for one in named if not is_sentence(one.text)), None)


def _without_advice(words: Words) -> Words:
    """``Unisex (women order a size down)``: a bracket that gives advice names nobody."""
    bracket = _BRACKET.search(words.text)
    if bracket is None or not bids(bracket[0]):
        return words
    return replace(words, text=_BRACKET.sub(" ", words.text).strip())


def _names(words: Words) -> bool:
    """Whether a text names the table: a title may do so though it is long or has a full stop."""
    if not is_sentence(words.text):
        if words.kind is UnitFrom.NOTE and not is_a_name(words.text):
            return False
        return not denies(words.text) and (words.kind is UnitFrom.SHEET or not bids(words.text))
    titled = words.kind is UnitFrom.TITLE and len(words.text) <= _LONGEST
    return titled and (asks_which(words.text) or not states(words.text))
