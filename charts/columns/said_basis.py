"""What the words around a table say of whose measures its figures are.

The nearest words are believed. Words that name one measure hold for that measure only, and where
two texts say opposite things the basis is open.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import replace
from typing import Final, NamedTuple

from charts.columns.meaning import Column
from charts.columns.said_of_some import said_of_all, said_of_some
from charts.columns.words import (
    Surroundings,
    Words,
    is_sentence,
    says_of_all,
    sentences_of,
    title_of,
)
from charts.dimensions import HeadingReading, read_heading
from charts.headings.ease import speaks_of_ease
from charts.headings.whose import says_in_passing, whose
from charts.layout.looks import look
from charts.schema import Basis, Dimension, UnitFrom

_NOT_THE_GARMENT: Final = re.compile(
    r"\b(?:not|no|nicht|keine|pas|niet|non|inte|ikke|nie)\b[\w\s]{0,12}"
    r"(?:garment|finished|vest|jacket|product|kleidung|fertigma|produktma|westen|vêtement|gilet"
    r"|kleding|prenda|prodotto|capo|plagg|odzie)",
    re.IGNORECASE,
)
_OUTRIGHT: Final = re.compile(
    r"finished|garment|laid|flat|actual|product|measure|dimension|fertig|kleidung|produkt|maße\b"
    r"|fini|vêtement|mesures|prenda|medidas|capo|misure|plagg|mått|odzie|wymiar",
    re.IGNORECASE,
)
_ON_THE_BODY: Final = re.compile(
    r"\bbody|\bto fit\b|^\s*fits\b|\bfits\s+(?:a|an|the|up|from|chest|bust|waist|hips?|\d)"
    r"|körper|\bcorps\b|corporel|lichaam|\bcorpo\b|cuerpo|corporal"
    r"|\bkropp|\bkrop|\bciał|\btěl",
    re.IGNORECASE,
)
_FITS: Final = re.compile(r"\bto fit\b|\bfits\b", re.IGNORECASE)
_OF_CHARTS: Final = frozenset(
    (  # the parts of a body among them: "Haut du corps"
        *("sizing", "guide", "guides", "charts", "information", "info", "haut", "bas"),
        *("upper", "lower", "full", "are", "is", "sind", "ist", "sont", "est", "sono", "son"),
        *("sao", "ar", "er", "sa", "jsou", "tabelle", "tabellen", "ubersicht", "guia"),
        *("guida", "tableau", "tabel", "tabela", "tabla", "tabulka", "oversigt"),
    )
)
"""Words beside the name of a chart, and of a sentence without its stop, that name no product."""
_SIZING: Final = re.compile(r"\b(?:garment|clothing|product) siz(?:e|es|ing)\b", re.IGNORECASE)
"""A chart of garments' sizes is any size chart and says nothing of whose measures they are."""
_OF_ONE: Final = re.compile(r"^\s*([^:.!?]{2,40}):\s")
"""A sentence that speaks of one measure: "Chest: laid flat, from armpit to armpit."."""
_MAKING: Final = re.compile(r"toll?[eé]ran|\bwithin\b|±|\+/-|abweich", re.IGNORECASE)
"""A sentence about how exactly something is made says nothing of what the figures are."""
_CLAUSE: Final = re.compile(
    r"[,;]|\s[-–—]\s|\s(?:and|but|with|und|aber|mit|et|mais|avec|en|maar|met|e|ma|con|y|pero|com|mas"
    r"|och|men|med|og|i|ale|z|a|s)\s",
    re.IGNORECASE,
)
"""Where a sentence goes on: "measured flat, tolerance 1 cm", "of the garment and may vary"."""
_MADE_IN_BRACKETS: Final = re.compile(rf"\([^()]*(?:{_MAKING.pattern})[^()]*\)", re.IGNORECASE)
"""Said in brackets it leaves the words around it as they are: "laid flat (tolerance 1 cm)"."""


class Said(NamedTuple):
    """What is said of one column; ``words`` are those that say it, ``open`` that they leave it."""

    basis: Basis = Basis.UNKNOWN
    open: bool = False
    words: str = ""


def said_around(column: Column, around: Surroundings) -> Said:
    """What the words around a table say of the basis of one of its columns."""
    own = said_of_some(column.heading, around)
    if own is not None and not (own.said.open and around.answers.basis is not Basis.UNKNOWN):
        return Said(own.said.basis, own.said.open, own.words)
    found = Said()
    for words, reading in _readings(column, around):
        if not _holds(words, reading, column):
            continue
        one = _of_words(words, reading, around.file)
        if one.open and words.text != around.file and around.answers.basis is Basis.UNKNOWN:
            return one
        if found.basis is Basis.UNKNOWN:
            found = one
        elif opposed(one.basis, found.basis) and words.text != around.file:
            return found._replace(open=True)
    if found.basis is Basis.UNKNOWN:
        told = around.answers.basis
        return Said(told) if told is not Basis.UNKNOWN else _eased(around) or _of_the_page(around)
    return found


