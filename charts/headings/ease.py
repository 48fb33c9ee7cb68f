"""Words of the room that a garment leaves: the girths beside them may be its own or the wearer's.

A pattern recommends an ease and then lists girths, of the finished garment as often as of the body
(common practice, no source). The words are from memory, unchecked by native speakers.
"""

from __future__ import annotations

import re
from typing import Final

_EASE: Final = re.compile(
    r"\b(?:recommended|positive|negative|wearing|design) ease\b|\bof ease\b|\bbevegelsesvidde"
    r"|\bbevægelsesvidde|\brörelsevidd|\bbewegungsweite|\bbequemlichkeitszugabe"
    r"|\boverwijdte\b",
    re.IGNORECASE,
)


def speaks_of_ease(text: str) -> bool:
    """Whether a text names the room between a body and a garment."""
    return _EASE.search(text) is not None
