"""A sentence that says what a single figure means: "up to this number" makes it an upper limit."""

from __future__ import annotations

import re
from collections.abc import Iterable, Sequence
from dataclasses import replace
from decimal import Decimal
from typing import Final

from charts.columns.bound_relations import (
    OTHER_END,
    clauses,
    conditional,
    no_limit,
    of_the_wearer,
    past_the_figure,
)
from charts.columns.values import Filled
from charts.columns.words import Surroundings, Words, family_of
from charts.dimensions import Role, find_units, read_heading
from charts.findings import listed
from charts.layout.looks import look
from charts.quantities import FAMILY, factor
from charts.schema import Dimension, Kind, Range, UnitFrom

_UPPER: Final = re.compile(
    r"equal (?:to )?or (?:below|less|smaller|under)|(?:below|less than|smaller than|under) or equal"
    r"|\bup to\b|or (?:below|less|smaller)\b|at most|no more than|\bm[aá]xim\w*|\bmax(?:\b|m[åa])"
    r"|upper (?:limit|end|bound)|not exceed|no (?:taller|bigger|larger|more) than|largest|tallest"
    r"|\b(?:bis|tot|do|til|till|à)\s+\d|\bbis zu[rm]?\b|\bpass(?:t|end) (?:tot|bis)\b|höchst\w*"
    r"|obergrenze|gleich oder kleiner|kleiner oder gleich|nicht größer"
    r"|jusqu|au maximum|au plus(?! (?:pr[èe]s|juste|fort|fin|large))|égal ou inférieur"
    r"|inférieur ou égal|hasta|como máximo"
    r"|igual o inferior|inferior o igual|fino a|\bmassim[aeio]\b|tot en met|maximum|hoogst"
    r"|upp till|högst|största (?:mått|mål)|op til|højst|største (?:mål|omfang)|opp til|høyst|até"
    r"|\bmaksim|\bmaksym|\bnejvýš|\bnajwyż|\bpasuje do|\bdo podane|bovengren[sz]"
    r"|limites? sup[eé]rieure?s?|l[ií]mites? superior|övre gräns|øvre gr[eæ]n|górn\w* granic"
    r"|ne (?:doit|doivent|peut) pas (?:dépasser|excéder)|ne dépassent? pas|não (?:deve )?exceder"
    r"|non (?:deve |devono )?super(?:are|a|i|ano)\b|no (?:debe |deben )?(?:superar|exceder)"
    r"|horní (?:hranic|mez)|\benimmäis|\benintään|\bkorkeintaan|\bylära",
    re.IGNORECASE,
)
_SPAN: Final = re.compile(
    r"\d[\d.,]*\s*(?:cm|mm|in|kg)?\s*"
    r"(?:up to|bis(?: zu)?|tot|do|til|till|à|hasta|fino a|até|op til|upp till)\s+\d",
    re.IGNORECASE,
)
"""From one figure to another, "tailles 36 à 44": a span of sizes, and no upper limit."""
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
    r"|at least|lower limit|\bm[ií]nim\w*|\bmin\.|mindest\w*|untergrenze|au moins|almeno"
    r"|przynajmniej|alespoň|co najmniej|\bminst(?:ens|e)?\b|\bmindst\b|al menos|pelo menos"
    r"|ondergren[sz]|limites? inf[eé]rieure?s?|l[ií]mites? inferior|(?:undre|nedre) gr[äeæ]n"
    r"|doln\w* granic|(?:spodní|dolní) (?:hranic|mez)|\bvähintään|\bvähimmäis|\balara",
    re.IGNORECASE,
)
_BETWEEN: Final = re.compile(
    r"between|in-between|zwischen|\bentre\b|tussen|\btra (?:due|le)\b|\bfra due\b|mellan|mellem"
    r"|\bmellom|między|\bmezi\b",
    re.IGNORECASE,
)
_LARGER: Final = re.compile(
    r"larger|bigger|size up|next size|größere|groessere|plus grande|grotere|più grande|superiore"
    r"|\bmayor\b|más grande|superior\b|\bmaior\b|större|større|største|större|większ|větší",
    re.IGNORECASE,
)
_SMALLER: Final = re.compile(
    r"smaller|size down|kleinere|plus petite|più piccola|\bmenor\b|más pequeñ|mindre|mindste|minste"
    r"|mniejsz|menší",
    re.IGNORECASE,
)
_VARIES: Final = re.compile(
    r"\bvar[iy]|toler|abweich|afwijk|avvik|afvig|różni|liší|deliver|wash|wasch|stock|lager\b",
    re.IGNORECASE,
)
"""Limits of something else: of exactness, of a delivery, of the washing."""
_OF_FIGURES: Final = re.compile(
    r"number|figure|value|measure|table|chart|listed|given|shown|below|indicated|size|girth"
    r"|zahl|wert|angabe|angegeben|maß|mass|tabelle|größe|grösse|umfang"
    r"|chiffre|valeur|mesure|tableau|indiqué|taille|tour|valor|medida|tabla|indicad|talla"
    r"|misur|tabella|valor|taglia|maat|\bmaten|tabel|waarde|mått|tabell|storlek|mål|størrelse"
    r"|tamanho|wymiar|wartoś|rozmiar|obwod|obwód|obvod|hodnot|\bmír|rozměr|velikost|contorno|omvang|omfång"
    r"|omfang|circonferenz|\bmitat|\bmitta|\bmitoi|\barvo",
    re.IGNORECASE,
)
_ALL_FIGURES: Final = re.compile(
    r"\b(?:numbers?|figures?|values?|measure(?:s|ments?)?|girths?)\b|\bzahl|\bwert|\bangabe|\bmaß"
    r"|chiffre|valeur|mesure|valor|medida|misur|waarde|\bmaten\b|mått|\bmål\b|\bmålene|wymiar|hodnot"
    r"|wartoś|\bmíry\b|rozměr|\bmitat|\barvot|höchstwert|contorno|omvang|omfång|omfang|circonferenz|obwod|obwód|obvod|umfang"
    r"|\btour\b",
    re.IGNORECASE,
)
"""Words that mean the figures of a chart at large, where no dimension is named."""
_OF_THE_CHILD: Final = re.compile(
    r"\btall\b|\bgroß\b|\bgross\b|\bgrand|\bage[ds]?\b|\byears?\b|\bjahre?\b|\bans\b|\bjaar\b"
    r"|\banni\b|\baños\b|\blång|\bhøj|\bhoog|\balto|\bwzrost",
    re.IGNORECASE,
)
"""A sentence about how tall or old a child may be says nothing of its girths."""
_TAKING: Final = re.compile(
    r"\bmeasure (?:from|around|over|across|under|the|your|down|up|along|straight)"
    r"|\bmessen\b|\bmiss\b|\bmesure[rz]\b|\bmeet\b|\bmeten\b|\bopmeten\b|\bmisura(?:re|te)\b"
    r"|\bmedir\b|\bmid[ae]\b|\bmeça\b|\bmät(?:a|s)?\b|\bmål(?:es)? (?:fra|rundt|omkring|over)"
    r"|\bz?mierz|\bz?měř",
    re.IGNORECASE,
)
"""How a measure is taken: "from the head up to the feet" bounds no figure."""
_SHORTEST: Final = 12
"""Characters of a sentence; "max. 30 kg" alone is a limit of the vest and says nothing of cells."""
_NUMBER: Final = re.compile(r"\d+(?:\.\d+)?")
_WORD: Final = re.compile(r"[^\W\d_]+(?:[- ][^\W\d_]+)?")


