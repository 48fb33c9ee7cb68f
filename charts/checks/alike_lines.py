"""Lines of one shape that tell sizes in words or in figures run together, and are in no table.

``Size 42: 88 cm chest, 70 cm waist`` for each size, or ``S 3436 2830`` below another chart: one
such line may be an example, two of the same shape are a chart of their own.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Mapping
from typing import Final

from charts.dimensions import Role, read_heading
from charts.size_labels import read_label

Place = tuple[int, int]
_LONGEST: Final = 400
_FEWEST_LINES: Final = 2
_FEWEST_FIGURES: Final = 2
_FIGURE: Final = re.compile(r"(?<!\d)\d{2,3}(?:[.,]\d{1,2})?(?![\d.,]*\d)")
_TOGETHER: Final = re.compile(r"(?<!\S)\d{4,6}(?!\S)")
_DIGITS: Final = re.compile(r"\d+(?:[.,]\d+)?")
_WORD: Final = re.compile(r"[^\W\d_]{3,}")
_BULLET: Final = re.compile(r"^[-–*•·>\s]+")
_PRICE: Final = re.compile(r"[€$£%:]\s*\d+[.,]\d{2}\b|\d\s*(?:€|%|EUR|USD|GBP)", re.IGNORECASE)
"""A price is no measure."""


def alike_lines(texts: Iterable[tuple[Place, str]]) -> Mapping[Place, int]:
    """The places of such lines and how many figures each has.

    ``texts`` are the lines that came into no table, each with its place.
    """
    shapes: dict[str, dict[Place, int]] = {}
    for place, text in texts:
        told = _told(text)
        if told is not None:
            shape, figures = told
            shapes.setdefault(shape, {})[place] = figures
    several = [lines for lines in shapes.values() if len(lines) >= _FEWEST_LINES]
    return {place: figures for lines in several for place, figures in lines.items()}


def _told(text: str) -> tuple[str, int] | None:
    """The shape of a line and how many figures it tells; None for one that tells no size."""
    line = _BULLET.sub("", text.strip())
    if not line or len(line) > _LONGEST or _PRICE.search(line):
        return None
    first, *words = line.split()
    figures = len(_FIGURE.findall(line))
    named = figures >= _FEWEST_FIGURES and _names_a_measure(line)
    together = len(_TOGETHER.findall(line)) >= _FEWEST_FIGURES and _all_figures(words)
    if not named and not (together and read_label(first) is not None):
        return None
    shape = " ".join(_DIGITS.sub("0", word) for word in words)
    return shape, max(figures, _FEWEST_FIGURES)


def _names_a_measure(line: str) -> bool:
    return any(read_heading(word).role is Role.MEASURE for word in _WORD.findall(line))


def _all_figures(words: Iterable[str]) -> bool:
    return all(word[:1].isdigit() for word in words)
