"""Notes that name for whom a table is: those that are nothing but a name, ``Women's cut``.

Below a table a text with a band word is mostly advice, an advertisement or a way to another page;
whatever says more than whom the table is for is taken for one of these.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Sequence
from typing import Final

from charts.columns.words import Words, is_sentence
from charts.dimensions import Role, read_band, read_heading
from charts.headings.bands import apart
from charts.identity import own_words
from charts.schema import UnitFrom

_WORD: Final = re.compile(r"[^\W\d_]+(?:['’][^\W\d_]+)*['’]?")
_SAYS_MORE: Final = re.compile(r"\d|[:=+]\s*\S")
_BESIDE: Final = frozenset(
    {"only", "cut", "model", "nur", "schnitt", "modell", "uniquement", "seulement", "coupe"}
    | {"modèle", "alleen", "pasvorm", "solo", "modello", "corte", "modelo", "apenas", "endast"}
    | {"kun", "snit", "tylko", "fason", "pouze", "střih", "fits"}
)
"""Words that may stand beside a band in its name, besides those that any chart may have."""


def name_nobody(notes: Sequence[Words]) -> bool:
    """Whether notes name different people, as a list of other pages does: so none of them."""
    found = {read_band(words.text) for words in notes if not is_sentence(words.text)} - {None}
    return any(apart(one, other) for one in found for other in found)


def is_a_name(text: str) -> bool:
    """Whether a text has no word but those for whom a table is and those of any table."""
    words: Iterable[str] = _WORD.findall(text)
    return _SAYS_MORE.search(text) is None and all(
        read_band(word) is not None or _of_any_table(word) for word in words
    )


def _of_any_table(word: str) -> bool:
    plain = word.lower()
    measured = read_heading(word).role is Role.MEASURE
    return not measured and (plain in _BESIDE or not own_words(word))


def notes_among(several: Sequence[Words]) -> tuple[Words, ...]:
    """The notes among the words around a table."""
    return tuple(words for words in several if words.kind is UnitFrom.NOTE)
