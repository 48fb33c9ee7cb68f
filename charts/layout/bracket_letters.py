"""Letters in brackets behind a heading, told in a sentence: ``Chest (B)``, ``B = body``.

A sentence that says whose measure each letter means is put in the place of the letters, before
anything else can take a B for a cup.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator, Mapping
from dataclasses import replace
from typing import Final

from charts.dimensions import read_heading
from charts.schema import Basis
from charts.sheet import Sheet

_ENTRY: Final = re.compile(
    r"(?<!\w)[(\[\"'“„]?(?P<letter>[A-Z]{1,2})[)\]\"'”“]?\s*(?:=|:|–|—|→|\bmeans\b)\s*"
    r"(?P<words>[^\W\d_][^\d,;.=:()\n]{2,40}?)(?=\s*(?:[,;.\n)]|$|\s(?:and|und|et|en|e|y|og|och)\s))"
)
_BRACKET: Final = re.compile(r"[(\[]\s*(?P<letter>[A-Z]{1,2})\s*[)\]]")
_FEWEST: Final = 2
"""Letters that a legend tells apart."""


def letters_told(sheet: Sheet) -> Sheet:
    """The sheet with such letters written out, where its words tell two or more of them."""
    used = {
        match["letter"] for cell in sheet.cells.values() for match in _BRACKET.finditer(cell.text)
    }
    if not used:
        return sheet
    legend = _legend(_texts(sheet))
    if len(legend) < _FEWEST or not used & legend.keys():
        return sheet
    cells = {
        place: replace(cell, text=_written_out(cell.text, legend))
        if _BRACKET.search(cell.text)
        else cell
        for place, cell in sheet.cells.items()
    }
    return replace(sheet, cells=cells)


def _texts(sheet: Sheet) -> Iterator[str]:
    yield from sheet.context
    yield from sheet.notes
    yield from sheet.comments.values()
    for cell in sheet.cells.values():
        yield cell.text


def _legend(texts: Iterable[str]) -> dict[str, str]:
    """What each letter means; letters told in two ways, or not whose a measure is, left out."""
    said: dict[str, set[str]] = {}
    for text in texts:
        for match in _ENTRY.finditer(text):
            said.setdefault(match["letter"], set()).add(match["words"].strip())
    return {
        letter: next(iter(words))
        for letter, words in said.items()
        if len(words) == 1 and _says_whose(next(iter(words)))
    }


def _says_whose(words: str) -> bool:
    heading = read_heading(f"Chest ({words})")
    return heading.basis is not Basis.UNKNOWN or heading.garment_sign


def _written_out(text: str, legend: Mapping[str, str]) -> str:
    return _BRACKET.sub(
        lambda match: f"({legend[match['letter']]})" if match["letter"] in legend else match[0],
        text,
    )
