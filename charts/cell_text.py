"""The text of one cell, made plain before it is read: one dash, one space, one prime."""

from __future__ import annotations

import html
import re
from typing import Final

_VULGAR: Final = {
    "½": "1/2",
    "¼": "1/4",
    "¾": "3/4",
    "⅛": "1/8",
    "⅜": "3/8",
    "⅝": "5/8",
    "⅞": "7/8",
    "⅓": "1/3",
    "⅔": "2/3",
}
_SPACES: Final = "\u00a0\u1680\u202f\u205f\u3000\t\r\f\v" + "".join(map(chr, range(0x2000, 0x200B)))
_NOTHING: Final = "\u00ad\u200b\u200c\u200d\u2060\ufeff\u200e\u200f"
_SINGLE: Final = str.maketrans(
    dict.fromkeys(_SPACES, " ")
    | dict.fromkeys(_NOTHING, "")
    | dict.fromkeys("\u2010\u2011\u2012\u2013\u2014\u2015\u2212\x96\x97\ufe58\ufe63\uff0d", "-")
    | dict.fromkeys("”“″„‟\x93\x94＂", '"')
    | dict.fromkeys("’′‛‘´`\x91\x92", "'")
    | {mark: f" {plain}" for mark, plain in _VULGAR.items()}
)
_SUPERSCRIPT: Final = re.compile(
    r"<sup>\s*(\d+)\s*</sup>\s*[/\u2044]\s*<sub>\s*(\d+)\s*</sub>", re.IGNORECASE
)
_BREAK: Final = re.compile(r"<br\s*/?>", re.IGNORECASE)
_SLASH_FRACTION: Final = re.compile(r"(\d)\u2044(\d)")
_FOOTNOTE: Final = re.compile(r"\s*[*†‡¹²³]+$")
_RUN: Final = re.compile(r" {2,}")
_MAX_LENGTH: Final = 2000


def clean(text: str) -> str:
    r"""``text`` with entities, spaces, dashes, primes and vulgar fractions made plain.

    Line breaks stay as ``\\n``; a footnote mark at the end and one pair of parentheses round
    everything go. Text longer than a cell can sensibly be comes back cut to 2,000 characters.
    """
    text = text[:_MAX_LENGTH]
    if "&" in text:
        text = html.unescape(text)
    if "<" in text:
        text = _SUPERSCRIPT.sub(r" \1/\2", text)
        text = _BREAK.sub("\n", text)
    text = _SLASH_FRACTION.sub(r"\1/\2", text).translate(_SINGLE).replace("''", '"')
    text = _RUN.sub(" ", text).strip()
    text = _FOOTNOTE.sub("", text)
    if text.startswith("(") and text.endswith(")") and text.count("(") == text.count(")") == 1:
        text = text[1:-1].strip()
    return text
