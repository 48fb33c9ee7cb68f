"""Marks that tie a note to what bears them: ``Back length*`` and ``* of the finished vest``."""

from __future__ import annotations

import re
from functools import lru_cache
from typing import Final

from charts.columns.named_in import reference

_RAISED: Final = "¹²³⁴⁵⁶⁷⁸⁹"
_SIGN: Final = rf"\*+|[†‡§]+|[{_RAISED}]"
_BORNE: Final = re.compile(
    rf"(?<=[^\s*])({_SIGN})(?![^\W_])|(?<=\S)\s({_SIGN})(?=\s*$|\s*[(\[])|^\s*({_SIGN})(?=\S)"
)
_OPENS: Final = re.compile(
    rf"(?:(?<=^)|(?<=[\s;,.|(]))({_SIGN})\)?\s*(?=[^\W\d_]|[\"'„“(=:])"
    r"|^\s*[(\[]([A-Z]|\d{1,2})[)\]]\s*(?=[^\W\d_])|^\s*([A-Z]|\d{1,2})[).:]?\s+(?=[^\W\d_]{2})"
)
_FOOTNOTE: Final = re.compile(r"(?<=[^\W\d_]{3})(\d)$")
"""A number at the end of a word, as a raised one comes through: ``Chest1``."""


@lru_cache(maxsize=8192)
def marks_on(text: str) -> frozenset[str]:
    """The marks that a heading, a label or a cell bears."""
    found = {mark for pair in _BORNE.findall(text) for mark in pair if mark}
    numbers = {str(_RAISED.index(mark) + 1) for mark in found if mark in _RAISED}
    named = {one for one in (reference(text),) if one}
    return frozenset(found | numbers | named | set(_FOOTNOTE.findall(text.strip())))


@lru_cache(maxsize=4096)
def marked_parts(text: str) -> tuple[tuple[str, str], ...]:
    """A text as parts with the mark that each begins with; "" for none."""
    starts = list(_OPENS.finditer(text))
    if not starts:
        return (("", text),)
    parts = [("", text[: starts[0].start()])] if text[: starts[0].start()].strip() else []
    ends = [*(one.start() for one in starts[1:]), len(text)]
    for found, end in zip(starts, ends, strict=True):
        mark = found[1] or found[2] or found[3]
        parts.append((mark, text[found.end() : end]))
    return tuple(parts)