def bounded(columns: Sequence[Filled], around: Surroundings) -> list[Filled]:
    """The columns with single figures made open ends where a sentence says so, noted there."""
    found = list(columns)
    for words in around.words:
        for kind, meant in _of_each_clause(words, found) or _of_the_whole(words, found):
            found = _applied(found, words, kind, meant, around)
    return found


def _of_the_whole(words: Words, columns: Sequence[Filled]) -> list[tuple[Kind, set[int]]]:
    kind = _says(words) or _titled(words)
    return [(kind, _meant(words.text, columns))] if kind is not None else []


def _of_each_clause(words: Words, columns: Sequence[Filled]) -> list[tuple[Kind, set[int]]]:
    """What each of several clauses bounds: "mesures maximales en cm ; poids minimal en kg".

    Those that name their measures come first; one that speaks of the figures at large speaks of
    what is left, and of its unit alone where it names one.
    """
    parts = clauses(words.text)
    if len(parts) < 2 or _NUMBER.search(words.text) or _says_nothing(words):
        return []
    said = [(part, kind) for part in parts if (kind := _bound_in(part)) is not None]
    if len(said) < 2:
        return []
    named = [(kind, _meant(part, columns)) for part, kind in said if _named(part)]
    taken = {number for _, meant in named for number in meant}
    at_large = [
        (kind, _in_its_unit(part, columns) - taken) for part, kind in said if not _named(part)
    ]
    return named + at_large


