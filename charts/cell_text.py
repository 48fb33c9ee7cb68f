"""The text of one cell, made plain before it is read: one dash, one space, one prime."""

from __future__ import annotations

import html
import re
import unicodedata
from functools import lru_cache
from typing import Final

OPEN_WAVE: Final = "\u2053"
"""The sign that a wave dash with one end only is made: up to 90 in front, from 90 behind it."""

_MAX_LENGTH: Final = 2000
_PLAIN_SIGN: Final = r"(?:[\w.,+/\"'~>=:±-]|<(?=[ =\d]))+"
_PLAIN: Final = re.compile(rf"{_PLAIN_SIGN}(?: {_PLAIN_SIGN})*", re.ASCII)

_VULGAR: Final = {
    "½": "1/2",
    "¼": "1/4",
    "¾": "3/4",
    "⅛": "1/8",
    "⅜": "3/8",
    "⅝": "5/8",
    "⅞": "7/8",
}
_SPACES: Final = "\u00a0\u1680\u202f\u205f\u3000\t\r\f\v" + "".join(map(chr, range(0x2000, 0x200B)))
_NOTHING: Final = "\u00ad\u200b\u200c\u200d\u2060\ufeff\u200e\u200f"
_DASHES: Final = "\u2010\u2011\u2012\u2013\u2014\u2015\u2212\x96\x97\ufe58\ufe63\uff0d"
_FULL_WIDTH: Final = {chr(sign + 0xFEE0): chr(sign) for sign in range(0x21, 0x7F)}
"""Latin letters, figures and marks as wide as a Chinese character: ８６, （ｃｍ）."""
_EASTERN: Final = {
    "\u3010": "[",
    "\u3011": "]",
    "\u3014": "[",
    "\u3015": "]",
    "\u3001": ",",
    "\u3002": ".",
    "\u339c": "mm",
    "\u339d": "cm",
    "\u338f": "kg",
}
_NARROW: Final = str.maketrans(_FULL_WIDTH | _EASTERN | {"\u301c": "~"})
_SINGLE: Final = str.maketrans(
    _FULL_WIDTH
    | _EASTERN
    | dict.fromkeys(_SPACES, " ")
    | dict.fromkeys(_NOTHING, "")
    | dict.fromkeys(_DASHES, "-")
    | dict.fromkeys("”“″„‟\x93\x94＂", '"')
    | dict.fromkeys("’′‛‘´`\x91\x92", "'")
    | {"\u223c": "~", "\uff5e": "~", "\u301c": "~", "\u02dc": "~"}
    | {mark: f" {plain}" for mark, plain in _VULGAR.items()}
)
# UTF-8 read as cp1252 where the repair of the whole text fails.
_MISREAD: Final = {
    "â€“": "-",
    "â€”": "-",
    "â€™": "'",
    "â€˜": "'",
    "â€œ": '"',
    "â€\x9d": '"',
    "â€³": '"',
    "Â½": " 1/2",
    "Â¼": " 1/4",
    "Â¾": " 3/4",
    "Â ": " ",
    "Â\u00a0": " ",
}
_SUPERSCRIPTS: Final = str.maketrans("⁰¹²³⁴⁵⁶⁷⁸⁹₀₁₂₃₄₅₆₇₈₉", "01234567890123456789")
_SET_FRACTION: Final = re.compile(
    r"<sup>\s*(\d{1,2})\s*</sup>\s*[/\u2044]\s*<sub>\s*(\d{1,2})\s*</sub>", re.IGNORECASE
)
_RAISED_FRACTION: Final = re.compile(r"([⁰¹²³⁴-⁹]{1,2})\s*[/\u2044]\s*([₀-₉]{1,2})")
_SUP: Final = re.compile(r"(\w?)<sup>\s*([^<]{0,8}?)\s*</sup>", re.IGNORECASE)
_BREAK: Final = re.compile(r"\s*<br\s*/?>\s*", re.IGNORECASE)
_SLASH_FRACTION: Final = re.compile(r"(\d)\u2044(\d)")
_HALF_WIDTH: Final = re.compile("[\uff61-\uff9f]+")
_LONG_VOWEL: Final = re.compile(r"(?<=[\d\uff10-\uff19])\s?\u30fc\s?(?=[\d\uff10-\uff19])")
_OPEN_WAVE: Final = re.compile(
    r"^\s*[\u301c\uff5e](?=\s?[\d\uff10-\uff19])|(?<=\S)[\u301c\uff5e]\s*$"
)
_FIRST_EASTERN: Final = "\u3000"
"""Signs before it are dashes, quotes and fractions of Latin texts: most cells hold no others."""
_DOTS: Final = re.compile(r"(?<=\d)\s?(?:\.{2,4}|…|÷)\s?(?=\d)")
"""Dots between two figures: 83...87 is written for 83-87; so is 83÷87, in Italy above all."""
_BETWEEN_UNITS: Final = re.compile(r"(?<=\d)(\s?(?:cm|mm|kg|in|lbs?|\"))\s?÷\s?(?=\d)")
_TYPED_DASH: Final = re.compile(r"(?<=[\d\"'])\s?-{2,3}\s?(?=\d)")
"""An en or em dash as it is typed where there is no key for it: 86--91."""
_RUN: Final = re.compile(r" {2,}| ?\n\s*")
_MARKS: Final = " *†‡¹²³⁴⁵⁶⁷⁸⁹"
_MARKS_BEFORE: Final = " *†‡"


