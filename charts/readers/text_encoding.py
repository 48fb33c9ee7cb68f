"""Bytes to text: byte order mark, zero pattern, strict utf-8, then a vote among old code pages.

latin-1 is never tried: it takes every byte and hides the dash of cp1252 in a control character.
"""

from __future__ import annotations

import codecs
import re
from dataclasses import dataclass
from typing import Final

from charts.readers.mojibake import repaired

_MARKS: Final = (
    (codecs.BOM_UTF8, "utf-8"),
    (codecs.BOM_UTF32_LE, "utf-32-le"),
    (codecs.BOM_UTF32_BE, "utf-32-be"),
    (codecs.BOM_UTF16_LE, "utf-16-le"),
    (codecs.BOM_UTF16_BE, "utf-16-be"),
)
_CODE_PAGES: Final = ("cp1252", "cp1250", "mac_roman", "cp1251")
_SAMPLE: Final = 200_000

_WORDS: Final = re.compile(
    # German, Scandinavian, French, Spanish, Portuguese
    r"gr(?:ö|oe)(?:ß|ss)e|körper|höhe|hüft|rücken|länge|für|maße|gesäß|höft|längd|midjemått|bröst"
    r"|størrelse|højde|vægt|ryglængde|høyde|bryst|âge|bébé|contorno|señora|niñ[oa]s|tamaño|até|júnior"
    # Polish, Czech
    r"|obwód|długość|klatki|wzrost|szerokość|výška|délka|šířka|váha|žen[ya]|muži|dámsk|pánsk|děti"
    # Russian
    r"|обхват|груди|груд|талии|талия|бёдер|бедер|рост|размер|вес|длина|спины|жен|муж|дет",
    re.IGNORECASE,
)
_PLAUSIBLE: Final = re.compile(r"(?<=\d)\s?[½¼¾⅛–°]|[–—]\s?\d|[“”’‘]|(?<=\d)\xa0")
_LETTER_RUN: Final = re.compile(r"[^\W\d_]+")
_CYRILLIC: Final = re.compile(r"[Ѐ-ӿ]")
_ODD: Final = re.compile(r"[\x00-\x08\x0b\x0c\x0e-\x1f\x7f-\x9f¤¬¶√∂∑∏π∫Ω∆◊ﬁﬂ‡†ˇ˘˙˛˝¸¨]")
_BINARY_BYTES: Final = bytes([*range(9), *range(14, 32), 127])
_NOT_ASCII: Final = re.compile(r"[^\x00-\x7f]")
_CONTROLS: Final = re.compile(r"[\x01-\x08\x0e-\x1f\x7f]")


@dataclass(frozen=True, slots=True)
class Decoded:
    """A text and how it was found.

    ``repaired`` is an example, before and after, where broken letters were put right; ``cut``
    says that the bytes end in the middle of a letter or in zeros; the last line is left out then.
    """

    text: str
    encoding: str
    repaired: tuple[str, str] | None = None
    cut: bool = False


def decoded(data: bytes) -> Decoded | None:
    """The text of ``data``; None when it cannot be text (zeros, mostly control characters)."""
    for mark, encoding in _MARKS:
        if data.startswith(mark):
            return _checked(data[len(mark) :].decode(encoding, "replace"), encoding)
    wide = _by_zeros(data)
    if wide is not None:
        return _checked(data.decode(wide, "replace"), wide)
    if _is_binary(data[:4000]):
        return None
    try:
        return _checked(data.decode("utf-8"), "utf-8")
    except UnicodeDecodeError as problem:
        if problem.start > len(data) - 4 and not data[: problem.start].isascii():
            return _checked(data[: problem.start].decode("utf-8"), "utf-8", cut=True)
    if _is_mostly_utf8(data):
        return _checked(data.decode("utf-8", "replace"), "utf-8")
    return _checked(*_voted(data))


def _is_mostly_utf8(data: bytes) -> bool:
    """Whether a few damaged bytes stand in a text that is utf-8 everywhere else."""
    text = data.decode("utf-8", "replace")
    damaged = text.count("\N{REPLACEMENT CHARACTER}")
    return len(_NOT_ASCII.findall(text)) - damaged > 4 * damaged


def _by_zeros(data: bytes) -> str | None:
    head = data[:4000]
    half = len(head) // 2
    if half < 2 or b"\0" not in head:
        return None
    if head[1::2].count(0) > half * 0.7 and head[0::2].count(0) < half * 0.1:
        return "utf-16-le"
    if head[0::2].count(0) > half * 0.7 and head[1::2].count(0) < half * 0.1:
        return "utf-16-be"
    return None


def _is_binary(head: bytes) -> bool:
    """Whether the head cannot be a narrow text; zeros may follow the text of a half-written one."""
    head = head.rstrip(b"\0")
    odd = len(head) - len(head.translate(None, _BINARY_BYTES))
    return odd > max(2, len(head) * 0.02)


def _voted(data: bytes) -> tuple[str, str]:
    sample = data[:_SAMPLE]
    ranked = [
        (_score(sample.decode(page, "replace")), -place, page)
        for place, page in enumerate(_CODE_PAGES)
    ]
    page = max(ranked)[2]
    return data.decode(page, "replace"), page


def _score(text: str) -> float:
    score = 3.0 * len(_WORDS.findall(text)) + 1.0 * len(_PLAUSIBLE.findall(text))
    score -= 2.0 * len(_ODD.findall(text)) + 4.0 * text.count("\N{REPLACEMENT CHARACTER}")
    for word in _LETTER_RUN.findall(text):
        cyrillic = len(_CYRILLIC.findall(word))
        # A word of two alphabets, or with a capital inside small letters, is a wrong code page.
        if 0 < cyrillic < len(word):
            score -= 2.0
        if not word.isascii() and word[1:] != word[1:].lower() and word != word.upper():
            score -= 1.5
    return score


def _checked(text: str, encoding: str, *, cut: bool = False) -> Decoded | None:
    sample = text[:_SAMPLE].rstrip("\0")
    odd = len(_CONTROLS.findall(sample)) + sample.count("\0")
    odd += sample.count("\N{REPLACEMENT CHARACTER}")
    if odd > max(2, len(sample) * 0.02):
        return None
    cut = cut or text.endswith(("\0", "\N{REPLACEMENT CHARACTER}"))
    if cut:
        text = text[: text.rfind("\n") + 1]  # the last line may break off in a figure
    whole, example = repaired(text.replace("\0", ""))
    return Decoded(whole, encoding, example, cut)