def _in_its_unit(part: str, columns: Sequence[Filled]) -> set[int]:
    families = {FAMILY[unit] for unit in find_units(part)}
    return {
        number
        for number in _meant(part, columns)
        if not families or family_of(columns[number].column.dimension) in families
    }


def _between(text: str) -> bool:
    """A rule for a body between two sizes: the maker's own, which says nothing of the figures."""
    larger, smaller = _LARGER.search(text), _SMALLER.search(text)
    return _BETWEEN.search(text) is not None and bool(larger) != bool(smaller)


def _says(words: Words) -> Kind | None:
    """What a sentence about the figures of the table makes of them."""
    return None if _says_nothing(words) else _bound_in(words.text)


def _says_nothing(words: Words) -> bool:
    """Whether a text is a name, or about something else than the figures."""
    text = words.text
    if words.kind is UnitFrom.SHEET or len(text) < _SHORTEST or _VARIES.search(text):
        return True
    return _between(text) or _TAKING.search(text) is not None or no_limit(text)


def _bound_in(text: str) -> Kind | None:
    """The end that the words make of a figure; none where they contradict each other.

    Compared with the wearer the other way round, the figure is the other end.
    """
    if not _OF_FIGURES.search(text) and not _named(text):
        return None
    if _FIGURE_ABOVE.search(text):
        return None if conditional(text) and _SMALLER.search(text) else Kind.AT_MOST
    if _LARGER.search(text) and past_the_figure(text):
        return Kind.AT_MOST
    text = _SPAN.sub(" ", text)
    found = {
        (OTHER_END[kind] if of_the_wearer(text, match.end()) else kind, kind, match[0])
        for pattern, kind in ((_UPPER, Kind.AT_MOST), (_LOWER, Kind.AT_LEAST))
        for match in pattern.finditer(text)
    }
    turned = {meant for meant, kind, _ in found if meant is not kind}
    ends = turned or {meant for meant, _, _ in found}
    return ends.pop() if len(ends) == 1 else None


def _titled(words: Words) -> Kind | None:
    """A title such as "Children's sizes (up to height)" is a heading that says which end it is."""
    reading = look(words.text).heading
    if words.kind is not UnitFrom.TITLE or reading.dimension is None:
        return None
    return {Role.HIGH_END: Kind.AT_MOST, Role.LOW_END: Kind.AT_LEAST}.get(reading.role)


def _meant(text: str, columns: Sequence[Filled]) -> set[int]:
    """The columns a sentence speaks of.

    Those whose figure it gives as an example ("size 164 for children up to 164 cm"); without a
    figure those of the dimensions it names, and all where it speaks of the figures at large. A
    sentence with other figures speaks of something else: a limit of the vest, a price, a date.
    """
    figures = {Decimal(number) for number in _NUMBER.findall(text)}
    if figures:
        return {n for n, one in enumerate(columns) if figures & _printed(one)}
    named = _named(text)
    if named:
        return {n for n, one in enumerate(columns) if one.column.dimension in named}
    everything = _ALL_FIGURES.search(text) and not _OF_THE_CHILD.search(text)
    return set(range(len(columns))) if everything else set()


def _printed(one: Filled) -> set[Decimal]:
    """The single figures of a column as they are printed."""
    found = set()
    for value in one.ranges.values():
        if value.kind is Kind.SINGLE and value.value is not None:
            by = factor(value.published_unit) if value.published_unit else Decimal(1)
            found.add((value.value / by).normalize())
    return found


def _applied(
    columns: Iterable[Filled], words: Words, kind: Kind, meant: set[int], around: Surroundings
) -> list[Filled]:
    found = []
    for number, one in enumerate(columns):
        single = any(value.kind is Kind.SINGLE for value in one.ranges.values())
        if number not in meant or not single:
            found.append(one)
            continue
        case = "upper" if kind is Kind.AT_MOST else "lower"
        ident = around.log.add(
            "single-values", words.place, key=f"{case} {words.text}", case=case, text=words.text
        )
        ranges = {line: _bound(value, kind, ident) for line, value in one.ranges.items()}
        found.append(Filled(one.column, ranges))
    return found


def _named(text: str) -> set[Dimension]:
    found = set()
    for match in _WORD.finditer(text):
        for word in {match[0], *match[0].split()}:
            reading = read_heading(word)
            if any(part.startswith("maß") for part in word.lower().split()):
                continue  # without its accent it would be a mass
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
