"""Whose measure a column gives: the body's, the finished vest's, or half of it laid flat.

Cell words beat the heading, the heading the title, the title a note. Beside height or weight a
figure is the body's. A sign of garment measures without a word that says so is asked about.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import replace
from typing import Final

from charts.columns.meaning import Column
from charts.columns.words import Surroundings, is_sentence
from charts.layout.fields import FieldKind
from charts.schema import Basis, Dimension, UnitFrom

_OF_THE_BODY: Final = frozenset({Dimension.HEIGHT, Dimension.WEIGHT, Dimension.AGE})
_BODY: Final = re.compile(
    r"\bbody (?:measure|dimension|size)|\bkörperma|\bmensurations|mesures (?:du corps|corporelles)"
    r"|lichaamsma|misure (?:del corpo|corporee)|medidas (?:corporales|del cuerpo|do corpo)"
    r"|kroppsmått|kropsmål|wymiary ciała|tělesné míry|\bto fit\b",
    re.IGNORECASE,
)
"""Titles that say whose measures follow."""
_BODY_OUTRIGHT: Final = re.compile(
    r"\bbody\b|\bto fit\b|\bfits\b|\bkörper|\bcorps\b|corporel|lichaam|\bcorpo\b|cuerpo|corporal"
    r"|\bkropp|\bkrop|\bciała\b|\btěl",
    re.IGNORECASE,
)
"""Words of a heading that name the body itself, not only a girth."""
_NOT_THE_GARMENT: Final = re.compile(
    r"\b(?:not|no|nicht|keine|pas|niet|non|inte|ikke|nie)\b[\w\s]{0,12}"
    r"(?:garment|finished|vest|jacket|product|kleidung|fertigma|produktma|westen|vêtement|gilet"
    r"|kleding|prenda|prodotto|capo|plagg|odzie)",
    re.IGNORECASE,
)
_GARMENT: Final = re.compile(
    r"(?:finished|garment|product) (?:garment|measure|dimension|size)"
    r"|measure[a-z]* (?:are |is )?(?:taken |made )?(?:of|on) the (?:finished |actual )?"
    r"(?:garment|vest|jacket)"
    r"|fertigma|produktma|kleidungsma|maße (?:des|der) (?:kleidung|weste|jacke|produkt)"
    r"|mesures? (?:du|de la|des) (?:vêtement|gilet|veste|produit)|misure del capo"
    r"|medidas de la prenda",
    re.IGNORECASE,
)
_FLAT: Final = re.compile(
    r"la(?:id|ying) (?:out )?flat|measured flat|flach (?:liegend|gelegt|ausgelegt)|à plat"
    r"|plat gemeten|in piano|en plano|liggande plant|na płasko",
    re.IGNORECASE,
)
_OUTRIGHT: Final = re.compile(
    r"finished|garment|laid|flat|actual|product|measure|dimension|fertig|kleidung|produkt|maße\b"
    r"|fini|vêtement|mesures|prenda|medidas|capo|misure|plagg|mått|odzie|wymiar",
    re.IGNORECASE,
)
_SILENT: Final = frozenset({Dimension.INSEAM, Dimension.OTHER})
"""Beside a person's height an inseam is still the trousers' own as often as the leg's."""


def with_basis(columns: Sequence[Column], around: Surroundings) -> list[Column]:
    """The columns with their basis, and the question where a sign of garment stands unsaid."""
    beside = any(column.dimension in _OF_THE_BODY for column in columns)
    toleranced = bool(around.table.of(FieldKind.TOLERANCE))
    found = [
        _resolved(column, _titled(column, around), beside=beside, toleranced=toleranced)
        for column in columns
    ]
    return [_doubted(column, around) for column in found]


def _titled(column: Column, around: Surroundings) -> tuple[Basis, bool]:
    """What the nearest words around the table say that hold for the column; whether as a title.

    Words that name one measure hold for that measure only.
    """
    for words, reading in around.readings():
        if words.text == around.file:
            continue
        if is_sentence(words.text):
            said = _sentence(words.text)
            if said is not Basis.UNKNOWN:
                return said, False
            continue
        of_the_body = _BODY.search(words.text) and not _GARMENT.search(words.text)
        if _NOT_THE_GARMENT.search(words.text) or of_the_body:
            return Basis.BODY, True
        of_all = reading.dimension in {None, Dimension.OTHER, column.dimension}
        if reading.basis is not Basis.UNKNOWN and of_all and _plainly(reading.basis, words.text):
            return reading.basis, words.kind is not UnitFrom.NOTE
    return around.answers.basis, True


def _plainly(basis: Basis, text: str) -> bool:
    """Whether a title says it outright: "the sizes of the vest" are those it is made in."""
    return basis is not Basis.FINISHED or _OUTRIGHT.search(text) is not None


def _sentence(text: str) -> Basis:
    """What a sentence says of all figures; "keep the tape flat" says how to measure, no more."""
    if _NOT_THE_GARMENT.search(text) or _BODY.search(text):
        return Basis.BODY
    if _FLAT.search(text):
        return Basis.FLAT
    return Basis.FINISHED if _GARMENT.search(text) else Basis.UNKNOWN


def _resolved(
    column: Column, said: tuple[Basis, bool], *, beside: bool, toleranced: bool
) -> Column:
    titled, as_title = said
    if column.basis is not Basis.UNKNOWN and not (as_title and _outspoken(column, titled)):
        return column
    if column.dimension in _OF_THE_BODY:
        return replace(column, basis=Basis.BODY)
    if titled is not Basis.UNKNOWN:
        return replace(column, basis=titled)
    # Body measures never carry a tolerance: a doubtful heading beside one is the vest's own.
    if column.garment_sign and toleranced:
        return replace(column, basis=Basis.FINISHED)
    if beside and column.dimension not in _SILENT and not column.garment_sign:
        return replace(column, basis=Basis.BODY)
    return column


def _outspoken(column: Column, titled: Basis) -> bool:
    """Whether a title says garment where the heading below it only sounds like a body.

    A vest has a girth as well: "tour de poitrine" under "mesures du vêtement fini" is the vest's.
    """
    sounds = column.basis is Basis.BODY and _BODY_OUTRIGHT.search(column.heading) is None
    of_the_vest = titled in {Basis.FINISHED, Basis.FLAT}
    return sounds and of_the_vest and column.dimension not in _OF_THE_BODY


def _doubted(column: Column, around: Surroundings) -> Column:
    """A sign of garment measures, and no word that says whose measure it is."""
    unsaid = column.basis is Basis.UNKNOWN
    if not (unsaid and column.garment_sign):
        return column
    ident = around.log.add(
        "basis-doubtful", column.place, key=around.table.area, heading=column.heading
    )
    return column.asking(ident)
