"""Text of a cell freed of what nobody can see, and broken letters put right.

What a person sees is kept: dashes, primes, fractions and their spaces are the grammar's to read.
"""

from __future__ import annotations

import re
from typing import Final

_LINE_ENDS: Final = re.compile(r"\r\n?|[\u2028\u2029\x0b\x0c\x85]")
# Controls, marks of writing direction, zero-width signs, soft hyphens, replacement objects.
_UNSEEN: Final = re.compile(
    r"[\x00-\x08\x0e-\x1f\x7f\x80-\x84\x86-\x9f\xad\u061c\u200b-\u200f\u202a-\u202e"
    r"\u2060-\u2069\ufe00-\ufe0f\ufeff\ufff9-\ufffc]|[\ud800-\udfff]"
)


def tidy(text: str) -> str:
    """``text`` without unseen characters, with plain line breaks and no blanks at its ends."""
    if text.isascii() and text.isprintable():
        return text.strip()
    return _UNSEEN.sub("", _LINE_ENDS.sub("\n", text)).strip()
