"""Letters broken by reading utf-8 in an old code page, put right only when that is certain.

``GrÃ¶ÃŸe`` is Größe and ``34â€“36`` is 34–36: the broken run must turn back into valid utf-8 and
come out as it was when broken again.
"""

from __future__ import annotations

import re
from typing import Final

_WRONG_PAGES: Final = ("cp1252", "mac_roman", "cp1250")
_NATURAL: Final = "ÄÅÉÖÜ"
_EXPECTED: Final = re.compile(
    "[\xa0-\u024f\u0370-\u052f\u2000-\u2bff\u3000-\u9fff\uff00-\uffef]+"  # scripts of suppliers
)


def _letters(page: str, first: int, last: int) -> str:
    """The signs that bytes ``first`` to ``last`` become in ``page``, undefined ones as controls."""
    found = []
    for value in range(first, last + 1):
        sign = bytes([value]).decode(page, "replace")
        found.append(re.escape(chr(value) if sign == "\N{REPLACEMENT CHARACTER}" else sign))
    return "".join(found)


def _pattern(page: str) -> re.Pattern[str]:
    tail = _letters(page, 0x80, 0xBF)
    if page == "cp1252":
        tail += "\x80-\x9f"  # the same text read as latin-1
    two = f"[{_letters(page, 0xC2, 0xDF)}][{tail}]"
    three = f"[{_letters(page, 0xE1, 0xEF)}][{tail}]{{2}}"
    return re.compile(f"(?:{three}|{two})+")


_PATTERNS: Final = {page: _pattern(page) for page in _WRONG_PAGES}


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
        mended = b"".join(_byte(sign, page) for sign in run).decode("utf-8")
    except UnicodeError:
        return run
    return mended if _EXPECTED.fullmatch(mended) else run


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
