"""Lines that begin with the name of a measure or of a size and give figures for it.

``Waist (cm) 66-70 - 76-80`` or ``Extra Large 97-102 81-86``: below or above a table such a line is
a row of it that was lost, whatever else it looks like. A sentence has more words than figures.
"""

from __future__ import annotations

import re
from typing import Final

from charts.dimensions import Role, read_heading
from charts.readers.captured.size_names import size_line
from charts.readers.captured.value_runs import is_size
from charts.readers.captured.values import is_value

_LONGEST: Final = 300
_MOST_WORDS: Final = 5
_FEWEST: Final = 2
_BULLET: Final = re.compile(r"^[-–*•·>✓\s]+")
_FIGURE: Final = r"\d{2,3}(?:[.,]\d+)?(?![\d.,]*\d)"
_JOINT: Final = r"\s*(?:[-–—/]|\b(?:to|bis|à|a|al|tot|til|till|do|až|até)\b)\s*"
_VALUE: Final = re.compile(rf"(?<![\d.,]){_FIGURE}(?:{_JOINT}{_FIGURE})?")
"""One figure or a range; of one digit are numbers of pictures, or centimetres beside a bone."""
_RANGE: Final = rf"{_FIGURE}\s?[-–—]\s?{_FIGURE}(?:\s?(?:cm|mm|in|kg|lbs?)\b|[\"”″])?"
_ROW: Final = re.compile(
    rf"(?P<name>[^\W_][^\s:]*(?: [^\W\d_][^\s:]*){{0,2}})\s*:?\s+"
    rf"(?P<ranges>{_RANGE}(?:\s+{_RANGE})*)"
)
"""A name of up to three words and ranges alone: two of them are a row, whatever it is named."""
_WORD: Final = re.compile(r"[^\W\d_]{2,}")
_PRICE: Final = re.compile(r"[€$£¥%]|\b(?:EUR|USD|GBP|PLN|SEK|NOK|DKK|CHF)\b", re.IGNORECASE)
_EDGES: Final = " :;,.=|–—-"


def named_figures(text: str) -> int:
    """How many values a line gives behind the name of a measure or a size; 0 for other lines."""
    line = _BULLET.sub("", text.strip())
    if len(line) > _LONGEST or _PRICE.search(line):
        return 0
    row = _ROW.fullmatch(line)
    if row is not None:
        ranges = len(_VALUE.findall(row["ranges"]))
        sized = is_size(row["name"].strip(_EDGES)) and not is_value(row["name"])
        return ranges if ranges >= _FEWEST or sized else 0
    rest = _behind_name(line)
    if rest is None:
        return 0
    figures = len(_VALUE.findall(rest))
    return figures if figures >= _FEWEST and len(_WORD.findall(rest)) <= figures else 0


def _behind_name(line: str) -> str | None:
    """What stands behind the longest name that the line begins with; None where it has none."""
    words = line.split()
    for count in range(min(_MOST_WORDS, len(words) - 1), 0, -1):
        name = " ".join(words[:count])
        if _names(name.strip(_EDGES)):
            return " ".join(words[count:])
    return None


def _names(text: str) -> bool:
    if not any(map(str.isalpha, text)):
        return False
    heading = read_heading(text)
    if Role.MEASURE in {heading.role, *(role for role, _ in heading.candidates)}:
        return not any(map(str.isdigit, text))
    return size_line(text) is not None
