"""The words around a table, in the order in which they are believed, and what they say of it."""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, field, replace
from itertools import groupby
from typing import Final

from charts.answering import Answering
from charts.columns.borrowed_corners import outlasts, titles_below
from charts.columns.dates import Undone
from charts.dimensions import HeadingReading, Role, read_heading
from charts.findings import FindingLog
from charts.headings.bands import apart
from charts.layout.fields import FieldKind, Table
from charts.layout.looks import look
from charts.quantities import FAMILY, Family, Unit
from charts.schema import Basis, Dimension, UnitFrom
from charts.sheet import Sheet

_GREETING: Final = re.compile(
    r"\s*(?:dear|hello|hi|good (?:morning|afternoon|day)|sehr geehrte|liebe[rs]?|hallo|guten"
    r"|bonjour|madame|chère?|monsieur|geachte|beste|goedemorgen|gentil[ei]|buongiorno|estimad"
    r"|buenos|hola|hej|kära|bästa|kjære|szanown|dzień dobry|vážen"
    r"|kind(?:est)? regards|(?:best|warm) (?:regards|wishes)|regards|yours|many thanks|thank you"
    r"|mit (?:freundlichen|besten)|(?:viele|beste|liebe|freundliche) grüße|cordialement|bien à vous"
    r"|met vriendelijke|vriendelijke groet|cordiali|distinti|un saludo|saludos|atentamente"
    r"|vänliga|(?:med )?(?:venlig|vennlig)|pozdraw|s pozdravem)\b",
    re.IGNORECASE,
)
_FURNITURE: Final = re.compile(
    r"\b(?:shipping|deliver(?:y|ies)|returns? (?:with|policy)|basket|cart|checkout|log ?in|sign in"
    r"|cookies?|newsletter|discount|on request|subscribe|free of charge|wishlist|customers also"
    r"|versand|lieferung|lieferzeit|warenkorb|rückgabe|auf anfrage|anmelden|merkzettel|rabatt"
    r"|livraison|panier|sur demande|verzending|winkelwagen|op aanvraag|spedizion|carrello"
    r"|su richiesta|envío|carrito|bajo pedido|frakt|varukorg|levering|indkøbskurv|dostawa|koszyk"
    r"|doprava|košík)",
    re.IGNORECASE,
)
_SENTENCE_END: Final = re.compile(r"(?<=[.!?])\s+(?=[^\W\d_a-z])|\s*[|\n]\s*")
_OF_ALL: Final = re.compile(
    r"\b(?:all|alle|alla|tous|toutes|tutt[ei]|tod[ao]s|wszystkie|všechny|každ|hver|every)\b",
    re.IGNORECASE,
)
_OF_MEASURES: Final = re.compile(
    r"\b(?:measure(?:ment)?s|sizes|figures|dimensions|maße|angaben|größen|mesures|dimensions|tailles"
    r"|maten|afmetingen|misure|taglie|medidas|tallas|mått|mål|wymiary|rozměry|míry)\b"
    r"[^.;]{0,24}\b(?:cm|mm|inch(?:es)?|zoll|pouces|pollici|pulgadas|centimet\w+|zentimetern?)\b",
    re.IGNORECASE,
)
"""``Measurements in cm`` below the last of several tables: the unit of all of them."""
_BETWEEN_TABS: Final = re.compile(r"\s*[|\n]\s*|(?<=[^\W\d_A-Z])(?=[A-Z])")
_LONGEST_TITLE: Final = 60
_TAB: Final = 12
"""Characters of a tab's name that is nothing but a band."""


@dataclass(frozen=True, slots=True)
class Words:
    """One text around a table: a title, a caption, a note, the sheet's or the file's name."""

    text: str
    kind: UnitFrom
    place: str


@dataclass(frozen=True, slots=True)
class SourceNames:
    """The names that a source gives: above its tables, its sheets', and above several tables.

    ``ended`` are headings of the page below which a table was for somebody else already.
    """

    above: tuple[str, ...] = ()
    sheets: tuple[str, ...] = ()
    over_several: frozenset[str] = frozenset()
    ended: frozenset[str] = frozenset()


