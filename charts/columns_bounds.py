"""A sentence that says what a single figure means: "up to this number" makes it an upper limit."""

from __future__ import annotations

import re
from collections.abc import Iterable, Sequence
from dataclasses import replace
from typing import Final

from charts.columns_values import Filled
from charts.columns_words import Surroundings, Words
from charts.dimensions import Role, read_heading
from charts.findings import listed
from charts.schema import Dimension, Kind, Range, UnitFrom

_UPPER: Final = re.compile(
    r"equal (?:to )?or (?:below|less|smaller|under)|(?:below|less than|smaller than|under) or equal"
    r"|\bup to\b|or (?:below|less|smaller)\b|at most|no more than|\bmaxim(?:um|al|a|o)\b"
    r"|upper limit"
    r"|\bbis zu\b|höchstens|obergrenze|gleich oder kleiner|kleiner oder gleich|nicht größer"
    r"|jusqu|au maximum|au plus|égal ou inférieur|inférieur ou égal|hasta|como máximo"
    r"|igual o inferior|fino a|al massimo|tot en met|maximaal|hoogstens|upp till|högst|op til"
    r"|højst|opp til|até",
    re.IGNORECASE,
)
_FIGURE_ABOVE: Final = re.compile(
    r"(?:above|over|larger than|bigger than|greater than|higher than|more than)"
    r" (?:your|you|the body|the wearer|the rider)"
    r"|(?:largest|biggest|greatest|highest) (?:\w+ ){0,5}(?:fits?|wearer|rider|body|measures?)\b"
    r"|über (?:ihr|dein|eur|dem eigenen)|gr(?:ö|oe)(?:ß|ss)te[rs]? (?:\w+ ){0,4}(?:passt|umfang)",
    re.IGNORECASE,
)
"""The figure is compared with the wearer, the other way round: it is the larger of the two."""
_LOWER: Final = re.compile(
    r"equal (?:to )?or (?:above|more|greater)|(?:above|more than|greater than) or equal"
    r"|at least|lower limit|minimum|mindestens|untergrenze|au moins|au minimum|como mínimo|almeno",
    re.IGNORECASE,
)
_OF_FIGURES: Final = re.compile(
    r"number|figure|value|measure|table|chart|listed|given|shown|below|indicated|size|girth"
    r"|zahl|wert|angabe|angegeben|maß|mass|tabelle|größe|grösse|umfang"
    r"|chiffre|valeur|mesure|tableau|indiqué|taille|tour|valor|medida|tabla|indicad|talla"
    r"|misur|tabella|valore|taglia|maat|tabel|waarde|mått|tabell|storlek|mål|størrelse|tamanho",
    re.IGNORECASE,
)
_SHORTEST: Final = 12
"""Characters of a sentence; "max. 30 kg" alone is a limit of the vest and says nothing of cells."""
_WORD: Final = re.compile(r"[^\W\d_]+(?:[- ][^\W\d_]+)?")


def bounded(columns: Sequence[Filled], around: Surroundings) -> list[Filled]:
    """The columns with single figures made open ends where a sentence says so, noted there."""
    found = list(columns)
    for words in around.words:
        kind = _says(words)
        if kind is not None:
            found = _applied(found, words, kind, around)
    return found


def _says(words: Words) -> Kind | None:
    """What a sentence about the figures of the table makes of them."""
    text = words.text
    if words.kind is UnitFrom.SHEET or len(text) < _SHORTEST or any(c.isdigit() for c in text):
        return None
    if not _OF_FIGURES.search(text):
        return None
    if _FIGURE_ABOVE.search(text):
        return Kind.AT_MOST
    upper, lower = _UPPER.search(text), _LOWER.search(text)
    if upper is None:
        return Kind.AT_LEAST if lower else None
    return Kind.AT_MOST if lower is None else None


def _applied(
    columns: Iterable[Filled], words: Words, kind: Kind, around: Surroundings
) -> list[Filled]:
    """Only for the dimensions that the sentence names, for all when it names none."""
    named = _named(words.text)
    found = []
    for one in columns:
        fits = not named or one.column.dimension in named
        if not fits or not any(value.kind is Kind.SINGLE for value in one.ranges.values()):
            found.append(one)
            continue
        case = "upper" if kind is Kind.AT_MOST else "lower"
        ident = around.log.add(
            "single-values", words.place, key=words.text, case=case, text=words.text
        )
        ranges = {line: _bound(value, kind, ident) for line, value in one.ranges.items()}
        found.append(Filled(one.column, ranges))
    return found


def _named(text: str) -> set[Dimension]:
    found = set()
    for match in _WORD.finditer(text):
        for word in {match[0], *match[0].split()}:
            reading = read_heading(word)
            if reading.role is Role.MEASURE and reading.dimension is not None:
                found.add(reading.dimension)
    return found - {Dimension.OTHER}


def _bound(value: Range, kind: Kind, ident: str) -> Range:
    if value.kind is not Kind.SINGLE:
        return value
    also = value.also_published
    if also is not None and also.value is not None:
        ends = (None, also.value) if kind is Kind.AT_MOST else (also.value, None)
        also = replace(also, low=ends[0], high=ends[1], value=None)
    low, high = (None, value.value) if kind is Kind.AT_MOST else (value.value, None)
    return replace(
        value,
        kind=kind,
        low=low,
        high=high,
        value=None,
        also_published=also,
        findings=listed(*value.findings, ident),
    )
