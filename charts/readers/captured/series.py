"""Measures in a running text, each with all sizes behind it: ``flat width: XS 16 in, S 18, M 20``.

Each series begins with a name and a colon and has three sizes or more that rise; every series of
the text has the same sizes. The words around are kept as titles and notes.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from typing import Final

from charts.dimensions import Role, read_heading
from charts.readers.captured.lines import Line, LineCell, LineTable
from charts.readers.captured.value_runs import is_size, rises
from charts.readers.captured.values import is_value

_SIZE: Final = r"(?:\d?X{0,4}[SML]|\d{1,2}XL)(?:/(?:X{0,4}[SML]))?"
_VALUE: Final = r"\d[^,;:.]{0,14}?(?:[.,]\d[^,;:.]{0,10}?)?"
_ITEM: Final = rf"{_SIZE}\s*[=:]?\s+{_VALUE}"
_SERIES: Final = re.compile(
    rf"(?P<name>[^:;.,\d]{{3,60}}):\s*(?P<items>{_ITEM}(?:\s*,\s*(?:and\s)?{_ITEM}){{2,20}})"
    r"(?=\s*(?:[;.]\s|[;.]?\Z))"
)
_PART: Final = re.compile(
    rf"(?P<size>{_SIZE})\s*[=:]?\s+(?P<value>{_VALUE})\s*(?:,\s*(?:and\s)?|\Z)"
)
_LEFT: Final = re.compile(rf"(?<!\w){_SIZE}\s*[=:]?\s+\d")
_LONGEST_LINE: Final = 2_000
_EDGES: Final = " ;.,"


def series_table(lines: Sequence[Line]) -> LineTable | None:
    """The table in the first line, sizes down and a column for each series; else None.

    One series that is all of its line is a sentence like others, and is left to their reader.
    """
    if not lines or ":" not in lines[0].text or len(lines[0].text) > _LONGEST_LINE:
        return None
    text, number = lines[0].text.strip(), lines[0].number
    found = list(_SERIES.finditer(text))
    series = [_values(one["items"]) for one in found]
    if not found or (len(found) == 1 and found[0].span() == (0, len(text.rstrip(_EDGES)))):
        return None
    sizes = list(series[0])
    named = all(read_heading(one["name"].strip()).role is Role.MEASURE for one in found)
    if not named or not sizes or any(list(one) != sizes for one in series):
        return None
    around = _around(text, found)
    if any(len(_LEFT.findall(words)) > 1 for words in around):
        return None  # a series that did not come out even must not be lost among the words
    head = ["", *(one["name"].strip() for one in found)]
    rows = [[size, *(one[size] for one in series)] for size in sizes]
    before, after = around[:1], around[1:]
    texts = [*([one] for one in before if one), head, *rows, *([one] for one in after if one)]
    return LineTable([[LineCell(text, number) for text in row] for row in texts], used=1)


def _around(text: str, found: Sequence[re.Match[str]]) -> list[str]:
    """The words before each series, and behind the last."""
    ends = [0, *(one.end() for one in found)]
    starts = [*(one.start() for one in found), len(text)]
    return [text[a:b].strip(_EDGES) for a, b in zip(ends, starts, strict=True)]


def _values(items: str) -> dict[str, str]:
    """The value of each size; none where a size repeats, none rises or a value is no value."""
    parts = [(one["size"], one["value"].strip()) for one in _PART.finditer(items)]
    sizes = [size for size, _ in parts]
    if len(set(sizes)) < len(sizes) or not all(map(is_size, sizes)) or not rises(sizes):
        return {}
    return dict(parts) if all(is_value(value) for _, value in parts) else {}