def _eased(around: Surroundings) -> Said | None:
    """The words of a recommended ease, which leave open what the girths beside them measure."""
    words = (one.text for one in around.words if speaks_of_ease(one.text))
    text = next(words, "")
    return Said(open=True, words=text) if text else None


def _readings(column: Column, around: Surroundings) -> Iterator[tuple[Words, HeadingReading]]:
    """Every text around the table, read, without what it says of other columns only."""
    for words, reading in around.readings():
        text = said_of_all(words, column.heading, around)
        if text == words.text:
            yield words, reading
        elif text:
            yield replace(words, text=text), look(text).heading


def table_of_the_body(around: Surroundings) -> str:
    """The title of another table beside this one that alone says it is the body's; "" for none.

    Where one table is headed "To fit" and another "Specifications", the other may be the vest's.
    """
    own = title_of(around.table)
    if own is None or read_heading(own).band is not None or _of_the_body(own):
        return ""
    others = (one for one in around.titles if one != own and not is_sentence(one))
    return next((one for one in others if _of_the_body(one)), "")


def _of_the_body(title: str) -> bool:
    """Whether a title says whose measures follow: "Body protectors" names what is sold."""
    return whose(title).basis is Basis.BODY


def _of_the_page(around: Surroundings) -> Said:
    """What the notes of the other tables say of all measures, where nothing nearer speaks.

    A sentence above the name of a table before holds for those that are named after it as well.
    """
    notes = [
        one for one in sentences_of((*around.page, *_notes_far(around))) if says_of_all(one.text)
    ]
    notes += [one for one in sentences_of(around.outer) if is_sentence(one.text)]
    each = [_of_words(one, read_heading(one.text), around.file) for one in notes]
    said = [one for one in each if one.basis is not Basis.UNKNOWN]
    bases = {one.basis for one in said}
    return said[0] if len(bases) == 1 else Said()


def _notes_far(around: Surroundings) -> Iterator[Words]:
    return (one for one in around.far if one.kind is UnitFrom.NOTE)


def opposed(one: Basis, other: Basis) -> bool:
    """Whether one is the body's and the other the garment's, laid flat or not."""
    return Basis.UNKNOWN not in {one, other} and (one is Basis.BODY) != (other is Basis.BODY)


def _holds(words: Words, reading: HeadingReading, column: Column) -> bool:
    """Whether a text speaks of the column: of everything, or of its dimension."""
    of_one = _OF_ONE.match(words.text)
    if is_sentence(words.text) or says_in_passing(words.text):
        named = read_heading(of_one[1]).dimension if of_one else None
    else:
        named = reading.dimension
    return named in {None, Dimension.OTHER, column.dimension}


def _of_words(words: Words, reading: HeadingReading, file: str) -> Said:
    """What one text says; of a file's name only whole phrases count."""
    text = _said_before_making(_MADE_IN_BRACKETS.sub(" ", words.text))
    if not text:
        return Said()
    said = whose(text)
    if said.open:
        return Said(open=True, words=text)
    if said.basis is not Basis.UNKNOWN:
        return Said(said.basis, words=text)
    if _NOT_THE_GARMENT.search(text):
        return Said(Basis.BODY, words=text)
    named = text != file and not is_sentence(text) and not _of_a_product(reading, text)
    if named and _plainly(reading.basis, text):
        return Said(reading.basis, words=text)
    return Said()


def _said_before_making(text: str) -> str:
    """What a sentence says in clauses before the one about how exactly something is made."""
    making = _MAKING.search(text)
    if making is None:
        return text
    ends = [one.start() for one in _CLAUSE.finditer(text, 0, making.start())]
    return text[: ends[-1]].strip() if ends else ""


def _of_a_product(reading: HeadingReading, text: str) -> bool:
    """Whether a bare word beside words nobody knows names what is sold: "Body warmer".

    "Fits chest" says of a rider whatever stands beside it.
    """
    strange = set(reading.rest.split()) - _OF_CHARTS
    return bool(strange) and _FITS.search(text) is None


def _plainly(basis: Basis, text: str) -> bool:
    """Whether a title says it outright: "the sizes of the vest" are those it is made in.

    "Alle mål i cm" and "girths in cm" say how the figures are taken and not on whom.
    """
    if basis is Basis.BODY:
        return _ON_THE_BODY.search(text) is not None
    outright = _OUTRIGHT.search(text) is not None and _SIZING.search(text) is None
    return basis is not Basis.FINISHED or outright
