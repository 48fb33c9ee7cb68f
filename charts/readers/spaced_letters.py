"""Words printed with a blank behind every letter: ``C I N T U R A ( A ) 65 cm``.

They are closed up where they make a word that headings know; ``S M L XL`` stays apart.
"""

from __future__ import annotations

import re
from typing import Final

from charts.dimensions import Role, read_heading

_SPACED: Final = re.compile(
    r"(?<!\S)(?P<word>[^\W\d_](?: [^\W\d_]){3,24})(?!\S)(?P<mark> \( ?[^\W\d_] ?\))?"
)
_KNOWN: Final = frozenset({Role.MEASURE, Role.LABEL, Role.BAND})


def closed_up(text: str) -> str:
    """``text`` with its spaced words closed up; lines keep their numbers."""
    return _SPACED.sub(_one, text)


def _one(found: re.Match[str]) -> str:
    word = found["word"].replace(" ", "")
    if read_heading(word).role not in _KNOWN:
        return found[0]
    mark = found["mark"]
    return word if mark is None else f"{word} {mark.replace(' ', '')}"
