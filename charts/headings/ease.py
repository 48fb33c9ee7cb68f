"""Words of the room that a garment leaves, and of knitting: a girth beside them may be its own.

A pattern recommends an ease, tells how many stitches a stretch has, and lists girths, of the
finished garment as often as of the body (common practice, no source). The words are from memory,
unchecked by native speakers.
"""

from __future__ import annotations

import re
from functools import lru_cache
from typing import Final

_EASE: Final = re.compile(
    r"\b(?:recommended|positive|negative|wearing|design) ease\b|\bof ease\b|\bbevegelsesvidde"
    r"|\bbevægelsesvidde|\brörelsevidd|\bbewegungsweite|\bbequemlichkeitszugabe"
    r"|\boverwijdte\b",
    re.IGNORECASE,
)
_KNITTED: Final = re.compile(
    r"\b\d{1,2}(?:[.,]\d)?\s(?:stitches|sts|maschen|mailles|masker|steken|silmukkaa|punti|puntos)\b"
    r"|\bmaschenprobe\b|\bstrikkefasthe|\bmasketæthed|\bstickfasthet|\bmasktäthet"
    r"|\bstekenverhouding\b|\bstocking ?stitch\b|\bstockinette\b"
    r"|\b(?:circular|double pointed) needles?|\brundpind|\brundstick|\brundstricknadel",
    re.IGNORECASE,
)
"""How a pattern tells its gauge and its needles."""


@lru_cache(maxsize=4096)
def speaks_of_ease(text: str) -> bool:
    """Whether a text names the room between a body and a garment, or how closely one is knitted."""
    return _EASE.search(text) is not None or _KNITTED.search(text) is not None