@dataclass(frozen=True, slots=True)
class Surroundings:
    """One table, the words around it (the nearest first), and where findings go.

    ``far`` are titles and notes of the sheet's other tables: a unit said there holds here too when
    nothing nearer says one. ``page`` are sentences about all measures beside the other tables of
    the source. ``titles`` are the names of all its tables, ``source`` those of its sheets.
    ``dates`` are the cells that a spreadsheet
    program had turned into dates. ``answers`` are what a person has said already. ``outer`` are
    the titles that stand over the name of this table and of one before it.
    """

    table: Table
    words: tuple[Words, ...]
    file: str
    log: FindingLog
    far: tuple[Words, ...] = ()
    page: tuple[Words, ...] = ()
    titles: tuple[str, ...] = ()
    source: SourceNames = SourceNames()
    dates: Mapping[tuple[int, int], Undone] = field(default_factory=dict)
    answers: Answering = field(default_factory=Answering)
    outer: tuple[Words, ...] = ()

    def place(self, row: int, column: int) -> str:
        """The place of a cell as a person writes it."""
        return self.table.sheet.place(row, column)

    def readings(self) -> Iterator[tuple[Words, HeadingReading]]:
        """Every text around the table with what it says when it is read as a heading."""
        for words in self.words:
            yield words, look(words.text).heading


def words_around(table: Table, file: str, source: SourceNames = SourceNames()) -> tuple[Words, ...]:
    """The corner, titles from the nearest up, captions, notes, the sheet's and the file's name."""
    sheet = table.sheet
    titles = [
        Words(at.text, UnitFrom.TITLE, sheet.place(at.row, at.column))
        for at in reversed(table.titles)
    ]
    above = _without_tabs(sheet.context, source.over_several)
    captions = [Words(text, UnitFrom.TITLE, table.area) for text in above]
    notes = [Words(at.text, UnitFrom.NOTE, sheet.place(at.row, at.column)) for at in table.notes]
    notes += [Words(text, UnitFrom.NOTE, table.area) for text in sheet.notes]
    comments = [
        Words(text, UnitFrom.NOTE, sheet.place(*place)) for place, text in sheet.comments.items()
    ]
    names = [Words(sheet.name, UnitFrom.SHEET, table.area), Words(file, UnitFrom.SHEET, file)]
    found = [*_with_the_corner(table, titles), *captions, *notes, *comments]
    said = [replace(words, text=part) for words in found for part in _sentences(words.text)]
    return tuple(words for words in (*said, *names) if not _beside(words.text))


def _with_the_corner(table: Table, titles: Sequence[Words]) -> list[Words]:
    """``Garment measurements (cm)`` before the sizes: what whole tables say in their titles.

    A title below that row is nearer to the figures, and may say that they are of something else.
    """
    heads = [at for field in table.of(FieldKind.LABEL)[:1] for at in field.heads]
    found = list(titles)
    for at in reversed(heads):
        heading = look(at.text).heading
        names_sizes = heading.role is Role.LABEL  # "Garment size" names the sizes and no more
        if heading.basis is Basis.UNKNOWN or names_sizes or heading.dimension is not None:
            continue
        below = titles_below(table, at)
        if outlasts(at, below):
            words = Words(at.text, UnitFrom.TITLE, table.sheet.place(at.row, at.column))
            found.insert(sum(one in table.titles for one in below), words)
    return found


def title_of(table: Table) -> str | None:
    """The nearest title or caption as printed; the furniture of a page is none.

    What names the table comes before a sentence or a bracket about it, wherever either stands.
    A band alone, "Men", is a title together with the one above it: shorts for men are no jerseys.
    """
    titles = [*(at.text for at in reversed(table.titles)), *_without_tabs(table.sheet.context)]
    titles = [text.strip() for text in titles if text.strip() and not _beside(text)]
    titles = [text for text in titles if not _about_it(text)] or titles
    if len(titles) > 1 and _only_a_band(titles[0]):
        return f"{titles[1]} · {titles[0]}"
    return titles[0] if titles else None


def _about_it(text: str) -> bool:
    bracketed = text.startswith("(") and text.find(")") == len(text) - 1
    return bracketed or text.endswith((".", "!", "?")) or read_heading(text).role is Role.NOTE


def _only_a_band(text: str) -> bool:
    return len(text) <= _TAB and look(text).band is not None


def notes_of(table: Table) -> tuple[str, ...]:
    """The notes of a table as printed."""
    texts = [*(at.text for at in table.notes), *table.sheet.notes]
    return tuple(text for text in texts if text.strip())


def _sentences(text: str) -> list[str]:
    """The sentences of a text: one may speak of the figures, the next of the post."""
    return [part for part in _SENTENCE_END.split(text) if part.strip()]