@lru_cache(maxsize=16384)
def clean(text: str) -> str:
    r"""Make ``text`` plain: entities, spaces, dashes, primes, vulgar fractions, footnote marks.

    A wave dash with one end only becomes ``OPEN_WAVE``: it is no "about" but an open end.
    Line breaks stay as ``\n``; one pair of parentheses round everything goes. A text longer than
    a cell can sensibly be comes back cut to 2,000 characters.
    """
    text = text[:_MAX_LENGTH]
    if ".." in text or "…" in text:
        text = _DOTS.sub("-", text)
    if "÷" in text:
        text = _BETWEEN_UNITS.sub(r"\1-", _DOTS.sub("-", text))
    if "--" in text:
        text = _TYPED_DASH.sub("-", text)
    # Most cells are plain but for the dash: where nothing else is odd, no other repair bears on it.
    dashed = text.replace("\u2013", "-")
    if _PLAIN.fullmatch(dashed) and "''" not in dashed:
        return dashed
    if "&" in text:
        text = html.unescape(html.unescape(text))
    if not text.isascii():
        text = unicodedata.normalize("NFC", _reread(text))
        text = _SLASH_FRACTION.sub(r"\1/\2", _RAISED_FRACTION.sub(_lowered, text))
        text = _eastern(text) if max(text) >= _FIRST_EASTERN else text
    if "<" in text:
        text = _BREAK.sub("\n", _SUP.sub(_footnote, _SET_FRACTION.sub(r" \1/\2", text)))
    text = text.translate(_SINGLE).replace("''", '"')
    if "  " in text or "\n" in text:
        text = _RUN.sub(lambda run: "\n" if "\n" in run[0] else " ", text)
    text = text.strip().rstrip(_MARKS).lstrip(_MARKS_BEFORE)
    return _unwrapped(text) if text.startswith("(") else text


def narrow(text: str) -> str:
    """Full-width letters, figures and marks as they are elsewhere: "（ｃｍ）" is "(cm)"."""
    return text if text.isascii() else text.translate(_NARROW)


def _eastern(text: str) -> str:
    """Half-width kana made whole, a long-vowel mark between figures a dash, open waves marked."""
    text = _HALF_WIDTH.sub(lambda kana: unicodedata.normalize("NFKC", kana[0]), text)
    return _OPEN_WAVE.sub(OPEN_WAVE, _LONG_VOWEL.sub("-", text))


def _reread(text: str) -> str:
    """UTF-8 that was read as cp1252, read again: "GrÃ¶ÃŸe" is "Größe"."""
    if not any(sign in text for sign in ("Ã", "Â", "â€", "Å")):
        return text
    try:
        return text.encode("cp1252").decode("utf-8")
    except UnicodeError:
        for misread, plain in _MISREAD.items():
            text = text.replace(misread, plain)
        return text


def _lowered(match: re.Match[str]) -> str:
    over, under = (part.translate(_SUPERSCRIPTS) for part in match.groups())
    return f" {over}/{under}"


def _footnote(match: re.Match[str]) -> str:
    """A raised fraction stays; anything else raised is a footnote mark."""
    before, raised = match.groups()
    return f"{before} {raised}" if "/" in raised or raised in _VULGAR else before


def _unwrapped(text: str) -> str:
    inner = text[1:-1]
    whole = text.endswith(")") and not {"(", ")"} & set(inner)
    return inner.strip() if whole else text
