"""Letters broken by reading utf-8 in an old code page, put right only when that is certain.

``GrÃ¶ÃŸe`` is Größe and ``34â€“36`` is 34–36: the broken run must turn back into valid utf-8 and
come out as it was when broken again.
"""

from __future__ import annotations

import re
from collections.abc import Iterable
from typing import Final

_FIRST_BYTES: Final = {
    "cp1252": (0xC2, 0xC3, 0xC4, 0xC5, 0xCE, 0xCF, 0xD0, 0xD1),
    "mac_roman": (0xC2, 0xC3),  # the others are dashes and quotation marks there
    "cp1250": (0xC2, 0xC3, 0xC4, 0xC5),
}
"""Which bytes begin a letter of Europe in utf-8, and are no sign of daily use in the page."""
_NATURAL: Final = "ÄÅÉÖÜÑÐÎÏ"
_EXPECTED: Final = re.compile(  # letters of Europe, dashes, quotation marks, fractions, signs
    "[\xa0-\u024f\u0370-\u052f\u2000-\u2044\u20a0-\u20bf\u2122\u2150-\u215f\u2212\u2248\u2264\u2265]+"
)


def _letters(page: str, values: Iterable[int]) -> str:
    """The signs that bytes become in ``page``, undefined ones as controls."""
    found = []
    for value in values:
        sign = bytes([value]).decode(page, "replace")
        found.append(re.escape(chr(value) if sign == "\N{REPLACEMENT CHARACTER}" else sign))
    return "".join(found)


def _pattern(page: str) -> re.Pattern[str]:
    tail = _letters(page, range(0x80, 0xC0))
    if page == "cp1252":
        tail += "\x80-\x9f"  # the same text read as latin-1
    two = f"[{_letters(page, _FIRST_BYTES[page])}][{tail}]"
    three = f"[{_letters(page, [0xE2])}][{tail}]{{2}}"
    return re.compile(f"(?:{three}|{two})+")


_PATTERNS: Final = {page: _pattern(page) for page in _FIRST_BYTES}


def repaired(text: str) -> tuple[str, tuple[str, str] | None]:
    """``text`` put right, and one example of a word before and after; None when nothing was."""
    example: tuple[str, str] | None = None
    for page, pattern in _PATTERNS.items():
        if text.isascii():
            break
        for _ in range(2):  # some texts were broken twice
            mended = _all_mended(text, page, pattern)
            if mended == text:
                break
            example = example or _example(text, mended, pattern)
            text = mended
    return text, example


def _all_mended(text: str, page: str, pattern: re.Pattern[str]) -> str:
    runs = set(pattern.findall(text))
    if len(runs) == 1 and runs.pop()[0] in _NATURAL:
        return text  # one word may well end in Ä and a quotation mark
    return pattern.sub(lambda found: _mended(found[0], page), text)


def _mended(run: str, page: str) -> str:
    try:
        mended = _bytes(run, page).decode("utf-8")
    except UnicodeError:
        return run
    return mended if _EXPECTED.fullmatch(mended) else run


def _bytes(run: str, page: str) -> bytes:
    try:
        return run.encode(page)
    except UnicodeEncodeError:
        return b"".join(_byte(sign, page) for sign in run)


def _byte(sign: str, page: str) -> bytes:
    try:
        return sign.encode(page)
    except UnicodeEncodeError:
        return sign.encode("latin-1")


def _example(before: str, after: str, pattern: re.Pattern[str]) -> tuple[str, str]:
    """The first word that changed."""
    found = pattern.search(before)
    start = found.start() if found else 0
    while start and not before[start - 1].isspace():
        start -= 1
    word = before[start:].split(maxsplit=1)[0][:30]
    return word, after[start:].split(maxsplit=1)[0][:30] if after[start:].split() else ""
