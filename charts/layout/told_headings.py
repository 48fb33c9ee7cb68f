"""A heading that a sentence around the table explains: ``Rücken = Rückenbreite``.

Only a sentence that begins with the heading itself and names a measure in nothing but known words
says what stands under it: ``Length is measured from C7 to the waist``.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import replace
from typing import Final

from charts.dimensions import HeadingReading, Role, read_heading
from charts.layout.fields import Field, FieldKind, Table
from charts.schema import Definition, Dimension
from charts.sheet import Sheet

_SENTENCE_END: Final = re.compile(r"[.;!?]\s+|\n|\s\|\s")
_SAID: Final = re.compile(
    r"(?P<name>[^=:]{2,40}?)\s*+"
    r"(?P<sign>[=:]|\b(?:is|are|was|wird|werden|ist|est|sont|wordt|se|mäts|måles)\s+"
    r"(?:measured|taken|gemessen|mesurée?s?|prise?s?|gemeten|mide|misura)\b)\s*(?P<rest>.{2,80})"
)
_UNIT_BEHIND: Final = re.compile(
    r"(?<!\s)\s*+(?:[(\[][^()\[\]]*[)\]]|\b(?:in|en)\s+(?:cm|inch(?:es)?))\s*$"
)
_FROM: Final = re.compile(
    r"(?:from|von|vom|van|de|du|des|da|dal|desde|från|fra|od)\s+", re.IGNORECASE
)
_FILLERS: Final = re.compile(
    r"\b(?:the|vertebra|down|straight|der|die|dem|den|la|le|les|il|el)\b\s*|\bl['’]", re.IGNORECASE
)
_ASIDE: Final = re.compile(r"\s+(?:d['’]|de\s|from\s|von\s|vom\s|over\s|across\s)|\s*[,(]")
_VAGUE: Final = frozenset({None, Dimension.OTHER})


def with_told_headings(table: Table, sheet: Sheet) -> Table:
    """The table with the meaning of each column as a sentence around it explains its heading."""
    around = (at.text for at in (*table.titles, *table.notes))
    texts = "\n".join((*around, *sheet.context, *sheet.notes))
    said = {name: (sign, meant) for name, sign, meant in _explained(texts)}
    if not said:
        return table
    return replace(table, fields=tuple(_told(field, said) for field in table.fields))


def _explained(texts: str) -> Iterator[tuple[str, str, HeadingReading]]:
    for sentence in _SENTENCE_END.split(texts):
        match = _SAID.fullmatch(sentence.strip().strip("*• ").rstrip("."))
        meant = _measure(match["rest"]) if match is not None else None
        if match is not None and meant is not None:
            yield _plain(match["name"]), match["sign"], meant


def _measure(text: str) -> HeadingReading | None:
    """The measure that ``text`` names as a whole, or before where it is taken."""
    bare = _FILLERS.sub("", _FROM.sub("", text, count=1) if _FROM.match(text) else text).strip()
    for part in (text, bare, _ASIDE.split(text, maxsplit=1)[0]):
        reading = read_heading(part)
        known = reading.role is Role.MEASURE and not reading.candidates and not reading.rest
        if known and reading.dimension is not None:
            return reading
    return None


def _plain(text: str) -> str:
    return " ".join(_UNIT_BEHIND.sub("", text).lower().split())


def _told(field: Field, said: dict[str, tuple[str, HeadingReading]]) -> Field:
    own = field.heading
    sign, meant = said.get(_plain(field.printed_heading), ("", own))
    if field.kind is not FieldKind.VALUES or own.role is not Role.MEASURE or meant is own:
        return field
    if meant.dimension is own.dimension and not own.candidates:
        clearer = own.definition is Definition.UNKNOWN
        definition = meant.definition if clearer else own.definition
        return replace(field, heading=replace(own, definition=definition))
    if sign == "=" or own.dimension in _VAGUE or own.candidates:
        heading = replace(meant, unit=own.unit or meant.unit, band=own.band, basis=own.basis)
        return replace(field, heading=heading)
    # It says another measure than the heading does, and not in so many words: to be asked.
    both = ((Role.MEASURE, meant.dimension), (Role.MEASURE, own.dimension))
    return replace(field, heading=replace(own, dimension=meant.dimension, candidates=both))