def sentences_of(texts: Iterable[Words]) -> Iterator[Words]:
    """The sentences of texts, each with the place of its text."""
    return (replace(one, text=part) for one in texts for part in _sentences(one.text))


def _beside(text: str) -> bool:
    """Words that say nothing of the table: a greeting in a letter, the furniture of a page."""
    if text.rstrip().endswith(",") or _GREETING.match(text) is not None:
        return True
    return _FURNITURE.search(text) is not None


def is_sentence(text: str) -> bool:
    """Whether a text is a sentence: it says something, where a title names what follows."""
    return len(text) > _LONGEST_TITLE or text.rstrip().endswith((".", "!", "?"))


def _without_tabs(context: Sequence[str], over_several: frozenset[str] = frozenset()) -> list[str]:
    """The captions from the nearest out, without names of tabs: bands that follow each other.

    Of several band words in a row none is this table's more than another's, unless one heads other
    tables too and the next this one alone.
    """
    texts = [text for text in reversed(context) if not _is_tabs(text)]
    kept: list[str] = []
    for short, run in groupby(enumerate(texts), lambda each: _is_tab(each[1])):
        tabs = list(run)
        own = [text for _, text in tabs if text not in over_several]
        headed = 0 < len(own) < len(tabs) and not any(text.islower() for text in own)
        if not short or headed or len({look(text).band for _, text in tabs}) == 1:
            kept.extend(text for at, text in tabs if headed or not _is_link(at, texts))
    return kept


def _is_tab(text: str) -> bool:
    one = look(text)
    return one.band is not None and len(one.text) <= _TAB


def _is_link(at: int, texts: Sequence[str]) -> bool:
    """``Women's vests``, ``Men's vests`` above ``Vest``: a list of other pages names none of them.

    Where they stand right above the table, the nearest may be its own name.
    """
    before = texts[at - 1 : at] if at > 1 else ()
    beside = (*before, *texts[at + 1 : at + 2]) if at else ()
    return any(apart(look(texts[at]).band, look(other).band) for other in beside)


def _is_tabs(text: str) -> bool:
    """``WomenMen``, ``Women | Men | Help``: what a page glued together, or parted by bars."""
    parts = [part for part in _BETWEEN_TABS.split(text) if part.strip()]
    if any(apart(look(one).band, look(other).band) for one in parts for other in parts):
        return "|" in text or "\n" in text or all(_is_tab(part) for part in parts)
    return False


def page_words(sheet: Sheet, sheets: Sequence[Sheet]) -> tuple[Words, ...]:
    """Sentences about all measures, and units of them, beside the other tables of the source."""
    return tuple(
        Words(text, UnitFrom.NOTE, one.name)
        for one in sheets
        if one is not sheet
        for note in one.notes
        for text in _sentences(note)
        if says_of_all(text) or _OF_MEASURES.search(text)
    )


def says_of_all(text: str) -> bool:
    """Whether a text is a sentence about all measures."""
    return _OF_ALL.search(text) is not None and is_sentence(text)


def family_of(dimension: Dimension | None) -> Family:
    """What a dimension is measured in: weight in mass, age in years, all else in length."""
    if dimension is Dimension.WEIGHT:
        return Family.MASS
    return Family.AGE if dimension is Dimension.AGE else Family.LENGTH


def of_family(units: tuple[Unit | None, ...], family: Family) -> tuple[Unit, ...]:
    """The units of one family, in their order."""
    return tuple(unit for unit in units if unit is not None and FAMILY[unit] is family)


def dimension_in(surroundings: Surroundings) -> Dimension | None:
    """The dimension that the titles or captions name, when their nearest naming names one."""
    for words, reading in surroundings.readings():
        if words.kind is UnitFrom.TITLE and reading.role is Role.MEASURE:
            return None if reading.dimension is Dimension.OTHER else reading.dimension
    return None


def girth_around(
    surroundings: Surroundings, readings: Sequence[tuple[Role, Dimension | None]]
) -> Dimension | None:
    """The one girth among ``readings`` that titles and notes name, where no heading names it."""
    girths = {dimension for _, dimension in readings}
    named = {
        reading.dimension
        for words, reading in surroundings.readings()
        if words.kind in {UnitFrom.TITLE, UnitFrom.NOTE} and reading.role is Role.MEASURE
    }
    return next(iter(named & girths)) if len(named & girths) == 1 else None
