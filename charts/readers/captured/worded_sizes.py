"""Names of sizes that have several words, in one line or over two: ``Extra Large 97-102 81-86``."""

from __future__ import annotations

import re
from typing import Final

from charts.dimensions import Role, read_band, read_heading
from charts.readers.captured.size_names import size_line
from charts.readers.captured.value_runs import is_size
from charts.readers.captured.values import is_blank, is_value

_MOST_WORDS: Final = 3
_LONGEST: Final = 200
_JOINTS: Final = "-–—/+"
_FIGURE: Final = re.compile(r"\d{2}")
_BRACKET: Final = re.compile(r"\s+(?=\()")


def worded_row(text: str, count: int) -> list[str] | None:
    """A size and the ``count`` figures that the line ends with; None where it is no such row.

    The words before the figures are the size whatever they are, but for those of a measure or of a
    sentence, and figures that no size is.
    """
    words = text.split()
    if not count or len(text) > _LONGEST or not 1 <= len(words) - count <= _MOST_WORDS:
        return None
    name, figures = " ".join(words[:-count]), words[-count:]
    if not all(is_value(one) or is_blank(one) for one in figures):
        return None
    if not any(_FIGURE.search(one) for one in figures) or not _may_be_size(name):
        return None
    return [name, *figures]


def _may_be_size(name: str) -> bool:
    """Whether a name is a size, or a size with a word behind it: ``XL Tall``, ``42 plus``."""
    if is_value(name) or name.endswith((":", ".")):
        return is_size(name)
    first, *others = _BRACKET.split(name, maxsplit=1)[0].split()
    if is_size(name) or size_line(name) is not None:
        return True
    if any(map(str.isdigit, "".join(others))) or name[-1] in _JOINTS:
        return False  # "Medium 17 –" is a size and half of a range
    return is_size(first) and read_heading(name).role is not Role.MEASURE


def ends_name(first: str, second: str) -> bool:
    """Whether two lines are one size: ``Extra`` over ``Large``, of which the first is no size."""
    if not first or not second or any(map(str.isdigit, first)) or is_size(first):
        return False
    alone = read_band(first) is None and read_heading(first).role is Role.UNKNOWN
    return alone and is_size(second) and is_size(f"{first} {second}")
