"""Which lines of running text name what follows them, and which are said of what stands above."""

from __future__ import annotations

import re
from collections.abc import Sequence
from typing import Final

from charts.unit_words import find_units

MOST_NAMES: Final = 3
_LONGEST_TITLE: Final = 60
_LONGEST_CAPITALS: Final = 120
_BRACKET: Final = re.compile(r"\([^()]*\)")
_FOOTNOTE: Final = re.compile(r"\s*(?:\*|†|‡|[¹²³⁴⁵⁶⁷⁸⁹]|\(?\d\)|\d\s)")
_LETTERS: Final = re.compile(r"[^\W\d_]{2}")


def is_title(text: str) -> bool:
    """Whether a line just before a table is its title: short, or set as titles are."""
    if _FOOTNOTE.match(text):
        return False
    if text.endswith(":"):
        return True
    return (len(text) <= _LONGEST_TITLE or _in_capitals(text)) and not text.endswith(".")


def is_name(text: str) -> bool:
    """Whether a line that is set off from the others names what follows it, and is no note."""
    return is_title(text) and len(text) <= _LONGEST_TITLE and not text.endswith((":", "!", "?"))


def begins_a_part(lines: Sequence[str]) -> bool:
    """Whether a name stands above a table, and perhaps what is said of it between them."""
    return any(map(_names_a_part, lines))


def said_of_several(lines: Sequence[str]) -> int:
    """How many of the lines above a table stand over its own name: they hold for those below too.

    ``All of these are measured flat``, ``Coats``, a table, ``Blazers``, a table.
    """
    return len(lines) - 1 if lines and _names_the_next(lines[-1]) else 0


def only_names(lines: Sequence[str]) -> bool:
    """Whether nothing but a name stands above a table."""
    return len(lines) == 1 and _names_the_next(lines[0])


def start_of_part(lines: Sequence[str]) -> int | None:
    """Where the names of the next table begin in the lines between two; None where nothing tells.

    Only of a page whose first table stands below a name too. The last such name counts, with the
    names just above it and the lines that say it too.
    """
    named = [at for at, line in enumerate(lines[:-1]) if _names_a_part(line)]
    if not named:
        return None
    start = last = named[-1]
    while start > 0 and last - start < MOST_NAMES - 1:
        above = lines[start - 1]
        if not (_names_a_part(above) or lines[last].casefold() in above.casefold()):
            break
        start -= 1
    return start


def _names_a_part(text: str) -> bool:
    """``Women``, ``2. Jackets``: no statement (``Sizes: S, M``), rule or line about units."""
    spoken = _LETTERS.search(text) is not None and ":" not in text
    return spoken and is_name(text) and not find_units(text)


def _names_the_next(text: str) -> bool:
    """The same of the line just before a table, which may end in a colon: ``Model 4 (short):``."""
    return _names_a_part(text.removesuffix(":"))


def _in_capitals(text: str) -> bool:
    """``SIZES — MEN'S TROUSERS (with the numbers of the trade)``: set as titles are."""
    return len(text) <= _LONGEST_CAPITALS and _BRACKET.sub("", text).isupper()
