"""For whom a whole table is: the band that a title, a note, the sheet's or the file's name gives.

A title names a band in a phrase of its own ("Kids' vest. All sizes in cm."). A sentence that
happens to name one ("Also available for women.") says nothing of the table.
"""

from __future__ import annotations

import re
from typing import Final

from charts.columns.band_scope import in_scope
from charts.columns.words import Surroundings, Words, is_sentence
from charts.headings.bands import names_adults
from charts.layout.looks import look
from charts.schema import UnitFrom

_STATES: Final = re.compile(
    r"\b(?:not|no|also|see|is|are|isn|aren|should|must|may|can|could|will|would|please|if|choose"
    r"|measure (?:the|your|a|an|around|over|from|with)|run|runs|fit|fits|order|than"
    r"|nicht|kein|keine|auch|siehe|ist|sind|sollte|sollten|muss|müssen|kann|können|bitte|wenn|falls"
    r"|messen|wählen|fällt|fallen|gibt|haben|hat|als"
    r"|pas|aussi|voir|est|sont|doit|doivent|peut|peuvent|veuillez|si|mesurez|choisissez|existe"
    r"|niet|geen|ook|zie|zijn|moet|moeten|kunnen|als|meet|kies|valt"
    r"|non|anche|vedi|è|sono|deve|devono|può|possono|se|misurare|scegliere"
    r"|también|ver|véase|es|son|está|debe|deben|puede|pueden|mida|elija"
    r"|não|também|são|deve|devem|pode|podem|meça|escolha"
    r"|inte|ej|även|se|är|ska|bör|kan|mät|välj|ikke|også|er|skal|bør|mål|vælg|velg"
    r"|nie|także|też|patrz|jest|są|powinn\w*|może|mogą|jeśli|proszę"
    r"|není|nejsou|také|viz|je|jsou|musí|může|mohou|pokud|prosím)\b",
    re.IGNORECASE,
)
"""Words that make a statement of what would else be the name of a table."""
_NOT: Final = re.compile(
    r"\b(?:not|nicht|kein|keine|niet|geen|non|pas|não|inte|ikke|nie|není|except|ohne|sauf)\b",
    re.IGNORECASE,
)
_LONGEST: Final = 130
_CHILDREN: Final = frozenset({"girls", "boys"})


def band_around(around: Surroundings) -> str | None:
    """The band that the words around a table give: names before sentences, the nearest first.

    "Girls" above a tab for children is the narrower of the two and holds. A name of the table
    that is like those that name bands ends what stands farther off.
    """
    sheet = around.table.sheet
    over = (Words(a.text, UnitFrom.TITLE, sheet.place(a.row, a.column)) for a in around.table.over)
    near = (*over, *in_scope(around))
    named = [words for words in near if look(words.text).band and _names(words)]
    named.sort(key=lambda words: is_sentence(words.text))
    if any(words.kind is UnitFrom.TITLE and names_adults(words.text) for words in near):
        # A file for children and grown-ups names neither for the table of the grown-ups.
        named = [words for words in named if words.kind is not UnitFrom.SHEET]
    found = [look(words.text).band for words in named]
    narrower = found[:1] == ["kids"] and found[1:2] and found[1] in _CHILDREN
    return found[1] if narrower else next(iter(found), None)


def _names(words: Words) -> bool:
    """Whether a text names the table: a title may do so though it is long or has a full stop."""
    if not is_sentence(words.text):
        return _NOT.search(words.text) is None
    titled = words.kind is UnitFrom.TITLE and len(words.text) <= _LONGEST
    return titled and _STATES.search(words.text) is None
