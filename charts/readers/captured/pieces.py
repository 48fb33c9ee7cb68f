"""A line of single blanks cut into its pieces: whole values, ages with their word, other words.

``18 50 1 month 3-4 41 - 43`` has five; nothing is left out, so that pieces can be counted.
"""

from __future__ import annotations

import re
from typing import Final

from charts.readers.captured.value_pattern import VALUE
from charts.readers.captured.value_runs import is_cell_value
from charts.readers.captured.values import is_blank, is_value
from charts.size_labels import LabelKind, read_label

_NUMBER: Final = r"\d{1,2}(?:[.,]\d|\s?½)?"
_UNIT: Final = r"[^\W\d_]{1,10}\.?"
_SPAN: Final = re.compile(
    rf"{_NUMBER}(?:\s?{_UNIT})?\s?[-–/]\s?{_NUMBER}\s?{_UNIT}(?=\s|\Z)|{_NUMBER}\s?{_UNIT}(?=\s|\Z)"
)
_SLASHED: Final = re.compile(r"\d{2,3}/\d{2,3}\s?(?:cm|kg)(?=\s|\Z)", re.IGNORECASE)
"""``92/98 cm``: a child's height for two sizes, or a range."""
_WORD: Final = re.compile(r"\S+")
_LONGEST: Final = 300


def pieces(text: str) -> list[str]:
    """The pieces of a line in their order; none for a line that is too long to be a row."""
    text = text.strip()
    found: list[str] = []
    at = 0
    while at < len(text) <= _LONGEST:
        piece = _piece(text, at)
        found.append(piece)
        at += len(piece)
        at += len(text[at:]) - len(text[at:].lstrip())
    return found


def is_age(text: str) -> bool:
    """Whether ``text`` is an age with its word: ``3-6 months``, ``1.5 years``."""
    label = read_label(text) if not is_value(text) or text[-1:].isalpha() else None
    return label is not None and label.kind is LabelKind.AGE and label.doubtful is None


def may_stand_in_cell(text: str) -> bool:
    """Whether a piece is a value, an age, or the sign for none."""
    return is_cell_value(text) or is_blank(text) or is_age(text)


def _piece(text: str, at: int) -> str:
    age = _SPAN.match(text, at)
    if age is not None and is_age(age[0]):
        return age[0]
    value = _SLASHED.match(text, at) or VALUE.match(text, at)
    if value is not None:
        return value[0]
    word = _WORD.match(text, at)
    return word[0] if word is not None else text[at:]
