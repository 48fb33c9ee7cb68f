"""Text with raised and lowered pieces to one line: fractions keep their space, notes their mark.

``34<sup>1</sup>/<sub>2</sub>`` is 34 1/2 and never 341/2; ``L<sup>1</sup>`` is L with a mark for
a footnote and never L1.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass
from typing import Final

_FRACTION: Final = re.compile(r"\s*\d{1,2}\s*[/⁄]\s*\d{1,2}\s*")
_SLASH_NEXT: Final = re.compile(r"\s*[/⁄]\s*\d")
_RAISED: Final = str.maketrans("0123456789abcde", "⁰¹²³⁴⁵⁶⁷⁸⁹ᵃᵇᶜᵈᵉ")
_MARK: Final = re.compile(r"[\d,]{1,5}|[a-e]")


@dataclass(frozen=True, slots=True)
class Piece:
    """A run of text: on the line, raised above it or lowered below it."""

    text: str
    raised: bool = False
    lowered: bool = False


def on_one_line(pieces: Sequence[Piece]) -> str:
    """The pieces joined as a person reads them."""
    line = ""
    for at, piece in enumerate(pieces):
        text = piece.text
        if piece.raised and text.strip():
            text = _raised(line, text.strip(), pieces[at + 1 :])
        line += text
    return line


def _raised(line: str, mark: str, rest: Sequence[Piece]) -> str:
    following = "".join(piece.text for piece in rest[:2])
    lowered_next = bool(rest) and rest[0].lowered
    over = mark.isdecimal() and (_SLASH_NEXT.match(following) is not None)
    if over or (mark.isdecimal() and lowered_next) or _FRACTION.fullmatch(mark):
        space = " " if line[-1:].isdecimal() else ""
        return f"{space}{mark}{'/' if lowered_next else ''}"
    return mark.translate(_RAISED) if _MARK.fullmatch(mark) else mark
